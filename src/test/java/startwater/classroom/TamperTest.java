package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Entry;

/** What somebody might do to a file before it is handed in: each is caught, or does no harm. */
class TamperTest {
    private static final Instant NOW = Instant.parse("2026-03-03T08:00:00Z");
    private static final String NAME = "p1" + AttemptsFile.ENDING;

    @TempDir
    static Path home;

    private static Handout handout;
    private static String honest;
    private static String other;

    @BeforeAll
    static void play() throws IOException {
        handout = new Handout(
                "monday",
                "",
                Entry.Mode.EXAM,
                "",
                true,
                7,
                List.of(new Handout.Drill(Pupils.drill("first-strips"), null)),
                List.of());
        SimulatedClass pupils = new SimulatedClass(home, handout, FakeJudge::judge);
        honest = pupils.play(1, "careful");
        other = pupils.play(2, "do-nothing");
    }

    /** What is done to the file, and what must be found; null for nothing at all. */
    private record Way(Spoil spoil, Finding.@Nullable Kind found) {}

    @FunctionalInterface
    private interface Spoil {
        /** @param file where the honest file lies */
        void to(Path file) throws IOException;
    }

    private static Spoil text(UnaryOperator<String> change) {
        return file -> {
            String before = Files.readString(file);
            String after = change.apply(before);
            assertThat(after).as("the change must change something").isNotEqualTo(before);
            Files.writeString(file, after);
        };
    }

    /** Replaces the first or a later hit of a pattern. */
    private static Spoil first(String pattern, String with) {
        return text(s -> s.replaceFirst(pattern, with));
    }

    private static String lineWith(String text, String kind, int which) {
        return text.lines()
                .filter(l -> l.contains("\"kind\":\"" + kind + "\""))
                .skip(which)
                .findFirst()
                .orElseThrow();
    }

    private static Spoil inLine(String kind, int which, String pattern, String with) {
        return text(s -> {
            String line = lineWith(s, kind, which);
            return s.replace(line, line.replaceFirst(pattern, with));
        });
    }

    private static Spoil without(String kind, int which) {
        return text(s -> s.replace(lineWith(s, kind, which) + "\n", ""));
    }

    /** All marks made a hundred and the end made to agree. */
    private static String perfect(String text) {
        return text.replaceAll("(\"reading\":\\{[^}]*\\}[^{]*\"decision\":)[0-9.]+", "$1100.0")
                .replaceAll("\"word\":\"[a-z]+\"", "\"word\":\"sound\"")
                .replaceAll("(\"kind\":\"finished\"[^}]*\"mark\":)[0-9.]+", "$1100.0")
                .replaceAll("\"passed\":false", "\"passed\":true");
    }

    private static String asAnother(String text) {
        return text.replaceFirst("\"name\":\"p1\"", "\"name\":\"p9\"")
                .replaceFirst("\"id\":\"[0-9a-f]{8}", "\"id\":\"99999999");
    }

    private static String otherAttempt(String text) {
        return text.replaceAll("\"attempt\":\"[0-9a-f]{8}", "\"attempt\":\"99999999");
    }

    private static String laterBy(String text, String day) {
        return text.replaceAll("\"at\":\"2026-03-\\d\\d", "\"at\":\"" + day);
    }

    private static Spoil beside(UnaryOperator<String> change) {
        return file -> Files.writeString(
                file.resolveSibling("p9" + AttemptsFile.ENDING), change.apply(Files.readString(file)));
    }

    private static Spoil instead(byte[] bytes) {
        return file -> Files.write(file, bytes);
    }

    private static String backwards(String text) {
        Matcher m = Pattern.compile("T08:0(\\d)").matcher(text);
        return m.replaceAll(r -> "T07:5" + (9 - Integer.parseInt(r.group(1))));
    }

