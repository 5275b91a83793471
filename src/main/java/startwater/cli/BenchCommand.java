package startwater.cli;

import java.io.PrintWriter;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.ResourceBundle;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** {@code bench}: how fast and how exactly this machine computes tanks, and how long one decision takes to judge. */
@Command(name = "bench")
public final class BenchCommand implements Callable<Integer> {
    private static final String LANG = "--lang";

    @Option(names = "--json", descriptionKey = "bench.json")
    private boolean json;

    @Option(names = "--scaling", descriptionKey = "bench.scaling")
    private boolean scaling;

    @SuppressWarnings("UnusedVariable") // picocli looks at it
    @Option(names = "--help", usageHelp = true, descriptionKey = "help")
    private boolean help;

    private @Nullable CommandSpec spec;

    /** Called by picocli while it builds the command. */
    @Spec
    void setSpec(CommandSpec built) {
        spec = built;
        built.usageMessage().description(words("en").getString("bench.about"));
    }

    @Override
    public Integer call() {
        PrintWriter out = Objects.requireNonNull(spec).commandLine().getOut();
        if (scaling) {
            List<ScalingBench.Row> rows = ScalingBench.measure();
            if (json) {
                out.println(json(ScalingBench.byKey(rows)));
            } else {
                printScaling(rows, words(language()), out);
            }
            out.flush();
            return 0;
        }
        SpeedBench.Result result = new SpeedBench().measure();
        if (json) {
            out.println(json(result.byKey()));
        } else {
            print(result, words(language()), out);
        }
        out.flush();
        return 0;
    }

    static String json(Map<String, Double> values) {
        return values.entrySet().stream()
                .map(e -> String.format(Locale.ROOT, "  \"%s\": %.6g", e.getKey(), e.getValue()))
                .collect(Collectors.joining(",\n", "{\n", "\n}"));
    }

    static void print(SpeedBench.Result r, ResourceBundle words, PrintWriter out) {
        line(out, words, "bench.what");
        line(out, words, "bench.dp853", r.dp853PerSecond());
        line(out, words, "bench.rk4", r.rk4PerSecond());
        line(out, words, "bench.one", r.oursOneThreadPerSecond(), r.oursOneThreadPerSecond() / r.rk4PerSecond());
        line(out, words, "bench.two", r.oursTwoThreadsPerSecond(), r.oursTwoThreadsPerSecond() / r.dp853PerSecond());
        line(out, words, "bench.errors", 100 * r.maxStateError(), r.maxSurvivalError());
        line(out, words, "bench.decision", r.decisionSeconds(), r.options(), r.beliefSeconds(), r.secondLookSeconds());
        line(out, words, "bench.cost");
    }

    /** Each row with its time, and how it stands to the first of its kind. */
    static void printScaling(List<ScalingBench.Row> rows, ResourceBundle words, PrintWriter out) {
        line(out, words, "bench.scaling.what");
        ScalingBench.@Nullable Row first = null;
        for (ScalingBench.Row row : rows) {
            if (first == null || first.along() != row.along()) {
                first = row;
            }
            line(
                    out,
                    words,
                    "bench.scaling." + row.along().name().toLowerCase(Locale.ROOT),
                    row.number(),
                    row.seconds(),
                    (double) row.number() / first.number(),
                    row.seconds() / first.seconds());
        }
        line(out, words, "bench.scaling.cores", Runtime.getRuntime().availableProcessors());
    }

    private static void line(PrintWriter out, ResourceBundle words, String key, Object... values) {
        out.println(new MessageFormat(words.getString(key), words.getLocale()).format(values));
    }

    static ResourceBundle words(String language) {
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return ResourceBundle.getBundle("startwater.cli.bench", Locale.forLanguageTag(language), control);
    }

    private String language() {
        for (@Nullable CommandSpec at = spec; at != null; at = at.parent()) {
            @Nullable OptionSpec option = at.findOption(LANG);
            if (option != null && option.getValue() instanceof String code) {
                return code.equals("es") ? "es" : "en";
            }
        }
        return Locale.getDefault().getLanguage().equals("es") ? "es" : "en";
    }
}
