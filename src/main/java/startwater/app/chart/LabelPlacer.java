package startwater.app.chart;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Finds places for labels beside what they name: near their anchor, clear of lines, of other labels and of the edges. Pure
 * geometry in design pixels.
 */
final class LabelPlacer {
    /** A rectangle. */
    record Box(double x, double y, double width, double height) {
        boolean overlaps(Box other) {
            return x < other.x + other.width
                    && other.x < x + width
                    && y < other.y + other.height
                    && other.y < y + height;
        }

        boolean holds(double px, double py) {
            return px > x && px < x + width && py > y && py < y + height;
        }

        Box grown(double by) {
            return new Box(x - by, y - by, width + 2 * by, height + 2 * by);
        }

        /** The point of the box nearest to another point. */
        double[] nearest(double px, double py) {
            return new double[] {
                Math.max(x, Math.min(x + width, px)), Math.max(y, Math.min(y + height, py)),
            };
        }
    }

    /** A found place, and the anchor it belongs to. */
    record Place(Box box, double anchorX, double anchorY) {
        /** Whether the label is so near that it needs no leader. */
        boolean touches() {
            double[] near = box.nearest(anchorX, anchorY);
            return Math.hypot(near[0] - anchorX, near[1] - anchorY) < 9;
        }
    }

    private static final double CLEARANCE = 3;
    private static final double[] REACHES = {6, 14, 24, 36, 52, 72};
    private static final int DIRECTIONS = 24;
    private static final double LABEL_COST = 4000;
    private static final double LINE_COST = 60;

    private final Box area;
    private final List<Box> taken = new ArrayList<>();
    private final List<double[]> lines = new ArrayList<>();

    LabelPlacer(Box area) {
        this.area = area;
    }

    /** Keeps labels off a rectangle. */
    void take(Box box) {
        taken.add(box);
    }

    /** Keeps labels off a line through points; x and y in turn. */
    void avoid(double... points) {
        for (int i = 0; i + 3 < points.length; i += 2) {
            double dx = points[i + 2] - points[i];
            double dy = points[i + 3] - points[i + 1];
            int pieces = (int) Math.max(1, Math.ceil(Math.hypot(dx, dy) / 4));
            for (int k = 0; k <= pieces; k++) {
                lines.add(new double[] {
                    points[i] + dx * k / pieces, points[i + 1] + dy * k / pieces,
                });
            }
        }
    }

    /** The best place for a label that may belong to any of the anchors; x and y in turn. Takes it. */
    Place place(double width, double height, double... anchors) {
        return place(false, width, height, anchors);
    }

    /** The same, but only above the anchors. */
    Place placeAbove(double width, double height, double... anchors) {
        return place(true, width, height, anchors);
    }

    private Place place(boolean above, double width, double height, double... anchors) {
        Place best = null;
        double least = Double.MAX_VALUE;
        for (int a = 0; a + 1 < anchors.length; a += 2) {
            for (int r = 0; r < REACHES.length; r++) {
                for (int d = above ? DIRECTIONS / 2 + 1 : 0; d < DIRECTIONS; d++) {
                    Place place = around(above, width, height, anchors[a], anchors[a + 1], REACHES[r], d);
                    double cost = cost(place, REACHES[r] + 0.8 * a, least);
                    if (cost < least) {
                        least = cost;
                        best = place;
                    }
                }
            }
        }
        return taken(best, new Place(area, area.x(), area.y()));
    }

    private Place taken(@Nullable Place best, Place otherwise) {
        Place place = best == null ? otherwise : best;
        taken.add(place.box());
        return place;
    }

    private static Place around(
            boolean above, double width, double height, double ax, double ay, double reach, int direction) {
        double angle = 2 * Math.PI * direction / DIRECTIONS;
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double x = ax + reach * cos + (cos - 1) / 2 * width;
        double y = ay + reach * sin + (sin - 1) / 2 * height;
        double held = above ? Math.min(y, ay - CLEARANCE - height) : y;
        return new Place(new Box(x, held, width, height), ax, ay);
    }

    /** What a place costs; it stops counting once the place can no longer be the best. */
    private double cost(Place place, double reach, double least) {
        Box box = place.box().grown(CLEARANCE);
        double cost = reach + outside(place.box()) * 200;
        for (Box other : taken) {
            cost += box.overlaps(other) ? LABEL_COST : 0;
        }
        for (int i = 0; i < lines.size() && cost < least; i++) {
            double[] point = lines.get(i);
            cost += box.holds(point[0], point[1]) ? LINE_COST : 0;
        }
        return cost;
    }

    private double outside(Box box) {
        return Math.max(0, area.x() - box.x())
                + Math.max(0, area.y() - box.y())
                + Math.max(0, box.x() + box.width() - area.x() - area.width())
                + Math.max(0, box.y() + box.height() - area.y() - area.height());
    }

    /**
     * Moves labels that stand in a column so that none overlap and all stay between top and bottom.
     *
     * @param wanted middles of the labels
     * @param heights of the labels
     * @return the new middles, in the same order
     */
    static double[] column(double[] wanted, double[] heights, double top, double bottom) {
        Integer[] order = new Integer[wanted.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        java.util.Arrays.sort(order, java.util.Comparator.comparingDouble(i -> wanted[i]));
        double[] placed = wanted.clone();
        double floor = top;
        for (int i : order) {
            placed[i] = Math.max(placed[i], floor + heights[i] / 2);
            floor = placed[i] + heights[i] / 2;
        }
        double ceiling = bottom;
        for (int k = order.length - 1; k >= 0; k--) {
            int i = order[k];
            placed[i] = Math.min(placed[i], ceiling - heights[i] / 2);
            ceiling = placed[i] - heights[i] / 2;
        }
        return placed;
    }
}
