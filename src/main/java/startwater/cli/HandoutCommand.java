package startwater.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.text.Texts;

/** {@code handout}: drills and lessons for a class, as one small file. */
@Command(name = "handout")
public final class HandoutCommand implements Callable<Integer> {
    private static final int ID_LENGTH = 13;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "DRILL", descriptionKey = "handout.drill")
    private List<String> drills = List.of();

    @Option(names = "--lesson", paramLabel = "LESSON", descriptionKey = "handout.lesson")
    private List<String> lessons = new ArrayList<>();

    @Option(names = "--out", paramLabel = "FILE", required = true, descriptionKey = "handout.out")
    private @Nullable Path out;

    @Option(names = "--exam", descriptionKey = "handout.exam")
    private boolean exam;

    @Option(names = "--each", descriptionKey = "handout.each")
    private boolean each;

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "handout.seed")
    private long seed = 1;

    @Option(names = "--title", paramLabel = "WORDS", descriptionKey = "handout.title")
    private String title = "";

    @Option(names = "--deadline", paramLabel = "WORDS", descriptionKey = "handout.deadline")
    private String deadline = "";

    @Option(names = "--id", paramLabel = "ID", descriptionKey = "handout.id")
    private @Nullable String id;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = ClassOptions.texts(common, own);
        if (drills.isEmpty() && lessons.isEmpty()) {
            throw new WrongUseException(texts.text("class.nothingHanded"));
        }
        lessons.stream()
                .filter(l -> Library.shipped().lesson(l, "en").isEmpty())
                .findFirst()
                .ifPresent(l -> {
                    throw new WrongUseException(texts.text("class.noLesson", l));
                });
        if (seed < 0) {
            throw new WrongUseException(texts.text("cli.badValue", "--seed", seed));
        }
        Texts commands = CliTexts.of(common.lang, own);
        Handout handout = new Handout(
                id == null ? UUID.randomUUID().toString().substring(0, ID_LENGTH) : id,
                title,
                exam ? Entry.Mode.EXAM : Entry.Mode.PRACTICE,
                deadline,
                !each,
                seed,
                drills.stream().map(d -> drill(d, commands)).toList(),
                lessons);
        Path file = named(Objects.requireNonNull(out));
        String text = HandoutFile.text(handout);
        // What cannot be opened again is not given out.
        ClassOptions.opened(
                file,
                HandoutFile.read(
                        text.getBytes(StandardCharsets.UTF_8), texts.language().code()),
                texts);
        OutFile.write(file, text, texts);
        own.commandLine().getOut().println(texts.text("class.handed", file));
        return 0;
    }

    private static Path named(Path out) {
        return out.toString().endsWith(HandoutFile.ENDING)
                ? out
                : out.resolveSibling(out.getFileName() + HandoutFile.ENDING);
    }

    private static Handout.Drill drill(String idOrPath, Texts commands) {
        Scenario scenario = DrillShelf.find(idOrPath, commands);
        if (Library.shipped().ids().contains(idOrPath)) {
            return new Handout.Drill(scenario, null);
        }
        try {
            String yaml = Files.readString(Path.of(idOrPath), StandardCharsets.UTF_8);
            return new Handout.Drill(scenario, HandoutFile.travelling(yaml));
        } catch (IOException e) {
            throw new WrongUseException(commands.text("cli.noFile", idOrPath));
        }
    }
}
