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
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import startwater.drill.Scenario;
import startwater.score.DrillTrial;
import startwater.score.TrialFit;
import startwater.score.TrialPlan;
import startwater.text.Texts;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** {@code trial}: every named policy plays every drill, and says which drills are fit. What is done is kept. */
@Command(name = "trial")
public final class TrialCommand implements Callable<Integer> {
    private static final int MOST_SEEDS = 10_000;
    private static final int MOST_THREADS = 256;
    private static final String FILE = "trial.jsonl";

    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable Startwater above;

    @Parameters(arity = "0..*", paramLabel = "DRILL", descriptionKey = "trial.drill")
    private List<String> drills = List.of();

    @Option(names = "--seeds", paramLabel = "N", descriptionKey = "trial.seeds")
    private int seeds = TrialPlan.SEEDS;

    @Option(names = "--quick", descriptionKey = "trial.quick")
    private boolean quick;

    @Option(names = "--json", descriptionKey = "trial.json")
    private boolean json;

    @Option(names = "--resume", paramLabel = "FILE", descriptionKey = "trial.resume")
    private @Nullable Path resume;

    @Option(names = "--threads", paramLabel = "N", descriptionKey = "trial.threads")
    private int threads = Runtime.getRuntime().availableProcessors();

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        between(texts, "--seeds", seeds, MOST_SEEDS);
        between(texts, "--threads", threads, MOST_THREADS);
        List<Scenario> tried = drills.isEmpty()
                ? DrillShelf.all()
                : drills.stream()
                        .distinct()
                        .map(drill -> DrillShelf.find(drill, texts))
                        .toList();
        TrialPlan plan = quick ? TrialPlan.quick(seeds) : TrialPlan.whole(seeds);
        PrintWriter err = own.commandLine().getErr();
        TrialProgress progress = new TrialProgress(err, texts, TrialProgress.atTerminal(), tried);
        List<DrillTrial> results;
        try (TrialCache cache = TrialCache.in(file())) {
            results = new TrialRuns(plan, threads, cache).of(tried, progress);
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file()));
        }
        print(results, texts, own.commandLine().getOut(), err);
        return 0;
    }

    private static void between(Texts texts, String option, int value, int most) {
        if (value < 1 || value > most) {
            throw new WrongUseException(texts.text("cli.outside", option, 1, most, value));
        }
    }

    private Path file() {
        Path data = above == null ? null : above.data();
        return resume != null ? resume : DataFolder.at(data).resolve(FILE);
    }

    private void print(List<DrillTrial> results, Texts texts, PrintWriter out, PrintWriter err) {
        TrialPage page = new TrialPage(texts);
        List<String> course = drills.isEmpty() ? course(results, page, texts) : List.of();
        if (json) {
            ArrayNode all = JsonNodeFactory.instance.arrayNode();
            results.forEach(result -> all.add(page.json(result)));
            out.println(JsonMapper.builder().build().writeValueAsString(all));
            course.forEach(err::println);
            return;
        }
        if (quick) {
            out.println(texts.text("trial.rough"));
        }
        for (DrillTrial result : results) {
            page.lines(result).forEach(out::println);
        }
        out.println(page.totals(results));
        course.forEach(out::println);
        out.println(texts.text(
                "trial.count",
                results.size(),
                results.stream().filter(DrillTrial::fit).count()));
    }

    /** What holds over the whole course. */
    private static List<String> course(List<DrillTrial> results, TrialPage page, Texts texts) {
        List<String> lines = new ArrayList<>();
        TrialFit.ofCourse(results).forEach(reason -> lines.add(texts.text("trial.course", page.sentence(reason))));
        return lines;
    }
}
