package startwater.app.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.app.chart.LabelPlacer.Box;
import startwater.app.chart.LabelPlacer.Place;
import startwater.quantity.Stream;

class LabelPlacerTest {
    private static final Box AREA = new Box(0, 0, 400, 200);

    @Test
    void labelsKeepClearOfEachOtherAndOfTheEdges() {
        for (long seed = 0; seed < 60; seed++) {
            Stream stream = Stream.of(seed, 3);
            LabelPlacer placer = new LabelPlacer(AREA);
            List<Box> boxes = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                boxes.add(placer.place(90, 16, 400 * stream.uniform(), 200 * stream.uniform())
                        .box());
            }
            for (int i = 0; i < boxes.size(); i++) {
                Box box = boxes.get(i);
                assertThat(box.x()).isGreaterThanOrEqualTo(-0.5);
                assertThat(box.y()).isGreaterThanOrEqualTo(-0.5);
                assertThat(box.x() + box.width()).isLessThanOrEqualTo(400.5);
                assertThat(box.y() + box.height()).isLessThanOrEqualTo(200.5);
                for (int k = 0; k < i; k++) {
                    assertThat(box.overlaps(boxes.get(k))).as("seed %d", seed).isFalse();
                }
            }
        }
    }

    @Test
    void labelsKeepClearOfLines() {
        LabelPlacer placer = new LabelPlacer(AREA);
        placer.avoid(0, 150, 200, 90, 400, 150);
        Place place = placer.place(110, 32, 200, 90);
        for (double x = 0; x <= 400; x += 1) {
            double y = x < 200 ? 150 - 0.3 * x : 90 + 0.3 * (x - 200);
            assertThat(place.box().holds(x, y)).isFalse();
        }
    }

    @Test
    void labelMayBeHeldAboveItsAnchor() {
        Place place = new LabelPlacer(AREA).placeAbove(80, 16, 200, 100);
        assertThat(place.box().y() + place.box().height()).isLessThanOrEqualTo(100);
    }

    @Test
    void labelsInAColumnKeepOrderAndDistance() {
        double[] placed = LabelPlacer.column(new double[] {198, 100, 199, 101}, new double[] {16, 16, 32, 16}, 0, 200);
        assertThat(placed[1]).isLessThan(placed[3]);
        assertThat(placed[3] - placed[1]).isGreaterThanOrEqualTo(16 - 1e-9);
        assertThat(placed[2] - placed[0]).isGreaterThanOrEqualTo(24 - 1e-9);
        assertThat(placed[2]).isLessThanOrEqualTo(200 - 16 + 1e-9);
    }
}
