package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.drill.Scenario;

class LibraryTest {
    private static final Edited FIRST = Edited.shipped("scenarios/first-strips.yaml");
    private static final Edited SECOND = Edited.shipped("scenarios/hungry-second-week.yaml");
    private static final Edited LESSON = Edited.shipped("lessons/01-toxic-ammonia.md");
    private static final Edited LECCION = Edited.shipped("lessons/01-toxic-ammonia.es.md");

    @TempDir
    Path folder;

    private static Loaded loaded(Edited edited) {
        return Loaded.of(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8));
    }

    private static Library library(List<Edited> drills, List<Edited> lessons) {
        return new Library(
                drills.stream().map(LibraryTest::loaded).toList(),
                lessons.stream().map(LibraryTest::loaded).toList());
    }

    @Test
    void whatIsShippedHasNoFault() {
        Library library = Library.shipped();
        assertThat(library.faults()).isEmpty();
        assertThat(library.scenarios())
                .extracting(Scenario::number)
                .contains(1, 2)
                .isSorted();
        assertThat(library.lessons("en")).isNotEmpty();
        assertThat(library.lessons("es"))
                .extracting(Lesson::id)
                .isEqualTo(library.lessons("en").stream().map(Lesson::id).toList());
    }

    @Test
    void allFilesOfTheFoldersAreShipped() throws IOException {
        try (Stream<Path> drills = Files.list(Path.of("scenarios"))) {
            assertThat(Library.shipped().ids())
                    .containsExactlyInAnyOrderElementsOf(drills.map(path -> FileNames.base(path, ScenarioReader.ENDING))
                            .toList());
        }
    }

    @Test
    void aBrokenFileLeavesTheRestUsable() {
        Library library = library(List.of(FIRST, SECOND.with("volumeL: 2400", "volumeL: 1")), List.of(LESSON, LECCION));
        assertThat(library.scenarios()).extracting(Scenario::id).containsExactly("first-strips");
        assertThat(library.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.file()).isEqualTo(SECOND.file());
            assertThat(fault.ruleId()).isEqualTo("R08");
        });
        assertThat(library.lessons("en"))
                .as("its link leads to a drill that is there, though broken")
                .hasSize(1);
    }

    @Test
    void aNumberThatIsTakenIsSaidOnItsLine() {
        Edited copy = SECOND.with("number: 2", "number: 1");
        Library library = library(List.of(FIRST, copy), List.of());
        assertThat(library.scenarios()).hasSize(1);
        assertThat(library.faults()).singleElement().satisfies(fault -> {
            assertThat(fault.complaint()).isEqualTo(Complaint.NUMBER_TWICE);
            assertThat(fault.line()).isEqualTo(copy.lineOf("number: 1"));
        });
    }

    @Test
    void aDrillThatCannotBePlayedIsLeftOut() {
        ContentSet set = ContentSet.of(List.of(loaded(FIRST), loaded(SECOND)), List.of(), Set.of(), (drill, faults) -> {
            if (drill.scenario().number() == 2) {
                faults.add(0, Complaint.CANNOT_PLAY, "why", "day 9: pH -1");
            }
        });
        assertThat(set.scenarios()).hasSize(1);
        assertThat(set.faults())
                .extracting(fault -> fault.line("en"))
                .containsExactly(SECOND.file() + ":1: R27 This drill cannot be played to its end: day 9: pH -1.");
    }

    @Test
    void drillsAreFoundByIdAndByPath() throws IOException {
        Library library = Library.shipped();
        assertThat(library.scenario("first-strips").get().number()).isEqualTo(1);
        Path own = Files.writeString(
                folder.resolve("my-own.yaml"),
                FIRST.with("id: first-strips", "id: my-own").text());
        assertThat(library.scenario(own.toString()).get().id()).isEqualTo("my-own");
        assertThat(library.scenario("no-such-drill").faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.sentence("en")).contains("no-such-drill", "first-strips"));
        assertThat(library.scenario(folder.resolve("none.yaml").toString()).ok())
                .isFalse();
    }

    @Test
    void theCardsOfTheLessonsSayWhatTheLessonsSay() {
        Library library = Library.shipped();
        for (String language : List.of("en", "es")) {
            assertThat(library.lessonCards(language))
                    .isEqualTo(library.lessons(language).stream()
                            .map(l -> new LessonCard(
                                    l.id(), l.language(), l.number(), l.title(), l.minutes(), l.skills(), l.after()))
                            .toList());
            library.lessons(language).forEach(lesson -> assertThat(library.lesson(lesson.id(), language))
                    .contains(lesson));
        }
    }

    @Test
    void aLessonThatLacksALanguageFallsBackToEnglish() {
        Library library = library(List.of(FIRST, SECOND), List.of(LESSON));
        assertThat(library.lesson("01-toxic-ammonia", "es"))
                .get()
                .extracting(Lesson::language)
                .isEqualTo("en");
        assertThat(library.lesson("99-nothing", "es")).isEmpty();
        assertThat(library.faults()).extracting(Fault::complaint).containsExactly(Complaint.NO_TWIN);
    }

    /** Packs the built classes into a jar whose path has a blank and an accent, and asks the library inside it. */
    @Test
    void theJarFindsItsOwnDrillsAndLessons() throws Exception {
        Path classes = Path.of("target/classes");
        Path jar = Files.createDirectories(folder.resolve("año nuevo")).resolve("packed.jar");
        pack(classes, jar);
        List<URL> urls = new ArrayList<>(List.of(jar.toUri().toURL()));
        for (String entry : System.getProperty("java.class.path").split(java.io.File.pathSeparator)) {
            if (!Path.of(entry).toAbsolutePath().startsWith(Path.of("target").toAbsolutePath())) {
                urls.add(Path.of(entry).toUri().toURL());
            }
        }
        try (URLClassLoader loader =
                new URLClassLoader(urls.toArray(new URL[0]), ClassLoader.getPlatformClassLoader())) {
            Class<?> library = loader.loadClass("startwater.content.Library");
            Object shipped = library.getMethod("shipped").invoke(null);
            assertThat(library.getProtectionDomain()
                            .getCodeSource()
                            .getLocation()
                            .toString())
                    .endsWith(".jar");
            assertThat(library.getMethod("ids").invoke(shipped))
                    .isEqualTo(Library.shipped().ids());
            assertThat((List<?>) library.getMethod("lessons", String.class).invoke(shipped, "es"))
                    .hasSameSizeAs(Library.shipped().lessons("es"));
            assertThat((List<?>) library.getMethod("faults").invoke(shipped)).isEmpty();
        }
    }

    private static void pack(Path classes, Path jar) throws IOException {
        try (OutputStream out = Files.newOutputStream(jar);
                JarOutputStream packed = new JarOutputStream(out);
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                packed.putNextEntry(
                        new JarEntry(classes.relativize(file).toString().replace('\\', '/')));
                packed.write(Files.readAllBytes(file));
                packed.closeEntry();
            }
        }
    }
}
