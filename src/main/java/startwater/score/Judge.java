package startwater.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Observation;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;
import startwater.tank.TankLayout;

/** Judges decisions. Pure: the same case gets the same verdict, bit for bit, on any number of threads. */
public final class Judge {
    /** Regret that halves the mark, % of the stock. */
    private static final double HALVING_REGRET = 0.5;
    /** Regret that no one could tell from none, % of the stock. */
    private static final double LEAST_BAND = 0.05;

    private static final double SOUND_REGRET = 0.15;
    /** Expected deaths over the best option's, % of the stock, from which a choice is dangerous. */
    private static final double DANGEROUS_DEATHS = 1;
    /** While deaths rise by less than this, % of the stock, the choice is wasteful and not deadly. */
    private static final double DEADLY_DEATHS = 0.1;

    private static final double LEAST_MARK_IF_NOT_DEADLY = 50;
    /** A decision on a log that has been silent for days is a guess, however well it fits. */
    private static final double MOST_MARK_IF_SILENT = 50;
    /** A visit counts when its options spread this far, % of the stock. */
    private static final double SCORED_SPREAD = 0.4;
    /** An option of more base regret than this, % of the stock, is never accepted as arguable. */
    private static final double ARGUABLE_MOST = 0.5;

    /** Every so many waters one serves to prune the grid. */
    private static final int PRUNING_STRIDE = 8;

    private Judge() {}

    /** The losses of a case over its options: the pure function that all else is algebra on. */
    public static Scored score(Case c) {
        return score(c, Care.LIVE);
    }

    /** The same with so much care. */
    public static Scored score(Case c, Care care) {
        return score(c, care.waters);
    }

    /** The same on so many waters: fewer are quicker and rougher. */
    static Scored score(Case c, int waters) {
        return score(c, Belief.of(c.scenario(), c.log(), waters));
    }

    /** How many tanks a decision is judged on. */
    public enum Care {
        /** 256 tanks. */
        LIVE(Belief.WATERS),
        /** 512 tanks: twice the time. */
        EXAM(Belief.EXAM_WATERS);

        private final int waters;

        Care(int waters) {
            this.waters = waters;
        }
    }

    /** The same on a belief that is at hand. */
    static Scored score(Case c, Belief belief) {
        return score(c, belief, 1);
    }

    private static Scored score(Case c, Belief belief, int repeatedDays) {
        Notebook book = bookBefore(c, belief);
        Rollout rollout = new Rollout(belief, book, repeatedDays);
        LossTable table = new LossTable(belief, rollout);
        List<Decision> options = new ArrayList<>(options(belief, book, table));
        Decision choice = c.choice();
        int own = options.indexOf(choice);
        if (own < 0) {
            options.add(choice);
            own = options.size() - 1;
        }
        return new Scored(belief, book, rollout, List.copyOf(options), own, table.of(options));
    }

    /**
     * A case with its losses.
     *
     * @param options the learner's among them
     * @param own place of the learner's
     * @param losses by option, tank and component
     */
    public record Scored(
            Belief belief, Notebook book, Rollout rollout, List<Decision> options, int own, Losses losses) {
        /** Expected loss of an option over that of the best, % of the stock. */
        public double regret(int option) {
            return losses.regret(option);
        }

        /** Whether an option is worse than the best by more than can be told. */
        public boolean worse(int option) {
            return regret(option) > band(losses, option);
        }

        /** The same with more options, followed on the same tanks. */
        Scored with(List<Decision> more) {
            List<Decision> fresh =
                    more.stream().filter(d -> !options.contains(d)).toList();
            List<Decision> all = new ArrayList<>(options);
            all.addAll(fresh);
            return new Scored(
                    belief, book, rollout, List.copyOf(all), own, losses.and(new LossTable(belief, rollout).of(fresh)));
        }
    }

