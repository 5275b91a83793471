package startwater.text;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.quantity.Units;
import startwater.water.Dose;

/** Reads the amounts of a decision as typed, in the learner's own unit, and makes them canonical. */
public final class Amounts {
    private static final double MOST_CHANGE = 0.95;
    private static final double MOST_FEED = 2;
    private static final Map<String, Double> GRAMS = Map.of(
            "", 1.0, "g", 1.0, "kg", 1000.0, "oz", Units.GRAMS_PER_OUNCE, "lb", Units.GRAMS_PER_POUND, "mg", 0.001);
    private static final Map<String, Double> LITRES = Map.of(
            "l",
            1.0,
            "gal",
            Units.LITRES_PER_US_GALLON,
            "gallons",
            Units.LITRES_PER_US_GALLON,
            "galones",
            Units.LITRES_PER_US_GALLON,
            "m3",
            1000.0,
            "m³",
            1000.0);

    private Amounts() {}

    /** A canonical amount, or why there is none. @param value NaN where refused */
    public record Amount(double value, @Nullable Refusal refusal) {
        static Amount of(double value) {
            return new Amount(value, null);
        }

        static Amount refused(String key, Object... parameters) {
            return new Amount(Double.NaN, Refusal.of(key, parameters));
        }

        public boolean ok() {
            return refusal == null;
        }
    }

    /** Feed a day as a share of the table ration, from {@code 50 %} or {@code 40 g}; a bare number is grams. */
    public static Amount feed(String typed, VisitFacts facts) {
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return new Amount(Double.NaN, entry.refusal());
        }
        double share;
        if (entry.unit().equals("%")) {
            share = entry.value() / 100;
        } else {
            Double grams = GRAMS.get(entry.unit());
            if (grams == null) {
                return Amount.refused("entry.feedUnit", entry.unit());
            }
            share = facts.rationG() > 0 ? entry.value() * grams / facts.rationG() : 0;
        }
        return share <= MOST_FEED ? Amount.of(share) : Amount.refused("entry.feedMost", MOST_FEED * facts.rationG());
    }

    /** Share of the water changed, from {@code 20 %}, {@code 480 L} or {@code 100 gal}; a bare number is percent. */
    public static Amount change(String typed, VisitFacts facts) {
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return new Amount(Double.NaN, entry.refusal());
        }
        double share;
        if (entry.unit().isEmpty() || entry.unit().equals("%")) {
            share = entry.value() / 100;
        } else {
            Double litres = LITRES.get(entry.unit());
            if (litres == null) {
                return Amount.refused("entry.changeUnit", entry.unit());
            }
            share = entry.value() * litres / facts.volumeL();
        }
        return share <= MOST_CHANGE
                ? Amount.of(share)
                : Amount.refused("entry.changeMost", MOST_CHANGE * facts.volumeL());
    }

    /** Grams of a dose, from {@code 365 g}, {@code 0.4 kg} or {@code 12 oz}; a bare number is grams. */
    public static Amount dose(Dose compound, String typed, VisitFacts facts) {
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return new Amount(Double.NaN, entry.refusal());
        }
        Double grams = GRAMS.get(entry.unit());
        if (grams == null) {
            return Amount.refused("entry.doseUnit", entry.unit());
        }
        double dose = entry.value() * grams;
        return dose <= facts.leftG(compound) + 1e-9
                ? Amount.of(Math.min(dose, facts.leftG(compound)))
                : Amount.refused("entry.shelf", facts.leftG(compound));
    }
}
