package startwater.content;

/** The rules of a drill file beyond the shape of its fields: R12, R15, R16, R22, R23, and those it calls. */
final class ScenarioRules {
    /** Densest stock, kg/m3: small recirculating systems hold up to 60 at the most (common practice, no source). */
    static final double MOST_KG_PER_M3 = 60;
    /** Densest stock without air, kg/m3 (common practice, no source). */
    static final double MOST_KG_PER_M3_WITHOUT_AIR = 1;

    private final Fields root;
    private final Faults faults;

    private ScenarioRules(Fields root, Faults faults) {
        this.root = root;
        this.faults = faults;
    }

    /** Notes what breaks a rule. @param name the file name without its ending */
    static void check(Fields root, String name, Faults faults) {
        ScenarioRules rules = new ScenarioRules(root, faults);
        rules.id(name);
        rules.words();
        rules.fishOrPlan();
        rules.density("fish");
        rules.density("plannedFish");
        rules.nursery();
        new CalendarRules(root, faults).check();
        new WaterRules(root, faults).check();
    }

    private void id(String name) {
        String id = root.text("id");
        if (!root.sound("id")) {
            return;
        }
        if (!id.equals(name)) {
            faults.add(root.line("id"), Complaint.ID_NOT_FILE_NAME, "value", id, "name", name);
        }
    }

    private void words() {
        for (String language : Languages.ALL) {
            Fields words = root.group("text").group(language);
            PlainWords plain = PlainWords.forDrills(language);
            for (String key : new String[] {"story", "goal", "debrief"}) {
                plain.check(words.text(key), key, words.line(key), faults);
            }
        }
    }

    private void fishOrPlan() {
        if (root.has("fish") && root.has("plannedFish")) {
            faults.add(root.line("plannedFish"), Complaint.FISH_TWICE);
        } else if (!root.has("fish") && !root.has("plannedFish")) {
            faults.add(root.line(), Complaint.NO_FISH);
        }
    }

    private void nursery() {
        if (!root.has("nursery")) {
            return;
        }
        Fields nursery = root.group("nursery");
        Fields fish = nursery.group("fish");
        Fields planned = root.group("plannedFish");
        if (root.has("fish")
                || !root.has("plannedFish")
                || !fish.text("species").equals(planned.text("species"))
                || fish.number("count") != planned.number("count")) {
            faults.add(root.line("nursery"), Complaint.NURSERY_NOT_PLANNED);
        }
        density(fish, nursery.group("system"), nursery.line("fish"));
    }

    private void density(String key) {
        density(root.group(key), root.group("system"), root.line(key));
    }

    private void density(Fields fish, Fields system, int line) {
        double density = fish.number("count") * fish.number("massG") / system.number("volumeL");
        double air = system.number("airKlaPerHour");
        if (density > MOST_KG_PER_M3) {
            faults.add(line, Complaint.STOCK_TOO_DENSE, "density", density, "most", MOST_KG_PER_M3);
        } else if (density > MOST_KG_PER_M3_WITHOUT_AIR && air == 0) {
            faults.add(line, Complaint.STOCK_WITHOUT_AIR, "density", density, "most", MOST_KG_PER_M3_WITHOUT_AIR);
        }
    }
}
