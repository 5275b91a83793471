package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.score.Policies;
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

    @Parameters(index = "0", paramLabel = "DRILL", descriptionKey = "run.drill")
    private String drill = "";

    @Option(names = "--policy", paramLabel = "NAME", descriptionKey = "run.policy")
    private String policy = "careful";

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "run.seed")
    private long seed = 1;

    @Option(names = "--seeds", paramLabel = "N", descriptionKey = "run.seeds")
    private int seeds = 1;

    @Option(names = "--days", paramLabel = "D", descriptionKey = "run.days")
    private @Nullable Integer days;

    @Option(names = "--csv", paramLabel = "FILE", descriptionKey = "run.csv")
    private @Nullable Path csv;

    @Option(names = "--json", descriptionKey = "run.json")
    private boolean json;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        if (!Policies.ids().contains(policy)) {
            throw new WrongUseException(texts.text("cli.noPolicy", policy, String.join(", ", Policies.ids())));
        }
        between(texts, "--seeds", seeds, MOST_SEEDS);
        Scenario scenario = DrillShelf.find(drill, texts);
        if (days != null) {
            between(texts, "--days", days, MOST_DAYS);
            scenario = PolicyRuns.lasting(scenario, days);
        }
        PolicyRuns runs = PolicyRuns.play(scenario, Policies.byId(policy), seed, seeds);
        if (csv != null) {
            write(csv, runs, texts);
        }
        PrintWriter out = own.commandLine().getOut();
        if (json) {
            out.println(JsonMapper.builder().build().writeValueAsString(json(runs)));
        } else {
            print(runs, texts, out);
        }
        return 0;
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
        node.put("deaths_fraction", runs.deathsFraction());
        ObjectNode causes = node.putObject("deaths_fraction_by_cause");
        for (Stressor cause : Stressor.values()) {
            causes.put(cause.name().toLowerCase(Locale.ROOT), runs.deathsFraction(cause));
        }
        node.put("days_to_filter", runs.daysToFilter());
        node.put("water_volumes", runs.waterVolumes());
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

    private void write(Path file, PolicyRuns runs, Texts texts) {
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
            out.print(
                    "seed,day_d,ammonia_mg_N_per_L,nitrite_mg_N_per_L,nitrate_mg_N_per_L,ph,alkalinity_mg_CaCO3_per_L,"
                            + "oxygen_mg_per_L,chloride_mg_per_L,toxic_ammonia_mg_N_per_L,effective_nitrite_mg_N_per_L,"
                            + "expected_alive_fish\n");
            for (DrillRun run : runs.runs()) {
                for (DrillRun.TruthPoint p : run.truth()) {
                    out.print(row(run.variant(), p));
                }
            }
            if (out.checkError()) {
                throw new IOException("disk full or gone");
            }
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file));
        }
    }

    private static String row(long variant, DrillRun.TruthPoint p) {
        return String.format(
                Locale.ROOT,
                "%d,%.5f,%.4f,%.4f,%.4f,%.3f,%.2f,%.3f,%.2f,%.5f,%.5f,%.3f\n",
                variant,
                p.day(),
                p.ammoniaMgPerL(),
                p.nitriteMgPerL(),
                p.nitrateMgPerL(),
                p.ph(),
                p.alkalinityMgPerL(),
                p.oxygenMgPerL(),
                p.chlorideMgPerL(),
                p.toxicAmmoniaMgPerL(),
                p.effectiveNitriteMgPerL(),
                p.expectedAlive());
    }
}
