package startwater.strip;

/** placeholder until the painted scale lands */
public final class Scale {
    private final double[] blocks;
    private final boolean linear;

    Scale(boolean linear, double... blocks) {
        this.blocks = blocks.clone();
        this.linear = linear;
    }

    public int blocks() {
        return blocks.length;
    }

    public int stops() {
        return 2 * blocks.length - 1;
    }

    public double blockValue(int i) {
        return blocks[i];
    }

    public double position(double v) {
        if (!(v > blocks[0])) return 0;
        for (int i = 1; i < blocks.length; i++) {
            if (v <= blocks[i]) {
                double a = blocks[i - 1], b = blocks[i];
                return i - 1 + (linear || a <= 0 ? (v - a) / (b - a) : StrictMath.log(v / a) / StrictMath.log(b / a));
            }
        }
        return blocks.length - 1;
    }

    public double value(double pos) {
        int i = (int) Math.max(0, Math.min(blocks.length - 2, Math.floor(pos)));
        double t = Math.max(0, Math.min(1, pos - i));
        double a = blocks[i], b = blocks[i + 1];
        return linear || a <= 0 ? a + t * (b - a) : a * StrictMath.pow(b / a, t);
    }

    public int nearestStop(double pos) {
        return (int) Math.max(0, Math.min(stops() - 1, Math.rint(2 * pos)));
    }

    public double stopValue(int stop) {
        return value(stop / 2.0);
    }
}
