package startwater.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
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
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.score.Policies;
import startwater.score.Policy;
import startwater.score.WhyText;
import startwater.text.Texts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** {@code run}: a policy plays a drill on one hidden tank or on many, without a person. */
@Command(name = "run")
public final class RunCommand implements Callable<Integer> {
    private static final int MOST_SEEDS = 10_000;
    private static final int MOST_DAYS = 365;

    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "DRILL", descriptionKey = "run.drill")
    private @Nullable String drill;

    @Option(names = "--policy", paramLabel = "NAME", descriptionKey = "run.policy")
    private String policy = "careful";

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "run.seed")
    private long seed = 1;

    @Option(names = "--seeds", paramLabel = "N", descriptionKey = "run.seeds")
    private int seeds = 1;

    @Option(names = "--days", paramLabel = "D", descriptionKey = "run.days")
    private @Nullable Integer days;

    @Option(names = "--compare", paramLabel = "NAME,NAME", split = ",", descriptionKey = "run.compare")
    private @Nullable List<String> compare;

    @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "run.csv")
    private @Nullable Path csv;

    @Option(names = "--csv-columns", descriptionKey = "run.csvColumns")
    private boolean csvColumns;

    @Option(names = "--json", descriptionKey = "run.json")
    private boolean json;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        PrintWriter out = own.commandLine().getOut();
        if (csvColumns) {
            out.print(ColumnList.of(texts));
            out.flush();
            return 0;
        }
        known(texts, "--policy", policy);
        between(texts, "--seeds", seeds, MOST_SEEDS);
        if (drill == null) {
            throw new WrongUseException(texts.text("cli.missing", "DRILL", own.qualifiedName()));
        }
        Scenario scenario = DrillShelf.find(drill, texts);
        if (days != null) {
            between(texts, "--days", days, MOST_DAYS);
            scenario = PolicyRuns.lasting(scenario, days);
        }
        if (compare != null) {
            compare(scenario, compare, texts, out);
            return 0;
        }
        if (csv != null && json && HourFile.isStandardOutput(csv)) {
            throw new WrongUseException(texts.text("cli.twoOutputs"));
        }
        Policy player = Policies.byId(policy);
        PolicyRuns runs = csv == null
                ? PolicyRuns.play(scenario, player, seed, seeds)
                : HourFile.play(scenario, player, seed, seeds, csv, out, texts);
        if (csv != null && HourFile.isStandardOutput(csv)) {
            return 0;
        }
        if (json) {
            print(json(runs), out);
        } else {
            print(runs, texts, out);
        }
        return 0;
    }

    private void compare(Scenario scenario, List<String> names, Texts texts, PrintWriter out) {
        if (csv != null) {
            throw new WrongUseException(texts.text("cli.compareCsv"));
        }
        if (names.size() < 2) {
            throw new WrongUseException(texts.text("cli.compareTwo"));
        }
        names.forEach(name -> known(texts, "--compare", name));
        Comparison comparison = new Comparison(
                names.stream()
                        .map(name -> PolicyRuns.play(scenario, Policies.byId(name), seed, seeds))
                        .toList(),
                seed);
        if (json) {
            print(comparison.json(), out);
        } else {
            comparison.print(texts, out);
        }
    }

    private static void known(Texts texts, String option, String name) {
        if (!Policies.ids().contains(name)) {
            throw new WrongUseException(texts.text("cli.noPolicy", option, name, String.join(", ", Policies.ids())));
        }
    }

    private static void print(ObjectNode node, PrintWriter out) {
        out.println(JsonMapper.builder().build().writeValueAsString(node));
    }

    private static void between(Texts texts, String option, int value, int most) {
        if (value < 1 || value > most) {
            throw new WrongUseException(texts.text("cli.outside", option, 1, most, value));
        }
    }

    private ObjectNode json(PolicyRuns runs) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("scenario", runs.scenario().id());
        node.put("policy", runs.policy().id());
        node.put("seeds", runs.runs().size());
        node.put("first_seed", seed);
        node.put("days", runs.scenario().keeper().days());
        node.put("fish", runs.fish());
        Comparison.put(node, runs);
        return node;
    }

    private static void print(PolicyRuns runs, Texts texts, PrintWriter out) {
        WhyText why = WhyText.in(texts.language().locale());
        out.println(texts.text(
                "run.title",
                runs.policy().id(),
                runs.scenario().id(),
                runs.scenario().keeper().days(),
                runs.runs().size()));
        if (runs.fish() > 0) {
            out.println(texts.text("run.deaths", texts.decimals(100 * runs.deathsFraction(), 2), runs.fish()));
            for (Stressor cause : Stressor.values()) {
                double share = 100 * runs.deathsFraction(cause);
                if (share >= 0.005) {
                    out.println("  " + texts.text("run.cause", why.cause(cause), texts.decimals(share, 2)));
                }
            }
        }
        out.println(texts.text("run.filter", texts.decimals(runs.daysToFilter(), 1)));
        out.println(texts.text("run.water", texts.decimals(runs.waterVolumes(), 2)));
    }
}
