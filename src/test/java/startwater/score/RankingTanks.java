package startwater.score;

import java.util.Locale;
import startwater.drill.Scenario;

/** Settings for the rankings: four species, each at a temperature, size and stock that suit it. */
enum RankingTanks {
    NILE_TILAPIA(27, 18, 12, 200, 32, 0.1),
    CHANNEL_CATFISH(27, 14, 13, 240, 32, 0.22),
    COMMON_CARP(23, 9, 15, 220, 36, 0.12),
    RAINBOW_TROUT(13, 3, 20, 150, 42, 0.45);

    /** Source with enough salt in it for any nitrite here. */
    private static final int SALTY = 400;

    private static final int POOR = 15;

    private final double temperatureC;
    private final double coldC;
    private final double massG;
    private final int count;
    private final int protein;
    private final double littleFeed;

    RankingTanks(double temperatureC, double coldC, double massG, int count, int protein, double littleFeed) {
        this.temperatureC = temperatureC;
        this.coldC = coldC;
        this.massG = massG;
        this.count = count;
        this.protein = protein;
        this.littleFeed = littleFeed;
    }

    /** When somebody comes. */
    enum Keeper {
        ONCE_A_DAY("[8]", 0),
        TWICE_A_DAY("[8, 18]", 0),
        AWAY_TWO_DAYS("[8]", 2),
        AWAY_THREE_DAYS("[8]", 3);

        private final String hours;
        private final int awayDays;

        Keeper(String hours, int awayDays) {
            this.hours = hours;
            this.awayDays = awayDays;
        }

        private String away(int from) {
            return awayDays == 0 ? "[]" : "[{fromDay: " + (from + 0.8) + ", toDay: " + (from + awayDays - 0.2) + "}]";
        }
    }

    String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private boolean cold() {
        return this == RAINBOW_TROUT;
    }

    private BentDrill tank(String what, int day, Keeper keeper) {
        return BentDrill.withFish(id() + "-" + what + "-"
                        + keeper.name().toLowerCase(Locale.ROOT).replace('_', '-'))
                .set("species", id())
                .set("count", count)
                .set("massG", massG)
                .set("proteinPercent", protein)
                .set("setPointC", temperatureC)
                .set("temperatureC", temperatureC - 1)
                .set("changePerDay", 0)
                .set("day", day)
                .set("visitsAtHours", keeper.hours)
                .set("away", keeper.away(day))
                .set("decisionVisits", "[0, 1, 2, 3]")
                .set("sodaAshG", 3000);
    }

    private static String spread(double middle) {
        return "{uniform: {low: " + 0.8 * middle + ", high: " + 1.2 * middle + "}}";
    }

    private BentDrill young(String what, Keeper keeper) {
        return tank(what, cold() ? 7 : 5, keeper)
                .set("feed", cold() ? 0.6 : 0.35)
                .set("aobSeedShare", "{lognormal: {median: 0.0005, sd: 0.8}}")
                .set("nobSeedShare", "{lognormal: {median: 0.0002, sd: 0.8}}")
                .set("sourceAlkalinityMgPerL", "{uniform: {low: 110, high: 180}}");
    }

    /** An unripe filter, a stock fed for some days: ammonia stands high and nitrite has hardly begun. */
    Scenario ammonia(Keeper keeper) {
        return young("ammonia", keeper).made();
    }

    /** Ammonia has only begun to rise: fish beg and about a tenth of a milligram is toxic. */
    Scenario begging(Keeper keeper) {
        return young("begging", keeper)
                .set("day", cold() ? 4 : 3)
                .set("feed", littleFeed)
                .made();
    }

    /** The same in soft water whose buffer is used up: much ammonia, of which little is toxic yet. */
    Scenario sour(Keeper keeper) {
        return young("sour", keeper)
                .set("day", cold() ? 20 : 12)
                .set("feed", cold() ? 1 : 0.7)
                .set("aobSeedShare", "{lognormal: {median: " + (cold() ? 0.1 : 0.01) + ", sd: 0.5}}")
                .set("sourceAlkalinityMgPerL", "{uniform: {low: 8, high: 16}}")
                .made();
    }

    /** The same with chlorine in the source. @param free whether it is free chlorine or bound as chloramine */
    Scenario chlorinated(boolean free) {
        return young(free ? "chlorine" : "chloramine", Keeper.ONCE_A_DAY)
                .set("freeChlorineMgPerL", free ? 1.5 : 0)
                .set("combinedChlorineMgPerL", free ? 0 : 2)
                .set("statedChlorineMgPerL", 3)
                .made();
    }

