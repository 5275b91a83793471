package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.ToIntFunction;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;

class ReadabilityTest {
    /** Worked by hand from the published formulas: Kincaid et al. 1975; Szigriszt-Pazos 1993. */
    @Test
    void scoresAreThoseOfThePublishedFormulas() {
        assertThat(new Readability(100, 8, 140).fleschKincaidGrade()).isCloseTo(5.805, within(1e-9));
        assertThat(new Readability(120, 10, 240).inflesz()).isCloseTo(70.235, within(1e-9));
    }

    @Test
    void englishSyllablesAgreeWithTheDictionaryForNineteenWordsOfTwenty() {
        List<ReferenceTable.Row> rows =
                ReferenceTable.read("readability/english-syllables.csv").rows();
        assertThat(rows).hasSize(400);
        assertThat(wrong(rows, EnglishSyllables::of)).hasSizeLessThanOrEqualTo(rows.size() * 6 / 100);
        double counted = rows.stream()
                .mapToInt(row -> EnglishSyllables.of(row.text("word")))
                .sum();
        double printed =
                rows.stream().mapToDouble(row -> row.number("syllables")).sum();
        assertThat(counted / printed).isCloseTo(1, within(0.02));
    }

    @Test
    void spanishSyllablesAgreeWithTheDividerForEveryWord() {
        List<ReferenceTable.Row> rows =
                ReferenceTable.read("readability/spanish-syllables.csv").rows();
        assertThat(rows).hasSizeGreaterThan(250);
        assertThat(wrong(rows, SpanishSyllables::of)).isEmpty();
    }

    private static List<String> wrong(List<ReferenceTable.Row> rows, ToIntFunction<String> counter) {
        return rows.stream()
                .filter(row -> counter.applyAsInt(row.text("word")) != (int) row.number("syllables"))
                .map(row -> row.text("word"))
                .toList();
    }

    @Test
    void sentencesEndAtMarksButNotInsideNumbers() {
        assertThat(Readability.sentences("The pH is 7.5 now. Is it? It is! Wait…  Yes."))
                .containsExactly("The pH is 7.5 now.", "Is it?", "It is!", "Wait…", "Yes.");
        assertThat(Readability.sentences("¿Qué pasa? Nada.")).hasSize(2);
        assertThat(Readability.sentences("Dijo «basta.» Se fue.")).hasSize(2);
    }

    @Test
    void wordsLoseTheMarksAroundThem() {
        assertThat(Readability.words("\"Feed,\" he said — 2,400 L (half)!"))
                .containsExactly("Feed", "he", "said", "2,400", "L", "half");
    }

    @Test
    void wordsOfTheTradeAndNumbersCountAsPlainWords() {
        assertThat(Readability.of("Alkalinity 2,400 cat.", "en")).isEqualTo(new Readability(3, 1, 3));
        assertThat(Readability.of("Alcalinidad 2,400 pez.", "es")).isEqualTo(new Readability(3, 1, 5));
        assertThat(Readability.of("Availability.", "en").syllables()).isEqualTo(6);
    }

    @Test
    void aHardTextIsToldFromAnEasyOne() {
        String easy = "The fish eat. You clean the tank. Then you test the water and write it down.";
        String hard = "Unanticipated physiological deterioration necessitates immediate environmental intervention.";
        assertThat(Readability.of(easy, "en").fleschKincaidGrade()).isLessThan(3);
        assertThat(Readability.of(hard, "en").fleschKincaidGrade()).isGreaterThan(15);
        assertThat(Readability.of("El pez come. Usted mira el agua y anota lo que ve.", "es")
                        .inflesz())
                .isGreaterThan(80);
        assertThat(Readability.of("La caracterización fisicoquímica complementaria posibilita intervenciones.", "es")
                        .inflesz())
                .isLessThan(0);
    }

    @Test
    void theGlossariesNameTheSameTradeInBothLanguages() {
        assertThat(Glossary.words("en")).contains("ammonia", "nitrite").noneMatch(word -> word.contains(" "));
        assertThat(Glossary.words("es")).contains("amoníaco", "nitrito").noneMatch(word -> word.contains(" "));
    }
}
