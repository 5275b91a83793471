package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** Which ways a learner is shown beside the one chosen, and which of them are kept. */
class OptionsTest {
    private static final Decision NOTHING = Decision.LEAVE_ALONE;
    private static final Decision HOLD = NOTHING.withFeed(0);
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Scenario EMPTY = TrialScenario.fishless();
    private static final Belief WITH_FISH = SmallBelief.of(HERE, 2);
    private static final Belief WITHOUT = SmallBelief.of(EMPTY, 2, JudgeTest.written(Pad.AMMONIA, 1));

    /** What a book holds at the first visit. */
    private static final class Book {
        private final Notebook book;
        private final boolean fish;
        private boolean air = true;
        private int flow = 100;

        Book(Scenario s) {
            book = new Notebook(s);
            fish = s.fish() != null;
        }

        Book stillAir() {
            air = false;
            return this;
        }

        Book flow(int percent) {
            flow = percent;
            return this;
        }

        /** Ammonia, nitrite, alkalinity and chloride are read, mg/L. */
        Notebook read(double ammonia, double nitrite, double alkalinity, double chloride) {
            @Nullable FishMood mood = fish ? FishMood.BEGGING : null;
            int minute = 8 * 1440 + 420;
            int toCome = book.stocking().planned();
            book.arrive(minute, minute + 600, new Notebook.Sight(26, 7, mood, air, flow, 0, fish ? 240 : 0, toCome));
            book.read(Pad.AMMONIA, ammonia);
            book.read(Pad.NITRITE, nitrite);
            book.read(Pad.PH, 7.2);
            book.read(Pad.ALKALINITY, alkalinity);
            book.read(Pad.CHLORIDE, chloride);
            return book;
        }
    }

    private static List<Decision> grid(Scenario s, double nitrite, double alkalinity, double chloride) {
        return Options.grid(WITH_FISH, new Book(s).read(0.5, nitrite, alkalinity, chloride));
    }

    private static List<Decision> shelf(Scenario s, Scenario.Shelf shelf, double nitrite, double alkalinity) {
        return grid(s.change().shelf(shelf).made(), nitrite, alkalinity, 15);
    }

    private static Scenario.Shelf grams(double salt, double bicarbonate) {
        return new Scenario.Shelf(salt, bicarbonate, 0, 0, 100, 40, 10, true, false);
    }

    @Test
    void theStandingRulesComeFirstThenNothingThenHoldingTheFeed() {
        Notebook book = new Book(HERE).read(0.5, 2, 150, 15);
        List<Decision> grid = Options.grid(WITH_FISH, book);
        assertThat(grid.get(0)).isEqualTo(Policies.CAREFUL.decide(book));
        assertThat(grid.subList(1, 3)).containsExactly(NOTHING, HOLD);
        assertThat(grid).doesNotHaveDuplicates();
    }

    @Test
    void withFishFeedAndChangeAreCombined() {
        List<Decision> grid = grid(HERE, 0, 150, 15);
        for (double change : new double[] {0, 0.25, 0.5, 0.75}) {
            for (double feed : new double[] {0, 0.5, 1}) {
                assertThat(grid).contains(NOTHING.withFeed(feed).withChange(change));
            }
        }
        assertThat(grid).noneMatch(d -> d.saltG() > 0 || d.bicarbonateG() > 0 || d.air() != Air.ON);
    }

    /**
     * At 2 mg/L nitrite-N the ion is 6.6 mg/L: 100 mg/L of chloride are wanted, 85 are missing. In 2400 L that is 204 g of
     * chloride, which 336 g of salt hold (58.44 g a mole, 35.45 of them chloride).
     */
    @Test
    void theTaughtDoseOfSaltGoesWithEveryFeedAndChange() {
        List<Decision> grid = grid(HERE, 2, 150, 15);
        assertThat(grid).filteredOn(d -> d.saltG() == 336).hasSizeGreaterThanOrEqualTo(12);
        assertThat(grid).contains(HOLD.withChange(0.75).withSalt(336), NOTHING.withSalt(336));
        assertThat(shelf(HERE, grams(100, 0), 2, 150)).contains(NOTHING.withSalt(100));
    }

    @Test
    void saltIsNoOptionWithoutNitriteOrWhereChlorideIsThere() {
        assertThat(grid(HERE, 0.09, 150, 15)).noneMatch(d -> d.saltG() > 0);
        assertThat(grid(HERE, 0.1, 150, 15)).contains(HOLD.withChange(0.5).withSalt(336));
        assertThat(grid(HERE, 2, 150, 95.1)).noneMatch(d -> d.saltG() > 0);
        assertThat(grid(HERE, 2, 150, 95)).anyMatch(d -> d.saltG() > 0);
        assertThat(shelf(HERE, grams(0, 0), 2, 150)).noneMatch(d -> d.saltG() > 0);
    }

