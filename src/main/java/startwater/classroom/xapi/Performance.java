package startwater.classroom.xapi;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import startwater.drill.Decision;

/** A decision as the steps of a performance: what was done, one step each, with amounts in the unit of the step's name. */
final class Performance {
    private static final String BETWEEN_STEPS = "[,]";
    private static final String BETWEEN_PARTS = "[.]";
    private static final int DECIMALS = 4;

    private Performance() {}

    /** All the steps a decision can have. */
    static List<String> ids() {
        return List.copyOf(steps(Decision.LEAVE_ALONE).keySet());
    }

    /** The steps of a decision that say something: the feed always, the rest where it is not left alone. */
    static String response(Decision d) {
        Map<String, String> alone = steps(Decision.LEAVE_ALONE);
        List<String> said = new ArrayList<>();
        steps(d).forEach((id, value) -> {
            if (said.isEmpty() || !value.equals(alone.get(id))) {
                said.add(id + BETWEEN_PARTS + value);
            }
        });
        return String.join(BETWEEN_STEPS, said);
    }

    private static Map<String, String> steps(Decision d) {
        Map<String, String> steps = new LinkedHashMap<>();
        steps.put("feed-share", number(d.feed()));
        steps.put("change-share", number(d.change()));
        steps.put("neutralise", Boolean.toString(d.neutralise()));
        steps.put("salt-g", number(d.saltG()));
        steps.put("bicarbonate-g", number(d.bicarbonateG()));
        steps.put("soda-ash-g", number(d.sodaAshG()));
        steps.put("ammonium-chloride-g", number(d.ammoniumChlorideG()));
        steps.put("air", word(d.air()));
        steps.put("filter", word(d.filter()));
        steps.put("ask", word(d.helpers()));
        steps.put("pump", Boolean.toString(d.pump()));
        steps.put("heater", Boolean.toString(d.heater()));
        steps.put("stock-share", number(d.stock()));
        steps.put("ripe-media-share", number(d.ripeMedia()));
        return steps;
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
