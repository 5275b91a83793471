package startwater.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.ReferenceTable;
import startwater.quantity.Stream;

class ReadingModelTest {
    private static final int STRIPS = 4000;

    @ParameterizedTest
    @EnumSource(Pad.class)
    void chancesOfAllStopsAddToOneAndNoneIsZero(Pad pad) {
        double last = pad.scale().blocks() - 1;
        for (double position : new double[] {0, 0.1, 0.25, last / 2, last - 0.3, last}) {
            for (double sigma : new double[] {0, 0.02, 0.2, 1, 5}) {
                double sum = 0;
                for (int stop = 0; stop < pad.scale().stops(); stop++) {
                    double chance = ReadingModel.probabilityOfStop(pad, stop, position, sigma);
                    assertThat(chance).isGreaterThan(1e-6);
                    sum += chance;
                }
                assertThat(sum).isCloseTo(1.0, within(1e-12));
            }
        }
    }

    @Test
    void chancesAreThoseOfTheReadingsThemselves() {
        int[] seen = new int[Pad.NITRITE.scale().stops()];
        Stream stream = Stream.of(11);
        for (int i = 0; i < 40_000; i++) {
            seen[ReadingModel.readStop(Pad.NITRITE, 3.4, 0.3, stream.normal())]++;
        }
        for (int stop = 4; stop <= 10; stop++) {
            double chance = ReadingModel.probabilityOfStop(Pad.NITRITE, stop, 3.4, 0.3);
            assertThat(seen[stop] / 40_000.0).as("stop %d", stop).isCloseTo(chance, within(0.02));
        }
    }

    /** Outside check: the published agreement of two readers of the same dipsticks. */
    @ParameterizedTest
    @EnumSource(
            value = Pad.class,
            names = {"AMMONIA", "NITRITE", "NITRATE", "PH"})
    void twoReadersAgreeAsPublished(Pad pad) {
        ReferenceTable table = ReferenceTable.read("colour/dipstick-agreement.csv");
        double low = table.rows().get(0).number("kappa_low") - table.allowed(0);
        double high = table.rows().get(0).number("kappa_high") + table.allowed(0);
        for (double labSigma : new double[] {1.5, 2.0}) {
            Agreement agreement = agreement(pad, labSigma);
            assertThat(agreement.kappa).as("%s %s", pad, labSigma).isBetween(low, high);
            assertThat(agreement.withinOne)
                    .as("%s %s", pad, labSigma)
                    .isGreaterThanOrEqualTo(table.rows().get(0).number("least_within_one_block"));
        }
    }

    /** The short form in position against the long one: noise on three Lab axes, then the nearest colour of all stops. */
    @ParameterizedTest
    @EnumSource(value = Pad.class, names = "CHLORIDE", mode = EnumSource.Mode.EXCLUDE)
    void noiseInPositionIsNoiseInColour(Pad pad) {
        Stream stream = Stream.of(23, pad.ordinal());
        double squares = 0;
        double expected = 0;
        double last = pad.scale().blocks() - 1;
        for (int i = 0; i < 3000; i++) {
            double position = 1 + stream.uniform() * (last - 2);
            double read = nearestStop(pad, noisy(PadColours.of(pad).lab(position), 2.0, stream)) / 2.0;
            squares += (read - position) * (read - position);
            double sigma = ReadingModel.readingSigmaBlocks(pad, position, 2.0);
            expected += sigma * sigma + 1.0 / 48.0;
        }
        assertThat(StrictMath.sqrt(squares / expected)).isCloseTo(1.0, within(0.1));
    }

    @Test
    void biasAndSpreadMoveThePadInBlocksAndStopAtTheEnds() {
        assertThat(ReadingModel.padPosition(Pad.NITRITE, 1.0, 0.5, 0.2, -1.0)).isCloseTo(4.3, within(1e-12));
        assertThat(ReadingModel.padPosition(Pad.NITRITE, 0.0, -1.0, 0.0, 0.0)).isZero();
        assertThat(ReadingModel.padPosition(Pad.NITRITE, 300, 2.0, 0.0, 0.0)).isEqualTo(8.0);
    }

    @Test
    void refusesNumbersThatAreNone() {
        assertThatThrownBy(() -> ReadingModel.padPosition(Pad.PH, 7, 0, -0.1, 0))
                .hasMessageContaining("spread must not be negative");
        assertThatThrownBy(() -> ReadingModel.readStop(Pad.PH, 3, 0.2, Double.NaN))
                .hasMessageContaining("finite");
    }

    private record Agreement(double kappa, double withinOne) {}

    private static Agreement agreement(Pad pad, double labSigma) {
        int blocks = pad.scale().blocks();
        double[] first = new double[blocks];
        double[] second = new double[blocks];
        double same = 0;
        double near = 0;
        Stream stream = Stream.of(5, pad.ordinal());
        for (int i = 0; i < STRIPS; i++) {
            double position = stream.uniform() * (blocks - 1);
            double sigma = ReadingModel.readingSigmaBlocks(pad, position, labSigma);
            int a = block(pad, position + sigma * stream.normal());
            int b = block(pad, position + sigma * stream.normal());
            first[a]++;
            second[b]++;
            same += a == b ? 1 : 0;
            near += StrictMath.abs(a - b) <= 1 ? 1 : 0;
        }
        double chance = 0;
        for (int block = 0; block < blocks; block++) {
            chance += first[block] * second[block] / STRIPS / STRIPS;
        }
        return new Agreement((same / STRIPS - chance) / (1 - chance), near / STRIPS);
    }

    /** Dipstick readers choose among the printed blocks only. */
    private static int block(Pad pad, double position) {
        return (int) StrictMath.max(0, StrictMath.min(pad.scale().blocks() - 1, StrictMath.rint(position)));
    }

    private static Lab noisy(Lab colour, double sigma, Stream stream) {
        return new Lab(
                colour.lightness() + sigma * stream.normal(),
                colour.a() + sigma * stream.normal(),
                colour.b() + sigma * stream.normal());
    }

    private static int nearestStop(Pad pad, Lab seen) {
        int nearest = 0;
        for (int stop = 1; stop < pad.scale().stops(); stop++) {
            if (PadColours.of(pad).lab(stop / 2.0).distance(seen)
                    < PadColours.of(pad).lab(nearest / 2.0).distance(seen)) {
                nearest = stop;
            }
        }
        return nearest;
    }
}
