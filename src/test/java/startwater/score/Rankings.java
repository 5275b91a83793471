package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Scenario;
import startwater.fish.Species;
import startwater.score.RankingTanks.Keeper;
import startwater.strip.Pad;

/**
 * What must be better than what, judged from what a keeper could know, over species and hidden tanks. Common practice of
 * extension sheets on starting up a tank, no other source for the order itself; the loss weights were tuned on other
 * tanks than these (see the decision record on loss weights).
 */
abstract class Rankings {
    /** First hidden tank: those below were used while tuning, or looked at since. */
    private static final long FRESH = 40_000;
    /** A ranking holds when it does so in this share of the tanks, one of a few; in the others the two are hardly apart. */
    private static final double SHARE = 0.9;

    private static final Decision LEAVE = Decision.LEAVE_ALONE;
    private static final double[] FEEDS = {1, 0.5, 0};
    /** Mark of a choice that is no longer sound, % of the stock. */
    private static final double SOUND = 0.15;

    /** Hidden tanks for each species and setting. */
    abstract int tanks();

    /** Cases of a setting over species, until there are enough of those that are meant. */
    private List<RankedCase> cases(Function<RankingTanks, Scenario> setting, Predicate<RankedCase> meant) {
        return cases(setting, meant, UnaryOperator.identity());
    }

    private List<RankedCase> cases(
            Function<RankingTanks, Scenario> setting, Predicate<RankedCase> meant, UnaryOperator<RankedCase> seen) {
        List<RankedCase> cases = new ArrayList<>();
        for (RankingTanks species : RankingTanks.values()) {
            Scenario s = setting.apply(species);
            int found = 0;
            for (long v = FRESH; found < tanks() && v < FRESH + 4L * tanks(); v++) {
                RankedCase c = RankedCase.at(s, "careful", v, 0);
                if (meant.test(c)) {
                    cases.add(seen.apply(c));
                    found++;
                }
            }
            assertThat(found).as("tanks of " + s.id()).isEqualTo(tanks());
        }
        return cases;
    }

    private static void holds(List<RankedCase> cases, Predicate<RankedCase> ranking) {
        List<String> fails = cases.stream()
                .filter(ranking.negate())
                .map(RankedCase::toString)
                .toList();
        assertThat(cases).isNotEmpty();
        assertThat(fails.size())
                .as(() -> fails.size() + " of " + cases.size() + " fail:\n" + String.join("\n", fails))
                .isLessThanOrEqualTo((int) Math.ceil((1 - SHARE) * cases.size()));
    }

    private static List<Decision> feedsAndChanges(double... changes) {
        List<Decision> all = new ArrayList<>();
        for (double change : changes) {
            for (double feed : FEEDS) {
                all.add(LEAVE.withFeed(feed).withChange(change));
            }
        }
        return all;
    }

    private static boolean toxic(RankedCase c) {
        return c.toxicAmmonia() > 0.1;
    }

    private static boolean nitriteHarms(RankedCase c) {
        return c.effectiveNitrite() > guidance(c).nitriteMgPerL()
                && c.toxicAmmonia() < guidance(c).ammoniaMgPerL();
    }

    private static Species.Guidance guidance(RankedCase c) {
        Scenario.Fish fish =
                java.util.Objects.requireNonNull(c.book().scenario().fish());
        return Species.byId(fish.species()).guidance();
    }

    @Test
    void ranking01InTheAmmoniaPhaseAHalfChangeBeatsNoneAndLessFeedBeatsFull() {
        for (Keeper keeper : new Keeper[] {Keeper.ONCE_A_DAY, Keeper.AWAY_TWO_DAYS}) {
            List<RankedCase> cases = cases(t -> t.ammonia(keeper), Rankings::toxic);
            cases.forEach(c -> c.with(feedsAndChanges(0, 0.5, 0.75)));
            holds(cases, c -> c.least(d -> d.change() == 0 && d.feed() < 1) < c.loss(LEAVE));
            for (double feed : FEEDS) {
                holds(cases, c -> c.least(d -> d.change() >= 0.5 && d.feed() == feed) < c.loss(LEAVE.withFeed(feed)));
            }
        }
    }

