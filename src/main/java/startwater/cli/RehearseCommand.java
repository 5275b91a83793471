package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import startwater.bench.UnitSystem;
import startwater.page.Paper;
import startwater.rehearse.Examples;
import startwater.rehearse.Finding;
import startwater.rehearse.Form;
import startwater.rehearse.FormFile;
import startwater.rehearse.Outlook;
import startwater.rehearse.OutlookChecks;
import startwater.rehearse.OwnSystem;
import startwater.rehearse.ReadinessList;
import startwater.rehearse.Rehearsal;
import startwater.rehearse.RehearsalFiles;
import startwater.rehearse.RehearseTexts;
import startwater.rehearse.SystemChecks;
import startwater.text.Texts;

/** {@code rehearse}: a form of one's own system; says what to expect, writes the drill and the list of what to have ready. */
@Command(name = "rehearse")
public final class RehearseCommand implements Callable<Integer> {
    private static final int MOST_SEEDS = 10_000;
    private static final int REFUSED = 1;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "FORM.json", descriptionKey = "rehearse.form")
    private @Nullable Path file;

    @Option(names = "--example", descriptionKey = "rehearse.example")
    private boolean example;

    @Option(names = "--ask", descriptionKey = "rehearse.ask")
    private boolean ask;

    @Option(names = "--out", paramLabel = "FILE.yaml", descriptionKey = "rehearse.out")
    private @Nullable Path out;

    @Option(names = "--list", paramLabel = "FILE", descriptionKey = "rehearse.list")
    private @Nullable Path list;

    @Option(names = "--paper", paramLabel = "a4|letter", descriptionKey = "print.paper")
    private Paper paper = Paper.A4;

    @Option(names = "--seeds", paramLabel = "N", descriptionKey = "rehearse.seeds")
    private int seeds = Rehearsal.TANKS;

    @Option(names = "--units", paramLabel = "metric|us", descriptionKey = "rehearse.units")
    private @Nullable String units;

    @Option(names = "--json", descriptionKey = "rehearse.json")
    private boolean json;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts commands = CliTexts.of(common.lang, own);
        Texts texts = RehearseTexts.of(commands.language());
        PrintWriter print = own.commandLine().getOut();
        if (seeds < 1 || seeds > MOST_SEEDS) {
            throw new WrongUseException(commands.text("cli.outside", "--seeds", 1, MOST_SEEDS, seeds));
        }
        Form form = form(texts, commands, print, own);
        List<Finding> findings = new ArrayList<>(SystemChecks.of(form));
        RehearsePage page = new RehearsePage(form, texts);
        if (!SystemChecks.possible(findings)) {
            print.print(json ? page.json(findings, null) : page.refused(findings));
            print.flush();
            return REFUSED;
        }
        OwnSystem system = OwnSystem.of(form);
        Outlook outlook = Rehearsal.of(system, seeds, 1, Rehearsal.Progress.NONE);
        findings.addAll(OutlookChecks.of(system, outlook));
        print.print(json ? page.json(findings, outlook) : page.text(findings, outlook));
        print.flush();
        write(form, outlook, findings, texts, commands, json ? own.commandLine().getErr() : print);
        return 0;
    }

    private Form form(Texts texts, Texts commands, PrintWriter print, CommandSpec own) {
        UnitSystem wanted = units(commands);
        Form form;
        if (ask) {
            form = new RehearseTalk(PlayCommand.terminal(print), texts)
                    .ask(wanted == null ? UnitSystem.METRIC : wanted);
        } else if (example) {
            form = Examples.barrel();
        } else if (file == null) {
            throw new WrongUseException(commands.text("cli.missing", "FORM.json", own.qualifiedName()));
        } else {
            try {
                form = FormFile.read(file);
            } catch (FormFile.Unreadable e) {
                throw new WrongUseException(e.reason().say(texts));
            }
        }
        return wanted == null ? form : form.in(wanted);
    }

    private @Nullable UnitSystem units(Texts commands) {
        if (units == null) {
            return null;
        }
        return switch (units) {
            case "metric" -> UnitSystem.METRIC;
            case "us" -> UnitSystem.US;
            default -> throw new WrongUseException(commands.text("cli.badValue", "--units", units));
        };
    }

    private void write(
            Form form, Outlook outlook, List<Finding> findings, Texts texts, Texts commands, PrintWriter print) {
        if (out != null) {
            try {
                RehearsalFiles.Written written = RehearsalFiles.write(form, out, outlook);
                print.println(texts.text("reh.out.written", written.drill(), written.form()));
            } catch (IOException e) {
                throw new WrongUseException(commands.text("cli.cannotWrite", out));
            }
        }
        if (list != null) {
            OutFile.page(list, ReadinessList.of(form, outlook, findings, texts), paper, commands);
            print.println(texts.text("reh.out.listWritten", list));
        }
        print.flush();
    }
}