    private BentDrill nitrite(String what, Keeper keeper, double chloride) {
        return tank(what, cold() ? 18 : 9, keeper)
                .set("feed", cold() ? 0.5 : 0.3)
                .set("changePerDay", 0.1)
                .set("aobSeedShare", "{lognormal: {median: " + (temperatureC < 25 ? 0.1 : 0.02) + ", sd: 0.5}}")
                .set("nobSeedShare", "{lognormal: {median: 0.0006, sd: 0.5}}")
                .set("chlorideMgPerL", chloride)
                .set("sourceChlorideMgPerL", spread(chloride));
    }

    /** Ammonia is past, nitrite stands high and the source holds little chloride. */
    Scenario nitrite(Keeper keeper) {
        return nitrite("nitrite", keeper, POOR).made();
    }

    /** The same with no salt at hand. */
    Scenario nitriteWithoutSalt(Keeper keeper) {
        return nitrite("no-salt", keeper, POOR).setIn("shelf", "saltG", 0).made();
    }

    /** Some nitrite, more chloride than it needs, and all else well. */
    Scenario covered() {
        return nitrite("covered", Keeper.ONCE_A_DAY, SALTY)
                .set("aobSeedShare", "{lognormal: {median: 0.1, sd: 0.3}}")
                .set("nobSeedShare", "{lognormal: {median: 0.02, sd: 0.3}}")
                .made();
    }

    /** A ripe filter; the air stopped two hours before the visit. */
    Scenario airless() {
        BentDrill drill = nitrite("airless", Keeper.ONCE_A_DAY, SALTY)
                .set("aobSeedShare", "{lognormal: {median: 0.1, sd: 0.3}}")
                .set("nobSeedShare", "{lognormal: {median: 0.05, sd: 0.3}}")
                .set("count", 5 * count);
        return drill.block("events", "\n  - atDay: " + ((cold() ? 18 : 9) + 0.25) + "\n    kind: air-off")
                .made();
    }

    /** A cold snap has begun: the water cools to where they hardly eat, and nobody comes for three days. */
    Scenario chilled() {
        return young("chilled", Keeper.AWAY_THREE_DAYS)
                .block(
                        "events",
                        "\n  - atDay: " + ((cold() ? 7 : 5) + 0.1) + "\n    kind: set-point\n    amount: " + coldC)
                .made();
    }

    private BentDrill unstocked(String what, int count, double aob, double nob) {
        return BentDrill.fishless(id() + "-" + what)
                .set("species", id())
                .set("count", count)
                .set("massG", massG)
                .set("proteinPercent", protein)
                .set("setPointC", temperatureC)
                .set("temperatureC", temperatureC - 1)
                .set("day", 8)
                .set("days", 12)
                .set("decisionVisits", "[0, 2, 4]")
                .block(
                        "unknowns",
                        "\n  aobSeedShare: {lognormal: {median: " + aob
                                + ", sd: 0.3}}\n  nobSeedShare: {lognormal: {median: " + nob + ", sd: 0.3}}");
    }

    /** Ammonia goes within a day and nitrite stands high; a dense stock waits. */
    Scenario halfReady() {
        return unstocked("half-ready", 2 * plenty(), cold() ? 0.38 : this == COMMON_CARP ? 0.35 : 0.2, 0.0004)
                .block("start", doses(cold() ? 1 : 2))
                .made();
    }

    /** A filter that has just grown on small doses, with four times the fish that it carries to come. */
    Scenario provedAQuarter() {
        return unstocked("quarter", 4 * plenty(), cold() ? 0.2 : 0.1, cold() ? 0.2 : 0.1)
                .block("start", doses(1))
                .made();
    }

    /** A ripe filter that clears both, and no more fish to come than it carries. */
    Scenario proved() {
        return unstocked("proved", plenty() / 2, 0.35, 0.35)
                .block("start", doses(1))
                .made();
    }

    /** Fish whose full ration is about what half of the 6 m2 of the fishless drill carries at this temperature. */
    private int plenty() {
        return cold() ? 40 : 60;
    }

    private static String doses(int size) {
        StringBuilder doses = new StringBuilder("\n  day: 8\n  before:");
        for (int day = 0; day < 8; day += 2) {
            doses.append("\n    - {fromDay: ")
                    .append(day)
                    .append(", feed: 0, changePerDay: 0, ammoniumChlorideG: ")
                    .append(size * 3.1)
                    .append(", bicarbonateG: ")
                    .append(size * 12)
                    .append(", saltG: 0}");
        }
        return doses.toString();
    }

    /** No fish yet: ammonia stands where it was dosed, or has just begun to fall. */
    Scenario fishless() {
        return BentDrill.fishless(id() + "-fishless")
                .set("species", id())
                .set("count", 60)
                .set("massG", massG)
                .set("proteinPercent", protein)
                .set("setPointC", temperatureC)
                .set("temperatureC", temperatureC - 1)
                .set("day", cold() ? 16 : 10)
                .set("days", 12)
                .set("decisionVisits", "[0, 2, 4]")
                .made();
    }
}
