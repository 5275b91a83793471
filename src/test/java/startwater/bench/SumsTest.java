package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import startwater.fish.Species;
import startwater.quantity.Molar;
import startwater.quantity.Units;
import startwater.water.Dose;
import startwater.water.WaterChange;

/** The sums against printed examples, and against what must hold of any such sum. */
class SumsTest {
    /** SRAC 463 (Durborow, Crosby and Brunson 1992): 3 mg/L, pH 8.6, 30 °C leave 0.73 mg/L. */
    @Test
    void toxicAmmoniaReproducesTheExtensionExample() {
        Sum sum = WaterSums.toxicAmmonia(3, 8.6, 30);
        assertThat(sum.answer().value()).isCloseTo(0.73, within(0.005));
        assertThat(sum.answer().unit()).isEqualTo(Unit.MG_N_PER_L);
        assertThat(sum.value("nh3")).isCloseTo(0.73 * 1.216, within(0.006));
        assertThat(sum.value("fraction")).isCloseTo(0.2422, within(0.0005));
    }

    /** EN 25814 prints 8.26 at 25 °C; the altitude value is worked by hand from the pressure term. */
    @Test
    void oxygenMatchesTheStandardAndFallsWithHeightAndSalt() {
        assertThat(WaterSums.oxygen(25, 0, 0).answer().value()).isCloseTo(8.26, within(0.01));
        Sum high = WaterSums.oxygen(25, 1000, 5);
        assertThat(high.value("fresh") * high.value("pressure") * high.value("salt"))
                .isCloseTo(high.answer().value(), within(1e-12));
        assertThat(high.value("pressure")).isCloseTo(7.30 / 8.26, within(0.002));
        assertThat(high.value("salt")).isLessThan(1);
    }

    @Test
    void aWaterChangeOfTheShareReachesTheTarget() {
        Random random = new Random(11);
        for (int i = 0; i < 500; i++) {
            double now = 10 * random.nextDouble();
            double source = 10 * random.nextDouble();
            double target = now + (source - now) * random.nextDouble();
            Sum sum = WaterSums.waterChange(now, target, source);
            assertThat(WaterChange.after(now, source, sum.value("fraction"))).isCloseTo(target, within(1e-12));
            assertThat(sum.answer().value()).isCloseTo(100 * sum.value("fraction"), within(1e-12));
        }
    }

    @Test
    void aWaterChangeCannotPassEitherWater() {
        assertThatThrownBy(() -> WaterSums.waterChange(4, 0.9, 1))
                .isInstanceOfSatisfying(RefusedInputException.class, e -> {
                    assertThat(e.input()).isEqualTo("target");
                    assertThat(e.reason()).isEqualTo(RefusedInputException.Reason.TARGET_NOT_BETWEEN);
                });
        assertThatThrownBy(() -> WaterSums.waterChange(4, 4.1, 1)).isInstanceOf(RefusedInputException.class);
        assertThat(WaterSums.waterChange(4, 1, 1).answer().value()).isEqualTo(100);
        assertThat(WaterSums.waterChange(2, 2, 2).answer().value()).isZero();
    }

    @Test
    void theSaltBringsChlorideToTheRatioOnEitherBasis() {
        Random random = new Random(12);
        for (int i = 0; i < 500; i++) {
            double volumeL = 1 + 5000 * random.nextDouble();
            double nitrite = 10 * random.nextDouble();
            double ratio = 3 + 12 * random.nextDouble();
            double chloride = 0.9 * ratio * nitrite * random.nextDouble();
            Sum sum = DoseSums.salt(volumeL, nitrite, chloride, ratio);
            double perMg = 1000 * Dose.SODIUM_CHLORIDE.chlorideGPerG() / volumeL;
            assertThat(chloride + sum.value("per_ion") * perMg)
                    .isCloseTo(ratio * Units.nitriteIonFromN(nitrite), within(1e-9));
            assertThat(chloride + sum.value("per_n") * perMg).isCloseTo(ratio * nitrite, within(1e-9));
        }
    }

    /** The older form of the rule: (10 x NO2 - Cl) x 1.65 mg salt per litre (SRAC 462; formula from memory). */
    @Test
    void saltAgreesWithTheHandbookFormula() {
        double ion = Units.nitriteIonFromN(2);
        assertThat(DoseSums.salt(1000, 2, 20, 10).answer().value()).isCloseTo((10 * ion - 20) * 1.65, within(0.1));
    }

    @Test
    void noSaltIsNeededWhereChlorideIsEnough() {
        Sum sum = DoseSums.salt(100, 1, 20, 10);
        assertThat(sum.value("per_ion")).isPositive();
        assertThat(sum.value("per_n")).isZero();
        assertThat(sum.notes()).doesNotContain("note.chloride-is-enough");
        assertThat(DoseSums.salt(100, 1, 33, 10).notes()).contains("note.chloride-is-enough");
    }

    /** The arithmetic of the trade: 63.5 g of baking soda lift 3785 L by 10 mg/L. */
    @Test
    void bakingSodaLiftsAlkalinityByStoichiometry() {
        assertThat(DoseSums.buffer(3785, 50, 60).answer().value()).isCloseTo(63.5, within(0.1));
    }

    @Test
    void theBakingSodaWeighedOutGivesTheTargetInTheWater() {
        Sum dose = DoseSums.buffer(250, 40, 100);
        double mgPerL = 1000 * dose.answer().value() / 250;
        assertThat(ClosedWater.after(26, 40, 7.1, new ClosedWater.Change(mgPerL, 0, 0, 0))
                        .value("alkalinity"))
                .isCloseTo(100, within(1e-9));
    }

