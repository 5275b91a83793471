package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Gut and body over one step, on problems with a solution on paper: two stages that each empty at 4.8 per day. */
class GutStepTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double RATE = 4.8;
    private static final double VOLUME = 2000;
    private static final double DAYS = 0.1;
    private static final double FIRST = 1000;
    private static final double SECOND = 400;

    private final double[] now = new double[TankLayout.length(1)];
    private final double[] to = new double[TankLayout.length(1)];
    private final Kinetics start = new Kinetics();
    private final Kinetics end = new Kinetics();
    private final GutStep gut = new GutStep();

    private void carried(double body, double living) {
        now[GUT_1] = FIRST;
        now[GUT_2] = SECOND;
        now[FISH_N] = body;
        now[REMOVED] = 7;
        to[REMOVED] = 7;
        gut.over(DAYS);
        gut.carry(now, to, start, end, VOLUME, living);
    }

    /** What the second stage holds after so many days, of those that still live. */
    private static double second(double days) {
        return (SECOND + RATE * days * FIRST) * StrictMath.exp(-RATE * days);
    }

    @Test
    void twoStagesEmptyOneIntoTheOther() {
        carried(5000, 1);
        double left = FIRST * StrictMath.exp(-RATE * DAYS);
        assertThat(to[GUT_1]).isCloseTo(left, EXACT);
        assertThat(to[GUT_2]).isCloseTo(second(DAYS), EXACT);
        assertThat(to[FISH_N]).isEqualTo(5000);
        assertThat(to[REMOVED]).isEqualTo(7);
        assertThat(gut.excreted * VOLUME).isCloseTo(FIRST + SECOND - left - second(DAYS), EXACT);
    }

    /** A parabola through both ends has the mean of its ends and a sixth of its bend, if the bend is told four times. */
    @Test
    void riseAndBendTellTheWayThatExcretionTakes() {
        start.fastingExcretion = 0.02;
        end.fastingExcretion = 0.05;
        carried(5000, 1);
        double first = RATE * SECOND / VOLUME;
        double last = RATE * second(DAYS) / VOLUME;
        assertThat(gut.rise).isCloseTo(last - first + 0.03, EXACT);
        double ofGut = gut.excreted - 0.035 * DAYS;
        assertThat((first + last) / 2 + gut.bend / 6).isCloseTo(ofGut / DAYS, EXACT);
    }

    /** On average 0.035 mg N/L a day for a tenth of a day. */
    @Test
    void fastingFishLiveOnTheirBodies() {
        start.fastingExcretion = 0.02;
        end.fastingExcretion = 0.05;
        carried(5000, 1);
        assertThat(to[FISH_N]).isCloseTo(5000 - 7, EXACT);
        assertThat(now[GUT_1] + now[GUT_2] + 5000 - to[GUT_1] - to[GUT_2] - to[FISH_N])
                .isCloseTo(gut.excreted * VOLUME, EXACT);
    }

    @Test
    void nobodyFastsOnMoreThanThereIs() {
        start.fastingExcretion = 0.02;
        end.fastingExcretion = 0.05;
        carried(3, 1);
        assertThat(to[FISH_N]).isZero();
        assertThat(gut.excreted * VOLUME).isCloseTo(FIRST + SECOND - to[GUT_1] - to[GUT_2] + 3, EXACT);
    }

    /** Deaths at a steady hazard: with k = 4.8 + hazard both stages fall by exp(-k t), and 4.8 of each k is excreted. */
    @Test
    void theDeadTakeTheirGutsOutWithThem() {
        double living = 0.9;
        carried(5000, living);
        double hazard = -StrictMath.log(living) / DAYS;
        double k = RATE + hazard;
        double fall = StrictMath.exp(-k * DAYS);
        assertThat(to[GUT_1]).isCloseTo(FIRST * fall, EXACT);
        assertThat(to[GUT_2]).isCloseTo(second(DAYS) * living, EXACT);
        assertThat(to[FISH_N]).isCloseTo(4500, EXACT);
        double excreted = RATE * SECOND * (1 - fall) / k + RATE * RATE * FIRST * (1 - (1 + k * DAYS) * fall) / (k * k);
        assertThat(gut.excreted * VOLUME).isCloseTo(excreted, within(1e-3 * excreted));
        double out = FIRST + SECOND + 5000 - to[GUT_1] - to[GUT_2] - to[FISH_N] - gut.excreted * VOLUME;
        assertThat(to[REMOVED]).isCloseTo(7 + out, EXACT);
    }

    /** Breathing goes by 1 + e / (e + a fed day's excretion); here 900 mg N a day is a fed day. */
    private static double breath(double secondStage) {
        double excretion = RATE * secondStage;
        return 1 + excretion / (excretion + 900);
    }

    @Test
    void breathingBendsAsTheGutFillsAndEmpties() {
        start.fedExcretion = 900;
        start.breathed = 30;
        carried(5000, 1);
        double perBreath = 30 / breath(SECOND);
        double middle = second(DAYS / 2);
        double line = (breath(SECOND) + breath(second(DAYS))) / 2;
        assertThat(gut.breathBend).isCloseTo(4 * perBreath * (breath(middle) - line), EXACT);
        assertThat(gut.breathRise).as("the rates at the end tell of it").isZero();
    }

    /** With the rates of the start alone, what digestion adds by the end has to be told beside them. */
    @Test
    void aFirstPassTellsHowBreathingRises() {
        start.fedExcretion = 900;
        start.breathed = 30;
        now[GUT_1] = FIRST;
        now[GUT_2] = SECOND;
        gut.over(DAYS);
        gut.carry(now, to, start, start, VOLUME, 1);
        double perBreath = 30 / breath(SECOND);
        assertThat(gut.breathRise).isCloseTo(perBreath * (breath(second(DAYS)) - breath(SECOND)), EXACT);
    }

    /** At the middle of a step half of those that die in it have died. */
    @Test
    void theDeadDoNotDigest() {
        start.fedExcretion = 900;
        start.breathed = 30;
        carried(5000, 0.8);
        double perBreath = 30 / breath(SECOND);
        double middle = breath(second(DAYS / 2) * 0.9);
        double line = (breath(SECOND) + breath(second(DAYS) * 0.8)) / 2;
        assertThat(gut.breathBend).isCloseTo(4 * perBreath * (middle - line), EXACT);
    }

    @Test
    void withoutFishNothingIsLeftOfTheStepBefore() {
        start.fedExcretion = 900;
        start.breathed = 30;
        start.fastingExcretion = 0.02;
        carried(5000, 0.8);
        gut.carry(now, to, start, start, VOLUME, 1);
        gut.none();
        assertThat(new double[] {gut.excreted, gut.rise, gut.bend, gut.breathRise, gut.breathBend})
                .containsOnly(0);
    }
}
