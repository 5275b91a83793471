package startwater.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.PropertyResourceBundle;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import startwater.text.Language;
import startwater.text.Texts;

/**
 * The command line. Exit codes: 0 good, 1 {@code check} found faults or {@code replay} differences, 2 wrong use, 3 a fault of the program. Every refusal
 * is one sentence. Without a command it opens the window.
 */
@Command(name = "startwater", versionProvider = Startwater.Version.class)
public final class Startwater implements Callable<Integer> {
    /** Exit code for a fault of the program. */
    static final int FAULT_OF_THE_PROGRAM = 3;

    private static final List<Class<?>> COMMANDS = List.of(
            PlayCommand.class,
            RunCommand.class,
            TrialCommand.class,
            SumCommand.class,
            CheckCommand.class,
            PrintCommand.class,
            RehearseCommand.class,
            HandoutCommand.class,
            GradeCommand.class,
            ExportCommand.class,
            BenchCommand.class,
            ReplayCommand.class,
            LearnersCommand.class);

    /** Options of the window; each has a value after it. */
    private static final Set<String> WINDOW_OPTIONS = Set.of("--data", "--open", "--lang");

    private final Function<WindowWishes, Integer> window;

    @Option(names = "--data", paramLabel = "DIR", descriptionKey = "data")
    private @Nullable Path data;

    @Option(names = "--open", paramLabel = "FILE", descriptionKey = "open")
    private @Nullable Path open;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Option(names = "--version", versionHelp = true, descriptionKey = "version")
    boolean version;

    /**
     * How the window is to open.
     *
     * @param data folder for attempts and settings, or null for the usual one
     * @param language null for the one chosen last
     * @param open a hand-out or a drill to open at once, or null
     */
    public record WindowWishes(
            @Nullable Path data,
            @Nullable Language language,
            @Nullable Path open) {}

    private Startwater(Function<WindowWishes, Integer> window) {
        this.window = window;
    }

    /** Runs a command line. @param window opens the window and returns its exit code @return the exit code */
    public static int run(String[] args, PrintWriter out, PrintWriter err, Function<WindowWishes, Integer> window) {
        if (args.length == 0) {
            // The usual start: nothing to parse, and the window is up sooner.
            try {
                return window.apply(new WindowWishes(null, null, null));
            } catch (RuntimeException fault) {
                return failed(fault, null, "startwater", err, CrashLog.texts(args));
            }
        }
        Texts texts = CliTexts.of(CliTexts.asked(args));
        Startwater top = new Startwater(window);
        CommandLine line = new CommandLine(top);
        if (!forWindow(args)) {
            COMMANDS.forEach(line::addSubcommand);
        }
        line.setOut(out);
        line.setErr(err);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setResourceBundle(help(texts.language()));
        line.setParameterExceptionHandler((refused, a) -> {
            err.println(sentence(refused, texts, line));
            return CommandLine.ExitCode.USAGE;
        });
        line.setExecutionExceptionHandler((fault, at, parsed) -> {
            if (fault instanceof WrongUseException) {
                err.println(fault.getMessage());
                return CommandLine.ExitCode.USAGE;
            }
            return failed(fault, top.data(), at.getCommandName(), err, texts);
        });
        return line.execute(args);
    }

    /**
     * Notes a fault of the program and says so.
     *
     * @param data the folder asked for, or null for the usual one
     * @param at what was shown or run, in words of ours
     * @param texts with {@link CrashLog#WORDS} among them
     * @return the exit code
     */
    public static int failed(Throwable fault, @Nullable Path data, String at, PrintWriter err, Texts texts) {
        CrashLog log = new CrashLog(DataFolder.at(data), InstantSource.system());
        err.println(log.say(log.note(fault, Thread.currentThread(), at), texts));
        return FAULT_OF_THE_PROGRAM;
    }

    /** Whether nothing but the window is asked for: making all commands would hold up its start by a third of a second. */
    private static boolean forWindow(String[] args) {
        return args.length % 2 == 0
                && IntStream.iterate(0, i -> i < args.length, i -> i + 2)
                        .allMatch(i -> WINDOW_OPTIONS.contains(args[i]));
    }

    /** The folder asked for, or null for the usual one. */
    @Nullable
    Path data() {
        return data;
    }

    @Override
    public Integer call() {
        return window.apply(new WindowWishes(data, common.lang == null ? null : CliTexts.language(common.lang), open));
    }

    private static PropertyResourceBundle help(Language language) {
        String file = "/startwater/cli/help_" + language.code() + ".properties";
        try (InputStream in = Objects.requireNonNull(Startwater.class.getResourceAsStream(file), file)) {
            return new PropertyResourceBundle(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sentence(ParameterException refused, Texts texts, CommandLine top) {
        CommandLine at = refused.getCommandLine();
        String name = at.getCommandSpec().qualifiedName();
        if (refused instanceof UnmatchedArgumentException unmatched) {
            String first = unmatched.getUnmatched().isEmpty()
                    ? ""
                    : unmatched.getUnmatched().get(0);
            return at == top && !first.startsWith("-")
                    ? texts.text(
                            "cli.noCommand",
                            first,
                            String.join(", ", top.getSubcommands().keySet()))
                    : texts.text("cli.unmatched", first, name);
        }
        if (refused instanceof MissingParameterException missing) {
            return texts.text(
                    "cli.missing",
                    missing.getMissing().stream()
                            .map(a -> a.isOption() ? ((CommandLine.Model.OptionSpec) a).longestName() : a.paramLabel())
                            .findFirst()
                            .orElse("?"),
                    name);
        }
        String option = Optional.ofNullable(refused.getArgSpec())
                .map(a -> a.isOption() ? ((CommandLine.Model.OptionSpec) a).longestName() : a.paramLabel())
                .orElse(name);
        return texts.text(
                "cli.badValue",
                option,
                Objects.requireNonNullElse(refused.getValue(), "").toString());
    }

    /** The version from the jar's manifest. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"startwater " + version()};
        }
    }

    static String version() {
        String version = Startwater.class.getPackage().getImplementationVersion();
        return version == null ? "0.1.0" : version;
    }
}
