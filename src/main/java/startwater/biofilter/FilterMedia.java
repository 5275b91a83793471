package startwater.biofilter;

import java.util.Arrays;
import java.util.List;

/**
 * Kinds of filter media, and how they hold solids. What a bed holds slows the flow through it and covers part of its
 * area. That fine and soft media clog and moving ones keep themselves clean is common practice; the numbers are tuned so
 * that a nursery's sponge or sand asks for a rinse after two to four weeks (no source).
 */
public enum FilterMedia {
    /** Tumbling pieces keep themselves clean: their solids stay in the water. */
    MOVING_BED("moving-bed", 0, Double.POSITIVE_INFINITY),
    /** Fixed rings or sheets. */
    STATIC_PLASTIC("static-plastic", 0.2, 200),
    SAND("sand", 1.2, 110),
    SPONGE("sponge", 0.8, 150);

    /** Share of the media's area that a bed without any flow would still lay open. */
    private static final double OPEN_WHEN_CLOGGED = 0.5;

    private final String id;
    private final double trappingPerDay;
    private final double halfFlowMgPerM2;

    FilterMedia(String id, double trappingPerDay, double halfFlowMgPerM2) {
        this.id = id;
        this.trappingPerDay = trappingPerDay;
        this.halfFlowMgPerM2 = halfFlowMgPerM2;
    }

    /** Its name in files. */
    public String id() {
        return id;
    }

    /** Share of the organic nitrogen in the water that is caught per day at full flow, 1/d. */
    public double trappingPerDay() {
        return trappingPerDay;
    }

    /**
     * Flow through a bed that holds solids, share of that through a clean one.
     *
     * @param heldMgPerM2 nitrogen of the solids held, mg N per m2 of media
     */
    public double flowShare(double heldMgPerM2) {
        return flowShareAt(load(heldMgPerM2));
    }

    /** What a bed holds over what halves its flow. @param heldMgPerM2 nitrogen of the solids held, mg N per m2 */
    public double load(double heldMgPerM2) {
        return heldMgPerM2 / halfFlowMgPerM2;
    }

    /** Flow share at a load of the bed. */
    public static double flowShareAt(double load) {
        return 1 / (1 + load * load);
    }

    /** Share of the area that still works at this share of the flow. */
    public static double areaShare(double flowShare) {
        return OPEN_WHEN_CLOGGED + (1 - OPEN_WHEN_CLOGGED) * flowShare;
    }

    /** The kind with this id. @throws IllegalArgumentException naming those there are */
    public static FilterMedia byId(String id) {
        return Arrays.stream(values())
                .filter(m -> m.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "Filter media: '" + id + "' is not known. Use one of " + ids() + "."));
    }

    public static List<String> ids() {
        return Arrays.stream(values()).map(FilterMedia::id).toList();
    }
}
