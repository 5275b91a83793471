package startwater.rehearse;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.drill.Scenario;
import startwater.fish.Species;

/**
 * The learner's own system, in canonical units. What is null is unknown: it becomes a prior, an assumption that is said, or,
 * where nothing honest can be put in its place, a refusal.
 *
 * @param name as typed, or empty
 * @param starting how it is started
 * @param vessel its water and filter
 * @param air its air
 * @param stock its fish
 * @param tap the water at hand
 * @param visits hours of the day at which somebody is there; empty where unknown
 * @param away spans without a visit, days from the filling
 * @param shelf what is at hand
 * @param moveDay day, from the filling of this system, on which the fish must move on or come in; null where there is none
 * @param second the system they move to, or null
 */
public record OwnSystem(
        String name,
        Starting starting,
        Vessel vessel,
        Air air,
        Stock stock,
        Tap tap,
        List<Double> visits,
        List<Scenario.Away> away,
        Shelf shelf,
        @Nullable Integer moveDay,
        @Nullable Second second) {
    public OwnSystem {
        visits = List.copyOf(visits);
        away = List.copyOf(away);
    }

    /**
     * Water and filter.
     *
     * @param volumeL tank, sump and filter, L
     * @param media kind of media
     * @param areaM2 wetted area as the maker states it, m2
     * @param litres of media as poured, L
     * @param pumpLPerHour flow through the filter, L/h
     * @param roomC temperature of the room, °C
     * @param setPointC of heater or cooler, °C; null where there is none
     */
    public record Vessel(
            @Nullable Double volumeL,
            @Nullable FilterMedia media,
            @Nullable Double areaM2,
            @Nullable Double litres,
            @Nullable Double pumpLPerHour,
            @Nullable Double roomC,
            @Nullable Double setPointC) {
        /** Temperature of the water: that of the heater, or of the room. */
        public @Nullable Double waterC() {
            return setPointC != null ? setPointC : roomC;
        }
    }

    /**
     * Air, told one way or another.
     *
     * @param powerW of the air pump, W
     * @param flowLPerMin of air, L/min
     * @param stones how many
     * @param strength none, weak, fair, strong; empty where unknown
     * @param spare whether there is air that needs no mains
     */
    public record Air(
            @Nullable Double powerW,
            @Nullable Double flowLPerMin,
            @Nullable Double stones,
            String strength,
            boolean spare) {
        /** Whether nothing is told about the air. */
        boolean untold() {
            return powerW == null && flowLPerMin == null && stones == null && strength.isEmpty();
        }
    }

    /**
     * Fish in it, or to come.
     *
     * @param count number
     * @param massG mean mass, g
     * @param proteinPercent of the feed, %
     * @param meals hours of the day; empty where unknown
     */
    public record Stock(
            @Nullable Species species,
            @Nullable Integer count,
            @Nullable Double massG,
            @Nullable Double proteinPercent,
            List<Double> meals) {
        public Stock {
            meals = List.copyOf(meals);
        }
    }

    /**
     * The water at hand as it was read.
     *
     * @param temperatureC °C
     * @param ph pH
     * @param alkalinityMgPerL as CaCO3
     * @param chlorideMgPerL mg/L
     * @param nitrateMgPerL mg N/L
     * @param ammoniaMgPerL mg N/L
     * @param chlorineMgPerL the most the supplier states, mg/L as Cl2; 0 for a well or rain
     */
    public record Tap(
            @Nullable Double temperatureC,
            @Nullable Double ph,
            @Nullable Double alkalinityMgPerL,
            @Nullable Double chlorideMgPerL,
            @Nullable Double nitrateMgPerL,
            @Nullable Double ammoniaMgPerL,
            @Nullable Double chlorineMgPerL) {}

    /** What is at hand; null is unknown. Amounts in g, ripe media in L. */
    public record Shelf(
            @Nullable Integer strips,
            @Nullable Integer chlorideStrips,
            @Nullable Double saltG,
            @Nullable Double bicarbonateG,
            @Nullable Double neutraliserG,
            @Nullable Double ammoniumG,
            @Nullable Double ripeMediaL,
            boolean oxygenMeter,
            boolean phMeter) {}

    /** The system to which the fish move. @param airStrength none, weak, fair, strong; empty where unknown */
    public record Second(Vessel vessel, String airStrength) {}

    /** The system of a form; what cannot be read is unknown. */
    public static OwnSystem of(Form form) {
        FormReader r = new FormReader(form);
        String start = r.choice(Entry.START);
        return new OwnSystem(
                form.answer(Entry.NAME),
                Starting.byId(start),
                vessel(r, Entry.VOLUME, Entry.MEDIA, Entry.MEDIA_AREA, Entry.MEDIA_LITRES, r.number(Entry.SET_POINT)),
                new Air(
                        r.number(Entry.AIR_POWER),
                        r.number(Entry.AIR_FLOW),
                        r.number(Entry.AIR_STONES),
                        r.choice(Entry.AIR_STRENGTH),
                        r.yes(Entry.SPARE_AIR)),
                new Stock(
                        r.choice(Entry.SPECIES).isEmpty() ? null : Species.byId(r.choice(Entry.SPECIES)),
                        whole(r, Entry.COUNT),
                        r.number(Entry.MASS),
                        r.number(Entry.PROTEIN),
                        r.hours(Entry.MEALS)),
                new Tap(
                        r.number(Entry.TAP_TEMPERATURE),
                        r.number(Entry.TAP_PH),
                        r.number(Entry.TAP_ALKALINITY),
                        r.number(Entry.TAP_CHLORIDE),
                        r.number(Entry.TAP_NITRATE),
                        r.number(Entry.TAP_AMMONIA),
                        r.number(Entry.TAP_CHLORINE)),
                r.hours(Entry.VISITS),
                r.spans(Entry.AWAY),
                new Shelf(
                        whole(r, Entry.STRIPS),
                        whole(r, Entry.CHLORIDE_STRIPS),
                        r.number(Entry.SALT),
                        r.number(Entry.BICARBONATE),
                        r.number(Entry.NEUTRALISER),
                        r.number(Entry.AMMONIUM),
                        r.number(Entry.RIPE_MEDIA),
                        r.yes(Entry.OXYGEN_METER),
                        r.yes(Entry.PH_METER)),
                whole(r, Entry.MOVE_DAY),
                form.answer(Entry.SECOND_VOLUME).isEmpty() ? null : second(r));
    }

    private static Second second(FormReader r) {
        Double own = r.number(Entry.SECOND_SET_POINT);
        Vessel vessel = vessel(r, Entry.SECOND_VOLUME, Entry.SECOND_MEDIA, Entry.SECOND_AREA, Entry.SECOND_LITRES, own);
        return new Second(vessel, r.choice(Entry.SECOND_AIR));
    }

    private static Vessel vessel(
            FormReader r, Entry volume, Entry media, Entry area, Entry litres, @Nullable Double setPointC) {
        String kind = r.choice(media);
        return new Vessel(
                r.number(volume),
                kind.isEmpty() ? null : FilterMedia.byId(kind),
                r.number(area),
                r.number(litres),
                volume == Entry.VOLUME ? r.number(Entry.PUMP_FLOW) : null,
                r.number(Entry.ROOM),
                setPointC);
    }

    private static @Nullable Integer whole(FormReader r, Entry entry) {
        Double value = r.number(entry);
        return value == null ? null : (int) Math.rint(value);
    }
}
