package startwater.strip;

/** placeholder until the painted scale lands */
public enum Pad {
    AMMONIA(new Scale(false, 0, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20)),
    NITRITE(new Scale(false, 0, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20)),
    NITRATE(new Scale(false, 0, 1, 2, 5, 10, 20, 50, 100, 200)),
    PH(new Scale(true, 6.2, 6.6, 7.0, 7.4, 7.8, 8.2, 8.6, 9.0)),
    ALKALINITY(new Scale(false, 0, 10, 20, 50, 100, 200, 500)),
    CHLORINE(new Scale(false, 0, 0.1, 0.2, 0.5, 1, 2, 5)),
    CHLORIDE(new Scale(false, 0, 10, 20, 50, 100, 200, 500, 1000));
    private final Scale scale;

    Pad(Scale scale) {
        this.scale = scale;
    }

    public Scale scale() {
        return scale;
    }
}