    static Map<String, Way> ways() {
        Map<String, Way> w = new LinkedHashMap<>();
        Finding.Kind log = Finding.Kind.LOG_CHANGED;
        Finding.Kind mark = Finding.Kind.MARK_CHANGED;
        w.put("one mark raised", new Way(inLine("marked", 1, "(\\}[^{]*\"decision\":)[0-9.]+", "$199.0"), mark));
        w.put("all marks raised, and the end with them", new Way(text(TamperTest::perfect), mark));
        w.put("the mark at the end raised", new Way(inLine("finished", 0, "\"mark\":[0-9.]+", "\"mark\":98.0"), mark));
        w.put(
                "passed turned round",
                new Way(
                        text(s -> s.contains("\"passed\":true")
                                ? s.replace("\"passed\":true", "\"passed\":false")
                                : s.replace("\"passed\":false", "\"passed\":true")),
                        mark));
        w.put(
                "regret lowered",
                new Way(inLine("marked", 0, "\"regret_percent\":[0-9.]+", "\"regret_percent\":0.0"), mark));
        w.put("a visit that counted not to be counted", new Way(first("\"scored\":true", "\"scored\":false"), mark));
        w.put("readings said to be right", new Way(text(s -> s.replaceFirst("\"right\":\\d", "\"right\":9")), mark));
        w.put(
                "another best option",
                new Way(inLine("marked", 0, "(\"best\":\\{\"feed_share\":)[0-9.]+", "$11.75"), mark));
        w.put("foresight raised", new Way(first("(\"foresight\":\\{[^}]*\"mark\":)[0-9.]+", "$1100.0"), mark));
        w.put(
                "a mark beyond all numbers",
                new Way(inLine("marked", 0, "(\\}[^{]*\"decision\":)[0-9.]+", "$11e999"), mark));
        w.put("a mark of a visit that was none", new Way(inLine("marked", 0, "\"visit\":\\d+", "\"visit\":77"), mark));
        w.put(
                "the act that was marked changed",
                new Way(inLine("marked", 0, "(\"own\":\\{\"feed_share\":)[0-9.]+", "$10.31"), mark));
        w.put(
                "a decision changed",
                new Way(inLine("decided", 1, "\"change_share\":[0-9.]+", "\"change_share\":0.31"), log));
        w.put(
                "a decision beyond what can be",
                new Way(
                        inLine("decided", 1, "\"change_share\":[0-9.]+", "\"change_share\":17.0"),
                        Finding.Kind.DAMAGED_LINES));
        w.put("a decision taken out", new Way(without("decided", 1), log));
        w.put("a reading changed", new Way(inLine("wrote", 0, "\"stop\":\\d+", "\"stop\":1"), log));
        w.put("a reading on no scale", new Way(inLine("wrote", 0, "\"stop\":\\d+", "\"stop\":999"), log));
        w.put(
                "a reading with another dilution",
                new Way(text(s -> s.replaceFirst("(\"kind\":\"wrote\".*\"dilution\":)1", "$110")), log));
        w.put("a reading taken out", new Way(without("wrote", 0), log));
        w.put("a strip that was not dipped", new Way(without("dipped", 1), log));
        w.put("a strip with a number below nought", new Way(inLine("wrote", 0, "\"strip\":\\d+", "\"strip\":-1"), log));
        w.put(
                "a prediction changed after the strip",
                new Way(inLine("decided", 1, "\"block\":\\d", "\"block\":8"), log));
        w.put("the fingerprint of the log", new Way(inLine("decided", 0, "\"log\":\"....", "\"log\":\"0000"), log));
        w.put("the fingerprint of the tank", new Way(inLine("decided", 0, "\"tank\":\"....", "\"tank\":\"0000"), log));
        w.put("fish that were not there", new Way(inLine("decided", 0, "\"alive\":\\d+", "\"alive\":999"), log));
        w.put(
                "fish raised from the dead at the end",
                new Way(inLine("finished", 0, "\"alive\":\\d+", "\"alive\":999"), log));
        w.put(
                "two lines in each other's place",
                new Way(
                        text(s -> {
                            String a = lineWith(s, "wrote", 0);
                            String b = lineWith(s, "wrote", 1);
                            return s.replace(a, "#").replace(b, a).replace("#", b);
                        }),
                        log));
        w.put(
                "a key that stands twice",
                new Way(inLine("decided", 1, "\"feed_share\":", "\"feed_share\":1.9,\"feed_share\":0.01,\"x\":"), log));
        w.put(
                "an attempt that is a path",
                new Way(text(s -> s.replaceAll("\"attempt\":\"[^\"]+\"", "\"attempt\":\"../../../tmp/x\"")), log));
        w.put("another tank", new Way(first("\"variant\":7", "\"variant\":8"), Finding.Kind.OTHER_TANK));
        w.put(
                "practice for an exam",
                new Way(first("\"mode\":\"exam\"", "\"mode\":\"practice\""), Finding.Kind.OTHER_MODE));
        w.put(
                "another hand-out",
                new Way(first("\"handout\":\"monday\"", "\"handout\":\"sunday\""), Finding.Kind.OTHER_HANDOUT));
        w.put(
                "another engine",
                new Way(first("\"engine\":\"[0-9a-f]+\"", "\"engine\":\"1\""), Finding.Kind.OTHER_VERSION));
        w.put(
                "another state of the drill",
                new Way(first("\"content\":\"..", "\"content\":\"zz"), Finding.Kind.DRILL_CHANGED));
        w.put(
                "a drill that is a path",
                new Way(first("\"scenario\":\"[a-z-]+\"", "\"scenario\":\"/etc/passwd\""), Finding.Kind.NO_DRILL));
        w.put(
                "the whole attempt under another name",
                new Way(beside(TamperTest::asAnother), Finding.Kind.SAME_ATTEMPT));
        w.put(
                "the same with an id of its own",
                new Way(beside(s -> otherAttempt(asAnother(s))), Finding.Kind.SAME_TIMES));
        w.put(
                "the same on another day",
                new Way(beside(s -> laterBy(otherAttempt(asAnother(s)), "2026-03-01")), Finding.Kind.SAME_LOG));
        w.put("times that run backwards", new Way(text(TamperTest::backwards), Finding.Kind.ODD_TIMES));
        w.put("times to come", new Way(text(s -> laterBy(s, "2031-03-02")), Finding.Kind.ODD_TIMES));
        w.put(
                "times no calendar has",
                new Way(text(s -> s.replace("\"at\":\"2026", "\"at\":\"+999999999")), Finding.Kind.ODD_TIMES));
        w.put("a line that is none", new Way(text(s -> s + "rm -rf /\n"), Finding.Kind.DAMAGED_LINES));
        w.put(
                "a line that is too long",
                new Way(text(s -> s + "{\"kind\":\"" + "x".repeat(100_000) + "\"}\n"), Finding.Kind.DAMAGED_LINES));
        w.put(
                "a line that goes too deep",
                new Way(
                        text(s -> s + "{\"kind\":\"begun\",\"a\":" + "[".repeat(5_000) + "]".repeat(5_000) + "}\n"),
                        Finding.Kind.DAMAGED_LINES));
        w.put("the end left out", new Way(without("finished", 0), Finding.Kind.OPEN));
        w.put("a newer format", new Way(first("\"format\":1", "\"format\":2"), Finding.Kind.NEWER));
        w.put("nothing", new Way(instead(new byte[0]), Finding.Kind.NOTHING_IN_IT));
        w.put(
                "something else altogether",
                new Way(instead(new byte[] {0, -1, 7, 10, 80, 75, 3, 4}), Finding.Kind.NOTHING_IN_IT));
        w.put("nobody's", new Way(without("learner", 0), Finding.Kind.NOTHING_IN_IT));
        w.put(
                "a file that is too big",
                new Way(instead(" \n".repeat(600_000).getBytes(StandardCharsets.UTF_8)), Finding.Kind.TOO_BIG));
        w.put(
                "a link to another file",
                new Way(
                        file -> {
                            Files.delete(file);
                            Files.createSymbolicLink(file, Path.of("/etc/passwd"));
                        },
                        Finding.Kind.NOT_A_FILE));
        w.put(
                "a folder",
                new Way(
                        file -> {
                            Files.delete(file);
                            Files.createDirectory(file);
                        },
                        Finding.Kind.NOT_A_FILE));
        w.put(
                "a type to be made",
                new Way(
                        text(s -> s.replace("{\"kind\"", "{\"@class\":\"javax.script.ScriptEngineManager\",\"kind\"")),
                        null));
        w.put("kinds that are not known", new Way(text(s -> s + "{\"kind\":\"run\",\"command\":\"calc\"}\n"), null));
        w.put("luck made up", new Way(first("\"luck\":-?[0-9.E-]+", "\"luck\":1000.0"), null));
        w.put(
                "a name that moves the cursor",
                new Way(first("\"name\":\"p1\"", "\"name\":\"\\\\u001b[2J<script>\""), null));
        w.put("the same file twice", new Way(beside(s -> s), Finding.Kind.TWICE));
        w.put("lines that end as on another system", new Way(text(s -> s.replace("\n", "\r\n")), null));
        return w;
    }