    @Test
    void ranking02InTheNitritePhaseSaltComesFirstAndWithoutSaltAChange() {
        List<RankedCase> cases = cases(t -> t.nitrite(Keeper.ONCE_A_DAY), Rankings::nitriteHarms);
        cases.forEach(RankedCase::tried);
        holds(cases, c -> c.best().saltG() > 0);
        holds(cases, c -> c.least(d -> d.saltG() > 0 && d.change() == 0) < c.least(d -> d.saltG() == 0));
        List<RankedCase> bare = cases(t -> t.nitriteWithoutSalt(Keeper.ONCE_A_DAY), Rankings::nitriteHarms);
        bare.forEach(RankedCase::tried);
        holds(bare, c -> c.least(d -> d.change() > 0) < c.least(d -> d.change() == 0));
    }

    @Test
    void ranking03WithEnoughChlorideAndAllElseWellFeedAndLeaveAlone() {
        List<RankedCase> cases = cases(
                RankingTanks::covered,
                c -> c.toxicAmmonia() < 0.6 * guidance(c).ammoniaMgPerL()
                        && c.pad(Pad.NITRITE) > 0.1
                        && c.effectiveNitrite() < 0.5 * guidance(c).nitriteMgPerL());
        cases.forEach(c -> c.tried(
                LEAVE.withSalt(c.book().saltFor(100)), LEAVE.withSalt(c.book().saltFor(300))));
        holds(cases, c -> c.regret(LEAVE) == 0);
    }

    @Test
    void ranking04AChangeWithItsChlorineIsWorstOfAll() {
        for (boolean free : new boolean[] {true, false}) {
            List<RankedCase> cases = cases(t -> t.chlorinated(free), c -> true);
            Decision raw = LEAVE.withFeed(0).withChange(0.5).withNeutralise(false);
            cases.forEach(c -> c.tried(raw, raw.withFeed(0.5), raw.withFeed(1)));
            holds(cases, c -> c.least(d -> !d.neutralise()) > c.most(Decision::neutralise));
        }
    }

    @Test
    void ranking05BeforeThreeDaysAwayHoldTheFeedAndMakeItSafe() {
        List<RankedCase> ammonia = cases(t -> t.ammonia(Keeper.AWAY_THREE_DAYS), Rankings::toxic);
        ammonia.forEach(RankedCase::tried);
        holds(ammonia, c -> c.amongBest(d -> d.feed() == 0 && d.change() > 0));
        holds(ammonia, c -> c.dangerous(LEAVE));
        List<RankedCase> nitrite = cases(t -> t.nitrite(Keeper.AWAY_THREE_DAYS), Rankings::nitriteHarms);
        nitrite.forEach(RankedCase::tried);
        holds(nitrite, c -> c.amongBest(d -> d.feed() == 0 && d.saltG() + d.change() > 0));
        holds(nitrite, c -> c.dangerous(LEAVE));
    }

    @Test
    void ranking06RaisingPhAtHighAmmoniaIsWorseThanNothingAndDilutingComesFirst() {
        List<RankedCase> cases =
                cases(t -> t.sour(Keeper.ONCE_A_DAY), c -> c.pad(Pad.AMMONIA) > 4 && c.pad(Pad.PH) < 7.4);
        cases.forEach(c -> {
            double lift = 100 - c.pad(Pad.ALKALINITY);
            Decision hold = LEAVE.withFeed(0);
            c.with(List.of(
                    hold,
                    hold.withSodaAsh(c.book().bicarbonateFor(lift) * 53 / 84),
                    hold.withBicarbonate(c.book().bicarbonateFor(lift)),
                    hold.withChange(0.5),
                    hold.withChange(0.25)));
        });
        holds(cases, c -> c.least(d -> d.sodaAshG() + d.bicarbonateG() > 0) > c.loss(LEAVE.withFeed(0)));
        holds(cases, c -> c.best().change() > 0);
    }

    @Test
    void ranking07WhereTheAirIsOffRestoringItBeatsAnyChange() {
        List<RankedCase> cases = cases(RankingTanks::airless, c -> !c.book().airSeenOn());
        List<Decision> off = feedsAndChanges(0, 0.25, 0.5, 0.75).stream()
                .map(d -> d.withAir(Air.OFF))
                .toList();
        cases.forEach(c -> {
            List<Decision> all = new ArrayList<>(off);
            all.add(LEAVE);
            all.add(LEAVE.withFeed(0));
            c.with(all);
        });
        holds(cases, c -> c.most(d -> d.air() == Air.ON) < c.least(d -> d.air() == Air.OFF));
    }

