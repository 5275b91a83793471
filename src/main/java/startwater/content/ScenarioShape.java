package startwater.content;

import static startwater.content.GroupShape.group;
import static startwater.content.GroupShape.may;
import static startwater.content.GroupShape.need;
import static startwater.content.ListShape.list;
import static startwater.content.ListShape.set;
import static startwater.content.NumberShape.number;
import static startwater.content.NumberShape.whole;
import static startwater.content.TextShape.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import startwater.biofilter.FilterMedia;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.drill.Skill;
import startwater.drill.Unknown;
import startwater.fish.Species;
import startwater.water.OxygenSaturation;

/**
 * What a drill file holds: the components of {@link Scenario}, by the same names, with their ranges. The ranges are wide:
 * they catch slips of unit and of the decimal point, not odd tanks.
 */
final class ScenarioShape {
    /** The schema number that this program reads. */
    static final int SCHEMA = 1;
    /** Most decisions of a drill: it should take twelve minutes. */
    static final int MOST_DECISIONS = 8;
    /** Coldest and warmest water that a heater or a room may keep, °C: what the chemistry is good for. */
    static final double LEAST_SET_POINT_C = 1;

    static final double MOST_SET_POINT_C = 40;
    /** Most table rations of a day that somebody gives at once. */
    static final double MOST_RATIONS = 10;
    /** Most of the filter that a drug may kill. */
    static final double MOST_KILLED = 0.99;
    /** Number of standing rules. */
    static final int STANDING_RULES = 15;

    static final List<String> MEDIA = FilterMedia.ids();

    private static final int CARD_LINE = 32;
    private static final double MOST_GRAMS = 100_000;

    static final GroupShape WORDS = group(
            need("title", text(CARD_LINE), "Short name of the drill"),
            need("place", text(CARD_LINE), "Where the tank stands, for the card"),
            need("water", text(CARD_LINE), "The source water, for the card"),
            need("stock", text(CARD_LINE), "The fish, for the card"),
            need("keeper", text(CARD_LINE), "Who is there when, for the card"),
            need("story", text(320), "Two or three short sentences that open the drill"),
            need("goal", text(140), "One short sentence"),
            need("debrief", text(280), "One or two short sentences that close the drill"));

    static final GroupShape SYSTEM = group(
            need("volumeL", number(50, 100_000), "Water in tank, sump and filter together, L"),
            need("media", new WordShape(MEDIA), "Kind of filter media"),
            need("mediaAreaM2", number(0.1, 10_000), "Wetted area of the media, m2"),
            need("airKlaPerHour", number(0, 20), "Oxygen transfer of the air devices at 20 C, 1/h"),
            need("surfaceKlaPerHour", number(0, 2), "Oxygen transfer of the still surface, 1/h (about 0.1)"),
            need("carbonDioxideRatio", number(0.1, 1.5), "CO2 over oxygen transfer: 0.4 bubbles, 0.9 splashing"),
            need("roomCarbonDioxidePpm", number(300, 10_000), "CO2 in the air of the room, ppm (600 indoors)"),
            need(
                    "altitudeM",
                    number(OxygenSaturation.ALTITUDE_M.low(), OxygenSaturation.ALTITUDE_M.high()),
                    "Height above the sea, m"),
            need("setPointC", number(LEAST_SET_POINT_C, MOST_SET_POINT_C), "Temperature to which the water drifts, C"),
            need("temperatureRatePerDay", number(0.1, 24), "How fast it drifts there, 1/d (about 2)"),
            may("roomC", number(LEAST_SET_POINT_C, MOST_SET_POINT_C), "Where it drifts without heater or cooler, C"),
            may("exchangePerDay", number(0, 20), "Slow exchange with the source, tank volumes a day; left out: none"),
            may("evaporationLPerDay", number(0, 10_000), "Evaporates and is topped up, L/d; left out: none"),
            may("plantUptakeMgPerDay", number(0, 1_000_000), "Nitrate a plant bed takes at most, mg N/d"));

