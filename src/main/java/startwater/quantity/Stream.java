package startwater.quantity;

/**
 * A named stream of random numbers: a pure function of a seed and keys, so that the same tank, strip and visit always get
 * the same numbers, whatever else is drawn and on whichever thread. The mixing is a 64-bit finaliser over a Weyl sequence.
 */
public final class Stream {
    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private long state;

    private Stream(long state) {
        this.state = state;
    }

    /** The stream that belongs to a seed and keys. */
    public static Stream of(long seed, long... keys) {
        long state = mix(seed + GOLDEN);
        for (long key : keys) {
            state = mix(state * 31 + mix(key + GOLDEN));
        }
        return new Stream(state);
    }

    /** The next 64 bits. */
    public long bits() {
        state += GOLDEN;
        return mix(state);
    }

    /** Even between 0 and 1, both excluded. */
    public double uniform() {
        return ((bits() >>> 12) + 0.5) * 0x1.0p-52;
    }

    /** Standard normal, by the inverse of its distribution. */
    public double normal() {
        return Normal.quantile(uniform());
    }

    /** A whole number from 0 up to but not {@code bound}. */
    public int below(int bound) {
        return (int) (uniform() * bound);
    }

    private static long mix(long value) {
        long z = value;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}