    @Test
    void ranking08FeedingBeggarsAtAToxicAmmoniaOfATenthIsNotSound() {
        for (Keeper keeper : new Keeper[] {Keeper.ONCE_A_DAY, Keeper.AWAY_TWO_DAYS}) {
            List<RankedCase> cases =
                    cases(t -> t.begging(keeper), c -> c.toxicAmmonia() > 0.07 && c.toxicAmmonia() < 0.2);
            cases.forEach(RankedCase::tried);
            holds(cases, c -> c.regret(LEAVE) >= SOUND);
        }
    }

    /** Twice a day somebody may still mend it the same evening: then it is the habit that is not sound. */
    @Test
    void ranking08FeedingBeggarsTwiceADayIsNotSoundAsAHabit() {
        List<RankedCase> cases = cases(
                t -> t.begging(Keeper.TWICE_A_DAY),
                c -> c.toxicAmmonia() > 0.07 && c.toxicAmmonia() < 0.2,
                RankedCase::keptUp);
        cases.forEach(RankedCase::tried);
        holds(cases, c -> c.regret(LEAVE) >= SOUND);
    }

    @Test
    void ranking09WithoutFishPatienceIsBest() {
        List<RankedCase> cases = cases(RankingTanks::fishless, c -> true);
        cases.forEach(c -> c.tried(over(c), LEAVE.withFilter(FilterCare.SCRUB), LEAVE.withChange(0.95)));
        holds(cases, c -> Math.min(c.regret(LEAVE), c.regret(c.patient())) == 0);
        holds(cases, c -> c.loss(over(c)) > patience(c));
        holds(cases, c -> c.loss(LEAVE.withFilter(FilterCare.SCRUB)) > patience(c));
        holds(cases, c -> c.loss(LEAVE.withChange(0.95)) > patience(c));
        for (double share : new double[] {0.5, 1}) {
            holds(cases, c -> c.loss(LEAVE.withStock(share)) > patience(c));
        }
    }

    /** Waiting, or topping up as the rules say. */
    private static double patience(RankedCase c) {
        return Math.min(c.loss(LEAVE), c.loss(c.patient()));
    }

    private static Decision over(RankedCase c) {
        return LEAVE.withAmmoniumChloride(Math.rint(c.book().ammoniumFor(8 - c.pad(Pad.AMMONIA))));
    }

    /** Ready by the ammonia alone, with nitrite high; and four times what the filter proved. */
    @Test
    void ranking10FullStockOnHalfAFilterIsDangerousAndStockingWhatWasProvedIsRight() {
        List<RankedCase> half = cases(RankingTanks::halfReady, c -> c.pad(Pad.NITRITE) >= 4 && c.pad(Pad.AMMONIA) < 1);
        half.forEach(RankedCase::tried);
        holds(half, c -> c.dangerous(LEAVE.withStock(1)));
        List<RankedCase> young = cases(RankingTanks::provedAQuarter, c -> true);
        young.forEach(RankedCase::tried);
        holds(young, c -> c.regret(LEAVE.withStock(1)) >= SOUND);
        List<RankedCase> ripe = cases(RankingTanks::proved, c -> c.pad(Pad.NITRITE) < 0.5 && c.pad(Pad.AMMONIA) < 0.5);
        ripe.forEach(RankedCase::tried);
        holds(ripe, c -> c.amongBest(d -> d.stock() > 0));
    }

    @Test
    void ranking11FeedingColdFishInFullBeforeAnAbsenceIsCostly() {
        List<RankedCase> cases = cases(RankingTanks::chilled, c -> true);
        cases.forEach(RankedCase::tried);
        holds(cases, c -> c.regret(LEAVE) >= SOUND);
    }

    /** Ammonia stood high for two days, and today's pad is written four blocks too low. */
    @Test
    void ranking12AStripThatDoesNotFitIsReadAgainAndOneThatFitsIsNot() {
        for (RankingTanks species : RankingTanks.values()) {
            Scenario s = species.ammonia(Keeper.ONCE_A_DAY);
            List<RankedCase> fits = new ArrayList<>();
            List<RankedCase> odd = new ArrayList<>();
            for (long v = FRESH; v < FRESH + tanks(); v++) {
                RankedCase read = RankedCase.at(s, "hold-feed", v, 2);
                fits.add(read.tried());
                RankedCase misread = read.misread(Pad.AMMONIA, -8);
                odd.add(misread.with(List.of(misread.patient(), read.patient())));
            }
            holds(fits, c -> c.secondStrip() < 0);
            holds(odd, c -> c.oddReadings() > 0);
            // The second strip reads what the first should have: acting on it is worth more than its price.
            holds(odd, c -> c.loss(c.options().get(0)) > c.loss(c.options().get(1)) + LossWeights.STRIP);
        }
    }
}
