package startwater.text;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import startwater.bench.Measure;
import startwater.bench.Unit;
import startwater.bench.UnitSystem;
import startwater.score.UnitSlip;
import startwater.score.WorkingMark;

/**
 * An answer to a sum as a person types it, in either system of units: {@code 42}, {@code 42 g}, {@code 1.5 oz},
 * {@code 80 °F}. A number without a unit is taken in the unit that was asked for.
 *
 * @param value in the unit of the right answer; NaN where refused
 * @param right whether it is near enough
 * @param slip the slip of unit that explains a wrong one, or null
 * @param refusal why it was refused, or null
 */
public record AnswerCheck(
        double value,
        boolean right,
        @Nullable UnitSlip slip,
        @Nullable Refusal refusal) {
    private static final double LITRES_PER_M3 = 1000;

    private static final Map<String, Unit> US_NAMES = Map.of(
            "gal", Unit.LITRE,
            "oz", Unit.GRAM,
            "lb", Unit.KILOGRAM,
            "°f", Unit.CELSIUS,
            "f", Unit.CELSIUS,
            "ft", Unit.METRE);
    private static final Map<String, Unit> METRIC_NAMES = Map.ofEntries(
            Map.entry("l", Unit.LITRE),
            Map.entry("g", Unit.GRAM),
            Map.entry("kg", Unit.KILOGRAM),
            Map.entry("°c", Unit.CELSIUS),
            Map.entry("c", Unit.CELSIUS),
            Map.entry("m", Unit.METRE),
            Map.entry("%", Unit.PERCENT),
            Map.entry("mg/l", Unit.MG_PER_L),
            Map.entry("ppm", Unit.MG_PER_L),
            Map.entry("ph", Unit.PH));

    /** Judges what was typed. @param right whether a value in the unit of {@code exact} is near enough */
    public static AnswerCheck of(String typed, Measure exact, DoublePredicate right) {
        NumberEntry entry = NumberEntry.of(typed);
        if (!entry.ok()) {
            return refused(entry.refusal());
        }
        Optional<Double> value = converted(entry, exact);
        if (value.isEmpty()) {
            return refused(
                    Refusal.of("lesson.unitUnknown", entry.unit(), exact.unit().symbol()));
        }
        boolean good = right.test(value.get());
        UnitSlip slip = good ? null : slip(value.get(), exact);
        return new AnswerCheck(value.get(), good, slip, null);
    }

    private static @Nullable UnitSlip slip(double given, Measure exact) {
        UnitSlip.Quantity quantity = quantity(exact);
        return quantity == null || !(exact.value() > 0)
                ? null
                : WorkingMark.of(given, exact.value(), quantity).slip();
    }

    /** What the number counts; null where no slip of unit is usual. */
    private static UnitSlip.@Nullable Quantity quantity(Measure exact) {
        return switch (exact.unit()) {
            case LITRE -> UnitSlip.Quantity.VOLUME;
            case GRAM, GRAM_PER_DAY -> UnitSlip.Quantity.DOSE;
            case CELSIUS -> UnitSlip.Quantity.TEMPERATURE;
            case MG_CACO3_PER_L -> UnitSlip.Quantity.ALKALINITY;
            case MG_N_PER_L ->
                exact.name().contains("nitrite")
                        ? UnitSlip.Quantity.NITRITE
                        : exact.name().contains("nitrate") ? UnitSlip.Quantity.NITRATE : UnitSlip.Quantity.AMMONIA;
            case MG_PER_L -> exact.name().contains("chloride") ? UnitSlip.Quantity.CHLORIDE : null;
            default -> null;
        };
    }

    private static AnswerCheck refused(@Nullable Refusal refusal) {
        return new AnswerCheck(Double.NaN, false, null, refusal);
    }

    /** The value in the unit that was asked for; nothing where the typed unit measures something else. */
    private static Optional<Double> converted(NumberEntry entry, Measure exact) {
        String unit = plain(entry.unit());
        if (unit.isEmpty()) {
            return Optional.of(entry.value());
        }
        if (exact.unit() == Unit.NONE) {
            return Optional.of(unit.equals("%") ? entry.value() / 100 : entry.value());
        }
        if (unit.equals("m3") || unit.equals("m³")) {
            return exact.unit() == Unit.LITRE ? Optional.of(entry.value() * LITRES_PER_M3) : Optional.empty();
        }
        Unit us = US_NAMES.get(unit);
        if (us != null) {
            return toward(exact.unit(), us, us.from(UnitSystem.US, entry.value()));
        }
        Unit metric = METRIC_NAMES.get(unit);
        return metric == null ? Optional.empty() : toward(exact.unit(), metric, entry.value());
    }

    private static Optional<Double> toward(Unit asked, Unit given, double value) {
        Unit plain = asked == Unit.GRAM_PER_DAY ? Unit.GRAM : asked;
        if (plain == given || group(plain) == given) {
            return Optional.of(value);
        }
        if (plain == Unit.GRAM && given == Unit.KILOGRAM) {
            return Optional.of(1000 * value);
        }
        return plain == Unit.KILOGRAM && given == Unit.GRAM ? Optional.of(value / 1000) : Optional.empty();
    }

    private static Unit group(Unit unit) {
        return switch (unit) {
            case MG_N_PER_L, MG_N_PER_L_DAY, MG_CACO3_PER_L -> Unit.MG_PER_L;
            case PERCENT_PER_DAY -> Unit.PERCENT;
            default -> unit;
        };
    }

    /** Without spaces, basis or "a day": the sum says those. */
    private static String plain(String unit) {
        String bare = unit.toLowerCase(Locale.ROOT).replace(" ", "").replaceAll("(/day|/d|/día|/h)$", "");
        bare = bare.replaceAll("caco3|caco₃|asn|comon", "")
                .replace("mgn/l", "mg/l")
                .replaceAll("^mg/ln$", "mg/l");
        return switch (bare) {
            case "gallon", "gallons", "galón", "galones" -> "gal";
            case "litre", "litres", "liter", "liters", "litro", "litros" -> "l";
            case "gram", "grams", "gramo", "gramos", "gr" -> "g";
            case "ounce", "ounces", "onza", "onzas" -> "oz";
            case "pound", "pounds", "lbs", "libra", "libras" -> "lb";
            case "ºc" -> "°c";
            case "ºf" -> "°f";
            default -> bare;
        };
    }
}
