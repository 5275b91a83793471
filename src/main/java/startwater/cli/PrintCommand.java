package startwater.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import startwater.content.DesignNote;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.text.Language;
import startwater.text.Texts;

/** {@code print}: a lesson, or a teacher's sheet of a drill, as one HTML page. */
@Command(name = "print")
public final class PrintCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "LESSON|DRILL", descriptionKey = "print.what")
    private @Nullable String what;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "print.out")
    private @Nullable Path out;

    @Option(names = "--list", descriptionKey = "print.list")
    private boolean list;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts commands = CliTexts.of(common.lang, own);
        Language language = commands.language();
        if (list || what == null) {
            Library.shipped()
                    .lessons(language.code())
                    .forEach(lesson -> own.commandLine().getOut().println(lesson.id() + "  " + lesson.title()));
            DrillShelf.all().forEach(drill -> own.commandLine()
                    .getOut()
                    .println(drill.id() + "  " + drill.words(language.code()).title()));
            return 0;
        }
        String page = page(what, Texts.of(language, Texts.DRILL, Texts.LESSON), commands);
        if (out == null) {
            own.commandLine().getOut().print(page);
        } else {
            write(out, page, commands);
        }
        return 0;
    }

    /** The page of a lesson or of a drill, in the language of the words. */
    static String page(String what, Texts texts, Texts commands) {
        Library library = Library.shipped();
        String language = texts.language().code();
        Optional<Lesson> lesson = library.lesson(what, language);
        return lesson.isPresent()
                ? LessonPage.of(lesson.get(), texts)
                : TeacherSheet.of(
                        DrillShelf.find(what, commands), DesignNote.of(what), library.lessons(language), texts);
    }

    private static void write(Path file, String page, Texts texts) {
        try {
            Files.writeString(file, page, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file));
        }
    }
}
