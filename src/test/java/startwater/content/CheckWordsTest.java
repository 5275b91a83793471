package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The sentences of the checks against the rules and complaints that say them, in both languages. */
class CheckWordsTest {
    private static final int LONGEST_SENTENCE = 20;

    @Test
    void everyRuleAndComplaintHasItsSentenceAndNoSentenceIsIdle() {
        Set<String> wanted = new TreeSet<>();
        Arrays.stream(Rule.values()).forEach(rule -> wanted.add(rule.key()));
        Arrays.stream(Complaint.values()).forEach(complaint -> wanted.add(complaint.key()));
        for (String language : Languages.ALL) {
            assertThat(new TreeSet<>(Phrases.of(language).keys())).as(language).isEqualTo(wanted);
        }
    }

    @Test
    void sentencesAskForJustWhatTheirComplaintGives() {
        for (String language : Languages.ALL) {
            for (Complaint complaint : Complaint.values()) {
                String sentence = Phrases.of(language).say(complaint.key(), Map.of());
                Set<String> asked = Phrases.PLACEHOLDER
                        .matcher(sentence)
                        .results()
                        .map(found -> found.group(1))
                        .collect(Collectors.toSet());
                assertThat(asked).as(language + " " + complaint).isEqualTo(complaint.placeholders());
            }
        }
    }

    @Test
    void everyRuleCanBeBroken() {
        Set<Rule> broken = EnumSet.noneOf(Rule.class);
        Arrays.stream(Complaint.values()).forEach(complaint -> broken.add(complaint.rule()));
        assertThat(broken).containsExactlyInAnyOrder(Rule.values());
    }

    @Test
    void sentencesAreShortAndEndWithAMark() {
        for (String language : Languages.ALL) {
            for (Complaint complaint : Complaint.values()) {
                String said = Phrases.of(language).say(complaint.key(), Map.of());
                assertThat(said).as(complaint.key()).matches("(?s).*[.?:}]\"?\\.?");
                Readability.sentences(said).forEach(sentence -> assertThat(Readability.words(sentence))
                        .as(language + " " + sentence)
                        .hasSizeLessThanOrEqualTo(LONGEST_SENTENCE));
            }
        }
    }

    @Test
    void aFaultIsOneLineInTheReadersLanguage() {
        Fault fault = new Fault("a.yaml", 7, Complaint.MISSING_KEY, Map.of("key", "volumeL"));
        assertThat(fault.line("en")).isEqualTo("a.yaml:7: R06 'volumeL' is missing in this block.");
        assertThat(fault.line("es")).isEqualTo("a.yaml:7: R06 En este bloque falta 'volumeL'.");
    }

    @Test
    void aFaultRefusesValuesThatItsSentenceDoesNotAskFor() {
        assertThatThrownBy(() -> new Fault("a", 1, Complaint.TAB, Map.of("key", "x")))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("TAB");
    }

    @Test
    void nothingFromAFileCanSteerTheTerminal() {
        Faults faults = Faults.of("evil\u001b[2J.yaml");
        faults.add(3, Complaint.NO_VALUE, "key", "a\u001b[31mb\nc");
        assertThat(faults.list().get(0).line("en"))
                .isEqualTo("evil?[2J.yaml:3: R07 'a?[31mb?c' has no value. " + "Write one after the colon.");
    }

    @Test
    void moreFaultsThanAnybodyReadsAreCutShort() {
        Faults faults = Faults.of("a");
        for (int line = 1; line <= 500; line++) {
            faults.add(line, Complaint.TAB);
        }
        List<Fault> all = faults.list();
        assertThat(all).hasSize(Faults.MOST + 1);
        assertThat(all.get(Faults.MOST).complaint()).isEqualTo(Complaint.MORE_FAULTS);
    }

    @Test
    void nearWordsAreFoundAndFarOnesAreNot() {
        List<String> known = List.of("volumeL", "media", "mediaAreaM2");
        assertThat(Near.to("volumel", known)).contains("volumeL");
        assertThat(Near.to("volmueL", known)).contains("volumeL");
        assertThat(Near.to("medias", known)).contains("media");
        assertThat(Near.to("price", known)).isEmpty();
        assertThat(Near.to("x".repeat(100_000), known)).isEmpty();
    }
}
