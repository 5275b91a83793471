package startwater.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import startwater.bench.UnitSystem;
import startwater.text.Language;

/** What cannot be is refused with its line and its reason; what will hurt is warned of; what is not known is said. */
class SystemChecksTest {
    private static Form changed(String system, String answers) {
        Form form = Systems.form(system);
        for (String answer : answers.split(";", -1)) {
            String[] pair = answer.split("=", 2);
            form = form.with(Entry.of(pair[0].strip()).orElseThrow(), pair[1]);
        }
        return form;
    }

    private static void finds(Form form, Finding.Weight weight, String code, String entry) {
        List<Finding> findings = SystemChecks.of(form);
        assertThat(findings).anySatisfy(f -> {
            assertThat(f.code()).isEqualTo(code);
            assertThat(f.weight()).isEqualTo(weight);
            assertThat(f.entry().key()).isEqualTo(entry);
        });
        for (Language language : Language.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                findings.forEach(f -> assertThat(f.reason(RehearseTexts.of(language), units) + " "
                                + f.advice(RehearseTexts.of(language), units))
                        .doesNotContain("{", "Amount", "NaN", "?"));
            }
        }
        assertThat(SystemChecks.possible(findings)).isEqualTo(weight != Finding.Weight.REFUSE);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "volume=|noVolume|volume",
                "volume=20 L|volumeRange|volume",
                "mediaLitres=|noMedia|mediaLitres",
                "media=;mediaLitres=|noMedia|media",
                "mediaLitres=0.01|noMedia|mediaLitres",
                "volume=50 L;count=500|tooDense|count",
                "mediaLitres=0.5 L|loadOverMedia|mediaLitres",
                "airStones=;airStrength=none;mass=40 g|noOxygen|airPower",
                "setPoint=45 °F|temperature|setPoint",
                "setPoint=102 °F|temperature|setPoint",
                "setPoint=;room=|noTemperature|room",
                "away=10-20|awayTooLong|away",
                "away=0-1|awayAtStart|away",
                "strips=0|noStrips|strips",
                "neutraliser=0|noNeutraliser|neutraliser",
                "start=fishless;ammonium=0|noAmmonium|ammonium",
                "start=ripe-media|noRipeMedia|ripeMedia",
                "species=|noSpecies|species",
                "count=|noCount|count",
                "mass=|noMass|mass",
                "mass=900 g;count=1|massOutside|mass",
                "tapPh=9.4;tapAlkalinity=0|noSuchWater|tapPh",
                "secondVolume=500|noMedia|secondMedia",
            })
    void theImpossibleIsRefused(String answers, String code, String entry) {
        finds(changed(Systems.SPONGE_BARREL, answers), Finding.Weight.REFUSE, code, entry);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "mediaLitres=2.5 L|loadHigh|mediaLitres",
                "count=600;airPower=60;mediaLitres=60|dense|count",
                "away=10-11|awayLong|away",
                "spareAir=no|noSpare|spareAir",
                "room=50|roomHarms|room",
                "airStones=1;mass=60 g|littleOxygen|airPower",
                "pumpFlow=1 gal/h|flowLow|pumpFlow",
                "tapAlkalinity=20;bicarbonate=0|noBicarbonate|bicarbonate",
                "start=fishless;count=150|overDose|count",
                "setPoint=62|littleAppetite|setPoint",
            })
    void whatWillHurtIsWarnedOf(String answers, String code, String entry) {
        finds(changed(Systems.SPONGE_BARREL, answers), Finding.Weight.WARN, code, entry);
    }

    @ParameterizedTest
    @CsvSource({
        "tapPh, tapPh", "tapAlkalinity, tapAlkalinity", "tapChloride, tapChloride", "tapChlorine, tapChlorine",
        "protein, protein", "visits, visits", "strips, stripsUnknown", "media, mediaKind",
        "airStrength, airUnknown",
    })
    void whatIsNotToldIsSaidToBeNotKnown(String entry, String code) {
        // The area is told, so that the kind of media may be left out.
        Form form = changed(Systems.RAIN_CARP, entry + "=");
        finds(form, Finding.Weight.ASSUMED, code, entry);
    }

    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void sensibleSystemsAreNotRefused(String name) {
        assertThat(Systems.codes(SystemChecks.of(Systems.form(name)), Finding.Weight.REFUSE))
                .isEmpty();
    }

    @Test
    void anEmptyFormSaysAllThatIsNeeded() {
        assertThat(Systems.codes(SystemChecks.of(Form.EMPTY), Finding.Weight.REFUSE))
                .containsExactlyInAnyOrder("noVolume", "noMedia", "noTemperature", "noSpecies", "noCount", "noMass");
    }
}
