package startwater.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import startwater.classroom.HandedIn;
import startwater.classroom.MarkFile;
import startwater.classroom.Roster;
import startwater.classroom.SecondPass;
import startwater.text.Texts;
import tools.jackson.databind.json.JsonMapper;

/** {@code grade}: takes in what a class handed in, checks it and says what it shows. */
@Command(name = "grade")
public final class GradeCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable Startwater above;

    @Mixin
    private final ClassOptions options = new ClassOptions();

    @Option(names = "--json", descriptionKey = "grade.json")
    private boolean json;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = ClassOptions.texts(common, own);
        Roster roster = options.roster(texts);
        ClassProgress progress = new ClassProgress(own.commandLine().getErr(), TrialProgress.atTerminal());
        List<HandedIn> all = options.collected(texts, progress, second(above));
        PrintWriter out = own.commandLine().getOut();
        if (json) {
            out.println(JsonMapper.builder().build().writeValueAsString(ClassJson.of(all, ZoneId.systemDefault())));
        } else {
            new ClassPage(texts, roster).print(all, ZoneId.systemDefault(), out);
        }
        out.flush();
        return 0;
    }

    /** A second pass that keeps what it works out in the data folder. */
    static SecondPass second(@Nullable Startwater above) {
        Path data = above == null ? null : above.data();
        return new SecondPass(MarkFile.in(DataFolder.at(data)));
    }
}
