package startwater.app.view.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import startwater.quantity.Stream;

/** Where the fish are: placed by what they show, always alike for the same tank. */
final class Shoal {
    private static final int TRIES = 14;
    private static final double[] DEPTH_SIZE = {1.0, 0.8, 0.6};

    private final TankLook look;
    private final TankBody body;
    private final double stoneX;
    private final Stream stream;
    private final double nearLength;
    private final List<Swimmer> placed = new ArrayList<>();

    private Shoal(TankLook look, TankBody body, double stoneX) {
        this.look = look;
        this.body = body;
        this.stoneX = stoneX;
        this.stream = Stream.of(look.seed(), 41);
        double crowd = Math.sqrt(Math.min(1.0, 30.0 / Math.max(1, look.marks())));
        this.nearLength = Math.min(0.19 * body.width(), 0.34 * body.depth()) * crowd;
    }

    /** All fish, the far ones first. */
    static List<Swimmer> of(TankLook look, TankBody body, double stoneX) {
        Shoal shoal = new Shoal(look, body, stoneX);
        int marks = look.marks();
        for (int i = 0; i < marks; i++) {
            shoal.placed.add(shoal.place(i, marks));
        }
        shoal.placed.sort(Comparator.comparingInt(Swimmer::depth).reversed());
        return List.copyOf(shoal.placed);
    }

    private Swimmer place(int number, int marks) {
        return switch (look.mood()) {
            case BEGGING -> begging(number, marks);
            case GASPING -> gasping(number, marks);
            case CALM -> spread(depthOf(number), 0.10, 0.92, 0.62, 7, 0);
            case OFF_FEED -> spread(depthOf(number), 0.50, 0.93, 0.95, 5, -4);
            case SLOW -> spread(depthOf(number), 0.68, 0.97, 0.5, 7, 3);
        };
    }

    private static int depthOf(int number) {
        return number % 3;
    }

    /** A front rank with snouts at the surface on your side, the rest on their way up to it. */
    private Swimmer begging(int number, int marks) {
        int front = Math.max(1, Math.min(8, (int) Math.ceil(marks * 0.34)));
        if (number < front) {
            double share = front == 1 ? 0.3 : number / (double) (front - 1);
            double snoutX = body.left() + body.width() * (0.06 + 0.56 * share) + jitter(0.012 * body.width());
            return atSurface(snoutX, 30 + 24 * stream.uniform(), false, number % 2 == 0 ? 0 : 1);
        }
        int depth = (number - front) % 3;
        Swimmer best = spread(depth, 0.22, 0.80, 0.12, 5, 0);
        double rise = 34 * (1 - (best.y() - body.surface()) / body.depth());
        return new Swimmer(best.x(), best.y(), best.length(), 6 + rise, best.facesRight(), depth, best.phase(), false);
    }

    /** All snouts at the bubbles, or all along the surface when the air is off. */
    private Swimmer gasping(int number, int marks) {
        double share = marks == 1 ? 0.5 : number / (double) (marks - 1);
        double reach = look.airOn() ? 0.26 : 0.46;
        double centre = look.airOn() ? stoneX - 0.10 * body.width() : body.middle();
        double snoutX = centre + body.width() * reach * (2 * share - 1) + jitter(0.01 * body.width());
        double held = Math.max(body.left() + 8, Math.min(body.right() - 8, snoutX));
        boolean right = held < (look.airOn() ? stoneX : body.middle());
        Swimmer top = atSurface(held, 50 + 20 * stream.uniform(), right, depthOf(number));
        if (number % 2 == 0) {
            return top;
        }
        return new Swimmer(
                top.x(),
                top.y() + (0.35 + 0.25 * stream.uniform()) * nearLength,
                top.length(),
                top.noseUpDegrees() - 8,
                right,
                top.depth(),
                top.phase(),
                false);
    }

    private Swimmer atSurface(double snoutX, double noseUp, boolean right, int depth) {
        double length = lengthAt(depth);
        double angle = Math.toRadians(noseUp);
        double x = snoutX - (right ? 1 : -1) * 0.5 * length * Math.cos(angle);
        double reach = length * (0.5 * Math.cos(angle) + 0.12 * Math.sin(angle)) + 4;
        double held = Math.max(body.left() + reach, Math.min(body.right() - reach, x));
        double y = body.surface() + 1.5 + 0.5 * length * Math.sin(angle);
        return new Swimmer(held, y, length, noseUp, right, depth, phase(), true);
    }

    /** The emptiest of some places between two shares of the depth. */
    private Swimmer spread(int depth, double from, double to, double rightShare, double tilt, double meanTilt) {
        double length = lengthAt(depth);
        double bestX = body.middle();
        double bestY = body.surface() + (from + to) / 2 * body.depth();
        double bestRoom = -1;
        for (int i = 0; i < TRIES; i++) {
            double x = body.left() + 0.6 * length + stream.uniform() * (body.width() - 1.2 * length);
            double y = body.surface() + body.depth() * (from + (to - from) * stream.uniform());
            double room = room(x, y);
            if (room > bestRoom) {
                bestRoom = room;
                bestX = x;
                bestY = y;
            }
        }
        boolean right = stream.uniform() < rightShare;
        double noseUp = meanTilt + tilt * (2 * stream.uniform() - 1);
        return new Swimmer(bestX, bestY, length, noseUp, right, depth, phase(), false);
    }

    private double room(double x, double y) {
        double least = Double.MAX_VALUE;
        for (Swimmer other : placed) {
            double dx = (x - other.x()) / 2.2;
            double dy = y - other.y();
            least = Math.min(least, dx * dx + dy * dy);
        }
        return least;
    }

    private double lengthAt(int depth) {
        return nearLength * DEPTH_SIZE[depth] * (0.92 + 0.16 * stream.uniform());
    }

    private double phase() {
        return 2 * Math.PI * stream.uniform();
    }

    private double jitter(double size) {
        return size * (2 * stream.uniform() - 1);
    }
}
