package startwater.cli;

import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Spec;
import startwater.content.ContentFiles;
import startwater.content.Fault;
import startwater.content.Phrases;
import startwater.content.Rule;
import startwater.drill.Scenario;
import startwater.score.DrillTrial;
import startwater.score.TrialPlan;
import startwater.text.Texts;

/**
 * {@code check}: reads drills and lessons and says what is wrong with them, one fault a line. Ends with 0 when all is well,
 * 1 with faults, 2 when used wrongly.
 */
@Command(name = "check")
public final class CheckCommand implements Callable<Integer> {
    private static final String RULES = "--rules";
    private static final String DEEP = "--deep";
    private static final String HELP = "--help";
    private static final int FAULTS = 1;

    private @Nullable CommandSpec spec;

    /** Called by picocli while it builds the command. */
    @Spec
    void setSpec(CommandSpec built) {
        spec = built;
        describe(built, phrases(Language.ofComputer()));
    }

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        PrintWriter out = own.commandLine().getOut();
        @Nullable String language = Language.askedFor(own);
        if (language == null) {
            return CommandLine.ExitCode.USAGE;
        }
        Phrases phrases = phrases(language);
        if (flagged(HELP)) {
            CommandSpec shown = CommandSpec.create().name(own.qualifiedName());
            describe(shown, phrases);
            new CommandLine(shown).usage(out);
            return CommandLine.ExitCode.OK;
        }
        if (flagged(RULES)) {
            for (Rule rule : Rule.values()) {
                out.println(rule.name() + " " + rule.sentence(language));
            }
            return CommandLine.ExitCode.OK;
        }
        @Nullable List<Path> paths = paths(phrases);
        return paths == null ? CommandLine.ExitCode.USAGE : check(paths, language, phrases, out);
    }

    private int check(List<Path> paths, String language, Phrases phrases, PrintWriter out) {
        ContentFiles files = ContentFiles.at(paths);
        if (files.count() == 0) {
            refuse(phrases, "no-files", Map.of("path", paths.get(0).toString()));
            return CommandLine.ExitCode.USAGE;
        }
        List<Fault> faults = files.checkAndPlay();
        faults.forEach(fault -> out.println(fault.line(language)));
        int unfit = flagged(DEEP) ? tried(files, language, phrases, out) : 0;
        int all = faults.size() + unfit;
        out.println(
                phrases.say("count", Map.of("files", String.valueOf(files.count()), "faults", String.valueOf(all))));
        return all == 0 ? CommandLine.ExitCode.OK : FAULTS;
    }

    /** A quick trial of the sound drills; a line for each that is not fit. Returns how many those are. */
    private int tried(ContentFiles files, String language, Phrases phrases, PrintWriter out) {
        Map<Path, Scenario> drills = files.drills();
        Texts texts = CliTexts.of(CliTexts.language(language));
        PrintWriter err = Objects.requireNonNull(spec).commandLine().getErr();
        List<Scenario> tried = List.copyOf(drills.values());
        TrialProgress progress = new TrialProgress(err, texts, TrialProgress.atTerminal(), tried);
        TrialRuns runs = new TrialRuns(
                TrialPlan.quick(TrialPlan.SEEDS), Runtime.getRuntime().availableProcessors(), null);
        TrialPage page = new TrialPage(texts);
        int unfit = 0;
        Iterator<Path> file = drills.keySet().iterator();
        for (DrillTrial result : runs.of(tried, progress)) {
            String path = file.next().toString();
            if (!result.fit()) {
                out.println(phrases.say("unfit", Map.of("path", path, "why", page.why(result.why()))));
                unfit++;
            }
        }
        return unfit;
    }

    /** The paths given, or null with the reason said. */
    private @Nullable List<Path> paths(Phrases phrases) {
        String[] given =
                Objects.requireNonNull(spec).commandLine().getParseResult().matchedPositionalValue(0, new String[0]);
        if (given.length == 0) {
            refuse(phrases, "no-paths", Map.of());
            return null;
        }
        List<Path> paths = new ArrayList<>();
        for (String text : given) {
            @Nullable Path path = there(text);
            if (path == null) {
                refuse(phrases, "no-path", Map.of("path", text));
                return null;
            }
            paths.add(path);
        }
        return paths;
    }

    private static @Nullable Path there(String text) {
        try {
            Path path = Path.of(text);
            return !text.isEmpty() && Files.exists(path) ? path : null;
        } catch (InvalidPathException e) {
            return null;
        }
    }

    private void refuse(Phrases phrases, String key, Map<String, String> values) {
        Objects.requireNonNull(spec).commandLine().getErr().println(phrases.say(key, values));
    }

    private boolean flagged(String option) {
        return Boolean.TRUE.equals(
                Objects.requireNonNull(spec).commandLine().getParseResult().matchedOptionValue(option, false));
    }

    private static Phrases phrases(String language) {
        return Phrases.in(CheckCommand.class, "Check", language);
    }

    private static void describe(CommandSpec spec, Phrases phrases) {
        spec.usageMessage()
                .description(phrases.say("about", Map.of()))
                .footer(phrases.say("ends", Map.of()))
                .synopsisHeading(phrases.say("usage", Map.of()))
                .optionListHeading(phrases.say("options", Map.of()))
                .sortOptions(false)
                .autoWidth(false)
                .width(100);
        spec.addPositional(PositionalParamSpec.builder()
                .index("0..*")
                .arity("0..*")
                .type(String[].class)
                .paramLabel("PATH")
                .description(phrases.say("paths", Map.of()))
                .build());
        spec.addOption(flag(phrases.say("deep", Map.of()), DEEP));
        spec.addOption(flag(phrases.say("rules", Map.of()), RULES));
        spec.addOption(OptionSpec.builder(Language.OPTION)
                .type(String.class)
                .paramLabel("en|es")
                .description(phrases.say("lang", Map.of()))
                .build());
        spec.addOption(flag(phrases.say("help", Map.of()), HELP, "-h"));
    }

    private static OptionSpec flag(String about, String name, String... others) {
        return OptionSpec.builder(name, others)
                .type(boolean.class)
                .description(about)
                .build();
    }
}
