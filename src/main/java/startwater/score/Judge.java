package startwater.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.fish.Stressor;

/** Judges decisions. Pure: the same case gets the same verdict, bit for bit, on any number of threads. */
public final class Judge {
    /** Regret that halves the mark, % of the stock. */
    private static final double HALVING_REGRET = 0.5;

    private static final double SOUND_REGRET = 0.15;
    /** Expected deaths over the best option's, % of the stock, from which a choice is dangerous. */
    static final double DANGEROUS_DEATHS = 1;
    /** While deaths rise by less than this, % of the stock, the choice is wasteful and not deadly. */
    private static final double DEADLY_DEATHS = 0.1;

    private static final double LEAST_MARK_IF_NOT_DEADLY = 50;
    /** A decision on a log that has been silent for days is a guess, however well it fits. */
    private static final double MOST_MARK_IF_SILENT = 50;
    /** A visit counts when its options spread this far, % of the stock. */
    private static final double SCORED_SPREAD = 0.4;

    private Judge() {}

    /** The losses of a case over its options: the pure function that all else is algebra on. */
    public static Scored score(Case c) {
        return score(c, Care.LIVE);
    }

    /** The same with so much care. */
    public static Scored score(Case c, Care care) {
        return score(c, care.waters());
    }

    /** The same on so many waters: fewer are quicker and rougher. */
    static Scored score(Case c, int waters) {
        return Scored.of(c, waters);
    }

    /** The same on a belief that is at hand. */
    static Scored score(Case c, Belief belief) {
        return Scored.of(c, belief, 1);
    }

    /**
     * Works out what a visit makes plausible, so that the mark is quick once the decision is made. What is kept changes no
     * result. Takes some tenths of a second: for a worker, while the learner still thinks.
     *
     * @param visits the log with the open visit, as it is written so far, at its end
     */
    public static void getReady(Scenario scenario, DrillLog visits, Care care) {
        Belief.of(scenario, visits, care.waters());
    }

    /** What would have changed the answer, and the choice as a habit, for whoever looks back on a decision. Not for the thread that paints. */
    public static SecondLook secondLook(Case c, Care care) {
        return SecondLook.at(c, care);
    }

    static Verdict.Word word(double deathsUp, double over) {
        if (deathsUp > DANGEROUS_DEATHS && over > 0) {
            return Verdict.Word.DANGEROUS;
        }
        return over < SOUND_REGRET ? Verdict.Word.SOUND : Verdict.Word.COSTLY;
    }

    /** Judges one decision. Takes some tenths of a second: not for the thread that paints. */
    public static Verdict judge(Case c) {
        return judge(c, Care.LIVE);
    }

    /** Judges one decision with so much care. */
    public static Verdict judge(Case c, Care care) {
        return judge(c, care.waters());
    }

    /** The same on so many waters: fewer are quicker and rougher. */
    static Verdict judge(Case c, int waters) {
        Scored scored = score(c, waters);
        Losses losses = scored.losses();
        int best = losses.best();
        int own = scored.own();
        Verdict.Information information = new Retest(scored.belief(), losses).worth();
        // Where a second strip is worth more than its price, the best is to read it first.
        double regret = losses.regret(own) + Math.max(0, information.strip() - information.price());
        double error = losses.standardError(own, best);
        double over = scored.over(regret);
        double deathsUp = scored.deathsUp();
        double mark = 100 / (1 + over / HALVING_REGRET);
        if (deathsUp < DEADLY_DEATHS) {
            mark = Math.max(LEAST_MARK_IF_NOT_DEADLY, mark);
        }
        Verdict.Word word = word(deathsUp, over);
        View view = over > 0 ? View.accepting(losses, own, regret) : null;
        boolean arguable = view != null;
        if (arguable) {
            word = Verdict.Word.SOUND;
            mark = 100;
        }
        if (SilentLog.is(c.scenario(), c.log())) {
            mark = Math.min(mark, MOST_MARK_IF_SILENT);
        }
        boolean credible = scored.belief().credible();
        if (!credible) {
            mark = 0;
        }
        double spread = IntStream.range(0, losses.options())
                        .mapToDouble(losses::mean)
                        .max()
                        .orElse(0)
                - losses.mean(best);
        Paths paths = Paths.of(scored, own, best);
        List<Verdict.Option> options = shown(scored);
        int ownAt = IntStream.range(0, options.size())
                .filter(i -> options.get(i).own())
                .findFirst()
                .orElseThrow();
        Verdict bare = new Verdict(
                options,
                ownAt,
                regret,
                error,
                mark,
                word,
                spread >= SCORED_SPREAD || regret >= SCORED_SPREAD,
                arguable,
                scored.stock(),
                scored.rollout().days(),
                paths.decisive(scored, losses, own, best),
                paths.ranges(scored.belief()),
                Foreseen.mark(c.visit().prediction(), paths),
                scored.belief().oddReadings(),
                credible,
                information,
                List.of());
        return withLines(bare, Explainer.lines(scored, bare, paths, view));
    }

    private static Verdict withLines(Verdict v, List<Verdict.Line> lines) {
        return new Verdict(
                v.options(),
                v.own(),
                v.regret(),
                v.standardError(),
                v.mark(),
                v.word(),
                v.scored(),
                v.arguable(),
                v.stock(),
                v.days(),
                v.decisive(),
                v.ranges(),
                v.foresight(),
                v.surprise(),
                v.credited(),
                v.information(),
                lines);
    }

    private static List<Verdict.Option> shown(Scored scored) {
        Losses losses = scored.losses();
        double perPercent = scored.stock() / 100;
        Decision rules = scored.options().get(0);
        List<Verdict.Option> shown = new ArrayList<>();
        for (int o = 0; o < losses.options(); o++) {
            int option = o;
            shown.add(new Verdict.Option(
                    scored.options().get(o),
                    losses.mean(o, Component.DEATHS) * perPercent,
                    losses.deathsQuantile(o, 0.1) * perPercent,
                    losses.deathsQuantile(o, 0.9) * perPercent,
                    losses.meanDeathsBeside(o) * perPercent,
                    Arrays.stream(Stressor.values())
                            .map(s -> losses.meanDeaths(option, s) * perPercent)
                            .toList(),
                    Arrays.stream(Component.values())
                            .map(c -> losses.mean(option, c))
                            .toList(),
                    losses.mean(o),
                    o == scored.own(),
                    scored.options().get(o).equals(rules)));
        }
        shown.sort(Comparator.comparingDouble(Verdict.Option::loss));
        return shown;
    }
}
