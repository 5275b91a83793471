package startwater.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.DrillTrial.Reason;
import startwater.score.DrillTrial.Row;

/**
 * Lets every named policy play a drill and looks whether care pays in it and the habits it names do not. The tanks are the
 * same for all policies; plays run side by side in the common pool, or in the pool that calls, and the result does not
 * depend on how many threads there are.
 *
 * <p>Outcomes come from plays in which a policy acts at every visit of the keeper, as with the command {@code run}. Marks
 * come from plays in which it decides where the learner is asked, as a learner's do. <em>Optimal</em>, which is dear,
 * plays once for both.
 */
public final class Trial {
    /** A policy's mark is known well enough once its standard error is this or less. */
    private static final double ERROR_ENOUGH = 3;

    private static final int MORE_AT_ONCE = 2;

    private final Scenario scenario;
    private final TrialPlan plan;
    private final TrialStore store;
    private final Progress progress;
    private int done;
    private int most;

    /** Hears how far a trial has come. */
    @FunctionalInterface
    public interface Progress {
        /** So many plays are done of at most so many. */
        void at(int done, int most);
    }

    private Trial(Scenario scenario, TrialPlan plan, TrialStore store, Progress progress) {
        this.scenario = scenario;
        this.plan = plan;
        this.store = store;
        this.progress = progress;
    }

    /** Tries one drill. Takes seconds to minutes. */
    public static DrillTrial of(Scenario s, TrialPlan plan, TrialStore store, Progress progress) {
        return new Trial(s, plan, store, progress).run();
    }

    /** One play: which policy on which hidden tank, and what of it is judged. */
    private record Job(Policy policy, long seed, Judged judged) {}

    /** Which decisions of a play are judged. */
    private enum Judged {
        NONE,
        ALL,
        PIVOT
    }

    private DrillTrial run() {
        List<Policy> policies = Policies.ids().stream().map(this::policy).toList();
        most = policies.size() * (plan.outcomeSeeds() + plan.mostMarked()) - plan.outcomeSeeds() + plan.pivotSeeds();
        Map<String, List<PolicyPlay>> marks = marks(policies);
        Map<String, List<PolicyPlay>> outcomes = outcomes(policies);
        outcomes.put(Optimal.ID, marks.getOrDefault(Optimal.ID, List.of()));
        List<Row> rows = policies.stream()
                .map(p -> row(p.id(), marks.getOrDefault(p.id(), List.of()), outcomes.getOrDefault(p.id(), List.of())))
                .toList();
        List<PolicyPlay.Step> careful = marks.getOrDefault(Policies.CAREFUL.id(), List.of()).stream()
                .flatMap(play -> play.steps().stream())
                .filter(PolicyPlay.Step::scored)
                .toList();
        DrillTrial.Pivot pivot = pivot(careful.stream()
                .filter(step -> scenario.keeper().decisionVisits().contains(step.visit()))
                .toList());
        List<Reason> faults = TrialFit.faults(scenario, rows, pivot);
        return new DrillTrial(
                scenario.id(),
                faults.isEmpty(),
                faults.isEmpty() ? List.of(Reason.of("trial.why.fit")) : faults,
                rows,
                pivot,
                TrialFit.exposed(scenario, rows),
                careful.size(),
                (int) careful.stream().filter(PolicyPlay.Step::arguable).count(),
                counted(careful));
    }

    private Policy policy(String id) {
        return id.equals(Optimal.ID) ? new Optimal(plan.waters()) : Policies.byId(id);
    }

    private static Map<Act, Integer> counted(List<PolicyPlay.Step> steps) {
        return steps.stream().collect(Collectors.toMap(PolicyPlay.Step::best, s -> 1, Integer::sum));
    }

    private static Row row(String id, List<PolicyPlay> marked, List<PolicyPlay> played) {
        double[] marks = marked.stream()
                .mapToDouble(PolicyPlay::mark)
                .filter(m -> !Double.isNaN(m))
                .toArray();
        double passed =
                marked.stream().mapToInt(p -> p.passed() ? 1 : 0).average().orElse(Double.NaN);
        return new Row(
                id,
                mean(marks),
                error(marks),
                marked.size(),
                passed,
                new Outcome(
                        mean(played.stream()
                                .mapToDouble(p -> p.outcome().deathsFraction())
                                .toArray()),
                        mean(played.stream()
                                .mapToDouble(p -> p.outcome().daysToFilter())
                                .toArray()),
                        mean(played.stream()
                                .mapToDouble(p -> p.outcome().waterVolumes())
                                .toArray())));
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return values.length == 0 ? Double.NaN : sum / values.length;
    }

    /** Standard error of the mean; infinite where one value or none says nothing of the spread. */
    private static double error(double[] values) {
        if (values.length < 2) {
            return Double.POSITIVE_INFINITY;
        }
        double mean = mean(values);
        double squares = 0;
        for (double v : values) {
            squares += (v - mean) * (v - mean);
        }
        return StrictMath.sqrt(squares / (values.length - 1) / values.length);
    }

