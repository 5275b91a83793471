package startwater.drill;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A drill as data: one file in {@code scenarios/}. Units are in the field names; days count from the start of the system
 * (day 0), hours of the day from midnight.
 *
 * @param id file name without ending
 * @param number place on the shelf
 * @param text what is shown, by language code ({@code en}, {@code es})
 * @param skills skill ids that are drilled
 * @param exposes habit ids that do badly here
 * @param rules numbers of the standing rules in which the debrief should end
 * @param system the tank
 * @param fish the fish in it, or null
 * @param plannedFish the fish that are to come, where there are none yet, or null
 * @param source the water at hand
 * @param start how the system got to the first visit
 * @param unknowns priors that differ from the usual ones
 * @param keeper when somebody is there
 * @param shelf what is at hand
 * @param events what happens by itself
 * @param nursery a second system that runs beside this one, or null: see {@link Nursery}
 */
public record Scenario(
        String id,
        int number,
        Map<String, Words> text,
        List<String> skills,
        List<String> exposes,
        List<Integer> rules,
        Water system,
        @Nullable Fish fish,
        @Nullable Fish plannedFish,
        Source source,
        Start start,
        Map<Unknown, Prior> unknowns,
        Keeper keeper,
        Shelf shelf,
        List<Happening> events,
        @Nullable Nursery nursery) {
    /** A drill with one system. */
    public Scenario(
            String id,
            int number,
            Map<String, Words> text,
            List<String> skills,
            List<String> exposes,
            List<Integer> rules,
            Water system,
            @Nullable Fish fish,
            @Nullable Fish plannedFish,
            Source source,
            Start start,
            Map<Unknown, Prior> unknowns,
            Keeper keeper,
            Shelf shelf,
            List<Happening> events) {
        this(
                id,
                number,
                text,
                skills,
                exposes,
                rules,
                system,
                fish,
                plannedFish,
                source,
                start,
                unknowns,
                keeper,
                shelf,
                events,
                null);
    }

    public Scenario {
        text = Map.copyOf(text);
        skills = List.copyOf(skills);
        exposes = List.copyOf(exposes);
        rules = List.copyOf(rules);
        unknowns = Map.copyOf(unknowns);
        events = List.copyOf(events);
    }

    /**
     * The words of one language.
     *
     * @param title short name
     * @param place where the tank stands, for the card
     * @param water the source, for the card
     * @param stock the fish, for the card
     * @param keeper who is there when, for the card
     * @param story two or three sentences that open the drill
     * @param goal one sentence
     * @param debrief one or two sentences that close it
     */
    public record Words(
            String title,
            String place,
            String water,
            String stock,
            String keeper,
            String story,
            String goal,
            String debrief) {}

    /**
     * One body of water with its filter and air.
     *
     * @param volumeL L
     * @param media id of the kind of media: moving-bed, static-plastic, sand, sponge
     * @param mediaAreaM2 wetted area, m2
     * @param airKlaPerHour oxygen transfer of the devices at 20 °C, 1/h
     * @param surfaceKlaPerHour of the still surface, 1/h
     * @param carbonDioxideRatio CO2 over oxygen transfer
     * @param roomCarbonDioxidePpm parts per million
     * @param altitudeM m
     * @param setPointC what the water drifts to while heater or cooler run, °C
     * @param temperatureRatePerDay how fast, 1/d
     * @param roomC what it drifts to without them, °C; null where there are none, and the water is as warm as the room
     * @param exchangePerDay slow exchange with the source, tank volumes a day
     * @param evaporationLPerDay water that evaporates and is topped up from the source, L/d
     * @param plantUptakeMgPerDay nitrate that a plant bed takes at most, mg N/d
     */
    public record Water(
            double volumeL,
            String media,
            double mediaAreaM2,
            double airKlaPerHour,
            double surfaceKlaPerHour,
            double carbonDioxideRatio,
            double roomCarbonDioxidePpm,
            double altitudeM,
            double setPointC,
            double temperatureRatePerDay,
            @Nullable Double roomC,
            double exchangePerDay,
            double evaporationLPerDay,
            double plantUptakeMgPerDay) {
        /** A room as warm as the water, no exchange, nothing that evaporates, no plants. */
        public Water(
                double volumeL,
                String media,
                double mediaAreaM2,
                double airKlaPerHour,
                double surfaceKlaPerHour,
                double carbonDioxideRatio,
                double roomCarbonDioxidePpm,
                double altitudeM,
                double setPointC,
                double temperatureRatePerDay) {
            this(
                    volumeL,
                    media,
                    mediaAreaM2,
                    airKlaPerHour,
                    surfaceKlaPerHour,
                    carbonDioxideRatio,
                    roomCarbonDioxidePpm,
                    altitudeM,
                    setPointC,
                    temperatureRatePerDay,
                    null,
                    0,
                    0,
                    0);
        }
    }

    /**
     * @param species species id
     * @param count number at the first visit
     * @param massG mean mass when they came in (day 0), g
     * @param proteinPercent crude protein of the feed, %
     * @param mealsAtHours hours of the day
     */
    public record Fish(String species, int count, double massG, double proteinPercent, List<Double> mealsAtHours) {
        public Fish {
            mealsAtHours = List.copyOf(mealsAtHours);
        }
    }

    /**
     * @param temperatureC °C
     * @param ph pH
     * @param alkalinityMgPerL as CaCO3
     * @param ammoniaMgPerL mg N/L
     * @param nitrateMgPerL mg N/L
     * @param chlorideMgPerL mg/L
     * @param freeChlorineMgPerL mg/L as Cl2
     * @param combinedChlorineMgPerL mg/L as Cl2
     * @param statedChlorineMgPerL the most the supplier states, mg/L as Cl2: neutralise for this
     */
    public record Source(
            double temperatureC,
            double ph,
            double alkalinityMgPerL,
            double ammoniaMgPerL,
            double nitrateMgPerL,
            double chlorideMgPerL,
            double freeChlorineMgPerL,
            double combinedChlorineMgPerL,
            double statedChlorineMgPerL) {}

    /**
     * @param day day of the first visit
     * @param before what was done until then
     */
    public record Start(int day, List<Before> before) {
        public Start {
            before = List.copyOf(before);
        }
    }

    /**
     * Orders of the one before, from a day on.
     *
     * @param fromDay first day they hold
     * @param feed share of the table ration
     * @param changePerDay share of the water changed each day at the first visiting hour
     * @param ammoniumChlorideG given on {@code fromDay}, once
     * @param bicarbonateG given on {@code fromDay}, once
     * @param saltG given on {@code fromDay}, once
     */
    public record Before(
            int fromDay,
            double feed,
            double changePerDay,
            double ammoniumChlorideG,
            double bicarbonateG,
            double saltG) {}

    /**
     * @param visitsAtHours hours of the day at which somebody comes
     * @param days length of the drill, d
     * @param away spans without a visit
     * @param decisions most decisions a learner makes
     * @param decisionVisits numbers of the keeper's visits (0 is the first) at which the learner is asked to decide; at
     *     the others the orders stand, unless something has changed
     */
    public record Keeper(
            List<Double> visitsAtHours, int days, List<Away> away, int decisions, List<Integer> decisionVisits) {
        public Keeper {
            visitsAtHours = List.copyOf(visitsAtHours);
            away = List.copyOf(away);
            decisionVisits = List.copyOf(decisionVisits);
        }
    }

    /** Nobody comes from one day (inclusive, from the start of the system) to another (exclusive), in days. */
    public record Away(double fromDay, double toDay) {}

    /**
     * What is at hand. Amounts in g; a pad that is not there cannot be read.
     *
     * @param strips number of strips
     * @param chlorideStrips number of chloride strips
     * @param oxygenMeter whether there is one
     * @param phMeter whether there is one
     * @param ripeMediaShare what a bag of ripe media carries of both groups, share of this filter's capacity; 0: no bag, and
     *     beside a nursery ripe media are those of its filter
     * @param spareAirKlaPerHour oxygen transfer of spare air that needs no mains power, at 20 °C, 1/h; 0: none
     */
    public record Shelf(
            double saltG,
            double bicarbonateG,
            double sodaAshG,
            double ammoniumChlorideG,
            double thiosulfateG,
            int strips,
            int chlorideStrips,
            boolean oxygenMeter,
            boolean phMeter,
            double ripeMediaShare,
            double spareAirKlaPerHour) {
        /** Without ripe media and spare air. */
        public Shelf(
                double saltG,
                double bicarbonateG,
                double sodaAshG,
                double ammoniumChlorideG,
                double thiosulfateG,
                int strips,
                int chlorideStrips,
                boolean oxygenMeter,
                boolean phMeter) {
            this(
                    saltG,
                    bicarbonateG,
                    sodaAshG,
                    ammoniumChlorideG,
                    thiosulfateG,
                    strips,
                    chlorideStrips,
                    oxygenMeter,
                    phMeter,
                    0,
                    0);
        }
    }

    /**
     * A second system that runs beside this one by its own standing orders: the learner reads and decides for this one
     * only. Its fish, fed at the same hours, are the planned ones; a decision that stocks moves them over. Ripe media come from
     * its filter, unless there is a bag of them on the shelf.
     *
     * @param system its water, filter and air
     * @param fish its fish at the first visit
     * @param feed share of the table ration they get, always
     * @param changePerDay share of its water changed each day at the first visiting hour
     * @param filterShare how ripe its filter was on day 0, share of capacity
     */
    public record Nursery(Water system, Fish fish, double feed, double changePerDay, double filterShare) {}

    /**
     * Something that happens by itself.
     *
     * @param atDay days from the start of the system
     * @param kind what
     * @param hours how long, where it lasts
     * @param amount °C for a temperature, rations for a meal, share of the filter for a drug
     */
    public record Happening(double atDay, Kind kind, double hours, double amount) {
        /** The kinds. */
        public enum Kind {
            /** The air stops, for hours or until somebody sees to it. */
            AIR_OFF,
            /** So does the pump, */
            PUMP_OFF,
            /** or heater and cooler. */
            HEATER_OFF,
            /** No mains power: pump, air and heater stand, whatever anybody does. */
            POWER_OFF,
            /** The thermostat is set to so many °C. */
            SET_POINT,
            /** The room turns to so many °C, for hours or for good. */
            ROOM_TEMPERATURE,
            /** The source turns to so many °C. */
            SOURCE_TEMPERATURE,
            /** So many day's rations are given at once. */
            OVERFED,
            /** The media lie dry for so many hours. */
            DRIED,
            /** A drug in the water that would kill this share of the filter. */
            MEDICATED,
            /** Somebody scrubs the filter under the tap. */
            SCRUBBED;

            /** Whether the keeper hears of it before: weather is forecast, a thermostat is set by plan; no device says when. */
            public boolean foretold() {
                return this == ROOM_TEMPERATURE || this == SOURCE_TEMPERATURE || this == SET_POINT;
            }
        }

        /** When, minutes from the start of the system. */
        public int minute() {
            return (int) Math.rint(atDay * Calendar.DAY);
        }
    }

    /** The same drill with some parts otherwise. */
    public ScenarioChange change() {
        return new ScenarioChange(this);
    }

    /** The same drill with another keeper. */
    public Scenario withKeeper(Keeper other) {
        return change().keeper(other).made();
    }

    /** The nursery as a drill of its own; null without one. Nothing happens to it by itself. */
    @Nullable
    Scenario beside() {
        if (nursery == null) {
            return null;
        }
        Map<Unknown, Prior> ripe = new java.util.EnumMap<>(Unknown.class);
        ripe.putAll(unknowns);
        ripe.put(Unknown.AOB_SEED, new Prior.Known(nursery.filterShare()));
        ripe.put(Unknown.NOB_SEED, new Prior.Known(nursery.filterShare()));
        Before orders = new Before(0, nursery.feed(), nursery.changePerDay(), 0, 0, 0);
        return change().system(nursery.system())
                .fish(nursery.fish(), null)
                .start(new Start(start.day(), start.day() > 0 ? List.of(orders) : List.of()))
                .unknowns(ripe)
                .events(List.of())
                .nursery(null)
                .made();
    }

    /** Fish in it at the first visit; 0 in a system without. */
    public int fishCount() {
        return fish == null ? 0 : fish.count();
    }

    /** Whether ripe media come from a bag on the shelf. */
    public boolean bagged() {
        return shelf.ripeMediaShare() > 0;
    }

    /** Fish that all shares of the stock refer to: those in it, or where there are none yet those planned; 0 without. */
    public int stockCount() {
        Fish stock = fishHereOrPlanned();
        return stock == null ? 0 : stock.count();
    }

    /** The same drill with the keeper there again from a day on. @param day days since the system was filled */
    public Scenario presentFrom(double day) {
        List<Away> cut = keeper.away().stream()
                .filter(a -> a.fromDay() < day)
                .map(a -> new Away(a.fromDay(), Math.min(a.toDay(), day)))
                .toList();
        Keeper present =
                new Keeper(keeper.visitsAtHours(), keeper.days(), cut, keeper.decisions(), keeper.decisionVisits());
        return withKeeper(present);
    }

    /** The fish in it, or else those that are to come; null where neither is. */
    public @Nullable Fish fishHereOrPlanned() {
        return fish != null ? fish : plannedFish;
    }

    /** The words in {@code language}, or in English. */
    public Words words(String language) {
        Words words = text.get(language);
        return words != null ? words : java.util.Objects.requireNonNull(text.get("en"), id + " has no English text");
    }
}
