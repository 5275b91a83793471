package startwater.drill;

import java.util.Arrays;
import java.util.Optional;

/** What a drill trains and a lesson teaches. */
public enum Skill {
    READ_STRIP("read-strip"),
    UNITS("units"),
    TOXIC_AMMONIA("toxic-ammonia"),
    NITRITE_CHLORIDE("nitrite-chloride"),
    WATER_CHANGE("water-change"),
    RATION("ration"),
    CYCLE_SENSE("cycle-sense"),
    ALKALINITY_PH("alkalinity-ph"),
    OXYGEN_AIR("oxygen-air"),
    SOURCE_WATER("source-water"),
    FISHLESS_START("fishless-start"),
    LOADING("loading"),
    FILTER_CARE("filter-care"),
    FAILURES("failures"),
    ROUTINE("routine"),
    BEFORE_WATER("before-water"),
    CAPACITY("capacity"),
    PRESENCE("presence");

    private final String id;

    Skill(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** The skill of an id. @throws IllegalArgumentException where there is none */
    public static Skill of(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("Skill: '" + id + "' is not known."));
    }

    /** The skill of an id, or empty where there is none. */
    public static Optional<Skill> find(String id) {
        return Arrays.stream(values()).filter(skill -> skill.id.equals(id)).findFirst();
    }
}