    @Test
    void bakingSodaIsSpreadOverDaysOfThirty() {
        assertThat(DoseSums.buffer(100, 40, 70).value("days")).isEqualTo(1);
        assertThat(DoseSums.buffer(100, 40, 71).value("days")).isEqualTo(2);
        assertThat(DoseSums.buffer(100, 40, 100).value("each_day_g"))
                .isCloseTo(DoseSums.buffer(100, 40, 70).answer().value(), within(1e-12));
        assertThat(DoseSums.buffer(100, 40, 40).value("each_day_g")).isZero();
        assertThatThrownBy(() -> DoseSums.buffer(100, 40, 39)).isInstanceOf(RefusedInputException.class);
    }

    /** Formula masses: 3.819 mg of NH4Cl for 1 mg of nitrogen. */
    @Test
    void ammoniumChlorideFollowsItsFormula() {
        assertThat(DoseSums.ammoniumChloride(1000, 2).answer().value()).isCloseTo(7.638, within(0.002));
    }

    @Test
    void ammoniaSolutionAndAmmoniumChlorideBringTheSameNitrogen() {
        Sum sum = DoseSums.ammoniaSolution(420, 2.5, 9.5);
        double fromSolution = sum.value("solution_g") * 0.095 * 1000 * Molar.N / Molar.NH3;
        double fromSalt = sum.value("nh4cl_g") * 1000 * Molar.N / Molar.NH4CL;
        assertThat(fromSolution).isCloseTo(420 * 2.5, within(1e-9));
        assertThat(fromSalt).isCloseTo(420 * 2.5, within(1e-9));
    }

    /** A reagent maker's note: 500 mL at 2.0 mg/L take 7.0 mg. Formula masses: 3 mg/L of chloramine leave 0.59. */
    @Test
    void thiosulfateMatchesTheReagentMakersNote() {
        assertThat(DoseSums.dechlorinate(0.5, 2.0).answer().value()).isCloseTo(0.0070, within(1e-9));
        assertThat(DoseSums.dechlorinate(100, 3).value("ammonia_left")).isCloseTo(0.59, within(0.005));
    }

    /** Timmons and Ebeling's 0.092: 1 kg of 40 % feed gives 36.8 g of TAN; 4,000 kg of fish at 1.5 % eat 60 kg. */
    @Test
    void theLoadIsTheFeedWhoseAmmoniaTheFilterClears() {
        Sum sum = FeedSums.load(36.8, 1000, 40, 1.5);
        assertThat(sum.value("feed_g")).isCloseTo(1000, within(1e-9));
        assertThat(sum.value("fish_kg")).isCloseTo(4000.0 / 60, within(1e-9));
        assertThat(FeedSums.load(36.8, 1000, 0.4, 1.5).value("feed_g")).isCloseTo(1000, within(1e-9));
    }

    @Test
    void theRationIsTheTableTimesTheFish() {
        Species species = Species.byId("nile-tilapia");
        Sum sum = FeedSums.ration(200, 12, species, 28);
        assertThat(sum.answer().value()).isCloseTo(200 * 12 * species.tableRationFraction(12, 28), within(1e-9));
        assertThat(sum.value("ration_percent")).isBetween(5.0, 9.0);
        assertThat(FeedSums.ration(200, 12, species, 10).notes()).contains("note.no-appetite");
        assertThat(sum.notes()).doesNotContain("note.no-appetite");
        assertThatThrownBy(() -> FeedSums.ration(2.5, 12, species, 28)).isInstanceOf(RefusedInputException.class);
    }

    @Test
    void twiceTheWaterTakesTwiceTheDose() {
        assertThat(DoseSums.salt(200, 2, 5, 10).answer().value())
                .isCloseTo(2 * DoseSums.salt(100, 2, 5, 10).answer().value(), within(1e-9));
        assertThat(DoseSums.buffer(200, 20, 90).answer().value())
                .isCloseTo(2 * DoseSums.buffer(100, 20, 90).answer().value(), within(1e-9));
        assertThat(DoseSums.ammoniumChloride(200, 2).answer().value())
                .isCloseTo(2 * DoseSums.ammoniumChloride(100, 2).answer().value(), within(1e-9));
        assertThat(DoseSums.dechlorinate(200, 2).answer().value())
                .isCloseTo(2 * DoseSums.dechlorinate(100, 2).answer().value(), within(1e-9));
    }

    @Test
    void impossibleNumbersAreRefusedWithTheirName() {
        assertRefused("ph", () -> WaterSums.toxicAmmonia(1, 15, 25));
        assertRefused("tan", () -> WaterSums.toxicAmmonia(-1, 7, 25));
        assertRefused("temperature", () -> WaterSums.toxicAmmonia(1, 7, Double.NaN));
        assertRefused("volume", () -> DoseSums.dechlorinate(0, 1));
        assertRefused("volume", () -> DoseSums.buffer(-5, 1, 2));
        assertRefused("strength", () -> DoseSums.ammoniaSolution(10, 1, 101));
        assertRefused("altitude", () -> WaterSums.oxygen(20, 4001, 0));
        assertRefused("protein", () -> FeedSums.load(1, 100, 0, 3));
        assertRefused("fish", () -> FeedSums.ration(0, 5, Species.byId("nile-tilapia"), 28));
    }

    private static void assertRefused(String input, Runnable sum) {
        assertThatThrownBy(sum::run).isInstanceOfSatisfying(RefusedInputException.class, e -> assertThat(e.input())
                .isEqualTo(input));
    }
}