    /** 30 mg/L in 2400 L are 72 g of lime, 1.439 equivalents, which 121 g of baking soda bring at 84.01 g each. */
    @Test
    void bufferIsAnOptionBelowAHundred() {
        List<Decision> grid = grid(HERE, 0, 99, 15);
        assertThat(grid)
                .contains(NOTHING.withBicarbonate(121), HOLD.withChange(0.5).withBicarbonate(121));
        assertThat(grid(HERE, 0, 100, 15)).noneMatch(d -> d.bicarbonateG() > 0);
        assertThat(shelf(HERE, grams(0, 60), 0, 50)).contains(NOTHING.withBicarbonate(60));
        assertThat(shelf(HERE, grams(0, 0), 0, 50)).noneMatch(d -> d.bicarbonateG() > 0);
    }

    /** What was not read is believed: the tap holds 12 to 18 mg/L of chloride, and feed brings hardly any. */
    @Test
    void whereNothingWasReadTheBeliefStandsIn() {
        Notebook unread = new Notebook(HERE);
        double nitrite = WITH_FISH
                .band(w -> w.sim().state()[startwater.tank.TankLayout.NITRITE])
                .middle();
        double chloride = WITH_FISH
                .band(w -> w.sim().state()[startwater.tank.TankLayout.CHLORIDE])
                .middle();
        assertThat(nitrite).isGreaterThan(0.1);
        assertThat(chloride).isBetween(12.0, 18.5);
        double wanted = Math.max(100, 10 * nitrite * 46.0055 / 14.007);
        double grams = (wanted - chloride) * 2400 / 1000 * 58.44 / 35.45;
        assertThat(Options.grid(WITH_FISH, unread).stream()
                        .mapToDouble(Decision::saltG)
                        .max()
                        .orElseThrow())
                .isCloseTo(grams, within(1.0));
    }

    @Test
    void whereTheAirStandsLeavingItSoIsAnOption() {
        List<Decision> grid = Options.grid(WITH_FISH, new Book(HERE).stillAir().read(0.5, 0, 150, 15));
        assertThat(grid)
                .contains(NOTHING.withAir(Air.OFF), NOTHING.withAir(Air.OFF).withChange(0.5));
    }

    @Test
    void aFilterThatPassesLessWaterMayBeCaredForInEveryWay() {
        Notebook slow = new Book(HERE).flow(80).read(0.5, 0, 150, 15);
        List<Decision> grid = Options.grid(WITH_FISH, slow);
        assertThat(grid).extracting(Decision::filter).contains(FilterCare.values());
        assertThat(grid).contains(NOTHING.withFilter(FilterCare.RINSE));
        Notebook free = new Book(HERE).flow(90).read(0.5, 0, 150, 15);
        assertThat(Options.grid(WITH_FISH, free)).extracting(Decision::filter).containsOnly(FilterCare.LEAVE);
    }

