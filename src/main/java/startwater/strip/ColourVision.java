package startwater.strip;

/**
 * How a colour looks to people who lack one cone type entirely.
 *
 * <p>Matrices at severity 1 of Machado, Oliveira and Fernandes (2009), "A physiologically-based model for simulation of color
 * vision deficiency", IEEE TVCG 15(6); they act on linear RGB, and channels are clipped before encoding.
 */
public enum ColourVision {
    NORMAL,
    PROTAN,
    DEUTAN,
    TRITAN;

    /** The colour as this eye sees it, held inside sRGB. */
    public Srgb see(Srgb colour) {
        double[] m = matrix();
        double r = Srgb.decode(colour.red());
        double g = Srgb.decode(colour.green());
        double b = Srgb.decode(colour.blue());
        return Srgb.ofLinear(
                        m[0] * r + m[1] * g + m[2] * b, m[3] * r + m[4] * g + m[5] * b, m[6] * r + m[7] * g + m[8] * b)
                .clipped();
    }

    private double[] matrix() {
        return switch (this) {
            case NORMAL -> new double[] {1, 0, 0, 0, 1, 0, 0, 0, 1};
            case PROTAN ->
                new double[] {
                    0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998
                };
            case DEUTAN ->
                new double[] {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881
                };
            case TRITAN ->
                new double[] {
                    1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900
                };
        };
    }
}
