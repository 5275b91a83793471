package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.course.Past;

/** Opening the file of somebody who has played for years; with {@code -Pfull} it prints how long that takes. */
class YearsTest {
    @TempDir
    private Path folder;

    @Test
    void twoHundredAttemptsAreTheSameWithAndWithoutTheIndex() throws IOException {
        open(200);
    }

    @Test
    @Tag("full")
    void tenThousandAttempts() throws IOException {
        open(1_000);
        open(10_000);
    }

    private void open(int attempts) throws IOException {
        Path data = folder.resolve("years-" + attempts);
        Path file = ManyAttempts.write(data, "Ana", attempts);
        Learners learners = new Learners(data, Means.USUAL);
        long[] took = new long[3];
        Past anew = opened(learners, took, 0);
        assertThat(Names.index(file)).exists();
        Past indexed = opened(learners, took, 1);
        assertThat(indexed).isEqualTo(anew);
        assertThat(anew.marks()).hasSize(attempts);
        Files.writeString(Names.index(file), "{}");
        assertThat(opened(learners, took, 2)).isEqualTo(anew);
        if (attempts > 200) {
            System.out.printf(
                    Locale.ROOT,
                    "years: %d attempts, %.1f MB: first open %d ms, with the index %d ms, index made anew %d ms%n",
                    attempts,
                    Files.size(file) / 1e6,
                    took[0],
                    took[1],
                    took[2]);
        }
    }

    /** Opens and closes it, and then looks what the coach is told; only the opening is measured. */
    private static Past opened(Learners learners, long[] took, int at) throws IOException {
        long start = System.nanoTime();
        try (LearnerFile open = learners.openKey("ana")) {
            took[at] = (System.nanoTime() - start) / 1_000_000;
            assertThat(open.notices()).isEmpty();
            return CourseHistory.of(open.history());
        }
    }
}