    @Test
    void spareAirIsAnOptionWhereThereIsSome() {
        Scenario s = HERE.change()
                .shelf(new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false, 0, 1.5))
                .made();
        Notebook book = new Book(s).read(0.5, 0, 150, 15);
        Decision rules = Policies.CAREFUL.decide(book);
        assertThat(Options.grid(WITH_FISH, book))
                .contains(NOTHING.withAir(Air.SPARE), HOLD.withAir(Air.SPARE), rules.withAir(Air.SPARE));
        assertThat(grid(HERE, 0, 150, 15)).noneMatch(d -> d.air() == Air.SPARE);
    }

    private static List<Decision> empty(Scenario s, double alkalinity) {
        return Options.grid(WITHOUT, new Book(s).read(1, 0.5, alkalinity, 15));
    }

    /** Ammonium chloride holds 14.007 of 53.491 g as nitrogen. */
    @Test
    void withoutFishAmmoniaIsDosedToTwoFourAndEight() {
        double now = WITHOUT.band(w -> Observation.padValue(Pad.AMMONIA, w.sim().state()))
                .middle();
        double[] grams = Arrays.stream(new double[] {2, 4, 8})
                .map(goal -> Math.rint(10 * (goal - now) * 2400 / (1000 * 14.007 / 53.491)) / 10)
                .toArray();
        assertThat(now).isLessThan(2);
        List<Decision> grid = empty(EMPTY, 50);
        assertThat(grid.get(1)).isEqualTo(NOTHING);
        for (double dose : grams) {
            Decision d = NOTHING.withAmmoniumChloride(dose);
            assertThat(grid).contains(d, d.withBicarbonate(121));
        }
        assertThat(grid).contains(NOTHING.withBicarbonate(121), NOTHING.withFilter(FilterCare.SCRUB));
        assertThat(grid).contains(NOTHING.withChange(0.25), NOTHING.withChange(0.5), NOTHING.withChange(0.75));
        assertThat(empty(EMPTY, 150)).noneMatch(d -> d.bicarbonateG() > 0);
        assertThat(empty(EMPTY, 150)).contains(NOTHING.withAmmoniumChloride(grams[0]));
    }

    @Test
    void noMoreAmmoniaIsDosedThanThereIs() {
        Scenario little = EMPTY.change().shelf(grams(0, 0)).made();
        assertThat(empty(little, 150)).noneMatch(d -> d.ammoniumChlorideG() > 0);
        Scenario some = EMPTY.change()
                .shelf(new Scenario.Shelf(0, 0, 0, 2.5, 0, 40, 10, true, false))
                .made();
        assertThat(empty(some, 150)).contains(NOTHING.withAmmoniumChloride(2.5));
        assertThat(empty(some, 150)).allMatch(d -> d.ammoniumChlorideG() <= 2.5);
    }

    @Test
    void aFifthHalfOrAllOfTheFishMayComeAndNoneWhereNoneAreToCome() {
        List<Decision> grid = empty(EMPTY, 150);
        for (double share : new double[] {0.2, 0.5, 1}) {
            assertThat(grid)
                    .contains(NOTHING.withStock(share), NOTHING.withStock(share).withFeed(0.5));
        }
        assertThat(grid(HERE, 0, 150, 15)).noneMatch(d -> d.stock() > 0);
        assertThat(grid).noneMatch(d -> d.ripeMedia() > 0);
    }

    @Test
    void aBagOfRipeMediaIsHungInWholeAloneOrWithFish() {
        Scenario bag = EMPTY.change()
                .shelf(new Scenario.Shelf(0, 0, 0, 200, 0, 40, 10, true, false, 0.3, 0))
                .made();
        assertThat(empty(bag, 150))
                .contains(NOTHING.withRipeMedia(1), NOTHING.withStock(0.5).withRipeMedia(1));
    }

    /** Fish that stay in the nursery live by its filter: a quarter at most goes, or as much as goes with its fish. */
    @Test
    void ofANurserysMediaAQuarterOrTheShareOfTheFish() {
        Scenario s =
                BentDrill.beside("beside").setIn("shelf", "ripeMediaShare", 0).made();
        List<Decision> grid = empty(s, 150);
        assertThat(grid)
                .contains(
                        NOTHING.withRipeMedia(0.25),
                        NOTHING.withStock(0.2).withRipeMedia(0.2),
                        NOTHING.withStock(1).withRipeMedia(1));
        assertThat(grid).noneMatch(d -> d.stock() == 0 && d.ripeMedia() > 0.25);
    }

    /** The rules, nothing, holding, seven changes, salt, buffer, and half the feed, which is no kind of its own. */
    private static final List<Decision> MANY = many();

    private static final double[] LOSSES = {3, 8, 9, 0.5, 0.4, 0.3, 0.2, 0.1, 0.6, 0.7, 5, 4, 1};

    private static List<Decision> many() {
        List<Decision> all = new ArrayList<>(List.of(NOTHING.withChange(0.1), NOTHING, HOLD));
        for (int i = 0; i < 7; i++) {
            all.add(NOTHING.withChange(0.2 + 0.1 * i));
        }
        all.add(NOTHING.withSalt(100));
        all.add(NOTHING.withBicarbonate(100));
        all.add(NOTHING.withFeed(0.5));
        return all;
    }

    @Test
    void ofManyTheBestFiveAndTheBestOfAnotherKindAreKept() {
        List<Decision> kept = Options.pruned(MANY, LOSSES);
        assertThat(kept)
                .containsExactly(
                        MANY.get(0),
                        NOTHING,
                        HOLD,
                        MANY.get(7),
                        MANY.get(6),
                        MANY.get(5),
                        MANY.get(4),
                        MANY.get(3),
                        MANY.get(11));
    }

    @Test
    void ofEqualsTheEarlierIsKept() {
        double[] equal = new double[13];
        assertThat(Options.pruned(MANY, equal).subList(0, 5))
                .containsExactly(MANY.get(0), NOTHING, HOLD, MANY.get(3), MANY.get(4));
    }

    @Test
    void nineOrFewerAreKeptAsTheyAre() {
        assertThat(Options.pruned(MANY.subList(0, 9), LOSSES)).isEqualTo(MANY.subList(0, 9));
        assertThat(Options.pruned(MANY.subList(0, 10), LOSSES)).hasSize(9);
    }

    @Test
    void stillAirIsAlwaysKept() {
        List<Decision> grid = new ArrayList<>(MANY);
        grid.add(NOTHING.withAir(Air.OFF));
        double[] losses = Arrays.copyOf(LOSSES, 14);
        losses[13] = 99;
        assertThat(Options.pruned(grid, losses))
                .contains(NOTHING.withAir(Air.OFF))
                .hasSize(9);
    }

    /** Where fish are to come two of the best do, then each share as a kind of its own; what is over goes to the best left. */
    @Test
    void whereFishAreToComeEachShareOfThemIsAKind() {
        List<Decision> grid = new ArrayList<>(List.of(NOTHING.withChange(0.1), NOTHING));
        for (int i = 0; i < 7; i++) {
            grid.add(NOTHING.withChange(0.2 + 0.1 * i));
        }
        grid.addAll(List.of(NOTHING.withStock(0.2), NOTHING.withStock(0.5), NOTHING.withStock(1)));
        double[] losses = {9, 8, 0.7, 0.6, 0.5, 0.4, 0.3, 0.2, 0.1, 30, 10, 20};
        assertThat(Options.pruned(grid, losses))
                .containsExactly(
                        grid.get(0),
                        NOTHING,
                        grid.get(8),
                        grid.get(7),
                        grid.get(10),
                        grid.get(11),
                        grid.get(9),
                        grid.get(6),
                        grid.get(5));
    }

    @Test
    void whoeverMayBeAskedIsAskedBesideTheLikeliest() {
        Decision likeliest = NOTHING.withChange(0.25).withFollowUp(FollowUp.CALL);
        List<Decision> all = Options.attended(List.of(NOTHING, likeliest), likeliest);
        assertThat(all)
                .containsExactly(NOTHING, likeliest, NOTHING.withChange(0.25).withFollowUp(FollowUp.LOOK_AGAIN));
        assertThat(Options.attended(List.of(HOLD), HOLD)).hasSize(3);
    }

    /** Each part of an act makes it another kind; how much of it does not, but for the share of fish. */
    @Test
    void aKindIsWhatIsDoneAndNotHowMuchOfIt() {
        List<Decision> unlike = List.of(
                NOTHING,
                HOLD,
                NOTHING.withChange(0.1),
                NOTHING.withSalt(1),
                NOTHING.withBicarbonate(1),
                NOTHING.withAir(Air.OFF),
                NOTHING.withAir(Air.SPARE),
                NOTHING.withStock(0.2),
                NOTHING.withStock(0.5),
                NOTHING.withStock(1),
                NOTHING.withRipeMedia(0.1),
                NOTHING.withFilter(FilterCare.RINSE),
                NOTHING.withFilter(FilterCare.SCRUB),
                NOTHING.withAmmoniumChloride(1),
                NOTHING.withFollowUp(FollowUp.CALL),
                NOTHING.withFollowUp(FollowUp.LOOK_AGAIN));
        assertThat(unlike).extracting(Options::kind).doesNotHaveDuplicates();
        assertThat(Options.kind(NOTHING)).isEqualTo("feed");
        assertThat(Options.kind(HOLD.withChange(0.5).withSalt(3).withStock(0.5).withFilter(FilterCare.RINSE)))
                .contains("change", "salt", "stock", "RINSE", "hold")
                .doesNotContain("buffer", "still", "media", "ammonium", "feed");
        assertThat(Options.kind(NOTHING.withSalt(300))).isEqualTo(Options.kind(NOTHING.withSalt(1)));
        assertThat(Options.kind(NOTHING.withFeed(0.5))).isEqualTo(Options.kind(NOTHING));
        assertThat(Options.kind(NOTHING.withChange(0.75))).isEqualTo(Options.kind(NOTHING.withChange(0.1)));
    }

    @Test
    void twoActsAreUnlikeWhereMoreThanTheGramsDiffer() {
        assertThat(FlipSearch.unlike(NOTHING.withSalt(100), NOTHING.withSalt(300)))
                .isFalse();
        assertThat(FlipSearch.unlike(NOTHING, NOTHING.withSalt(100))).isTrue();
        assertThat(FlipSearch.unlike(NOTHING, NOTHING.withFeed(0.5))).isTrue();
        assertThat(FlipSearch.unlike(NOTHING.withChange(0.25), NOTHING.withChange(0.5)))
                .isTrue();
        assertThat(FlipSearch.unlike(NOTHING.withStock(0.2), NOTHING.withStock(0.25)))
                .isTrue();
    }
}
