package startwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.function.DoubleConsumer;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Asks that an equation take the ends of its range, and refuse what lies just beyond them with all that a reader needs. */
public final class Refusals {
    private Refusals() {}

    /** @param equation takes one value; whatever else it needs is sound */
    public static void refused(Validity range, DoubleConsumer equation) {
        double beyond = Math.max(1e-9, Math.abs(range.high()) * 1e-9);
        for (double value : new double[] {range.low(), range.high()}) {
            assertThatCode(() -> equation.accept(value))
                    .as("%s at %s", range, value)
                    .doesNotThrowAnyException();
        }
        for (double value : new double[] {range.high() + beyond, range.low() - beyond, Double.NaN}) {
            assertThatThrownBy(() -> equation.accept(value))
                    .as("%s at %s", range, value)
                    .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                        assertThat(e.equation()).isEqualTo(range.equation());
                        assertThat(e.quantity()).isEqualTo(range.quantity());
                        assertThat(Double.valueOf(e.value())).isEqualTo(Double.valueOf(value));
                        assertThat(e.low()).isEqualTo(range.low());
                        assertThat(e.high()).isEqualTo(range.high());
                        assertThat(e.source()).isEqualTo(range.source());
                        assertThat(e.getMessage()).contains(range.equation(), range.quantity(), range.source());
                    });
        }
    }
}
