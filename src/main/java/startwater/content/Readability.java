package startwater.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * How easy a text is to read. Words of the glossary and numbers count as plain words: no plainer word would do.
 *
 * @param words number of words
 * @param sentences number of sentences
 * @param syllables number of syllables
 */
public record Readability(int words, int sentences, int syllables) {
    private static final Pattern SENTENCE_END = Pattern.compile("(?<=[.!?…][\"»”)]?)\\s+|\\n+");
    private static final Pattern SPACE = Pattern.compile("[\\s—–]+");
    private static final Pattern EDGE = Pattern.compile("^[^\\p{L}\\p{N}]+|[^\\p{L}\\p{N}]+$");
    private static final Pattern WORD_OF_LETTERS = Pattern.compile("\\p{L}[\\p{L}'’-]*");
    /** What is longer is no word; counting its syllables by rule could take for ever. */
    private static final int LONGEST_WORD = 60;

    private static final int LETTERS_A_SYLLABLE = 3;
    private static final int PLAIN_ENGLISH = 1;
    private static final int PLAIN_SPANISH = 2;

    /** Counts a text. @param language {@code en} or {@code es} */
    public static Readability of(String text, String language) {
        int words = 0;
        int sentences = 0;
        int syllables = 0;
        for (String sentence : sentences(text)) {
            List<String> here = words(sentence);
            words += here.size();
            sentences += here.isEmpty() ? 0 : 1;
            syllables +=
                    here.stream().mapToInt(word -> syllables(word, language)).sum();
        }
        return new Readability(words, sentences, syllables);
    }

    /** The sentences of a text: they end at a full stop, a question or exclamation mark, or a line break. */
    public static List<String> sentences(String text) {
        return Arrays.stream(SENTENCE_END.split(text))
                .map(String::strip)
                .filter(sentence -> !sentence.isEmpty())
                .toList();
    }

    /** The words of a sentence without the marks around them. */
    public static List<String> words(String sentence) {
        return SPACE.splitAsStream(sentence)
                .map(word -> EDGE.matcher(word).replaceAll(""))
                .filter(word -> !word.isEmpty())
                .toList();
    }

    private static int syllables(String word, String language) {
        boolean spanish = language.equals(Languages.SPANISH);
        int plain = spanish ? PLAIN_SPANISH : PLAIN_ENGLISH;
        if (word.length() > LONGEST_WORD) {
            return word.length() / LETTERS_A_SYLLABLE;
        }
        if (Glossary.words(language).contains(word.toLowerCase(Locale.ROOT))
                || !WORD_OF_LETTERS.matcher(word).matches()) {
            return plain;
        }
        return Arrays.stream(word.split("-"))
                .filter(part -> !part.isEmpty())
                .mapToInt(part -> spanish ? SpanishSyllables.of(part) : EnglishSyllables.of(part))
                .sum();
    }

    /**
     * School grade in the United States at which an English text is understood: Flesch-Kincaid (Kincaid, Fishburne, Rogers
     * and Chissom 1975), 0.39 W/S + 11.8 Syl/W - 15.59.
     */
    public double fleschKincaidGrade() {
        return 0.39 * words / sentences + 11.8 * syllables / words - 15.59;
    }

    /**
     * Ease of a Spanish text, 0 to 100: INFLESZ (Szigriszt-Pazos 1993 with the bands of Barrio-Cantalejo et al. 2008),
     * 206.835 - 62.3 Syl/W - W/S; 55 to 65 is normal, over 65 fairly easy.
     */
    public double inflesz() {
        return 206.835 - 62.3 * syllables / words - (double) words / sentences;
    }
}
