package startwater.score;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.Decision;

/**
 * What kind of thing a decision is, its amounts aside: salting 300 g here and 340 g there is the same act.
 *
 * @param parts language-neutral names, the feeding first
 */
public record Act(List<String> parts) {
    public Act {
        parts = List.copyOf(parts);
    }

    public static Act of(Decision d) {
        List<String> parts = new ArrayList<>();
        parts.add(d.feed() == 0 ? "hold" : d.feed() < 0.75 ? "half-feed" : "full-feed");
        if (d.change() > 0) {
            parts.add((d.neutralise() ? "change-" : "raw-change-") + Math.max(1, Math.round(4 * d.change())));
        }
        add(parts, d.saltG() > 0, "salt");
        add(parts, d.bicarbonateG() > 0, "buffer");
        add(parts, d.sodaAshG() > 0, "soda");
        add(parts, d.ammoniumChlorideG() > 0, "ammonium");
        add(parts, d.stock() > 0, "stock-" + Math.max(1, Math.round(5 * d.stock())));
        add(parts, d.ripeMedia() > 0, "ripe-media");
        add(parts, d.air() == Decision.Air.OFF, "air-off");
        add(parts, d.air() == Decision.Air.SPARE, "spare-air");
        add(parts, !d.pump(), "pump-off");
        add(parts, !d.heater(), "heater-off");
        add(parts, d.filter() == Decision.FilterCare.RINSE, "rinse");
        add(parts, d.filter() == Decision.FilterCare.SCRUB, "scrub");
        add(parts, d.filter() == Decision.FilterCare.DRAIN, "drain");
        add(parts, d.helpers() == Decision.FollowUp.LOOK_AGAIN, "look-again");
        add(parts, d.helpers() == Decision.FollowUp.CALL, "call");
        return new Act(parts);
    }

    private static void add(List<String> parts, boolean there, String part) {
        if (there) {
            parts.add(part);
        }
    }

    static Act read(String code) {
        return new Act(List.of(code.split("\\+")));
    }

    /** One word for it, for example {@code half-feed+change-2+salt}; a change counts in quarters of the water,
     * stocking in fifths of the fish that were planned. */
    public String code() {
        return String.join("+", parts);
    }
}
