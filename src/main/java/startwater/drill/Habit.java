package startwater.drill;

/** A way of keeping fish that a drill may expose. Each is played by a policy of the same name. */
public enum Habit {
    HOLD_FEED_ONLY("hold-feed"),
    DO_NOTHING("do-nothing"),
    FEEDS_BECAUSE_THEY_BEG("feeds-because-they-beg"),
    HALF_EVERY_DAY("half-every-day"),
    FEEDS_NEVER_CHANGES("feeds-never-changes"),
    CHASES_PH("chases-ph"),
    DOSES_AND_HOPES("doses-and-hopes"),
    SALTS_EVERY_READING("salts-every-reading"),
    SCRUBS_FILTER("scrubs-filter"),
    STOCKS_AT_ONCE("stocks-at-once"),
    NEVER_WRITES("never-writes"),
    NEVER_TESTS("never-tests"),
    AWAY_ALL_WEEK("away-all-week");

    private final String id;

    Habit(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }
}
