package startwater.classroom.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A hash as words. */
class EightWordsTest {
    @Test
    void theWordsFollowFromTheHash() {
        // SHA-256 of "abc" begins ba7816bf (FIPS 180-4, example): twelve bits ba7 are 46 and 39, "ti" and "ro".
        assertThat(EightWords.of("abc").split(" "))
                .hasSize(8)
                .startsWith("tiro")
                .allMatch(w -> w.length() == 4);
        assertThat(EightWords.of("abd")).isNotEqualTo(EightWords.of("abc"));
    }
}
