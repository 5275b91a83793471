package startwater.classroom.xapi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.node.ObjectNode;

/**
 * Statements against a validator that is not ours: the npm package xapi-validation, pinned in {@code src/test/xapi}. Install
 * it with {@code npm ci --prefix src/test/xapi}. Without it the test is left out, except where {@code STARTWATER_CI=1} says
 * that it must run.
 */
class OutsideValidatorTest {
    private static final Path FOLDER = Path.of("src/test/xapi");

    private record Verdict(int exit, String said) {}

    @BeforeAll
    static void theValidatorIsThere() {
        boolean there = Files.isDirectory(FOLDER.resolve("node_modules/xapi-validation")) && node();
        if ("1".equals(System.getenv("STARTWATER_CI"))) {
            assertThat(there)
                    .as("node and the packages of src/test/xapi must be installed here: npm ci --prefix src/test/xapi")
                    .isTrue();
        }
        assumeTrue(there, "xapi-validation is not installed: npm ci --prefix src/test/xapi");
    }

    private static boolean node() {
        try {
            return new ProcessBuilder("node", "--version").start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private static Verdict check(String lines) throws IOException, InterruptedException {
        Path in = Files.createTempFile("statements", ".jsonl");
        try {
            Files.writeString(in, lines);
            Process process = new ProcessBuilder("node", "check.cjs")
                    .directory(FOLDER.toFile())
                    .redirectInput(in.toFile())
                    .redirectErrorStream(true)
                    .start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return new Verdict(process.exitValue(), said);
        } finally {
            Files.delete(in);
        }
    }

    @Test
    void everyStatementIsSoundByTheOutsideValidator() throws IOException, InterruptedException {
        List<ObjectNode> all = StatementsTest.all();
        Verdict verdict = check(StatementFile.text(all));
        assertThat(verdict.said()).contains(all.size() + " statements, 0 faults");
        assertThat(verdict.exit()).isZero();
    }

    @Test
    void aSpoiledStatementIsFoundByTheOutsideValidator() throws IOException, InterruptedException {
        ObjectNode spoiled = StatementsTest.all().get(1).deepCopy();
        spoiled.remove("verb");
        spoiled.withObject("/result").put("duration", "42 s");
        spoiled.withObject("/result").putObject("score").put("scaled", 1.2);
        spoiled.withObject("/context").putNull("platform");
        Verdict verdict = check(StatementFile.text(List.of(spoiled)));
        assertThat(verdict.said()).contains("1 statements, 4 faults");
        assertThat(verdict.exit()).isEqualTo(1);
    }
}
