package startwater.content;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;

/** Makes the scenario of a file that broke no rule. */
final class ScenarioBinder {
    private ScenarioBinder() {}

    static Scenario scenario(Fields root) {
        Map<String, Scenario.Words> text = new LinkedHashMap<>();
        Languages.ALL.forEach(
                language -> text.put(language, words(root.group("text").group(language))));
        return new Scenario(
                root.text("id"),
                root.whole("number"),
                text,
                root.texts("skills"),
                root.texts("exposes"),
                root.wholes("rules"),
                system(root.group("system")),
                root.has("fish") ? fish(root.group("fish")) : null,
                root.has("plannedFish") ? fish(root.group("plannedFish")) : null,
                source(root.group("source")),
                start(root.group("start")),
                unknowns(root.group("unknowns")),
                keeper(root.group("keeper")),
                shelf(root.group("shelf")),
                root.groups("events").stream().map(ScenarioBinder::event).toList(),
                root.has("nursery") ? nursery(root.group("nursery")) : null);
    }

    private static Scenario.Words words(Fields f) {
        return new Scenario.Words(
                f.text("title"),
                f.text("place"),
                f.text("water"),
                f.text("stock"),
                f.text("keeper"),
                f.text("story"),
                f.text("goal"),
                f.text("debrief"));
    }

    private static Scenario.Water system(Fields f) {
        return new Scenario.Water(
                f.number("volumeL"),
                f.text("media"),
                f.number("mediaAreaM2"),
                f.number("airKlaPerHour"),
                f.number("surfaceKlaPerHour"),
                f.number("carbonDioxideRatio"),
                f.number("roomCarbonDioxidePpm"),
                f.number("altitudeM"),
                f.number("setPointC"),
                f.number("temperatureRatePerDay"),
                f.has("roomC") ? f.number("roomC") : null,
                f.number("exchangePerDay", 0),
                f.number("evaporationLPerDay", 0),
                f.number("plantUptakeMgPerDay", 0));
    }

    private static Scenario.Nursery nursery(Fields f) {
        return new Scenario.Nursery(
                system(f.group("system")),
                fish(f.group("fish")),
                f.number("feed"),
                f.number("changePerDay"),
                f.number("filterShare"));
    }

    private static Scenario.Fish fish(Fields f) {
        return new Scenario.Fish(
                f.text("species"),
                f.whole("count"),
                f.number("massG"),
                f.number("proteinPercent"),
                f.numbers("mealsAtHours"));
    }

    private static Scenario.Source source(Fields f) {
        return new Scenario.Source(
                f.number("temperatureC"),
                f.number("ph"),
                f.number("alkalinityMgPerL"),
                f.number("ammoniaMgPerL"),
                f.number("nitrateMgPerL"),
                f.number("chlorideMgPerL"),
                f.number("freeChlorineMgPerL"),
                f.number("combinedChlorineMgPerL"),
                f.number("statedChlorineMgPerL"));
    }

    private static Scenario.Start start(Fields f) {
        List<Scenario.Before> before = f.groups("before").stream()
                .map(b -> new Scenario.Before(
                        b.whole("fromDay"),
                        b.number("feed"),
                        b.number("changePerDay"),
                        b.number("ammoniumChlorideG"),
                        b.number("bicarbonateG"),
                        b.number("saltG")))
                .toList();
        return new Scenario.Start(f.whole("day"), before);
    }

    private static Map<Unknown, Prior> unknowns(Fields f) {
        Map<Unknown, Prior> priors = new EnumMap<>(Unknown.class);
        for (Unknown unknown : Unknown.values()) {
            if (f.has(unknown.key())) {
                priors.put(unknown, prior(f.group(unknown.key())));
            }
        }
        return priors;
    }

    /** Whether every number of a prior was read. */
    static boolean isWholePrior(Fields kind) {
        String name = kind.keys().iterator().next();
        Fields inner = kind.group(name);
        return name.equals("known")
                ? kind.sound(name)
                : inner.keys().size() == 2 && inner.keys().stream().allMatch(inner::sound);
    }

    /** The prior under its kind. @throws IllegalArgumentException when its numbers make no distribution */
    static Prior prior(Fields kind) {
        String name = kind.keys().iterator().next();
        Fields f = kind.group(name);
        return switch (name) {
            case "lognormal" -> new Prior.LogNormal(f.number("median"), f.number("sd"));
            case "uniform" -> new Prior.Uniform(f.number("low"), f.number("high"));
            case "normal" -> new Prior.Gaussian(f.number("mean"), f.number("sd"));
            default -> new Prior.Known(kind.number(name));
        };
    }

    private static Scenario.Keeper keeper(Fields f) {
        return new Scenario.Keeper(
                f.numbers("visitsAtHours"),
                f.whole("days"),
                f.groups("away").stream()
                        .map(a -> new Scenario.Away(a.number("fromDay"), a.number("toDay")))
                        .toList(),
                f.whole("decisions"),
                f.wholes("decisionVisits"));
    }

    private static Scenario.Shelf shelf(Fields f) {
        return new Scenario.Shelf(
                f.number("saltG"),
                f.number("bicarbonateG"),
                f.number("sodaAshG"),
                f.number("ammoniumChlorideG"),
                f.number("thiosulfateG"),
                f.whole("strips"),
                f.whole("chlorideStrips"),
                f.flag("oxygenMeter"),
                f.flag("phMeter"),
                f.number("ripeMediaShare", 0),
                f.number("spareAirKlaPerHour", 0));
    }

    private static Scenario.Happening event(Fields f) {
        Scenario.Happening.Kind kind = Scenario.Happening.Kind.valueOf(
                f.text("kind").toUpperCase(Locale.ROOT).replace('-', '_'));
        return new Scenario.Happening(f.number("atDay"), kind, f.number("hours", 0), f.number("amount", 0));
    }
}
