package startwater.drill;

import java.util.function.Consumer;
import startwater.water.Dose;

/**
 * What is done at a visit. Amounts are canonical (shares and grams) whatever unit they were typed in, so that the same
 * act gets the same mark.
 *
 * @param feed share of the table ration a day, from now until the next decision, 0..2
 * @param change share of the water replaced now, 0..0.95
 * @param neutralise whether the new water is treated for the supplier's stated maximum of chlorine
 * @param saltG sodium chloride, g
 * @param bicarbonateG baking soda, g
 * @param sodaAshG sodium carbonate, g
 * @param ammoniumChlorideG g
 * @param air what is done about the air
 * @param filter what is done to the filter
 * @param helpers whom to ask or when to look again
 * @param pump whether the pump is to run from now on; one that stands is started, once the filter is seen to
 * @param heater whether heater or cooler are to run from now on
 * @param stock share of the planned fish put in now, 0..1
 * @param ripeMedia share of the ripe media at hand, or of the nursery's, hung into the filter now, 0..1
 */
public record Decision(
        double feed,
        double change,
        boolean neutralise,
        double saltG,
        double bicarbonateG,
        double sodaAshG,
        double ammoniumChlorideG,
        Air air,
        FilterCare filter,
        FollowUp helpers,
        boolean pump,
        boolean heater,
        double stock,
        double ripeMedia) {
    /** The air devices. */
    public enum Air {
        ON,
        OFF,
        /** As on, and the spare air beside, which runs without mains power. */
        SPARE
    }

    /** The filter. */
    public enum FilterCare {
        LEAVE,
        /** Rinsed gently in tank water. */
        RINSE,
        /** Cleaned until it shines, under the tap. */
        SCRUB,
        /** A bed without flow is drained, before it starts again. */
        DRAIN
    }

    /** Attention beyond the next visit. */
    public enum FollowUp {
        NONE,
        /** Somebody looks again in the middle of the way to the next visit, and acts by the standing rules. */
        LOOK_AGAIN,
        /** Somebody who knows is called: comes within four hours, tests without misreading, acts by the standing rules. */
        CALL;

        /** Who then acts. */
        public Actor actor() {
            return switch (this) {
                case NONE -> Actor.ORDERS;
                case LOOK_AGAIN -> Actor.HELPER;
                case CALL -> Actor.EXPERT;
            };
        }
    }

    /** Full ration, everything runs, nothing else. */
    public static final Decision LEAVE_ALONE =
            new Decision(1, 0, true, 0, 0, 0, 0, Air.ON, FilterCare.LEAVE, FollowUp.NONE, true, true, 0, 0);

    public Decision {
        within("feed", feed, 0, 2);
        within("change", change, 0, 0.95);
        within("salt, g", saltG, 0, 1e6);
        within("bicarbonate, g", bicarbonateG, 0, 1e6);
        within("soda ash, g", sodaAshG, 0, 1e6);
        within("ammonium chloride, g", ammoniumChlorideG, 0, 1e6);
        within("stock", stock, 0, 1);
        within("ripe media", ripeMedia, 0, 1);
    }

    private static void within(String what, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    "Decision: " + what + " is " + value + "; it must lie between " + low + " and " + high + ".");
        }
    }

    /** The dose of one compound, g. */
    public double grams(Dose compound) {
        return switch (compound) {
            case SODIUM_CHLORIDE -> saltG;
            case SODIUM_BICARBONATE -> bicarbonateG;
            case SODIUM_CARBONATE -> sodaAshG;
            case AMMONIUM_CHLORIDE -> ammoniumChlorideG;
            default -> 0;
        };
    }

    public Decision withFeed(double value) {
        return with(d -> d.feed = value);
    }

    public Decision withChange(double value) {
        return with(d -> d.change = value);
    }

    public Decision withNeutralise(boolean value) {
        return with(d -> d.neutralise = value);
    }

    public Decision withSalt(double value) {
        return with(d -> d.saltG = value);
    }

    public Decision withBicarbonate(double value) {
        return with(d -> d.bicarbonateG = value);
    }

    public Decision withSodaAsh(double value) {
        return with(d -> d.sodaAshG = value);
    }

    public Decision withAmmoniumChloride(double value) {
        return with(d -> d.ammoniumChlorideG = value);
    }

    public Decision withAir(Air value) {
        return with(d -> d.air = value);
    }

    public Decision withFilter(FilterCare value) {
        return with(d -> d.filter = value);
    }

    public Decision withFollowUp(FollowUp value) {
        return with(d -> d.helpers = value);
    }

    public Decision withPump(boolean value) {
        return with(d -> d.pump = value);
    }

    public Decision withHeater(boolean value) {
        return with(d -> d.heater = value);
    }

    public Decision withStock(double value) {
        return with(d -> d.stock = value);
    }

    public Decision withRipeMedia(double value) {
        return with(d -> d.ripeMedia = value);
    }

    private Decision with(Consumer<Draft> change) {
        Draft draft = new Draft(this);
        change.accept(draft);
        return draft.decision();
    }

    /** The one place that copies a decision field by field. */
    private static final class Draft {
        private double feed;
        private double change;
        private boolean neutralise;
        private double saltG;
        private double bicarbonateG;
        private double sodaAshG;
        private double ammoniumChlorideG;
        private Air air;
        private FilterCare filter;
        private FollowUp helpers;
        private boolean pump;
        private boolean heater;
        private double stock;
        private double ripeMedia;

        Draft(Decision of) {
            feed = of.feed;
            change = of.change;
            neutralise = of.neutralise;
            saltG = of.saltG;
            bicarbonateG = of.bicarbonateG;
            sodaAshG = of.sodaAshG;
            ammoniumChlorideG = of.ammoniumChlorideG;
            air = of.air;
            filter = of.filter;
            helpers = of.helpers;
            pump = of.pump;
            heater = of.heater;
            stock = of.stock;
            ripeMedia = of.ripeMedia;
        }

        Decision decision() {
            return new Decision(
                    feed,
                    change,
                    neutralise,
                    saltG,
                    bicarbonateG,
                    sodaAshG,
                    ammoniumChlorideG,
                    air,
                    filter,
                    helpers,
                    pump,
                    heater,
                    stock,
                    ripeMedia);
        }
    }

    /** Number of jobs it makes: what is done beyond feeding, each costs a little. */
    public int jobs() {
        int jobs = 0;
        jobs += change > 0 ? 1 : 0;
        jobs += saltG > 0 ? 1 : 0;
        jobs += bicarbonateG > 0 ? 1 : 0;
        jobs += sodaAshG > 0 ? 1 : 0;
        jobs += ammoniumChlorideG > 0 ? 1 : 0;
        jobs += filter != FilterCare.LEAVE ? 1 : 0;
        jobs += helpers != FollowUp.NONE ? 1 : 0;
        jobs += air == Air.SPARE ? 1 : 0;
        jobs += stock > 0 ? 1 : 0;
        jobs += ripeMedia > 0 ? 1 : 0;
        return jobs;
    }
}
