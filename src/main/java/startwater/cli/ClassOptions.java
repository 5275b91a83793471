package startwater.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import startwater.classroom.ClassWords;
import startwater.classroom.Collector;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.classroom.Roster;
import startwater.classroom.SecondPass;
import startwater.text.Texts;

/** What the commands about a class that came back have in common: the folder, the hand-out, the roster, the passes. */
final class ClassOptions {
    @Parameters(index = "0", paramLabel = "FOLDER", descriptionKey = "grade.folder")
    @Nullable
    Path folder;

    @Option(names = "--handout", paramLabel = "FILE", descriptionKey = "grade.handout")
    @Nullable
    Path handout;

    @Option(names = "--roster", paramLabel = "FILE", descriptionKey = "grade.roster")
    @Nullable
    Path roster;

    @Option(names = "--second-pass", paramLabel = "N", descriptionKey = "grade.secondPass")
    @Nullable
    Integer sample;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "grade.seed")
    long seed = 1;

    /** The words of a class and of the commands. */
    static Texts texts(CommonOptions common, CommandSpec spec) {
        return Texts.of(
                CliTexts.of(common.lang, spec).language(), Texts.DRILL, Texts.LESSON, ClassWords.FILE, CliTexts.FILE);
    }

    /** The hand-out that was read. @throws WrongUseException where there is none, with the reason */
    static Handout opened(Path file, HandoutFile.Read read, Texts texts) {
        return read.found().orElseThrow(() -> new WrongUseException(new ClassWords(texts).refused(file, read)));
    }

    private @Nullable Handout handout(Texts texts) {
        return handout == null ? null : opened(handout, texts);
    }

    /** The hand-out in a file. @throws WrongUseException where there is none, with the reason */
    static Handout opened(Path file, Texts texts) {
        try {
            return opened(file, HandoutFile.read(file, texts.language().code()), texts);
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.noFile", file));
        }
    }

    Roster roster(Texts texts) {
        try {
            return roster == null ? Roster.NONE : Roster.read(roster);
        } catch (IOException e) {
            throw new WrongUseException(texts.text("class.noRoster", roster, String.valueOf(e.getMessage())));
        }
    }

    /** Both passes, the second where it is asked for. */
    List<HandedIn> collected(Texts texts, ClassProgress progress, SecondPass second) {
        Path from = Objects.requireNonNull(folder);
        int cores = Runtime.getRuntime().availableProcessors();
        try {
            List<HandedIn> all =
                    new Collector(handout(texts), Instant.now(), cores).collect(from, progress::at, () -> false);
            progress.end();
            if (sample == null) {
                return all;
            }
            List<HandedIn> judged = second.judge(all, SecondPass.chosen(all, sample, seed), progress::at, () -> false);
            progress.end();
            return judged;
        } catch (IOException e) {
            throw new WrongUseException(texts.text("class.noFolder", from));
        }
    }
}
