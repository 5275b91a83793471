package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Six weeks of a drill fit into 256 MB: a program of its own is given no more, and says what it held. */
class MemoryTest {
    @TempDir
    private Path folder;

    @Test
    @Tag("full")
    void sixWeeksFitIntoAQuarterOfAGigabyte() throws Exception {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx256m"));
        for (String name : List.of(
                "java.awt.headless",
                "testfx.robot",
                "testfx.headless",
                "prism.order",
                "glass.platform",
                "monocle.platform",
                "user.language",
                "user.country")) {
            command.add("-D" + name + "=" + System.getProperty(name, ""));
        }
        command.add("-Dheadless.geometry=1280x800-32");
        command.addAll(List.of(
                "-cp",
                System.getProperty("java.class.path"),
                SixWeeks.class.getName(),
                folder.resolve("data").toString()));
        File said = folder.resolve("said").toFile();
        Process child = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(said)
                .start();
        boolean ended = child.waitFor(15, TimeUnit.MINUTES);
        if (!ended) {
            child.destroyForcibly();
        }
        String text = Files.readString(said.toPath());
        text.lines().filter(l -> l.startsWith("memory:")).forEach(System.out::println);
        assertThat(ended).as(text).isTrue();
        assertThat(child.exitValue()).as(text).isZero();
        assertThat(text).contains("memory: ").doesNotContain("OutOfMemoryError");
    }
}
