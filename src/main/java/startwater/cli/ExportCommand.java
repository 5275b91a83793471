package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import startwater.classroom.Attempt;
import startwater.classroom.Collector;
import startwater.classroom.Roster;
import startwater.classroom.sheet.ResultSheet;
import startwater.classroom.table.Csv;
import startwater.classroom.table.Gradebook;
import startwater.classroom.xapi.ClassStatements;
import startwater.classroom.xapi.Names;
import startwater.classroom.xapi.StatementFile;
import startwater.classroom.xapi.StoreAddress;
import startwater.classroom.xapi.Upload;
import startwater.classroom.xapi.UploadReport;
import startwater.page.Paper;
import startwater.text.Texts;
import tools.jackson.databind.node.ObjectNode;

/** {@code export}: what a class handed in, as tables and as xAPI statements; to a record store only where one is named. */
@Command(name = "export")
public final class ExportCommand implements Callable<Integer> {
    private static final int FAILED = 1;
    private static final String STATE = ".sent.json";

    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable Startwater above;

    @Mixin
    private final ClassOptions options = new ClassOptions();

    @Option(names = "--gradebook", paramLabel = "FILE", descriptionKey = "export.gradebook")
    private @Nullable Path gradebook;

    @Option(names = "--decisions", paramLabel = "FILE", descriptionKey = "export.decisions")
    private @Nullable Path decisions;

    @Option(names = "--results", paramLabel = "FILE", descriptionKey = "export.results")
    private @Nullable Path results;

    @Option(names = "--completions", paramLabel = "FILE", descriptionKey = "export.completions")
    private @Nullable Path completions;

    @Option(names = "--paper", paramLabel = "a4|letter", descriptionKey = "print.paper")
    private Paper paper = Paper.A4;

    @Option(names = "--semicolon", descriptionKey = "export.semicolon")
    private boolean semicolon;

    @Option(names = "--xapi", paramLabel = "FILE", descriptionKey = "export.xapi")
    private @Nullable Path xapi;

    @Option(names = "--xapi-home", paramLabel = "ADDRESS", descriptionKey = "export.home")
    private String home = Names.USUAL.home();

    @Option(names = "--class", paramLabel = "NAME", descriptionKey = "export.class")
    private String classroom = "class";

    @Option(names = "--lrs", paramLabel = "ADDRESS", descriptionKey = "export.lrs")
    private @Nullable String lrs;

    @Option(names = "--lrs-key-file", paramLabel = "FILE", descriptionKey = "export.key")
    private @Nullable Path key;

    @Option(names = "--lrs-version", paramLabel = "1.0.3|2.0.0", descriptionKey = "export.version")
    private String version = Upload.Terms.USUAL.version();

    @Option(names = "--lrs-state", paramLabel = "FILE", descriptionKey = "export.state")
    private @Nullable Path state;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = ClassOptions.texts(common, own);
        if (Stream.of(gradebook, decisions, results, completions, xapi, lrs).allMatch(Objects::isNull)) {
            throw new WrongUseException(texts.text("class.noOut"));
        }
        if (!Names.isHome(home)) {
            throw new WrongUseException(texts.text("class.home", home));
        }
        if (!List.of("1.0.3", "2.0.0").contains(version)) {
            throw new WrongUseException(texts.text("cli.badValue", "--lrs-version", version));
        }
        StoreAddress store = lrs == null ? null : store(lrs, texts);
        Roster roster = options.roster(texts);
        ClassProgress progress = new ClassProgress(own.commandLine().getErr(), TrialProgress.atTerminal());
        List<Attempt> attempts = Collector.counting(options.collected(texts, progress, GradeCommand.second(above)));
        PrintWriter out = own.commandLine().getOut();
        Supplier<Csv> cells = semicolon ? Csv::semicolons : Csv::commas;
        write(gradebook, () -> Gradebook.marks(attempts, cells, roster::name), out, texts);
        write(decisions, () -> Gradebook.decisions(attempts, cells), out, texts);
        ResultSheet sheets = new ResultSheet(texts, paper, roster::shown, ZoneId.systemDefault());
        page(results, () -> sheets.results(attempts), out, texts);
        page(completions, () -> sheets.completions(attempts), out, texts);
        if (xapi == null && store == null) {
            return 0;
        }
        List<ObjectNode> statements = ClassStatements.of(attempts, new Names(home), classroom);
        write(xapi, () -> StatementFile.text(statements), out, texts);
        return store == null ? 0 : send(statements, store, progress, out, texts);
    }

    private static void write(@Nullable Path file, Supplier<String> text, PrintWriter out, Texts texts) {
        if (file == null) {
            return;
        }
        OutFile.write(file, text.get(), texts);
        out.println(texts.text("class.written", file));
    }

    private void page(@Nullable Path file, Supplier<String> page, PrintWriter out, Texts texts) {
        if (file != null) {
            OutFile.page(file, page.get(), paper, texts);
            out.println(texts.text("class.written", file));
        }
    }

    private StoreAddress store(String address, Texts texts) {
        if (key == null) {
            throw new WrongUseException(texts.text("class.lrsNeedsKey"));
        }
        try {
            return StoreAddress.of(address, Files.readString(key, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new WrongUseException(texts.text("class.lrsKey", key));
        } catch (StoreAddress.RefusedException e) {
            String why = "class.lrs." + e.refusal().name().toLowerCase(Locale.ROOT);
            throw new WrongUseException(texts.text(why, address));
        }
    }

    private int send(
            List<ObjectNode> statements, StoreAddress store, ClassProgress progress, PrintWriter out, Texts texts) {
        Path kept = state != null
                ? state
                : Objects.requireNonNull(key)
                        .resolveSibling(Objects.requireNonNull(key).getFileName() + STATE);
        Upload.Terms usual = Upload.Terms.USUAL;
        Upload upload = new Upload(
                store,
                new Upload.Terms(
                        usual.batch(), usual.timeout(), usual.backOff(), version, usual.clock(), usual.patience()));
        UploadReport report = upload.send(statements, kept, n -> progress.at(n, statements.size()), () -> false);
        progress.end();
        String how = "class.sent." + report.end().name().toLowerCase(Locale.ROOT);
        out.println(texts.text(how, report.sent(), report.total(), report.before() + report.held(), report.said()));
        report.refused().forEach(r -> out.println(texts.text("class.sentRefused", r.id(), r.reason())));
        boolean good = report.end() == UploadReport.End.DONE && report.refused().isEmpty();
        return good ? 0 : FAILED;
    }
}