    static final GroupShape FISH = group(
            need("species", new WordShape(Species.ids()), "Species"),
            need("count", whole(1, 1_000_000), "Number of fish at the first visit"),
            need("massG", number(0.05, 2000), "Mean body mass when they came in, g"),
            need("proteinPercent", number(20, 60), "Crude protein of the feed, %"),
            need("mealsAtHours", list(number(0, 24), 1, 24), "Hours of the day at which they are fed"));

    static final GroupShape SOURCE = group(
            need("temperatureC", number(0, 40), "C"),
            need("ph", number(5, 9.5), "pH"),
            need("alkalinityMgPerL", number(0, 500), "Alkalinity, mg/L as CaCO3"),
            need("ammoniaMgPerL", number(0, 10), "Total ammonia, mg N/L"),
            need("nitrateMgPerL", number(0, 100), "Nitrate, mg N/L"),
            need("chlorideMgPerL", number(0, 2000), "Chloride, mg/L"),
            need("freeChlorineMgPerL", number(0, 10), "Free chlorine, mg/L as Cl2"),
            need("combinedChlorineMgPerL", number(0, 10), "Combined chlorine, mg/L as Cl2"),
            need("statedChlorineMgPerL", number(0, 10), "The most the supplier states, mg/L as Cl2"));

    static final GroupShape BEFORE = group(
            need("fromDay", whole(0, 200), "First day on which this holds"),
            need("feed", number(0, 2), "Share of the table ration"),
            need("changePerDay", number(0, 0.95), "Share of the water changed each day"),
            need("ammoniumChlorideG", number(0, MOST_GRAMS), "Given once, on that day, g"),
            need("bicarbonateG", number(0, MOST_GRAMS), "Given once, on that day, g"),
            need("saltG", number(0, MOST_GRAMS), "Given once, on that day, g"));

    static final GroupShape START = group(
            need("day", whole(0, 200), "Day of the first visit; the system was filled on day 0"),
            need("before", list(BEFORE, 0, 40), "What was done until then"));

    /** Shapes that stand in several places, by the names under which the schema tells them. */
    static final Map<String, Shape> SHARED =
            Map.of("words", WORDS, "system", SYSTEM, "fish", FISH, "prior", new OneKeyShape(priors()));

    static final GroupShape AWAY = group(
            need("fromDay", number(0, 400), "From this day on, counted from day 0, nobody comes"),
            need("toDay", number(0, 400), "Until this day"));

    static final GroupShape KEEPER = group(
            need("visitsAtHours", list(number(0, 24), 1, 12), "Hours of the day at which somebody comes"),
            need("days", whole(1, 120), "Length of the drill, days"),
            need("away", list(AWAY, 0, 20), "Spans without a visit; [] for none"),
            need("decisions", whole(1, MOST_DECISIONS), "Most decisions that a learner makes"),
            need(
                    "decisionVisits",
                    list(whole(0, 1000), 1, MOST_DECISIONS),
                    "Visits at which the learner decides; 0 is the first visit"));

    static final GroupShape SHELF = group(
            need("saltG", number(0, 1_000_000), "Salt (NaCl), g"),
            need("bicarbonateG", number(0, 1_000_000), "Baking soda (NaHCO3), g"),
            need("sodaAshG", number(0, 1_000_000), "Soda ash (Na2CO3), g"),
            need("ammoniumChlorideG", number(0, 1_000_000), "Ammonium chloride, g"),
            need("thiosulfateG", number(0, 1_000_000), "Sodium thiosulfate pentahydrate, g"),
            need("strips", whole(0, 500), "Test strips"),
            need("chlorideStrips", whole(0, 500), "Chloride strips"),
            need("oxygenMeter", new FlagShape(), "Whether there is one"),
            need("phMeter", new FlagShape(), "Whether there is one"),
            may("ripeMediaShare", number(0, 1), "A bag of ripe media: bacteria, share of this filter's capacity"),
            may("spareAirKlaPerHour", number(0, 20), "Air that needs no mains: oxygen transfer at 20 C, 1/h"));

