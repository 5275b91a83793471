package startwater.rehearse;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import startwater.biofilter.FilterMedia;
import startwater.fish.Species;

/**
 * One line of the form. What it is called and how to find it stand in the language files under {@code reh.label.KEY} and
 * {@code reh.help.KEY}. An empty answer means unknown.
 */
public enum Entry {
    NAME("name", Section.SYSTEM, Kind.TEXT),
    START("start", Section.SYSTEM, Starting.ids()),
    VOLUME("volume", Section.SYSTEM, Measure.VOLUME, 0.1, 1e6),
    MEDIA("media", Section.SYSTEM, FilterMedia.ids()),
    MEDIA_AREA("mediaArea", Section.SYSTEM, Measure.AREA, 0, 1e5),
    MEDIA_LITRES("mediaLitres", Section.SYSTEM, Measure.VOLUME, 0, 1e5),
    PUMP_FLOW("pumpFlow", Section.SYSTEM, Measure.FLOW, 0, 1e6),
    AIR_POWER("airPower", Section.AIR, Measure.POWER, 0, 1e4),
    AIR_FLOW("airFlow", Section.AIR, Measure.AIR_FLOW, 0, 1e5),
    AIR_STONES("airStones", Section.AIR, Kind.WHOLE, Measure.COUNT, 0, 1000),
    AIR_STRENGTH("airStrength", Section.AIR, List.of("none", "weak", "fair", "strong")),
    SPARE_AIR("spareAir", Section.AIR, List.of("no", "yes")),
    SPECIES("species", Section.FISH, Species.ids()),
    COUNT("count", Section.FISH, Kind.WHOLE, Measure.COUNT, 1, 1e6),
    MASS("mass", Section.FISH, Measure.MASS, 0.05, 2000),
    PROTEIN("protein", Section.FISH, Measure.PERCENT, 20, 60),
    MEALS("meals", Section.FISH, Kind.HOURS),
    TAP_TEMPERATURE("tapTemperature", Section.WATER, Measure.TEMPERATURE, 0, 40),
    TAP_PH("tapPh", Section.WATER, Measure.PH, 5, 9.5),
    TAP_ALKALINITY("tapAlkalinity", Section.WATER, Measure.ALKALINITY, 0, 500),
    TAP_CHLORIDE("tapChloride", Section.WATER, Measure.CONCENTRATION, 0, 2000),
    TAP_NITRATE("tapNitrate", Section.WATER, Measure.CONCENTRATION, 0, 100),
    TAP_AMMONIA("tapAmmonia", Section.WATER, Measure.CONCENTRATION, 0, 3),
    TAP_CHLORINE("tapChlorine", Section.WATER, Measure.CONCENTRATION, 0, 10),
    ROOM("room", Section.WARMTH, Measure.TEMPERATURE, 0, 50),
    SET_POINT("setPoint", Section.WARMTH, Measure.TEMPERATURE, 0, 50),
    VISITS("visits", Section.KEEPER, Kind.HOURS),
    AWAY("away", Section.KEEPER, Kind.DAYS),
    STRIPS("strips", Section.SHELF, Kind.WHOLE, Measure.COUNT, 0, 500),
    CHLORIDE_STRIPS("chlorideStrips", Section.SHELF, Kind.WHOLE, Measure.COUNT, 0, 500),
    SALT("salt", Section.SHELF, Measure.MASS, 0, 1e6),
    BICARBONATE("bicarbonate", Section.SHELF, Measure.MASS, 0, 1e6),
    NEUTRALISER("neutraliser", Section.SHELF, Measure.MASS, 0, 1e6),
    AMMONIUM("ammonium", Section.SHELF, Measure.MASS, 0, 1e6),
    RIPE_MEDIA("ripeMedia", Section.SHELF, Measure.VOLUME, 0, 1e5),
    OXYGEN_METER("oxygenMeter", Section.SHELF, List.of("no", "yes")),
    PH_METER("phMeter", Section.SHELF, List.of("no", "yes")),
    MOVE_DAY("moveDay", Section.SECOND, Kind.WHOLE, Measure.DAY, 0, 400),
    SECOND_VOLUME("secondVolume", Section.SECOND, Measure.VOLUME, 0.1, 1e6),
    SECOND_MEDIA("secondMedia", Section.SECOND, FilterMedia.ids()),
    SECOND_AREA("secondArea", Section.SECOND, Measure.AREA, 0, 1e5),
    SECOND_LITRES("secondLitres", Section.SECOND, Measure.VOLUME, 0, 1e5),
    SECOND_SET_POINT("secondSetPoint", Section.SECOND, Measure.TEMPERATURE, 0, 50),
    SECOND_AIR("secondAir", Section.SECOND, List.of("none", "weak", "fair", "strong"));

    /** The parts of the form, in order. */
    public enum Section {
        SYSTEM,
        AIR,
        FISH,
        WATER,
        WARMTH,
        KEEPER,
        SHELF,
        SECOND
    }

    /** How an answer is read. */
    public enum Kind {
        TEXT,
        NUMBER,
        WHOLE,
        CHOICE,
        /** Hours of the day such as {@code 7, 17}. */
        HOURS,
        /** Days and spans of days such as {@code 12-14, 20}. */
        DAYS
    }

    private final String key;
    private final Section section;
    private final Kind kind;
    private final Measure measure;
    private final List<String> options;
    private final double low;
    private final double high;

    Entry(String key, Section section, Kind kind, Measure measure, List<String> options, double low, double high) {
        this.key = key;
        this.section = section;
        this.kind = kind;
        this.measure = measure;
        this.options = List.copyOf(options);
        this.low = low;
        this.high = high;
    }

    Entry(String key, Section section, Kind kind) {
        this(key, section, kind, Measure.COUNT, List.of(), 0, 0);
    }

    Entry(String key, Section section, List<String> options) {
        this(key, section, Kind.CHOICE, Measure.COUNT, options, 0, 0);
    }

    Entry(String key, Section section, Measure measure, double low, double high) {
        this(key, section, Kind.NUMBER, measure, List.of(), low, high);
    }

    Entry(String key, Section section, Kind kind, Measure measure, double low, double high) {
        this(key, section, kind, measure, List.of(), low, high);
    }

    /** Its name in files and language files. */
    public String key() {
        return key;
    }

    public Section section() {
        return section;
    }

    public Kind kind() {
        return kind;
    }

    public Measure measure() {
        return measure;
    }

    /** Words that may be chosen; empty where it is no choice. */
    public List<String> options() {
        return options;
    }

    /** Least value that is taken, canonical. */
    public double low() {
        return low;
    }

    /** Greatest value that is taken, canonical. */
    public double high() {
        return high;
    }

    /** The entry of this key. */
    public static Optional<Entry> of(String key) {
        return Arrays.stream(values()).filter(e -> e.key.equals(key)).findFirst();
    }

    /** The entries of a section, in order. */
    public static List<Entry> in(Section section) {
        return Arrays.stream(values()).filter(e -> e.section == section).toList();
    }
}
