package startwater.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import startwater.bench.Measure;
import startwater.bench.Unit;
import startwater.score.UnitSlip;

class AnswerCheckTest {
    private static AnswerCheck check(String typed, double exact, Unit unit) {
        return AnswerCheck.of(typed, new Measure("x", exact, unit), value -> Math.abs(value / exact - 1) <= 0.05);
    }

    @Test
    void eitherSystemOfUnitsIsRight() {
        assertThat(check("378.5", 378.5, Unit.LITRE).right()).isTrue();
        assertThat(check("100 gal", 378.5, Unit.LITRE).right()).isTrue();
        assertThat(check("0.3785 m³", 378.5, Unit.LITRE).right()).isTrue();
        assertThat(check("2 oz", 56.7, Unit.GRAM).right()).isTrue();
        assertThat(check("0,0567 kg", 56.7, Unit.GRAM_PER_DAY).right()).isTrue();
        assertThat(check("80.6 °F", 27, Unit.CELSIUS).value()).isCloseTo(27, within(1e-9));
        assertThat(check("2.2 lb", 1, Unit.KILOGRAM).right()).isTrue();
        assertThat(check("0.05 mg N/L", 0.05, Unit.MG_N_PER_L).right()).isTrue();
        assertThat(check("5 %", 0.05, Unit.NONE).right()).isTrue();
    }

    @Test
    void aSlipOfUnitIsNamed() {
        assertThat(check("100", 378.5, Unit.LITRE).slip()).isEqualTo(UnitSlip.GALLONS_FOR_LITRES);
        assertThat(check("1.216", 1, Unit.MG_N_PER_L).slip()).isEqualTo(UnitSlip.AS_AMMONIA);
        assertThat(check("2", 1, Unit.MG_N_PER_L).slip()).isNull();
    }

    @Test
    void whatMeasuresSomethingElseIsRefusedWithTheUnitThatWouldDo() {
        for (Language language : Language.values()) {
            Texts texts = Texts.of(language, Texts.DRILL, Texts.LESSON);
            AnswerCheck answer = check("3 gal", 40, Unit.GRAM);
            assertThat(answer.right()).isFalse();
            assertThat(Objects.requireNonNull(answer.refusal()).say(texts)).contains("gal", " g");
        }
    }
}
