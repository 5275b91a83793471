package startwater.classroom;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.record.AttemptCheck;
import startwater.record.Difference;
import startwater.record.Entry;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.Verdict;

/**
 * The second pass: marks are worked out again for every exam, for everything that looks odd, and for a sample of the rest.
 * It can be stopped between any two decisions; what is judged by then is kept.
 */
public final class SecondPass {
    private static final long DRAW = 0x7365_636fL;

    private final MarkMemo memo;
    private final BiFunction<Case, Care, Verdict> judge;

    public SecondPass(MarkMemo memo) {
        this(memo, Judge::judge);
    }

    /** The same with another judge. */
    SecondPass(MarkMemo memo, BiFunction<Case, Care, Verdict> judge) {
        this.memo = memo;
        this.judge = judge;
    }

    /**
     * Which attempts are judged again.
     *
     * @param sample how many beyond exams and suspects
     * @param seed of the sample
     */
    public static List<Integer> chosen(List<HandedIn> all, int sample, long seed) {
        Set<Integer> chosen = new TreeSet<>();
        List<Integer> rest = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            HandedIn h = all.get(i);
            Attempt a = h.attempt();
            if (a == null || h.check() == null || h.status() == Finding.Status.ELSEWHERE) {
                continue;
            }
            if (a.exam() || h.suspect()) {
                chosen.add(i);
            } else {
                rest.add(i);
            }
        }
        double[] lots = IntStream.range(0, all.size())
                .mapToDouble(i -> Stream.of(seed, DRAW, i).uniform())
                .toArray();
        rest.stream()
                .sorted(Comparator.comparingDouble(i -> lots[i]))
                .limit(sample)
                .forEach(chosen::add);
        return List.copyOf(chosen);
    }

    /**
     * Judges attempts again.
     *
     * @param all of the first pass
     * @param chosen places of those to judge
     * @param progress decisions judged, of all whose marks are not known yet; twenty learners with one first visit need one
     *     judgement
     * @param stop asked before every decision; what is judged by then is known the next time
     * @return all, those that were judged with what came of it; the others as they were
     */
    public List<HandedIn> judge(
            List<HandedIn> all, List<Integer> chosen, Collector.Progress progress, BooleanSupplier stop) {
        List<HandedIn> out = new ArrayList<>(all);
        Count count = new Count(progress, (int) chosen.stream()
                .map(i -> Objects.requireNonNull(all.get(i).check()))
                .flatMap(check -> check.decided().stream().map(check::key))
                .distinct()
                .filter(key -> memo.get(key).isEmpty())
                .count());
        for (int i : chosen) {
            AttemptCheck check = Objects.requireNonNull(all.get(i).check());
            List<Entry.Marks> truth = new ArrayList<>();
            for (VisitRecord visit : check.decided()) {
                if (stop.getAsBoolean()) {
                    return out;
                }
                truth.add(marks(check, visit, count));
            }
            out.set(i, compared(all.get(i), check, truth));
        }
        return out;
    }

    /** Forgets all marks that were worked out. @throws IOException where they cannot be deleted */
    public void clear() throws IOException {
        memo.clear();
    }

    /** How many of those that had to be judged are. */
    private static final class Count {
        private final Collector.Progress progress;
        private final int all;
        private int done;

        Count(Collector.Progress progress, int all) {
            this.progress = progress;
            this.all = all;
            progress.at(0, all);
        }

        void next() {
            progress.at(++done, all);
        }
    }

    private Entry.Marks marks(AttemptCheck check, VisitRecord visit, Count count) {
        String key = check.key(visit);
        Entry.Marks known = memo.get(key).orElse(null);
        if (known != null) {
            return check.marks(visit, known);
        }
        Entry.Marks fresh =
                check.marks(visit, judge.apply(check.at(visit), check.begun().care()));
        memo.put(key, fresh);
        count.next();
        return fresh;
    }

    private static HandedIn compared(HandedIn h, AttemptCheck check, List<Entry.Marks> truth) {
        List<VisitRecord> decided = check.decided();
        List<Difference> wrong = check.wrongMarks((visit, c) -> truth.get(decided.indexOf(visit)));
        List<Finding> findings = new ArrayList<>();
        for (Difference d : wrong) {
            Finding finding = new Finding(Finding.Kind.MARK_CHANGED, d.what().name());
            if (!h.findings().contains(finding) && !findings.contains(finding)) {
                findings.add(finding);
            }
        }
        Attempt attempt = Objects.requireNonNull(h.attempt());
        List<Step> steps = new ArrayList<>();
        for (Step step : attempt.steps()) {
            steps.add(step.marked(truth.get(step.number() - 1)));
        }
        return h.checked(attempt.with(steps), findings);
    }
}
