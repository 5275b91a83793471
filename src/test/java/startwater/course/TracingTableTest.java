package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.course.SimulatedLearner.World;
import startwater.drill.Skill;
import startwater.quantity.Stream;

/**
 * How well the tracing foretells the next answer (Brier score, 0 best) and who truly knows (area under the curve, 1 best), for
 * 400 learners with few answers on each skill. An earlier study of the same design, with worlds of its own constants, found
 * 0.225 and 0.884 after three answers and 0.201 and 0.938 after six in a traced world, 0.221 and 0.855, 0.197 and 0.877 in a
 * growing one. Here: 0.178 and 0.885, 0.146 and 0.943 in the traced world, 0.223 and 0.836, 0.189 and 0.869 in the growing
 * one; the lower Brier score of the first is that of a world where more is known and less is left to chance.
 */
class TracingTableTest {
    private static final int LEARNERS = 400;

    private record Guess(double known, double success, boolean knows, boolean right) {}

    @ParameterizedTest
    @CsvSource({"TRACED,3,0.185,0.875", "TRACED,6,0.152,0.935", "GROWING,3,0.230,0.825", "GROWING,6,0.196,0.860"})
    void foretellsAnswersAndMastery(World world, int answers, double brierMost, double areaLeast) {
        List<Guess> guesses = guesses(world, answers, Bkt.USUAL);
        assertThat(brier(guesses)).isLessThan(brierMost);
        assertThat(area(guesses)).isGreaterThan(areaLeast);
    }

    private static List<Guess> guesses(World world, int answers, Bkt tracing) {
        List<Guess> all = new ArrayList<>();
        for (int i = 0; i < LEARNERS; i++) {
            SimulatedLearner who = world.learner(i);
            Tracer tracer = new Tracer(ZoneOffset.UTC, tracing);
            for (Skill skill : mixed(i, answers)) {
                boolean right = who.answers(skill);
                who.learns(skill, 1);
                tracer.add(new Graded(Instant.EPOCH, Source.drill("any"), skill, right ? 1 : 0, 1, 0, null, null));
            }
            Learner learner = tracer.learner();
            for (Skill skill : Skill.values()) {
                double known = learner.known(skill);
                all.add(new Guess(known, tracing.success(known), who.knows(skill), who.answers(skill)));
            }
        }
        return all;
    }

    /** Each skill so many times, in an order of its own. */
    private static List<Skill> mixed(long seed, int times) {
        List<Skill> order = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            order.addAll(List.of(Skill.values()));
        }
        Stream chance = Stream.of(seed, 99);
        for (int i = order.size() - 1; i > 0; i--) {
            java.util.Collections.swap(order, i, chance.below(i + 1));
        }
        return order;
    }

    private static double brier(List<Guess> all) {
        return all.stream()
                .mapToDouble(g -> (g.success() - (g.right() ? 1 : 0)) * (g.success() - (g.right() ? 1 : 0)))
                .average()
                .orElseThrow();
    }

    /** Chance that one who knows is ranked over one who does not, ties counted half: by ranks. */
    private static double area(List<Guess> all) {
        List<Guess> sorted = all.stream()
                .sorted(java.util.Comparator.comparingDouble(Guess::known))
                .toList();
        double ranks = 0;
        long knowing = 0;
        for (int from = 0; from < sorted.size(); ) {
            int to = from;
            while (to < sorted.size()
                    && sorted.get(to).known() == sorted.get(from).known()) {
                to++;
            }
            double rank = (from + 1 + to) / 2.0;
            for (int i = from; i < to; i++) {
                if (sorted.get(i).knows()) {
                    ranks += rank;
                    knowing++;
                }
            }
            from = to;
        }
        double others = sorted.size() - (double) knowing;
        return (ranks - knowing * (knowing + 1) / 2.0) / (knowing * others);
    }
}
