package startwater.content;

import java.util.Locale;

/**
 * Counts the syllables of a Spanish word by the rules of its spelling (Real Academia, Ortografía 2010): a strong vowel
 * makes a syllable of its own, an unaccented weak one joins its neighbour, an accented weak one beside a strong one stands
 * alone.
 */
final class SpanishSyllables {
    private static final String STRONG = "aeoáéó";
    private static final String WEAK = "iuü";
    private static final String WEAK_ACCENTED = "íú";

    private SpanishSyllables() {}

    /** At least 1. @param word a single word, in any case */
    static int of(String word) {
        String w = word.toLowerCase(Locale.ROOT)
                .replaceAll("qu(?=[eiéí])", "k")
                .replaceAll("gu(?=[eiéí])", "g")
                .replaceAll("y(?![aeiouáéíóúü])", "i");
        int count = 0;
        boolean strong = false;
        char before = ' ';
        for (int i = 0; i < w.length(); i++) {
            char c = w.charAt(i);
            if (!isVowel(c)) {
                before = ' ';
                continue;
            }
            if (before == ' ' || apart(before, c, strong)) {
                count++;
                strong = false;
            }
            strong |= is(STRONG, c);
            before = c;
        }
        return Math.max(1, count);
    }

    /** Whether a vowel after another starts a new syllable. @param strong whether this syllable has a strong vowel */
    private static boolean apart(char before, char now, boolean strong) {
        if (is(STRONG, now)) {
            return strong || is(WEAK_ACCENTED, before);
        }
        if (is(WEAK_ACCENTED, now)) {
            return is(STRONG, before);
        }
        return is(WEAK_ACCENTED, before) || before == now;
    }

    private static boolean isVowel(char c) {
        return is(STRONG, c) || is(WEAK, c) || is(WEAK_ACCENTED, c);
    }

    private static boolean is(String kind, char c) {
        return kind.indexOf(c) >= 0;
    }
}
