package startwater.classroom.sheet;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * A hash that can be read aloud: the first 96 bits of SHA-256 as eight made-up words of two syllables, twelve bits each. A
 * syllable is one of sixteen consonants and one of four vowels.
 */
final class EightWords {
    private static final String CONSONANTS = "bdfgklmnprstvwyz";
    private static final String VOWELS = "aeio";
    private static final int WORDS = 8;

    private EightWords() {}

    static String of(String text) {
        byte[] hash = sha256(text);
        StringBuilder out = new StringBuilder();
        for (int word = 0; word < WORDS; word++) {
            int bits = 12 * word;
            int at = bits / 8;
            int pair = ((hash[at] & 0xff) << 8) | (hash[at + 1] & 0xff);
            int twelve = bits % 8 == 0 ? pair >> 4 : pair & 0xfff;
            out.append(word == 0 ? "" : " ").append(syllable(twelve >> 6)).append(syllable(twelve & 0x3f));
        }
        return out.toString();
    }

    private static String syllable(int six) {
        return "" + CONSONANTS.charAt(six >> 2) + VOWELS.charAt(six & 3);
    }

    private static byte[] sha256(String text) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