    static final GroupShape NURSERY = group(
            need("system", shared("system"), "Its tank with filter and air"),
            need("fish", shared("fish"), "Its fish: the ones that are to come"),
            need("feed", number(0, 2), "Share of the table ration they get"),
            need("changePerDay", number(0, 0.95), "Share of its water changed each day"),
            need("filterShare", number(1e-6, 1), "How ripe its filter was on day 0, share of capacity"));

    static final GroupShape EVENT = group(
            need("atDay", number(0, 400), "Days from day 0"),
            need("kind", new WordShape(eventKinds()), "What happens"),
            may("hours", number(0, 1000), "How long it lasts, h; left out: for good, or until somebody sees to it"),
            may("amount", number(0, 100), "C for temperatures; day's rations at once; share of the filter for a drug"));

    static final GroupShape FILE = group(
            need("schema", new VersionShape(SCHEMA), "Always 1"),
            need("id", new IdShape(60), "The file name without .yaml, in kebab case"),
            need("number", whole(1, 999), "Place on the shelf"),
            need(
                    "text",
                    new GroupShape(
                            List.of(need("en", shared("words"), "English"), need("es", shared("words"), "Spanish")),
                            Complaint.LANGUAGE_MISSING),
                    "What is shown, in both languages"),
            need("skills", set(new WordShape(skillIds()), 1, 8), "Skills that are drilled"),
            need("exposes", set(new WordShape(habitIds()), 0, 12), "Habits that do badly here"),
            need("rules", set(whole(1, STANDING_RULES), 1, 6), "Standing rules in which the debrief should end"),
            need("system", shared("system"), "The tank with its filter and air"),
            may("fish", shared("fish"), "The fish in it"),
            may("plannedFish", shared("fish"), "The fish that are to come, where there are none yet"),
            need("source", SOURCE, "The water at hand"),
            need("start", START, "How the system got to the first visit"),
            may("unknowns", unknowns(), "What nobody knows for sure: priors that differ from the usual ones"),
            need("keeper", KEEPER, "When somebody is there"),
            need("shelf", SHELF, "What is at hand"),
            may("events", list(EVENT, 0, 40), "What happens by itself"),
            may("nursery", NURSERY, "A second system beside, that holds the fish that are to come"));

    private ScenarioShape() {}

    private static Shape shared(String name) {
        return new RefShape(name, java.util.Objects.requireNonNull(SHARED.get(name), name));
    }

    static List<String> skillIds() {
        return Arrays.stream(Skill.values()).map(Skill::id).toList();
    }

    static List<String> habitIds() {
        return Arrays.stream(Habit.values()).map(Habit::id).toList();
    }

    /** The name of an event kind in a file. */
    static String eventName(Scenario.Happening.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static List<String> eventKinds() {
        return Arrays.stream(Scenario.Happening.Kind.values())
                .map(ScenarioShape::eventName)
                .toList();
    }

    private static Map<String, Shape> priors() {
        NumberShape any = number(-1e6, 1e6);
        NumberShape spread = number(0, 1e6);
        Map<String, Shape> priors = new LinkedHashMap<>();
        priors.put(
                "lognormal",
                group(
                        need("median", number(1e-9, 1e6), "Median, in the unit of the unknown"),
                        need("sd", number(0, 5), "Standard deviation of the natural log")));
        priors.put("uniform", group(need("low", any, "Least value"), need("high", any, "Greatest value")));
        priors.put("normal", group(need("mean", any, "Mean"), need("sd", spread, "Standard deviation")));
        priors.put("known", any);
        return priors;
    }

    private static GroupShape unknowns() {
        List<GroupShape.Field> fields = new ArrayList<>();
        for (Unknown unknown : Unknown.values()) {
            fields.add(may(unknown.key(), shared("prior"), "Prior of " + unknown.key()));
        }
        return new GroupShape(fields, Complaint.MISSING_KEY);
    }
}
