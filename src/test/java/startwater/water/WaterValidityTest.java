package startwater.water;

import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static startwater.Refusals.refused;

import org.junit.jupiter.api.Test;
import startwater.biofilter.Nitrification;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Every equation of water and filter refuses what lies outside its range, and says which, where and from what source. */
class WaterValidityTest {
    @Test
    void unionisedAmmonia() {
        refused(UnionisedAmmonia.TEMPERATURE_C, UnionisedAmmonia::pKa);
        refused(UnionisedAmmonia.TEMPERATURE_C, UnionisedAmmonia::acidConstant);
        refused(UnionisedAmmonia.TEMPERATURE_C, v -> UnionisedAmmonia.fraction(8, v));
        refused(UnionisedAmmonia.PH, v -> UnionisedAmmonia.fraction(v, 25));
    }

    @Test
    void carbonateConstants() {
        refused(CarbonateConstants.TEMPERATURE_C, v -> CarbonateConstants.at(v).k1());
    }

    @Test
    void activities() {
        refused(Davies.IONIC_STRENGTH, v -> Davies.log10Gamma(1, v, 25));
        refused(Davies.TEMPERATURE_C, v -> Davies.log10Gamma(1, 0.01, v));
    }

    @Test
    void carbonateSystem() {
        CarbonateSystem system = CarbonateSystem.at(25, 0.002);
        refused(CarbonateSystem.CARBON_DIOXIDE_ATM, system::co2InBalanceWith);
        assertThatThrownBy(() -> system.dicFromPh(2, 0, 13.1)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> system.dicFromPh(2, 0, 1.9)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void oxygenSaturation() {
        refused(OxygenSaturation.TEMPERATURE_C, v -> OxygenSaturation.mgPerL(v, 0, 0));
        refused(OxygenSaturation.ALTITUDE_M, v -> OxygenSaturation.mgPerL(20, v, 0));
        refused(OxygenSaturation.ALTITUDE_M, OxygenSaturation::pressureAtm);
        refused(OxygenSaturation.SALINITY_G_PER_KG, v -> OxygenSaturation.mgPerL(20, 0, v));
    }

    @Test
    void criteriaOfTheEpa() {
        refused(AmmoniaCriteria2013.PH, v -> AmmoniaCriteria2013.acuteWithoutSalmonids(v, 20));
        refused(AmmoniaCriteria2013.PH, v -> AmmoniaCriteria2013.acuteWithSalmonids(v, 20));
        refused(AmmoniaCriteria2013.PH, v -> AmmoniaCriteria2013.chronic(v, 20));
        refused(AmmoniaCriteria2013.TEMPERATURE_C, v -> AmmoniaCriteria2013.acuteWithoutSalmonids(7, v));
        refused(AmmoniaCriteria2013.TEMPERATURE_C, v -> AmmoniaCriteria2013.acuteWithSalmonids(7, v));
        refused(AmmoniaCriteria2013.TEMPERATURE_C, v -> AmmoniaCriteria2013.chronic(7, v));
    }

    @Test
    void freeAmmoniaAndNitrousAcid() {
        refused(Anthonisen1976.NITROGEN_MG_PER_L, v -> Anthonisen1976.freeAmmoniaMgPerL(v, 8, 28));
        refused(Anthonisen1976.PH, v -> Anthonisen1976.freeAmmoniaMgPerL(5, v, 28));
        refused(Anthonisen1976.TEMPERATURE_C, v -> Anthonisen1976.freeAmmoniaMgPerL(5, 8, v));
        refused(Anthonisen1976.NITROGEN_MG_PER_L, v -> Anthonisen1976.freeNitrousAcidMgPerL(v, 8, 28));
        refused(Anthonisen1976.PH, v -> Anthonisen1976.freeNitrousAcidMgPerL(5, v, 28));
        refused(Anthonisen1976.TEMPERATURE_C, v -> Anthonisen1976.freeNitrousAcidMgPerL(5, 8, v));
    }

    @Test
    void chlorineInABarrel() {
        refused(Chlorine.HOURS, Chlorine::freeShareLeft);
        refused(Chlorine.HOURS, Chlorine::combinedShareLeft);
    }

    @Test
    void waterChange() {
        refused(WaterChange.FRACTION, v -> WaterChange.after(4, 1, v));
    }

    @Test
    void nitrification() {
        refused(Nitrification.NITROUS_ACID_TEMPERATURE_C, Nitrification::nitrousAcidConstant);
        refused(Nitrification.MEDIA_M2, v -> Nitrification.capacityMgPerDay(v, 1.09));
        refused(Nitrification.THETA, v -> Nitrification.capacityMgPerDay(32, v));
    }

    @Test
    void aRangeThatIsNoneIsRefused() {
        assertThatThrownBy(() -> new Validity("e", "q", 2, 1, "s")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Validity("e", "q", Double.NaN, 1, "s"))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Validity("e", "q", 0, 1, " ")).isInstanceOf(IllegalArgumentException.class);
    }
}
