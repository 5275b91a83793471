package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.strip.Pad;

/** What can be told apart on a few waters, on losses put by hand; and which options a case is scored on. */
class ScoredTest {
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Decision CHANGE = FEED.withChange(0.5);
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Scenario EMPTY = TrialScenario.fishless();
    private static final Belief BELIEF = SmallBelief.of(HERE, 3, JudgeTest.written(Pad.NITRITE, 2));

    private final HandScored followed = HandScored.of(BELIEF, FEED, CHANGE);

    @BeforeEach
    void forget() {
        Scored.forget();
    }

    private Scored on(double[]... totals) {
        return followed.with(LossesTest.of(totals, LossesTest.share(2))).scored();
    }

    /** 1 and 2 % apart on two waters: a standard error of the root of an eighth, twice that is 0.71 %. */
    @Test
    void anOptionIsWorseWhereItLosesMoreThanTwoStandardErrors() {
        Scored s = on(new double[] {3, 5}, new double[] {2, 3});
        assertThat(s.regret(0)).isEqualTo(1.5);
        assertThat(s.band(0)).isCloseTo(2 * Math.sqrt(0.125), within(1e-12));
        assertThat(s.worse(0)).isTrue();
        assertThat(s.over(1.5)).isCloseTo(1.5 - Math.sqrt(0.5), within(1e-12));
        assertThat(s.over(0.7)).isZero();
        assertThat(s.worse(1)).isFalse();
    }

    @Test
    void aTwentiethOfAPercentIsNoDifference() {
        Scored s = on(new double[] {2.04, 2.04}, new double[] {2, 2});
        assertThat(s.band(0)).isEqualTo(0.05);
        assertThat(s.worse(0)).isFalse();
        assertThat(on(new double[] {2.06, 2.06}, new double[] {2, 2}).worse(0)).isTrue();
    }

    /** What is only scattered is not told from the best. */
    @Test
    void aLossOnOneWaterAndAGainOnTheOtherTellsNothing() {
        assertThat(on(new double[] {0, 5}, new double[] {2, 2}).worse(0)).isFalse();
    }

    @Test
    void deathsAreCountedOverThoseOfTheBest() {
        double[][][] parts = new double[2][2][Component.values().length];
        for (int t = 0; t < 2; t++) {
            parts[0][t][Component.DEATHS.ordinal()] = 4;
            parts[1][t][Component.DEATHS.ordinal()] = 1;
            parts[1][t][Component.WATER.ordinal()] = 2;
        }
        Losses losses = new Losses(parts, new double[2][2][Stressor.COUNT], LossesTest.share(2), 1);
        assertThat(followed.with(losses).scored().deathsUp()).isEqualTo(3);
    }

    @Test
    void percentagesReferToTheFishThatWereCountedOrPlanned() {
        assertThat(followed.scored().stock()).isEqualTo(240);
        assertThat(HandScored.of(SmallBelief.of(EMPTY, 2), FEED).scored().stock())
                .isEqualTo(240);
        Scenario none = EMPTY.change().fish(null, null).made();
        assertThat(HandScored.of(SmallBelief.of(none, 1), FEED).scored().stock())
                .isZero();
    }

    @Test
    void moreOptionsAreFollowedOnTheSameWaters() {
        Decision hold = FEED.withFeed(0);
        Scored more = followed.scored().with(List.of(CHANGE, hold));
        assertThat(more.options()).containsExactly(FEED, CHANGE, hold);
        assertThat(more.own()).isZero();
        Losses alone = HandScored.of(BELIEF, hold).scored().losses();
        assertThat(more.losses().mean(2)).isEqualTo(alone.mean(0));
        assertThat(more.losses().mean(1)).isEqualTo(followed.scored().losses().mean(1));
    }

    private static Case choosing(Scenario s, Decision d) {
        return new Case(
                s,
                new DrillLog(List.of(
                        SmallBelief.visit(s, JudgeTest.written(Pad.NITRITE, 2)).decided(d, null))));
    }

    @Test
    void aCaseIsScoredOnTheOptionsOfItsVisitAndOnTheChoice() {
        Decision odd = FEED.withFeed(0.37).withSodaAsh(5);
        Scored with = Scored.of(choosing(HERE, odd), BELIEF, 1);
        assertThat(with.options().get(with.own())).isEqualTo(odd);
        assertThat(with.own()).isEqualTo(with.options().size() - 1);
        assertThat(with.losses().options()).isEqualTo(with.options().size()).isEqualTo(Options.MOST + 1);
        Scored among = Scored.of(choosing(HERE, FEED), BELIEF, 1);
        assertThat(among.options()).isEqualTo(with.options().subList(0, Options.MOST));
        assertThat(among.options().get(among.own())).isEqualTo(FEED);
        assertThat(among.losses().mean(among.own()))
                .isEqualTo(with.losses().mean(with.options().indexOf(FEED)));
    }

    /** Those that are looked after by somebody else come from the best that the rough look finds. */
    @Test
    void somebodyIsAskedBesideOneOfTheOptions() {
        List<Decision> options = Scored.of(choosing(HERE, FEED), BELIEF, 1).options();
        List<Decision> asked = options.stream()
                .filter(d -> d.helpers() != Decision.FollowUp.NONE)
                .toList();
        assertThat(asked).hasSize(2);
        assertThat(options).contains(asked.get(0).withFollowUp(Decision.FollowUp.NONE));
    }

    /** In a system for no fish and with a bare shelf there is little to do: rules, three changes, the filter. */
    @Test
    void fewOptionsAreAllKept() {
        Scenario none = EMPTY.change()
                .fish(null, null)
                .shelf(new Scenario.Shelf(0, 0, 0, 0, 0, 40, 10, false, false))
                .made();
        Scored s = Scored.of(choosing(none, FEED), SmallBelief.of(none, 1), 1);
        assertThat(s.options()).contains(FEED.withChange(0.25), FEED.withChange(0.75));
        assertThat(s.options()).extracting(Decision::filter).contains(Decision.FilterCare.SCRUB);
        assertThat(s.options()).hasSizeBetween(6, Options.MOST);
        assertThat(s.options().get(0).withFollowUp(Decision.FollowUp.CALL)).isIn(s.options());
    }

    @Test
    void theLatestCaseIsKeptUntilAnotherComes() {
        Scored first = Scored.of(choosing(HERE, FEED), 3);
        assertThat(Scored.of(choosing(HERE, FEED), 3)).isSameAs(first);
        assertThat(first.losses().tanks()).isEqualTo(3 * Belief.STRATA);
        Scored other = Scored.of(choosing(HERE, CHANGE), 3);
        assertThat(other.options().get(other.own())).isEqualTo(CHANGE);
        assertThat(Scored.of(choosing(HERE, FEED), 3)).isNotSameAs(first);
        assertThat(Scored.of(choosing(HERE, FEED), 2).losses().tanks()).isEqualTo(2 * Belief.STRATA);
        Scored again = Scored.of(choosing(HERE, FEED), 2);
        Scored.forget();
        assertThat(Scored.of(choosing(HERE, FEED), 2)).isNotSameAs(again);
    }
}
