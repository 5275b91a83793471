package startwater.cli;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import startwater.classroom.ClassWords;
import startwater.classroom.sheet.AnswerKey;
import startwater.classroom.sheet.Worksheet;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.page.Paper;
import startwater.score.Judge;
import startwater.text.Language;
import startwater.text.Texts;

/** {@code print}: a lesson, or a teacher's sheet of a drill, as one HTML page or as PDF. */
@Command(name = "print")
public final class PrintCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "LESSON|DRILL", descriptionKey = "print.what")
    private @Nullable String what;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "print.out")
    private @Nullable Path out;

    @Option(names = "--worksheet", descriptionKey = "print.worksheet")
    private boolean worksheet;

    @Option(names = "--key", descriptionKey = "print.key")
    private boolean key;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "print.seed")
    private long seed = 1;

    @Option(names = "--paper", paramLabel = "a4|letter", descriptionKey = "print.paper")
    private Paper paper = Paper.A4;

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
        Texts texts = ClassWords.texts(language);
        String page = worksheet
                ? Worksheet.of(DrillShelf.find(what, commands), texts, paper)
                : page(
                        what,
                        texts,
                        commands,
                        paper,
                        key ? drill -> AnswerKey.of(drill, seed, Judge::judge) : d -> null);
        if (out == null) {
            own.commandLine().getOut().print(page);
        } else {
            OutFile.page(out, page, paper, commands);
        }
        return 0;
    }

    /** The page of a lesson or of a drill, in the language of the words. */
    static String page(String what, Texts texts, Texts commands) {
        return page(what, texts, commands, Paper.A4, drill -> null);
    }

    /** The same for a paper. @param key works out what options are worth, or gives null to leave it out */
    static String page(
            String what, Texts texts, Texts commands, Paper paper, Function<Scenario, @Nullable AnswerKey> key) {
        Library library = Library.shipped();
        String language = texts.language().code();
        Optional<Lesson> lesson = library.lesson(what, language);
        if (lesson.isPresent()) {
            return LessonPage.of(lesson.get(), texts, paper);
        }
        Scenario drill = DrillShelf.find(what, commands);
        return TeacherSheet.of(drill, library, texts, paper, key.apply(drill));
    }
}