    /**
     * The decision as a habit: every option done once a day for three days before the standing rules take over. Takes as
     * long as a mark: ask for it when it is to be shown.
     */
    public static Habitual asHabit(Case c) {
        Scored scored = score(c, Belief.of(c.scenario(), c.log()), HABIT_DAYS);
        Losses losses = scored.losses();
        int best = losses.best();
        double perPercent = stock(c.scenario(), c.visit()) / 100;
        double deathsUp = losses.mean(scored.own(), Component.DEATHS) - losses.mean(best, Component.DEATHS);
        double over = Math.max(0, losses.regret(scored.own()) - band(losses, scored.own()));
        return new Habitual(
                HABIT_DAYS,
                losses.regret(scored.own()),
                losses.mean(scored.own(), Component.DEATHS) * perPercent,
                losses.mean(best, Component.DEATHS) * perPercent,
                scored.options().get(best),
                word(deathsUp, over));
    }

    private static final int HABIT_DAYS = 3;

    /**
     * A choice kept up day after day.
     *
     * @param days for how long
     * @param regret expected loss over that of the best habit, % of the stock
     * @param deaths expected deaths, fish
     * @param bestDeaths expected deaths under the best habit, fish
     * @param best the option that is best when kept up
     * @param word sound, costly or dangerous
     */
    public record Habitual(
            int days, double regret, double deaths, double bestDeaths, Decision best, Verdict.Word word) {}

    private static Verdict.Word word(double deathsUp, double over) {
        if (deathsUp > DANGEROUS_DEATHS && over > 0) {
            return Verdict.Word.DANGEROUS;
        }
        return over < SOUND_REGRET ? Verdict.Word.SOUND : Verdict.Word.COSTLY;
    }

    /** Regret up to which an option counts as good as the best: two standard errors, at least 0.05 % of the stock. */
    static double band(Losses losses, int option) {
        return Math.max(2 * losses.standardError(option, losses.best()), LEAST_BAND);
    }

    /**
     * The nearest single change that makes another option best, confirmed by scoring the changed case anew. Takes some
     * tenths of a second more than the mark: ask for it afterwards, and not on the thread that paints.
     */
    public static Optional<Flip> flip(Case c) {
        return FlipSearch.search(c);
    }

    /** Judges one decision. Takes some tenths of a second: not for the thread that paints. */
    public static Verdict judge(Case c) {
        return judge(c, Care.LIVE);
    }

