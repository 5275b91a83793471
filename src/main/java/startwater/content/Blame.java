package startwater.content;

/** Finds the line of a drill file that has most to do with a value that leaves its range in play. */
final class Blame {
    private static final double CHLORIDE_PER_SALT = 0.6066;

    private final Fields root;
    private final boolean above;
    private final double day;

    /** @param above whether the value lies over its range, @param day when */
    Blame(Fields root, boolean above, double day) {
        this.root = root;
        this.above = above;
        this.day = day;
    }

    int line(LeftRange range) {
        return switch (range) {
            case TEMPERATURE -> temperature();
            case SALT -> salt();
            case PH -> ph();
            case MASS -> mass();
            case OTHER -> other();
        };
    }

    /** The last set point that was changed to, or what lies furthest out: set point or source. */
    private int temperature() {
        for (int i = root.groups("events").size() - 1; i >= 0; i--) {
            Fields event = root.groups("events").get(i);
            if (event.text("kind").equals("set-point") && event.number("atDay") <= day) {
                return event.line("amount");
            }
        }
        Fields system = root.group("system");
        Fields source = root.group("source");
        boolean warmerSource = source.number("temperatureC") > system.number("setPointC");
        return warmerSource == above ? source.line("temperatureC") : system.line("setPointC");
    }

    /** What brings most salt: a dose before the first visit, the shelf, or the water itself. */
    private int salt() {
        Fields source = root.group("source");
        double volumeL = root.group("system").number("volumeL");
        double most = source.number("chlorideMgPerL") * volumeL / 1000 / CHLORIDE_PER_SALT;
        int line = source.line("chlorideMgPerL");
        for (Fields before : root.group("start").groups("before")) {
            if (before.number("saltG") > most) {
                most = before.number("saltG");
                line = before.line("saltG");
            }
        }
        Fields shelf = root.group("shelf");
        boolean shelfOpen = day > root.group("start").number("day");
        return shelfOpen && shelf.number("saltG") > most ? shelf.line("saltG") : line;
    }

    /** Too high: a dose of bicarbonate, or the source. Too low: ammonium chloride, or alkalinity that ran out. */
    private int ph() {
        String key = above ? "bicarbonateG" : "ammoniumChlorideG";
        double most = 0;
        Fields source = root.group("source");
        int line = source.line(above ? "ph" : "alkalinityMgPerL");
        for (Fields before : root.group("start").groups("before")) {
            if (before.number(key) > most) {
                most = before.number(key);
                line = before.line(key);
            }
        }
        return line;
    }

    private int mass() {
        return root.group(root.has("fish") ? "fish" : "plannedFish").line("massG");
    }

    /** The block that holds most of what an equation is given. */
    private int other() {
        double grams = 0;
        for (Fields before : root.group("start").groups("before")) {
            grams += before.number("saltG") + before.number("bicarbonateG") + before.number("ammoniumChlorideG");
        }
        return grams > 0 ? salt() : root.line("system");
    }
}
