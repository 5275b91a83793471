package startwater.course;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Skill;

/** What a decision pulls, most telling first, and the skill that it asks for. */
public enum Lever {
    /** Spare air, or air switched off. */
    AIR(Skill.OXYGEN_AIR),
    /** Pump or heater switched off. */
    DEVICE(Skill.FAILURES),
    STOCK(Skill.LOADING),
    FILTER(Skill.FILTER_CARE),
    BUFFER(Skill.ALKALINITY_PH),
    SALT(Skill.NITRITE_CHLORIDE),
    AMMONIA(Skill.FISHLESS_START),
    CHANGE(Skill.WATER_CHANGE),
    /** Another ration than the table's. */
    RATION(Skill.RATION),
    /** Somebody looks again or is called. */
    ASK(Skill.PRESENCE),
    /** Nothing is pulled: full ration, and wait. */
    WAIT(null);

    private static final double EVEN = 1e-9;
    private final @Nullable Skill skill;

    Lever(@Nullable Skill skill) {
        this.skill = skill;
    }

    /** The skill it asks for, or null for none. */
    public @Nullable Skill skill() {
        return skill;
    }

    /** All that a decision pulls; {@link #WAIT} alone where it is nothing. */
    public static Set<Lever> of(Decision d) {
        Set<Lever> pulled = EnumSet.noneOf(Lever.class);
        add(pulled, AIR, d.air() != Decision.Air.ON);
        add(pulled, DEVICE, !d.pump() || !d.heater());
        add(pulled, STOCK, d.stock() > 0 || d.ripeMedia() > 0);
        add(pulled, FILTER, d.filter() != Decision.FilterCare.LEAVE);
        add(pulled, BUFFER, d.bicarbonateG() > 0 || d.sodaAshG() > 0);
        add(pulled, SALT, d.saltG() > 0);
        add(pulled, AMMONIA, d.ammoniumChlorideG() > 0);
        add(pulled, CHANGE, d.change() > 0);
        add(pulled, RATION, Math.abs(d.feed() - 1) > EVEN);
        add(pulled, ASK, d.helpers() != Decision.FollowUp.NONE);
        add(pulled, WAIT, pulled.isEmpty());
        return pulled;
    }

    private static void add(Set<Lever> pulled, Lever lever, boolean is) {
        if (is) {
            pulled.add(lever);
        }
    }

    /** The one that tells most of a decision. */
    public static Lever main(Decision d) {
        return of(d).iterator().next();
    }

    /** What a standing rule asks for. @param rule 1 to 15 */
    public static Lever ofRule(int rule) {
        return switch (rule) {
            case 2, 10, 11 -> RATION;
            case 3, 4, 6, 9 -> CHANGE;
            case 5 -> SALT;
            case 7 -> BUFFER;
            case 8 -> AIR;
            case 13 -> FILTER;
            case 14 -> AMMONIA;
            case 15 -> ASK;
            default -> WAIT;
        };
    }
}
