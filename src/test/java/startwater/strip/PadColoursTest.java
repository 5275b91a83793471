package startwater.strip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PadColoursTest {
    /** Blocks nearer than this are merged by careful readers; the rule the pads are made to. */
    private static final double LEAST_DIFFERENCE = 3.0;

    @ParameterizedTest
    @EnumSource(value = Pad.class, names = "CHLORIDE", mode = EnumSource.Mode.EXCLUDE)
    void neighbourBlocksDifferForEveryEye(Pad pad) {
        PadColours colours = PadColours.of(pad);
        for (ColourVision vision : ColourVision.values()) {
            for (int block = 1; block < pad.scale().blocks(); block++) {
                Lab below = vision.see(colours.srgb(block - 1)).toLab();
                Lab above = vision.see(colours.srgb(block)).toLab();
                assertThat(Ciede2000.difference(below, above))
                        .as("%s block %d, %s", pad, block, vision)
                        .isGreaterThanOrEqualTo(LEAST_DIFFERENCE);
                assertThat(below.distance(above))
                        .as("%s block %d, %s", pad, block, vision)
                        .isGreaterThanOrEqualTo(6.5);
            }
        }
    }

    @ParameterizedTest
    @EnumSource(value = Pad.class, names = "CHLORIDE", mode = EnumSource.Mode.EXCLUDE)
    void lightnessAloneTellsTheOrderForEveryEye(Pad pad) {
        PadColours colours = PadColours.of(pad);
        for (ColourVision vision : ColourVision.values()) {
            for (int stop = 1; stop < pad.scale().stops(); stop++) {
                assertThat(vision.see(colours.srgb(stop / 2.0)).toLab().lightness())
                        .as("%s stop %d, %s", pad, stop, vision)
                        .isLessThan(vision.see(colours.srgb((stop - 1) / 2.0))
                                .toLab()
                                .lightness());
            }
        }
    }

    @ParameterizedTest
    @EnumSource(value = Pad.class, names = "CHLORIDE", mode = EnumSource.Mode.EXCLUDE)
    void aScreenCanShowEveryColour(Pad pad) {
        for (double position = 0; position < pad.scale().blocks(); position += 0.05) {
            assertThat(Srgb.of(PadColours.of(pad).lab(position)).inGamut())
                    .as("%s at %s", pad, position)
                    .isTrue();
        }
    }

    @Test
    void chlorideHasNoColours() {
        assertThatThrownBy(() -> PadColours.of(Pad.CHLORIDE)).hasMessageContaining("read by length");
    }
}
