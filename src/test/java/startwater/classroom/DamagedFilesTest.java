package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.cli.Startwater;
import startwater.content.Damage;
import startwater.record.Entry;
import startwater.text.Language;

/**
 * Thousands of damaged files through the doors by which files come in: no trace of the program in what is said, no endless
 * wait, and every refusal says what and where. Another seed or number with {@code -Ddamage.seed=} and {@code -Ddamage.files=}.
 */
class DamagedFilesTest {
    private static final int QUICK = 12;
    private static final int FULL = 2_500;
    /** A dead stop, not a speed: nothing that ends at all takes so long, seconds. */
    private static final int ENDLESS_S = 60;

    private static final Pattern TRACE = Pattern.compile(
            "Exception|Error\\b|\\tat |\\bjava\\.|\\bstartwater\\.[a-z]+\\.[A-Z]|crash-log|@[0-9a-f]{6}");

    @TempDir
    private static Path folder;

    private static final ExecutorService BESIDE = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "damaged files");
        thread.setDaemon(true);
        return thread;
    });

    private static byte[] handedIn = {};

    private int refused;

    /** An attempt as the program writes it. */
    @BeforeAll
    static void play() throws IOException {
        handedIn = new SimulatedClass(folder, handout(), FakeJudge::judge)
                .play(1, "careful")
                .getBytes(StandardCharsets.UTF_8);
    }

    @AfterAll
    static void end() {
        BESIDE.shutdownNow();
    }

    private static Handout handout() {
        return new Handout(
                "monday",
                "Monday",
                Entry.Mode.PRACTICE,
                "",
                true,
                7,
                List.of(new Handout.Drill(Pupils.drill("first-strips"), null)),
                List.of("05-nitrite-and-salt"));
    }

    private record Said(int exit, String out, String err) {}

    /** One file comes in by a door. */
    @FunctionalInterface
    private interface Door {
        void open(Path file, String about) throws IOException;
    }

    @Test
    void someDrills() throws Exception {
        drills(QUICK);
    }

    @Test
    void someLessons() throws Exception {
        lessons(QUICK);
    }

    @Test
    void someAttempts() throws Exception {
        attempts(QUICK);
    }

    @Test
    void someHandOuts() throws Exception {
        handOuts(QUICK);
    }

    @Test
    @Tag("full")
    void tenThousandFiles() throws Exception {
        int files = Integer.getInteger("damage.files", FULL);
        drills(files);
        lessons(files);
        attempts(files);
        handOuts(files);
    }

    private void drills(int files) throws Exception {
        Path empty = Files.writeString(folder.resolve("answers"), "");
        each("drill", all("scenarios", ".yaml"), files, (file, about) -> {
            checked(run("check", file.toString()), file, about);
            Said played = run("play", file.toString(), "--answers", empty.toString());
            if (played.exit() != 0) {
                assertThat(played.err().lines()).as(about).isNotEmpty().allMatch(l -> isFault(l, file));
            }
        });
    }

    private void lessons(int files) throws Exception {
        // Each lesson beside its other language, as it ships.
        Path in = Files.createDirectories(folder.resolve("lesson"));
        for (Whole spanish : all("lessons", ".es.md")) {
            Files.write(in.resolve(spanish.name()), spanish.bytes());
        }
        List<Whole> english = all("lessons", ".md").stream()
                .filter(w -> !w.name().endsWith(".es.md"))
                .toList();
        each("lesson", english, files, (file, about) -> {
            checked(run("check", file.toString()), file, about);
            Path out = folder.resolve("printed.html");
            Said printed = run("print", file.toString(), "--out", out.toString());
            if (printed.exit() != 0) {
                assertThat(printed.err()).as(about).isNotBlank();
            }
        });
    }

    private void attempts(int files) throws Exception {
        Path data = folder.resolve("data");
        each("attempt", List.of(new Whole("ana" + AttemptsFile.ENDING, handedIn)), files, (file, about) -> {
            Said graded = run("--data", data.toString(), "grade", String.valueOf(file.getParent()));
            assertThat(graded.exit()).as(about + graded).isZero();
            assertThat(graded.out()).as(about).contains("1");
            Said replayed = run("replay", file.toString(), "--fast");
            assertThat(replayed.out() + replayed.err()).as(about).isNotBlank();
            refused += graded.out().equals(untouched()) ? 0 : 1;
        });
    }

    private String untouched = "";

    private String untouched() throws IOException {
        if (untouched.isEmpty()) {
            Path whole = Files.createDirectories(folder.resolve("untouched"));
            Files.write(whole.resolve("ana" + AttemptsFile.ENDING), handedIn);
            untouched = run("grade", whole.toString()).out();
        }
        return untouched;
    }

    private void handOuts(int files) throws Exception {
        Path nobody = Files.createDirectories(folder.resolve("nobody"));
        String own =
                Files.readString(Path.of("scenarios/first-strips.yaml")).replace("id: first-strips", "id: our-own");
        Handout travelling = new Handout(
                "own",
                "Own",
                Entry.Mode.EXAM,
                "Friday",
                false,
                3,
                List.of(new Handout.Drill(Pupils.drill("first-strips"), HandoutFile.travelling(own))),
                List.of());
        List<Whole> whole = List.of(
                new Whole(
                        "monday" + HandoutFile.ENDING,
                        HandoutFile.text(handout()).getBytes(StandardCharsets.UTF_8)),
                new Whole(
                        "own" + HandoutFile.ENDING, HandoutFile.text(travelling).getBytes(StandardCharsets.UTF_8)));
        each("hand-out", whole, files, (file, about) -> {
            Said graded = run("grade", nobody.toString(), "--handout", file.toString());
            if (graded.exit() != 0) {
                assertThat(graded.err().lines().findFirst().orElse(""))
                        .as(about)
                        .contains(file.toString());
            }
            for (Language language : Language.values()) {
                HandoutFile.Read read = HandoutFile.read(file, language.code());
                String said = read.trouble() == null
                        ? ""
                        : new ClassWords(ClassWords.texts(language)).refused(String.valueOf(file.getFileName()), read);
                clean(said, about);
                assertThat(said.isEmpty()).as(about).isEqualTo(read.handout() != null);
                assertThat(said.length()).as(about).isLessThan(3_000);
            }
            refused += graded.exit() == 0 ? 0 : 1;
        });
    }

    /** A shipped or generated file. */
    private record Whole(String name, byte[] bytes) {}

    private static List<Whole> all(String from, String ending) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(from))) {
            List<Whole> all = new ArrayList<>();
            for (Path file :
                    files.filter(f -> f.toString().endsWith(ending)).sorted().toList()) {
                all.add(new Whole(String.valueOf(file.getFileName()), Files.readAllBytes(file)));
            }
            assertThat(all).isNotEmpty();
            return all;
        }
    }

    private void each(String kind, List<Whole> whole, int files, Door door) throws Exception {
        long seed = Long.getLong("damage.seed", 20_240_517);
        refused = 0;
        long slowest = 0;
        long start = System.nanoTime();
        for (int i = 0; i < files; i++) {
            Random chance = new Random(seed * 31 + i);
            Whole of = whole.get(chance.nextInt(whole.size()));
            Path in = Files.createDirectories(folder.resolve(kind));
            Path file = Files.write(in.resolve(of.name()), Damage.any(of.bytes(), chance));
            String about = kind + " " + i + " of seed " + seed + ": ";
            long before = System.nanoTime();
            within(
                    () -> {
                        door.open(file, about);
                        return true;
                    },
                    about,
                    file);
            slowest = Math.max(slowest, System.nanoTime() - before);
        }
        assertThat(refused).as("what is damaged is seldom good").isGreaterThan(files / 4);
        if (files > QUICK) {
            System.out.printf(
                    Locale.ROOT,
                    "damaged files: %d %ss, %d refused or marked, in %d s, the slowest %.2f s%n",
                    files,
                    kind,
                    refused,
                    (System.nanoTime() - start) / 1_000_000_000,
                    slowest / 1e9);
        }
    }

    /** A file that is still at it after so long stops the test and is named. */
    private static void within(Callable<Boolean> work, String about, Path file) throws Exception {
        try {
            BESIDE.submit(work).get(ENDLESS_S, TimeUnit.SECONDS);
        } catch (TimeoutException endless) {
            keep(file);
            throw new AssertionError("no end: " + about);
        } catch (ExecutionException failed) {
            keep(file);
            throw new AssertionError(about, failed.getCause());
        }
    }

    /** Keeps a file that did harm, to be looked at. */
    private static void keep(Path file) throws IOException {
        Path to = Files.createDirectories(Path.of("target/damaged")).resolve(String.valueOf(file.getFileName()));
        Files.write(to, Files.readAllBytes(file));
    }

    private void checked(Said said, Path file, String about) {
        List<String> lines = said.out().lines().toList();
        assertThat(said.exit()).as(about + said).isBetween(0, 1);
        assertThat(lines.subList(0, lines.size() - 1)).as(about).allMatch(l -> isFault(l, file));
        assertThat(lines.size() > 1).as(about).isEqualTo(said.exit() == 1);
        refused += said.exit();
    }

    /** The file or the other language of it, the line, and a sentence. */
    private static boolean isFault(String line, Path file) {
        String name = String.valueOf(file.getFileName()).replaceFirst("\\.(yaml|md)$", "");
        int at = line.indexOf(name);
        return at >= 0 && line.substring(at + name.length()).matches("(?s)(\\.es)?\\.(yaml|md):\\d+: \\S+ .*\\S");
    }

    private static Said run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] spoken = Arrays.copyOf(args, args.length + 2);
        spoken[args.length] = "--lang";
        spoken[args.length + 1] = Arrays.hashCode(args) % 2 == 0 ? "en" : "es";
        int exit = Startwater.run(spoken, new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 0);
        Said said = new Said(exit, out.toString(), err.toString());
        clean(said.out() + said.err(), Arrays.toString(spoken));
        assertThat(exit).as("%s", said).isBetween(0, 2);
        return said;
    }

    private static void clean(String said, String about) {
        assertThat(TRACE.matcher(said).find()).as("%s says %s", about, said).isFalse();
    }
}