    /** Marked plays by policy: some of each, then more of careful and of those whose mark is not yet known well enough. */
    private Map<String, List<PolicyPlay>> marks(List<Policy> policies) {
        Map<String, List<PolicyPlay>> plays = new LinkedHashMap<>();
        List<Policy> open = policies.stream().filter(this::isMarked).collect(Collectors.toCollection(ArrayList::new));
        int from = 0;
        int to = plan.fewestMarked();
        while (!open.isEmpty() && from < to) {
            List<Job> jobs = new ArrayList<>();
            for (Policy p : open) {
                for (int seed = from; seed < to; seed++) {
                    jobs.add(new Job(p, seed + 1, Judged.ALL));
                }
            }
            List<PolicyPlay> made = played(jobs, -1);
            for (int i = 0; i < jobs.size(); i++) {
                plays.computeIfAbsent(jobs.get(i).policy().id(), id -> new ArrayList<>())
                        .add(made.get(i));
            }
            open.removeIf(p -> !p.id().equals(Policies.CAREFUL.id())
                    && error(plays.getOrDefault(p.id(), List.of()).stream()
                                    .mapToDouble(PolicyPlay::mark)
                                    .filter(m -> !Double.isNaN(m))
                                    .toArray())
                            <= ERROR_ENOUGH);
            from = to;
            to = Math.min(plan.mostMarked(), to + MORE_AT_ONCE);
        }
        return plays;
    }

    private boolean isMarked(Policy p) {
        return plan.allMarked()
                || p.id().equals(Policies.CAREFUL.id())
                || p.id().equals(Optimal.ID)
                || scenario.exposes().contains(p.id());
    }

    private Map<String, List<PolicyPlay>> outcomes(List<Policy> policies) {
        List<Job> jobs = policies.stream()
                .filter(p -> !p.id().equals(Optimal.ID))
                .flatMap(p -> IntStream.rangeClosed(1, plan.outcomeSeeds()).mapToObj(n -> new Job(p, n, Judged.NONE)))
                .toList();
        List<PolicyPlay> made = played(jobs, -1);
        Map<String, List<PolicyPlay>> plays = new LinkedHashMap<>();
        for (int i = 0; i < jobs.size(); i++) {
            plays.computeIfAbsent(jobs.get(i).policy().id(), id -> new ArrayList<>())
                    .add(made.get(i));
        }
        return plays;
    }

    /** The visit at which the options lie farthest apart, and what is best there over many tanks; null if left out. */
    private DrillTrial.@Nullable Pivot pivot(List<PolicyPlay.Step> careful) {
        if (plan.pivotSeeds() == 0 || careful.isEmpty()) {
            return null;
        }
        Map<Integer, Double> spread = new TreeMap<>(careful.stream()
                .collect(Collectors.toMap(PolicyPlay.Step::visit, PolicyPlay.Step::spread, Double::sum)));
        int visit = spread.entrySet().stream()
                .max(Map.Entry.<Integer, Double>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .orElseThrow()
                .getKey();
        List<PolicyPlay> plays = played(
                IntStream.rangeClosed(1, plan.pivotSeeds())
                        .mapToObj(n -> new Job(Policies.CAREFUL, n, Judged.PIVOT))
                        .toList(),
                visit);
        List<PolicyPlay.Step> there =
                plays.stream().flatMap(p -> p.steps().stream()).toList();
        Map.Entry<Act, Integer> commonest = counted(there).entrySet().stream()
                .max(Map.Entry.<Act, Integer>comparingByValue()
                        .thenComparing(e -> e.getKey().code(), Comparator.reverseOrder()))
                .orElseThrow();
        return new DrillTrial.Pivot(visit, commonest.getKey(), (double) commonest.getValue() / there.size());
    }

    private List<PolicyPlay> played(List<Job> jobs, int pivot) {
        PolicyPlay[] plays = new PolicyPlay[jobs.size()];
        IntStream.range(0, plays.length).parallel().forEach(i -> {
            plays[i] = kept(jobs.get(i), pivot);
            step();
        });
        return List.of(plays);
    }

    private synchronized void step() {
        progress.at(++done, most);
    }

    private PolicyPlay kept(Job job, int pivot) {
        String key = job.policy().id() + " " + job.seed() + " " + job.judged()
                + (job.judged() == Judged.NONE ? "" : " " + plan.waters())
                + (job.judged() == Judged.PIVOT ? " " + pivot : "");
        String known = store.find(key);
        if (known != null) {
            return PolicyPlay.read(known);
        }
        PolicyPlay play = play(job, pivot);
        store.keep(key, play.written());
        return play;
    }

    private PolicyPlay play(Job job, int pivot) {
        boolean searches = job.policy().id().equals(Optimal.ID);
        DrillRun.Pace pace =
                searches || job.judged() == Judged.NONE ? DrillRun.Pace.EVERY_VISIT : DrillRun.Pace.LEARNER;
        DrillRun run = PolicyPlayer.play(scenario, job.policy(), job.seed(), pace);
        List<PolicyPlay.Step> steps = new ArrayList<>();
        for (int i = 0; job.judged() != Judged.NONE && i < run.past().size(); i++) {
            VisitRecord v = run.past().visits().get(i);
            boolean asked = v.asked()
                    && v.decision() != null
                    && (!searches || scenario.keeper().decisionVisits().contains(v.visit()));
            if (asked && (job.judged() == Judged.ALL || v.visit() == pivot)) {
                Verdict verdict = Judge.judge(new Case(scenario, run.past().upTo(i)), plan.waters());
                steps.add(PolicyPlay.Step.of(v.visit(), verdict));
            }
        }
        return new PolicyPlay(Outcome.of(run), steps);
    }
}