    private static List<HandedIn> bothPasses(Path folder) throws IOException {
        Collector collector = new Collector(handout, NOW, 2);
        List<HandedIn> first = collector.collect(folder, (done, all) -> {}, () -> false);
        return new SecondPass(MarkMemo.inMemory(), FakeJudge::judge)
                .judge(first, SecondPass.chosen(first, 0, 1), (done, all) -> {}, () -> false);
    }

    private static Path folder(Path at) throws IOException {
        Files.createDirectories(at);
        Files.writeString(at.resolve(NAME), honest);
        Files.writeString(at.resolve("p2" + AttemptsFile.ENDING), other);
        return at;
    }

    @Test
    void anHonestFileIsSound() throws IOException {
        List<HandedIn> all = bothPasses(folder(home.resolve("honest")));
        assertThat(all).hasSize(2).allSatisfy(h -> {
            assertThat(h.findings()).isEmpty();
            assertThat(h.checked()).isTrue();
        });
        Attempt a = java.util.Objects.requireNonNull(all.get(0).attempt());
        assertThat(a.whole()).isTrue();
        assertThat(a.steps()).hasSizeGreaterThan(3);
    }

    @TestFactory
    Stream<DynamicTest> isCaughtOrDoesNoHarm() {
        assertThat(ways()).hasSizeGreaterThan(30);
        int[] number = {0};
        return ways().entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    Path folder = folder(home.resolve("way-" + number[0]++));
                    e.getValue().spoil().to(folder.resolve(NAME));
                    List<String> before = listing(folder);
                    List<HandedIn> all = bothPasses(folder);
                    assertThat(listing(folder)).isEqualTo(before);
                    List<Finding> found = new ArrayList<>();
                    all.stream().filter(h -> !h.learner().equals("p2")).forEach(h -> found.addAll(h.findings()));
                    if (e.getValue().found() == null) {
                        assertThat(found).isEmpty();
                        assertThat(all).hasSize(2);
                        assertThat(Collector.counting(all)).hasSize(2);
                    } else {
                        assertThat(found)
                                .extracting(Finding::kind)
                                .contains(e.getValue().found());
                        if (e.getValue().found() == Finding.Kind.TWICE) {
                            assertThat(all).hasSize(2).allSatisfy(h -> assertThat(h.status())
                                    .isEqualTo(Finding.Status.SOUND));
                        }
                    }
                    // The honest neighbour does not suffer.
                    assertThat(all)
                            .filteredOn(h -> h.learner().equals("p2"))
                            .singleElement()
                            .satisfies(h -> assertThat(h.findings()).isEmpty());
                    assertThat(all).allSatisfy(h -> assertThat(h.learner()).doesNotContain("\u001b"));
                }));
    }

    private static List<String> listing(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::toString).sorted().toList();
        }
    }
}
