package startwater.drill;

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
        FollowUp helpers) {
    /** The air devices. */
    public enum Air {
        ON,
        OFF
    }

    /** The filter. */
    public enum FilterCare {
        LEAVE,
        /** Rinsed gently in tank water. */
        RINSE,
        /** Cleaned until it shines, under the tap. */
        SCRUB
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

    /** Feed half, nothing else. */
    public static final Decision LEAVE_ALONE =
            new Decision(1, 0, true, 0, 0, 0, 0, Air.ON, FilterCare.LEAVE, FollowUp.NONE);

    public Decision {
        within("feed", feed, 0, 2);
        within("change", change, 0, 0.95);
        within("salt, g", saltG, 0, 1e6);
        within("bicarbonate, g", bicarbonateG, 0, 1e6);
        within("soda ash, g", sodaAshG, 0, 1e6);
        within("ammonium chloride, g", ammoniumChlorideG, 0, 1e6);
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
        return new Decision(
                value, change, neutralise, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withChange(double value) {
        return new Decision(
                feed, value, neutralise, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withNeutralise(boolean value) {
        return new Decision(
                feed, change, value, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withSalt(double grams) {
        return new Decision(
                feed, change, neutralise, grams, bicarbonateG, sodaAshG, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withBicarbonate(double grams) {
        return new Decision(feed, change, neutralise, saltG, grams, sodaAshG, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withSodaAsh(double grams) {
        return new Decision(
                feed, change, neutralise, saltG, bicarbonateG, grams, ammoniumChlorideG, air, filter, helpers);
    }

    public Decision withAmmoniumChloride(double grams) {
        return new Decision(feed, change, neutralise, saltG, bicarbonateG, sodaAshG, grams, air, filter, helpers);
    }

    public Decision withAir(Air value) {
        return new Decision(
                feed, change, neutralise, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, value, filter, helpers);
    }

    public Decision withFilter(FilterCare value) {
        return new Decision(
                feed, change, neutralise, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, air, value, helpers);
    }

    public Decision withFollowUp(FollowUp value) {
        return new Decision(
                feed, change, neutralise, saltG, bicarbonateG, sodaAshG, ammoniumChlorideG, air, filter, value);
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
        return jobs;
    }
}
