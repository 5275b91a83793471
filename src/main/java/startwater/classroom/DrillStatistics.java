package startwater.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import startwater.classroom.stats.ItemAnalysis;
import startwater.classroom.stats.Spread;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.score.Act;
import startwater.score.Verdict;

/**
 * What the attempts of a class at one drill say. The first finished attempt of each learner counts: later ones were made
 * with the debrief in mind.
 *
 * @param scenario the drill
 * @param attempts that count, one a learner
 * @param items decisions that counted for somebody, in order
 * @param analysis over the decisions that counted for at least half of the learners
 * @param analysed numbers of these decisions
 * @param firstWrong what went wrong first, the commonest first
 * @param readings how each pad was read, worst first
 */
public record DrillStatistics(
        Scenario scenario,
        List<Attempt> attempts,
        List<DecisionItem> items,
        ItemAnalysis analysis,
        List<Integer> analysed,
        List<FirstWrong> firstWrong,
        List<PadReadings> readings) {
    private static final double FULL = 100;

    public DrillStatistics {
        attempts = List.copyOf(attempts);
        items = List.copyOf(items);
        analysed = List.copyOf(analysed);
        firstWrong = List.copyOf(firstWrong);
        readings = List.copyOf(readings);
    }

    /** The statistics of every drill that somebody finished, by number of the drill. */
    public static List<DrillStatistics> all(List<Attempt> attempts) {
        Map<String, List<Attempt>> byDrill = new LinkedHashMap<>();
        attempts.forEach(a -> byDrill.computeIfAbsent(a.scenario().id(), id -> new ArrayList<>())
                .add(a));
        return byDrill.values().stream()
                .map(DrillStatistics::firstOfEach)
                .filter(list -> !list.isEmpty())
                .map(DrillStatistics::of)
                .sorted(Comparator.comparingInt(s -> s.scenario().number()))
                .toList();
    }

    private static List<Attempt> firstOfEach(List<Attempt> attempts) {
        Map<String, Attempt> first = new LinkedHashMap<>();
        attempts.stream()
                .filter(Attempt::whole)
                .sorted(Comparator.comparing(Attempt::begun))
                .forEach(a -> first.putIfAbsent(a.learner(), a));
        return List.copyOf(first.values());
    }

    /** The statistics of one drill. @param attempts one a learner, at least one */
    static DrillStatistics of(List<Attempt> attempts) {
        Set<Integer> numbers = new TreeSet<>();
        attempts.forEach(
                a -> a.steps().stream().filter(s -> s.counted() != null).forEach(s -> numbers.add(s.number())));
        List<Integer> all = List.copyOf(numbers);
        double[][] scores = scores(attempts, all);
        List<Integer> analysed = all.stream()
                .filter(n -> 2 * had(scores, all.indexOf(n)) >= attempts.size())
                .toList();
        ItemAnalysis analysis = ItemAnalysis.of(scores(attempts, analysed));
        List<DecisionItem> items = new ArrayList<>();
        for (int number : all) {
            int at = analysed.indexOf(number);
            ItemAnalysis.Item item = at >= 0
                    ? analysis.items().get(at)
                    : ItemAnalysis.of(scores(attempts, List.of(number))).items().get(0);
            items.add(item(attempts, number, item));
        }
        return new DrillStatistics(
                attempts.get(0).scenario(),
                attempts,
                items,
                analysis,
                analysed,
                FirstWrong.of(attempts),
                PadReadings.of(attempts));
    }

    private static double[][] scores(List<Attempt> attempts, List<Integer> numbers) {
        return attempts.stream()
                .map(a -> numbers.stream().mapToDouble(n -> score(a, n)).toArray())
                .toArray(double[][]::new);
    }

    private static double score(Attempt a, int number) {
        return a.steps().stream()
                .filter(s -> s.number() == number)
                .map(Step::counted)
                .filter(Objects::nonNull)
                .mapToDouble(
                        m -> Math.max(0, Math.min(1, Objects.requireNonNull(m).decision() / FULL)))
                .findFirst()
                .orElse(Double.NaN);
    }

    private static int had(double[][] scores, int column) {
        int had = 0;
        for (double[] row : scores) {
            had += Double.isNaN(row[column]) ? 0 : 1;
        }
        return had;
    }

    private static DecisionItem item(List<Attempt> attempts, int number, ItemAnalysis.Item item) {
        Map<String, List<Attempt>> byAct = new LinkedHashMap<>();
        Map<String, Decision> examples = new LinkedHashMap<>();
        List<Double> marks = new ArrayList<>();
        int dangerous = 0;
        int arguable = 0;
        for (Attempt a : attempts) {
            for (Step s : a.steps()) {
                Entry.Marks m = s.counted();
                if (s.number() == number && m != null) {
                    marks.add(m.decision());
                    dangerous += m.word() == Verdict.Word.DANGEROUS ? 1 : 0;
                    arguable += m.arguable() ? 1 : 0;
                    String code = Act.of(s.decision()).code();
                    byAct.computeIfAbsent(code, c -> new ArrayList<>()).add(a);
                    examples.putIfAbsent(code, s.decision());
                }
            }
        }
        List<DecisionItem.Chosen> chosen = byAct.entrySet().stream()
                .map(e -> chosen(e.getKey(), Objects.requireNonNull(examples.get(e.getKey())), e.getValue(), number))
                .sorted(Comparator.comparingInt(DecisionItem.Chosen::count)
                        .reversed()
                        .thenComparing(DecisionItem.Chosen::code))
                .toList();
        Spread spread = Spread.of(marks.stream().mapToDouble(d -> d).toArray());
        return new DecisionItem(number, spread, item, dangerous, arguable, chosen);
    }

    private static DecisionItem.Chosen chosen(String code, Decision example, List<Attempt> by, int number) {
        double mean =
                by.stream().mapToDouble(a -> FULL * score(a, number)).average().orElse(Double.NaN);
        double rest = by.stream()
                .flatMap(a -> a.steps().stream())
                .filter(s -> s.number() != number)
                .map(Step::counted)
                .filter(Objects::nonNull)
                .mapToDouble(m -> Objects.requireNonNull(m).decision())
                .average()
                .orElse(Double.NaN);
        return new DecisionItem.Chosen(code, example, by.size(), mean, rest);
    }

    /** The decisions worth the class's time, those with most reasons and the widest spread first. */
    public List<DecisionItem> toDiscuss() {
        return items.stream()
                .filter(i -> !i.reasons().isEmpty())
                .sorted(Comparator.<DecisionItem>comparingInt(i -> -i.reasons().size())
                        .thenComparing(i ->
                                Double.isNaN(i.marks().sd()) ? 0 : -i.marks().sd())
                        .thenComparing(DecisionItem::number))
                .toList();
    }

    /** The learners, in the order of their first attempt. */
    public Set<String> learners() {
        Set<String> all = new LinkedHashSet<>();
        attempts.forEach(a -> all.add(a.learner()));
        return all;
    }
}
