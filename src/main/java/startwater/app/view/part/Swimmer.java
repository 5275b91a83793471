package startwater.app.view.part;

/**
 * One drawn fish: where and how it swims.
 *
 * @param x of the middle of the body, in design pixels
 * @param length of the body with the tail
 * @param noseUpDegrees how far the snout points up
 * @param facesRight which way it heads
 * @param depth 0 near, 1 in the middle, 2 far
 * @param phase of its tail beat, radians
 * @param breaksSurface whether its snout is at the surface
 */
record Swimmer(
        double x,
        double y,
        double length,
        double noseUpDegrees,
        boolean facesRight,
        int depth,
        double phase,
        boolean breaksSurface) {
    double snoutX() {
        return x + direction() * 0.5 * length * Math.cos(Math.toRadians(noseUpDegrees));
    }

    double snoutY() {
        return y - 0.5 * length * Math.sin(Math.toRadians(noseUpDegrees));
    }

    double direction() {
        return facesRight ? 1 : -1;
    }
}