    /** Judges one decision with so much care. */
    public static Verdict judge(Case c, Care care) {
        return judge(c, care.waters);
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
        double over = Math.max(0, regret - band(losses, own));
        double deathsUp = losses.mean(own, Component.DEATHS) - losses.mean(best, Component.DEATHS);
        double mark = 100 / (1 + over / HALVING_REGRET);
        if (deathsUp < DEADLY_DEATHS) {
            mark = Math.max(LEAST_MARK_IF_NOT_DEADLY, mark);
        }
        Verdict.Word word = word(deathsUp, over);
        View view =
                over > 0 && regret <= ARGUABLE_MOST && !dangerousInAnyView(losses, own) ? viewFor(losses, own) : null;
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
                stock(c.scenario(), c.visit()),
                scored.rollout().days(),
                paths.decisive(scored, losses, own, best),
                paths.ranges(scored.belief()),
                foresight(c.visit().prediction(), paths),
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

    /** Fish that the percentages refer to: those here, or those planned. */
    private static double stock(Scenario s, VisitRecord visit) {
        return s.fish() != null
                ? visit.seen().alive()
                : s.plannedFish() != null ? s.plannedFish().count() : 0;
    }

    private static Notebook bookBefore(Case c, Belief belief) {
        List<VisitRecord> visits = new ArrayList<>(c.log().visits());
        visits.set(visits.size() - 1, belief.log().last());
        return Notebook.of(c.scenario(), belief.calendar(), visits);
    }

    private static List<Decision> options(Belief belief, Notebook book, LossTable table) {
        List<Decision> grid = Options.grid(belief, book);
        if (grid.size() <= Options.MOST_ALONE) {
            return Options.attended(grid, grid.get(0));
        }
        Losses rough = table.of(grid, PRUNING_STRIDE);
        double[] means =
                IntStream.range(0, grid.size()).mapToDouble(rough::mean).toArray();
        return Options.attended(Options.pruned(grid, means), grid.get(rough.best()));
    }

    /** A choice that kills in the mean, or in the worst tenth of the tanks, is never a matter of taste. */
    private static boolean dangerousInAnyView(Losses losses, int own) {
        int best = losses.best();
        double mean = losses.mean(own, Component.DEATHS) - losses.mean(best, Component.DEATHS);
        double worst = losses.worstDeaths(own, WORST_SHARE) - losses.worstDeaths(best, WORST_SHARE);
        return Math.max(mean, worst) > DANGEROUS_DEATHS;
    }

    /** The view in which the choice is as good as the best; null where there is none. */
    private static @Nullable View viewFor(Losses losses, int own) {
        for (View view : View.values()) {
            double least = IntStream.range(0, losses.options())
                    .mapToDouble(o -> view.loss(losses, o))
                    .min()
                    .orElseThrow();
            if (view.loss(losses, own) <= least + LEAST_BAND) {
                return view;
            }
        }
        return null;
    }

    private static final double WORST_SHARE = 0.1;

    /** Other reasonable views of what a loss is. */
    enum View {
        FISH_FIRST {
            @Override
            double loss(Losses l, int option) {
                return l.mean(option) + l.mean(option, Component.DEATHS) + l.mean(option, Component.STRESS);
            }
        },
        GROWTH_FIRST {
            @Override
            double loss(Losses l, int option) {
                return l.mean(option) + l.mean(option, Component.GROWTH) + l.mean(option, Component.DELAY);
            }
        },
        WATER_IS_DEAR {
            @Override
            double loss(Losses l, int option) {
                return l.mean(option) + 2 * l.mean(option, Component.WATER) + l.mean(option, Component.JOBS);
            }
        },
        WORST_TENTH {
            @Override
            double loss(Losses l, int option) {
                return l.worst(option, WORST_SHARE);
            }
        };

        abstract double loss(Losses losses, int option);
    }

    private static List<Verdict.Option> shown(Scored scored) {
        Losses losses = scored.losses();
        VisitRecord visit = scored.belief().log().last();
        double perPercent = stock(scored.belief().scenario(), visit) / 100;
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

    /** Foresight: how near the block said lies to what the log made likely, and how honest the sureness was. */
    private static Verdict.@Nullable Foresight foresight(@Nullable Prediction said, Paths paths) {
        if (said == null) {
            return null;
        }
        double[] chances = paths.nextBlocks(said.pad());
        int likeliest = 0;
        for (int b = 1; b < chances.length; b++) {
            likeliest = chances[b] > chances[likeliest] ? b : likeliest;
        }
        double chance = said.block() < chances.length ? chances[said.block()] : 0;
        double near = chances[likeliest] > 0 ? chance / chances[likeliest] : 0;
        double off = said.sureness().chance() - chance;
        return new Verdict.Foresight(50 * near + 50 * (1 - off * off), chance, likeliest, chances[likeliest]);
    }

    /** Chances of each block of a pad at a true value, its betweens shared by the blocks beside. */
    static double[] blockChances(Pad pad, double[] y, startwater.drill.TankDraw draw) {
        double reader = ReadingModel.readingSigmaBlocks(pad, Observation.READER_SIGMA_LAB);
        double sigma = StrictMath.sqrt(reader * reader + Observation.PAD_SPREAD_BLOCKS * Observation.PAD_SPREAD_BLOCKS);
        double at = Observation.padPosition(pad, y, draw, 1, 0);
        double[] chances = new double[pad.scale().blocks()];
        for (int stop = 0; stop < pad.scale().stops(); stop++) {
            double p = ReadingModel.probabilityOfStop(pad, stop, at, sigma);
            chances[stop / 2] += stop % 2 == 0 ? p : p / 2;
            if (stop % 2 == 1) {
                chances[stop / 2 + 1] += p / 2;
            }
        }
        return chances;
    }

    static double value(Verdict.Variable variable, double[] y, double chlorideHalf) {
        return switch (variable) {
            case TOXIC_AMMONIA -> startwater.tank.TankReadings.toxicAmmoniaMgPerL(y);
            case EFFECTIVE_NITRITE -> startwater.tank.TankReadings.effectiveNitriteMgPerL(y, chlorideHalf);
            case OXYGEN -> y[TankLayout.OXYGEN];
            case TOTAL_AMMONIA -> y[TankLayout.TAN];
            case CHLORINE -> y[TankLayout.FREE_CHLORINE] + y[TankLayout.COMBINED_CHLORINE];
        };
    }
}
