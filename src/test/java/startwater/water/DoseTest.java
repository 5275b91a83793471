package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;

@Tag("outside")
class DoseTest {
    @Test
    void dosingFactorsAgreeWithTheFormulaMasses() {
        ReferenceTable table = ReferenceTable.read("water/dosing-factors.csv");
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    row.text("compound") + " for " + row.text("raises"),
                    row.number("mg_per_mg"),
                    1 / mgRaisedPerMg(Dose.valueOf(row.text("compound")), row.text("raises")),
                    0.0005);
        }
    }

    private static double mgRaisedPerMg(Dose dose, String what) {
        return switch (what) {
            case "alkalinity" -> Units.caco3FromMeq(dose.alkalinityMeqPerG()) / 1000;
            case "chloride" -> dose.chlorideGPerG();
            case "tan" -> dose.tanMgPerG() / 1000;
            default -> dose.chlorineRemovedMgPerG() / 1000;
        };
    }

    /** A reprinted rule has 53 g of baking soda lift 3785 L by 10 mg/L; stoichiometry asks for 63.5 g. */
    @Test
    void theMisprintedBakingSodaRuleIsNotUsed() {
        double grams = 3785 * Units.meqFromCaco3(10) / Dose.SODIUM_BICARBONATE.alkalinityMeqPerG();
        assertThat(grams).isCloseTo(63.5, within(0.1));
    }

    @Test
    void sodaAshBringsTwiceTheAlkalinityOfItsCarbon() {
        assertThat(Dose.SODIUM_CARBONATE.alkalinityMeqPerG()).isEqualTo(2 * Dose.SODIUM_CARBONATE.dicMmolPerG());
        assertThat(Dose.SODIUM_BICARBONATE.alkalinityMeqPerG()).isEqualTo(Dose.SODIUM_BICARBONATE.dicMmolPerG());
    }

    @Test
    void ammoniumChlorideBringsNoAlkalinityAndAmmoniaOneEquivalentPerMole() {
        assertThat(Dose.AMMONIUM_CHLORIDE.alkalinityMeqPerG()).isZero();
        assertThat(Dose.AMMONIUM_CHLORIDE.chlorideGPerG()).isCloseTo(2.53 / 3.819, within(0.001));
        assertThat(Dose.AMMONIA.alkalinityMeqPerG() * Molar.N).isCloseTo(Dose.AMMONIA.tanMgPerG(), within(1e-9));
    }

    @Test
    void calciumChlorideBringsChlorideOnly() {
        assertThat(Dose.CALCIUM_CHLORIDE.chlorideGPerG()).isCloseTo(0.639, within(0.0005));
        assertThat(Dose.CALCIUM_CHLORIDE.alkalinityMeqPerG()).isZero();
    }

    @Test
    void pureThiosulfateMatchesItsRoundedRule() {
        double stoichiometric = 2 * Molar.NA2S2O3_5H2O / Molar.CL2;
        assertThat(stoichiometric).isCloseTo(Chlorine.THIOSULFATE_MG_PER_MG, within(0.005));
    }

    /** 3 mg/L of chloramine as Cl2, a whole fill: 0.59 mg/L of ammonia nitrogen. */
    @Test
    void chloramineLeavesAmmonia() {
        assertThat(3 * Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE).isCloseTo(0.59, within(0.005));
        assertThat(Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE).isCloseTo(0.1975, within(0.0001));
    }

    @Test
    void standingClearsFreeChlorineButNotChloramine() {
        assertThat(Chlorine.freeShareLeft(0)).isEqualTo(1);
        assertThat(Chlorine.freeShareLeft(24)).isLessThan(1e-5);
        assertThat(Chlorine.combinedShareLeft(24)).isCloseTo(0.787, within(0.001));
    }

    @Test
    void aDoseThenAMixDilutesTheDoseByTheShareLeft() {
        Random random = new Random(8);
        for (int i = 0; i < 1000; i++) {
            double now = 100 * random.nextDouble();
            double source = 100 * random.nextDouble();
            double dose = 50 * random.nextDouble();
            double fraction = random.nextDouble();
            double gain = WaterChange.after(now + dose, source, fraction) - WaterChange.after(now, source, fraction);
            assertThat(gain).isCloseTo(dose * (1 - fraction), within(1e-10));
        }
    }

    @Test
    void theShareForATargetReachesTheTarget() {
        Random random = new Random(9);
        for (int i = 0; i < 1000; i++) {
            double now = 100 * random.nextDouble();
            double source = 100 * random.nextDouble();
            double fraction = random.nextDouble();
            double target = WaterChange.after(now, source, fraction);
            double share = WaterChange.fractionFor(now, source, target);
            assertThat(WaterChange.after(now, source, share)).isCloseTo(target, within(1e-10));
            assertThat(share).isBetween(0.0, 1.0);
        }
    }

    @Test
    void twoHalfChangesLeaveAQuarter() {
        assertThat(WaterChange.after(WaterChange.after(8, 0, 0.5), 0, 0.5)).isEqualTo(2);
    }

    @Test
    void aTargetOutsideTheTwoWatersIsRefused() {
        assertThatThrownBy(() -> WaterChange.fractionFor(4, 1, 0.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WaterChange.fractionFor(4, 1, 4.5)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> WaterChange.after(4, 1, 1.01)).isInstanceOf(OutOfRangeException.class);
        assertThat(WaterChange.fractionFor(2, 2, 2)).isZero();
    }
}
