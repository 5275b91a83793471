package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.classroom.table.Csv;
import startwater.cli.Startwater;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.Verdict;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A whole class by the command line: handed out, played, collected, marked, exported, sent. */
class ClassDayTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final List<String> POLICIES =
            List.of("careful", "salts-every-reading", "half-every-day", "feeds-because-they-beg", "do-nothing");

    private static final int LEARNERS = 20;

    @TempDir
    Path folder;

    private record Said(int exit, String out, String err) {}

    private Said run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> all =
                new ArrayList<>(List.of("--data", folder.resolve("teacher").toString(), "--lang", "en"));
        all.addAll(List.of(args));
        int exit = Startwater.run(
                all.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true), w -> 9);
        return new Said(exit, out.toString(), err.toString());
    }

    /** Hands out, lets learners play and hand in. @return the folder of what came back */
    private Path handedIn(int learners, String drill, Function<Case, Verdict> judge, String... options)
            throws IOException {
        List<String> args =
                new ArrayList<>(List.of("handout", drill, "--out", handout().toString(), "--id", "monday"));
        args.addAll(List.of(options));
        assertThat(run(args.toArray(String[]::new)).exit()).isZero();
        Handout handout =
                HandoutFile.read(Files.readAllBytes(handout()), "en").found().orElseThrow();
        SimulatedClass pupils = new SimulatedClass(folder.resolve("homes"), handout, judge);
        Path in = Files.createDirectories(folder.resolve("in"));
        for (int i = 1; i <= learners; i++) {
            Files.writeString(
                    in.resolve("f" + i + AttemptsFile.ENDING), pupils.play(i, POLICIES.get(i % POLICIES.size())));
        }
        return in;
    }

    private Path handout() {
        return folder.resolve("monday" + HandoutFile.ENDING);
    }

    @Test
    void twentyLearnersAreHandedOutPlayedCollectedMarkedAndPrinted() throws IOException {
        Path in = handedIn(
                LEARNERS, "hungry-second-week", FakeJudge::judge, "--each", "--seed", "5", "--title", "Monday");
        Said graded = run("grade", in.toString(), "--handout", handout().toString(), "--json");
        assertThat(graded.err()).isEmpty();
        assertThat(graded.exit()).isZero();
        JsonNode all = JSON.readTree(graded.out());
        assertThat(all.path("attempts").size()).isEqualTo(20);
        all.path("attempts")
                .forEach(a -> assertThat(a.path("status").asString("")).isEqualTo("sound"));
        assertThat(all.path("learners").size()).isEqualTo(20);
        assertThat(all.path("drills").get(0).path("decisions").size()).isGreaterThan(3);

        Said page = run("grade", in.toString());
        assertThat(page.out()).contains("20 attempts came back.", "sound: 20", "Worth discussing", "KR-20");
        Said spanish = run("grade", in.toString(), "--lang", "es");
        assertThat(spanish.out()).contains("Volvieron 20 intentos.", "Fiabilidad");

        Path book = folder.resolve("book.csv");
        Path decisions = folder.resolve("decisions.csv");
        Path xapi = folder.resolve("statements.jsonl");
        Path results = folder.resolve("results.pdf");
        Path records = folder.resolve("records.pdf");
        Said exported = run(
                "export",
                in.toString(),
                "--gradebook",
                book.toString(),
                "--decisions",
                decisions.toString(),
                "--semicolon",
                "--xapi",
                xapi.toString(),
                "--results",
                results.toString(),
                "--completions",
                records.toString(),
                "--paper",
                "letter",
                "--lang",
                "es");
        assertThat(exported.exit()).as(exported.err()).isZero();
        assertThat(exported.err()).isEmpty();
        printed(results, records);
        assertThat(Csv.rows(Files.readString(book), ';')).hasSize(22);
        List<String> statements = Files.readAllLines(xapi);
        Set<String> ids = new HashSet<>();
        statements.forEach(s -> ids.add(JSON.readTree(s).path("id").asString("")));
        assertThat(ids).hasSameSizeAs(statements).hasSizeGreaterThan(20 * 10);
        sentOnce(in, ids);
    }

    /** A page for each learner, as PDF. */
    private static void printed(Path results, Path records) throws IOException {
        try (PDDocument sheets = Loader.loadPDF(results.toFile());
                PDDocument letters = Loader.loadPDF(records.toFile())) {
            assertThat(sheets.getNumberOfPages()).isEqualTo(LEARNERS);
            assertThat(letters.getNumberOfPages()).isEqualTo(LEARNERS);
            String words = new PDFTextStripper().getText(letters);
            assertThat(words).contains("no una licencia", "p7", "20 / 20").doesNotContain("#");
            assertThat(letters.getDocumentCatalog().getLanguage()).isEqualTo("es");
        }
    }

    private void sentOnce(Path in, Set<String> ids) throws IOException {
        Set<String> store = new HashSet<>();
        List<Integer> posts = new ArrayList<>();
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            JsonNode batch = JSON.readTree(exchange.getRequestBody().readAllBytes());
            posts.add(batch.size());
            batch.forEach(s -> store.add(s.path("id").asString("")));
            exchange.sendResponseHeaders(204, -1);
            exchange.close();
        });
        server.start();
        try {
            Path key = Files.writeString(folder.resolve("key"), "teacher:secret\n");
            String address = "http://localhost:" + server.getAddress().getPort() + "/xapi";
            Said sent = run("export", in.toString(), "--lrs", address, "--lrs-key-file", key.toString());
            assertThat(sent.err()).isEmpty();
            assertThat(sent.out()).contains("Sent " + String.format("%,d", ids.size()));
            assertThat(store).isEqualTo(ids);
            int once = posts.size();
            assertThat(run("export", in.toString(), "--lrs", address, "--lrs-key-file", key.toString())
                            .exit())
                    .isZero();
            assertThat(posts).hasSize(once);
        } finally {
            server.stop(0);
        }
    }

    @Test
    void marksOfARealJudgeComeOutAgain() throws IOException {
        // A drill of one's own with two decisions: it travels in the hand-out, and two judgements are quick.
        String yaml = Files.readString(Path.of("scenarios", "hungry-second-week.yaml"))
                .replace("id: hungry-second-week", "id: short-week")
                .replace("decisions: 8", "decisions: 2")
                .replace("[0, 2, 4, 8, 14, 20]", "[0, 2]");
        Path drill = Files.writeString(folder.resolve("short-week.yaml"), yaml);
        Path in = handedIn(1, drill.toString(), c -> Judge.judge(c, Care.EXAM), "--exam");
        Said graded = run("grade", in.toString(), "--handout", handout().toString(), "--second-pass", "0", "--json");
        JsonNode attempt = JSON.readTree(graded.out()).path("attempts").get(0);
        assertThat(attempt.path("checked").asBoolean()).isTrue();
        assertThat(attempt.path("status").asString("")).isEqualTo("sound");
        assertThat(Files.readAllLines(folder.resolve("teacher").resolve("class-marks.jsonl")))
                .isNotEmpty();
    }

    @Tag("full")
    @Test
    void twentyLearnersWithTheRealJudge() throws IOException {
        Path in = handedIn(20, "hungry-second-week", c -> Judge.judge(c, Care.EXAM), "--exam", "--seed", "7");
        Said graded = run("grade", in.toString(), "--handout", handout().toString(), "--second-pass", "3", "--json");
        JsonNode all = JSON.readTree(graded.out());
        all.path("attempts").forEach(a -> {
            assertThat(a.path("status").asString("")).as(a.toString()).isEqualTo("sound");
            assertThat(a.path("checked").asBoolean()).isTrue();
        });
    }

    @Test
    void wrongUseIsSaidInOneSentence() throws IOException {
        Path text = Files.writeString(folder.resolve("x.json"), "{}");
        Path key = Files.writeString(folder.resolve("k"), "a:b");
        Path in = Files.createDirectories(folder.resolve("none"));
        String dir = in.toString();
        List<String[]> wrong = List.of(
                new String[] {"handout", "--out", "x"},
                new String[] {"handout", "no-such", "--out", "x"},
                new String[] {"handout", "--lesson", "no-such", "--out", "x"},
                new String[] {
                    "handout",
                    "first-strips",
                    "--id",
                    "../x",
                    "--out",
                    folder.resolve("x").toString()
                },
                new String[] {"grade", folder.resolve("no-folder").toString()},
                new String[] {"grade", dir, "--handout", text.toString()},
                new String[] {
                    "grade", dir, "--roster", folder.resolve("nobody.csv").toString()
                },
                new String[] {"export", dir},
                new String[] {"export", dir, "--xapi", "x", "--xapi-home", "school"},
                new String[] {"export", dir, "--lrs", "https://a.example"},
                new String[] {"export", dir, "--lrs", "http://a.example", "--lrs-key-file", key.toString()});
        for (String[] args : wrong) {
            Said said = run(args);
            assertThat(said.exit()).as(String.join(" ", args)).isEqualTo(2);
            assertThat(said.err().lines()).as(String.join(" ", args)).hasSize(1);
            assertThat(said.err()).doesNotContain("Exception");
        }
        assertThat(run("grade", dir).out()).contains("No attempt came back.");
    }
}
