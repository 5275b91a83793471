package startwater.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The quick powers against those of the Java library. */
class QuickPowersTest {
    @Test
    void quickExponentialKeepsElevenDigits() {
        Stream r = Stream.of(1, 2);
        for (int i = 0; i < 20_000; i++) {
            double x = 1400 * (r.uniform() - 0.5);
            assertThat(Powers.quickExp(x) / StrictMath.exp(x)).isCloseTo(1, within(1e-11));
        }
        assertThat(Powers.quickExp(0)).isEqualTo(1);
    }

    @Test
    void quickLogarithmIsWithinABillionth() {
        Stream r = Stream.of(3, 4);
        for (int i = 0; i < 20_000; i++) {
            double x = StrictMath.exp(600 * (r.uniform() - 0.5));
            assertThat(Powers.quickLn(x)).isCloseTo(StrictMath.log(x), within(1e-9));
        }
        assertThat(Powers.quickLn(1)).isEqualTo(0);
    }
}
