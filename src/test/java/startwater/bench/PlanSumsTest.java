package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Sums on what comes next, against printed examples, hand sums and what must hold of any such sum. */
class PlanSumsTest {
    /** One change undoes what the sum of the share asked for. */
    @Test
    void theChangeThatWasWorkedOutLeavesTheTarget() {
        Random random = new Random(5);
        for (int i = 0; i < 200; i++) {
            double now = 10 * random.nextDouble();
            double source = 10 * random.nextDouble();
            double target = now + (source - now) * random.nextDouble();
            double percent = WaterSums.waterChange(now, target, source).answer().value();
            assertThat(PlanSums.afterChange(now, percent, source).answer().value())
                    .isCloseTo(target, within(1e-12));
        }
    }

    /** Ten thousand small steps of making and exchanging end where the balance says, and half way at the half time. */
    @Test
    void whatIsMadeAndCarriedOffSettlesWhereTheBalanceSays() {
        Sum sum = PlanSums.settle(3, 2, 5);
        assertThat(sum.answer().value()).isCloseTo(43, within(1e-12));
        double value = 3;
        double stepDays = 0.001;
        double halfWay = Double.NaN;
        for (int i = 0; i < 400_000; i++) {
            value += stepDays * (2 - 0.05 * (value - 3));
            if (Double.isNaN(halfWay) && value >= 23) {
                halfWay = stepDays * (i + 1);
            }
        }
        assertThat(value).isCloseTo(43, within(1e-3));
        assertThat(halfWay).isCloseTo(sum.value("half_days"), within(0.01));
    }

    /** Minutes worked by hand from 7 to 2 mg/L at 5, 10 and 20 kg/m³ with 500, 400 and 400 mg/kg/h. */
    @Test
    void minutesOfOxygenAreThoseOfTheHandSum() {
        assertThat(PlanSums.airOff(7, 2, 5, 1000, 500).answer().value()).isCloseTo(120, within(1e-9));
        assertThat(PlanSums.airOff(7, 2, 10, 1000, 400).answer().value()).isCloseTo(75, within(1e-9));
        assertThat(PlanSums.airOff(7, 2, 20, 1000, 400).answer().value()).isCloseTo(37.5, within(1e-9));
        assertThat(PlanSums.airOff(2, 3, 20, 1000, 400).answer().value()).isZero();
    }

    @Test
    void tenDoublingsMakeAThousandfold() {
        assertThat(PlanSums.catchUp(1, 1024, 1.5).answer().value()).isCloseTo(15, within(1e-9));
        assertThat(PlanSums.catchUp(2, 1, 1.5).answer().value()).isZero();
    }

    @Test
    void daysLeftCountUpwardsAndDownwards() {
        assertThat(PlanSums.until(120, 80, 8).answer().value()).isEqualTo(5);
        assertThat(PlanSums.until(0.5, 2.5, 0.4).answer().value()).isCloseTo(5, within(1e-12));
    }

    /** The load sum turned round: the feed that a proof carries makes just the ammonia that was cleared. */
    @Test
    void wasteIsTheOtherSideOfTheLoad() {
        double feed = FeedSums.load(2, 940, 38, 3).answer().value();
        Sum waste = PlanSums.waste(feed, 0.38, 940);
        assertThat(waste.answer().value()).isCloseTo(2, within(1e-12));
        assertThat(waste.value("alkalinity_used") / 2).isCloseTo(3.57, within(0.005));
    }

    /** Factors as printed in handbooks: 3.285, 4.427 and 1.216. */
    @Test
    void ionsAreDividedByTheHandbookFactors() {
        Sum sum = PlanSums.asNitrogen(10);
        assertThat(10 / sum.value("nitrite_n")).isCloseTo(3.285, within(0.001));
        assertThat(10 / sum.value("nitrate_n")).isCloseTo(4.427, within(0.001));
        assertThat(10 / sum.value("ammonia_n")).isCloseTo(1.216, within(0.001));
    }

    @Test
    void aDilutedSampleIsScaledByItsParts() {
        assertThat(PlanSums.dilution(2, 1, 4).answer().value()).isCloseTo(10, within(1e-12));
        assertThat(PlanSums.dilution(2, 1, 0).answer().value()).isEqualTo(2);
    }

    /** The salt sum turned round: what it weighs out for a volume gives that volume back. */
    @Test
    void volumeBySaltIsTheOtherSideOfTheSaltSum() {
        Sum salt = DoseSums.salt(780, 4, 12, 10);
        double rise = salt.value("target_chloride") - 12;
        assertThat(PlanSums.volumeBySalt(salt.value("per_ion"), rise).answer().value())
                .isCloseTo(780, within(1e-9));
    }
}
