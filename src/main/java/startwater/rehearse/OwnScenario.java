package startwater.rehearse;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.drill.Calendar;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.text.Language;

/**
 * The scenario of the learner's own system. What is not known becomes a prior among its unknowns. Area has no unknown of its
 * own: bacteria at the start are a share of what the area can hold, so its doubt goes into theirs.
 */
public final class OwnScenario {
    /** What the standing rules dose for a start without fish, mg N/L: the most that one day can prove. */
    static final double DOSE_MG_PER_L = 2;
    /** Crude protein of common grower feed, % (common practice, no source). */
    static final double PROTEIN_PERCENT = 36;

    static final double LEAST_AREA_M2 = 0.1;
    private static final double MOST_AREA_M2 = 10_000;
    private static final int FIRST_NUMBER = 200;
    private static final int NUMBERS = 800;
    private static final double LEAST_C = 1;
    private static final double MOST_C = 40;
    private static final double WARM_C = 24;
    private static final double MILD_C = 18;
    private static final List<Double> MORNING = List.of(8.0);
    /** Days at which the learner decides, of a drill of 42 days: dense while things move. */
    private static final double[] ASKED_FISH_IN = {0, 2, 4, 7, 10, 14, 20, 28};

    private static final double[] ASKED_FISHLESS = {0, 4, 9, 14, 19, 24, 30, 36};
    private static final double ASKED_OF_DAYS = 42;
    private static final double AMPLE_G = 900_000;
    private static final int AMPLE_STRIPS = 500;

    private OwnScenario() {}

    /**
     * The drill of the first system, as it may be played. @param id file name without ending
     *
     * @throws NullPointerException for a system that {@link SystemChecks} refuses
     */
    public static Scenario of(OwnSystem own, String id) {
        return scenario(own, id, own.starting() == Starting.FISH_IN);
    }

    /** The second system as a drill of its own: a start without fish. */
    static Scenario second(OwnSystem own, String id, double massG) {
        OwnSystem.Second second = Objects.requireNonNull(own.second());
        OwnSystem.Stock stock = own.stock();
        OwnSystem grown = new OwnSystem(
                own.name(),
                Starting.FISHLESS,
                second.vessel(),
                new OwnSystem.Air(
                        null, null, null, second.airStrength(), own.air().spare()),
                new OwnSystem.Stock(stock.species(), stock.count(), massG, stock.proteinPercent(), stock.meals()),
                own.tap(),
                own.visits(),
                List.of(),
                own.shelf(),
                null,
                null);
        return scenario(grown, id, false);
    }

    /** The same with all that the rules may ask for, over the whole time in which a filter may still come to life. */
    static Scenario ample(OwnSystem own, Scenario s) {
        int days = horizonDays(s.system().setPointC());
        Scenario.Shelf h = s.shelf();
        Scenario.Shelf full = new Scenario.Shelf(
                AMPLE_G,
                AMPLE_G,
                h.sodaAshG(),
                AMPLE_G,
                AMPLE_G,
                AMPLE_STRIPS,
                AMPLE_STRIPS,
                h.oxygenMeter(),
                h.phMeter(),
                h.ripeMediaShare(),
                h.spareAirKlaPerHour());
        Scenario.Keeper k = s.keeper();
        Scenario.Keeper longer = new Scenario.Keeper(k.visitsAtHours(), days, within(own.away(), days), 1, List.of(0));
        return s.change().keeper(longer).shelf(full).made();
    }

    /** How long a start is followed at most, d: the colder, the longer (published: weeks at 25 °C, months in the cold). */
    static int horizonDays(double waterC) {
        return waterC >= WARM_C ? 70 : waterC >= MILD_C ? 90 : 120;
    }

    private static int playDays(OwnSystem.Vessel vessel) {
        double water = waterC(vessel);
        return water >= WARM_C ? 42 : water >= MILD_C ? 56 : 84;
    }

    static double waterC(OwnSystem.Vessel vessel) {
        return playable(Objects.requireNonNull(vessel.waterC(), "temperature"));
    }

    /** Within what a drill may keep, °C. */
    private static double playable(double temperatureC) {
        return Math.max(LEAST_C, Math.min(MOST_C, temperatureC));
    }

    /** The room's own temperature matters where heater or cooler keep another. */
    private static @Nullable Double roomC(OwnSystem.Vessel vessel) {
        Double room = vessel.roomC();
        return vessel.setPointC() == null || room == null ? null : Double.valueOf(playable(room));
    }

