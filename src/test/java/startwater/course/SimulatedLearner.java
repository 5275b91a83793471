package startwater.course;

import java.util.EnumMap;
import java.util.Map;
import startwater.drill.Skill;
import startwater.quantity.Stream;

/** A learner whose truth is known. Answering teaches; nothing is forgotten. The same seed gives the same learner. */
abstract class SimulatedLearner {
    final Stream chance;

    SimulatedLearner(long seed, long world) {
        this.chance = Stream.of(seed, world);
    }

    /** Whether the next answer is right. */
    boolean answers(Skill skill) {
        return chance.uniform() < success(skill);
    }

    abstract double success(Skill skill);

    /** Whether the skill is truly there. */
    abstract boolean knows(Skill skill);

    /** Learns from one answer. @param weight how much it bears on the skill */
    abstract void learns(Skill skill, double weight);

    double between(double low, double high) {
        return low + (high - low) * chance.uniform();
    }

    /** The two worlds. Neither has the parameters of the tracing. */
    enum World {
        TRACED,
        GROWING;

        SimulatedLearner learner(long seed) {
            return this == TRACED ? new Traced(seed) : new Growing(seed);
        }
    }

    /** Known or not; learnt at once; slips and guesses. All parameters are drawn anew for each skill. */
    private static final class Traced extends SimulatedLearner {
        private final Map<Skill, Bkt> truth = new EnumMap<>(Skill.class);
        private final Map<Skill, Boolean> known = new EnumMap<>(Skill.class);

        Traced(long seed) {
            super(seed, 1);
            double quick = between(-0.2, 0.2);
            for (Skill s : Skill.values()) {
                double start = Math.max(0.02, Math.min(0.9, between(0.1, 0.6) + quick));
                truth.put(s, new Bkt(start, between(0.05, 0.25), between(0.03, 0.15), between(0.15, 0.35)));
                known.put(s, chance.uniform() < start);
            }
        }

        private Bkt of(Skill skill) {
            return java.util.Objects.requireNonNull(truth.get(skill));
        }

        @Override
        double success(Skill skill) {
            return of(skill).success(knows(skill) ? 1 : 0);
        }

        @Override
        boolean knows(Skill skill) {
            return Boolean.TRUE.equals(known.get(skill));
        }

        @Override
        void learns(Skill skill, double weight) {
            if (chance.uniform() < weight * of(skill).learn()) {
                known.put(skill, true);
            }
        }
    }

    /** Ability less difficulty on the logistic scale, growing with each answer. */
    private static final class Growing extends SimulatedLearner {
        private static final double MASTERY = 0.75;
        private final Map<Skill, Double> level = new EnumMap<>(Skill.class);
        private final double growth;

        Growing(long seed) {
            super(seed, 2);
            double ability = 0.8 * chance.normal();
            growth = between(0.1, 0.3);
            for (Skill s : Skill.values()) {
                level.put(s, ability + 0.8 * chance.normal());
            }
        }

        private double of(Skill skill) {
            return java.util.Objects.requireNonNull(level.get(skill));
        }

        @Override
        double success(Skill skill) {
            return 1 / (1 + StrictMath.exp(-of(skill)));
        }

        @Override
        boolean knows(Skill skill) {
            return success(skill) >= MASTERY;
        }

        @Override
        void learns(Skill skill, double weight) {
            level.merge(skill, weight * growth, Double::sum);
        }
    }
}