    static double protein(OwnSystem own) {
        Double protein = own.stock().proteinPercent();
        return protein == null ? PROTEIN_PERCENT : protein;
    }

    private static Scenario scenario(OwnSystem own, String id, boolean fishIn) {
        OwnSystem.Vessel vessel = own.vessel();
        int days = playDays(vessel);
        double volume = Objects.requireNonNull(vessel.volumeL(), "volume");
        Prior.LogNormal area = Objects.requireNonNull(Reckoned.areaM2(vessel), "media");
        Prior.LogNormal kla = Reckoned.kla(own.air(), volume);
        FilterMedia media = vessel.media() == null ? FilterMedia.STATIC_PLASTIC : vessel.media();
        double areaM2 = rounded(Math.min(MOST_AREA_M2, area.median()));
        Scenario.Water water = new Scenario.Water(
                volume,
                media.id(),
                areaM2,
                rounded(kla.median()),
                Reckoned.SURFACE_KLA,
                0.4,
                600,
                0,
                waterC(vessel),
                2,
                roomC(vessel),
                0,
                0,
                0);
        Scenario.Fish fish = fish(own);
        Scenario.Keeper everyVisit = new Scenario.Keeper(visits(own), days, within(own.away(), days), 1, List.of(0));
        Map<Unknown, Prior> unknowns = new EnumMap<>(Unknown.class);
        unknowns.put(Unknown.AIR, new Prior.LogNormal(1, rounded(StrictMath.hypot(0.2, kla.sd()))));
        Seeds.put(own, area, unknowns);
        OwnTap.put(own, unknowns);
        Scenario drill = new Scenario(
                id,
                number(id),
                Map.of(
                        Language.EN.code(), OwnWords.of(own, volume, fishIn, Language.EN),
                        Language.ES.code(), OwnWords.of(own, volume, fishIn, Language.ES)),
                fishIn
                        ? List.of("toxic-ammonia", "nitrite-chloride", "water-change", "ration")
                        : List.of("fishless-start", "cycle-sense", "alkalinity-ph", "loading"),
                List.of(),
                fishIn ? List.of(5, 3, 12) : List.of(14, 7, 12),
                water,
                fishIn ? fish : null,
                fishIn ? null : fish,
                OwnTap.source(own),
                new Scenario.Start(0, List.of()),
                unknowns,
                everyVisit,
                OwnShelf.of(own, volume),
                List.of());
        return drill.withKeeper(asked(drill, fishIn));
    }

    /** A place on the shelf behind the shipped drills, the same for the same name; two names seldom share one. */
    private static int number(String id) {
        return FIRST_NUMBER + Math.floorMod(id.hashCode(), NUMBERS);
    }

    private static Scenario.Fish fish(OwnSystem own) {
        OwnSystem.Stock stock = own.stock();
        List<Double> meals = stock.meals().isEmpty() ? visits(own) : stock.meals();
        return new Scenario.Fish(
                Objects.requireNonNull(stock.species(), "species").id(),
                Objects.requireNonNull(stock.count(), "count"),
                Objects.requireNonNull(stock.massG(), "mass"),
                protein(own),
                meals);
    }

    static List<Double> visits(OwnSystem own) {
        return own.visits().isEmpty() ? MORNING : own.visits();
    }

    private static Scenario.Keeper asked(Scenario drill, boolean fishIn) {
        List<Integer> visits = Calendar.of(drill).visits();
        Scenario.Keeper k = drill.keeper();
        TreeSet<Integer> numbers = new TreeSet<>();
        for (double day : fishIn ? ASKED_FISH_IN : ASKED_FISHLESS) {
            double minute = day * k.days() / ASKED_OF_DAYS * Calendar.DAY;
            int number = 0;
            while (number < visits.size() - 1 && visits.get(number) < minute) {
                number++;
            }
            numbers.add(number);
        }
        return new Scenario.Keeper(k.visitsAtHours(), k.days(), k.away(), numbers.size(), new ArrayList<>(numbers));
    }

    /** Absences that lie within so many days. */
    private static List<Scenario.Away> within(List<Scenario.Away> all, int days) {
        return all.stream()
                .filter(a -> a.fromDay() < days)
                .map(a -> new Scenario.Away(a.fromDay(), Math.min(a.toDay(), days)))
                .toList();
    }

    /** To four figures: what a file should show. */
    static double rounded(double value) {
        return value == 0
                ? 0
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(4, java.math.RoundingMode.HALF_EVEN))
                        .doubleValue();
    }
}
