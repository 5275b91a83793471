package startwater.rehearse;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.text.Language;
import startwater.text.Texts;

/** Writes a drill file with comments in both languages. Read again it is the same drill. */
public final class ScenarioYaml {
    private final StringBuilder out = new StringBuilder();

    private ScenarioYaml() {}

    /** The file of a drill without events and without a nursery. */
    public static String of(Scenario s) {
        ScenarioYaml yaml = new ScenarioYaml();
        yaml.comment("head");
        yaml.line(0, "schema", 1)
                .line(0, "id", s.id())
                .line(0, "number", s.number())
                .open(0, "text");
        for (Language language : Language.values()) {
            yaml.words(language.code(), s.words(language.code()));
        }
        yaml.line(0, "skills", s.skills()).comment("exposes");
        yaml.line(0, "exposes", s.exposes()).line(0, "rules", s.rules());
        yaml.comment("system");
        yaml.system(s.system());
        yaml.fish("fish", s.fish());
        yaml.fish("plannedFish", s.plannedFish());
        yaml.source(s.source());
        yaml.open(0, "start").line(1, "day", s.start().day()).line(1, "before", List.of());
        yaml.comment("unknowns");
        yaml.unknowns(s.unknowns());
        yaml.keeper(s.keeper());
        yaml.comment("shelf");
        yaml.shelf(s.shelf());
        return yaml.out.toString();
    }

    private void comment(String part) {
        for (Language language : Language.values()) {
            Texts texts = RehearseTexts.of(language);
            for (String line : texts.text("reh.yaml." + part).split("\n", -1)) {
                out.append("# ").append(line).append('\n');
            }
        }
    }

    private ScenarioYaml open(int depth, String key) {
        out.append("  ".repeat(depth)).append(key).append(":\n");
        return this;
    }

    private ScenarioYaml line(int depth, String key, @Nullable Object value) {
        if (value != null) {
            out.append("  ".repeat(depth))
                    .append(key)
                    .append(": ")
                    .append(written(value))
                    .append('\n');
        }
        return this;
    }

    private ScenarioYaml some(int depth, String key, double value) {
        return value == 0 ? this : line(depth, key, value);
    }

    private static String written(Object value) {
        if (value instanceof Double number) {
            BigDecimal exact = BigDecimal.valueOf(number).stripTrailingZeros();
            return exact.signum() == 0 ? "0" : exact.toPlainString();
        }
        if (value instanceof List<?> list) {
            return "["
                    + String.join(", ", list.stream().map(ScenarioYaml::written).toList()) + "]";
        }
        if (value instanceof String text) {
            return text.matches("[a-z][a-z0-9-]*") && !text.matches("true|false|null|yes|no|on|off|y|n")
                    ? text
                    : quoted(text);
        }
        return value.toString();
    }

    private static String quoted(String text) {
        return "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    private void words(String code, Scenario.Words w) {
        open(1, code)
                .line(2, "title", quotedOnly(w.title()))
                .line(2, "place", quotedOnly(w.place()))
                .line(2, "water", quotedOnly(w.water()))
                .line(2, "stock", quotedOnly(w.stock()))
                .line(2, "keeper", quotedOnly(w.keeper()))
                .line(2, "story", quotedOnly(w.story()))
                .line(2, "goal", quotedOnly(w.goal()))
                .line(2, "debrief", quotedOnly(w.debrief()));
    }

    /** Free text is always quoted: a name may be {@code null} or {@code 12}. */
    private static Object quotedOnly(String text) {
        return new Object() {
            @Override
            public String toString() {
                return quoted(text);
            }
        };
    }

    private void system(Scenario.Water w) {
        open(0, "system")
                .line(1, "volumeL", w.volumeL())
                .line(1, "media", w.media())
                .line(1, "mediaAreaM2", w.mediaAreaM2())
                .line(1, "airKlaPerHour", w.airKlaPerHour())
                .line(1, "surfaceKlaPerHour", w.surfaceKlaPerHour())
                .line(1, "carbonDioxideRatio", w.carbonDioxideRatio())
                .line(1, "roomCarbonDioxidePpm", w.roomCarbonDioxidePpm())
                .line(1, "altitudeM", w.altitudeM())
                .line(1, "setPointC", w.setPointC())
                .line(1, "temperatureRatePerDay", w.temperatureRatePerDay())
                .line(1, "roomC", w.roomC())
                .some(1, "exchangePerDay", w.exchangePerDay())
                .some(1, "evaporationLPerDay", w.evaporationLPerDay())
                .some(1, "plantUptakeMgPerDay", w.plantUptakeMgPerDay());
    }

    private void fish(String key, Scenario.@Nullable Fish f) {
        if (f != null) {
            open(0, key)
                    .line(1, "species", f.species())
                    .line(1, "count", f.count())
                    .line(1, "massG", f.massG())
                    .line(1, "proteinPercent", f.proteinPercent())
                    .line(1, "mealsAtHours", f.mealsAtHours());
        }
    }

    private void source(Scenario.Source s) {
        open(0, "source")
                .line(1, "temperatureC", s.temperatureC())
                .line(1, "ph", s.ph())
                .line(1, "alkalinityMgPerL", s.alkalinityMgPerL())
                .line(1, "ammoniaMgPerL", s.ammoniaMgPerL())
                .line(1, "nitrateMgPerL", s.nitrateMgPerL())
                .line(1, "chlorideMgPerL", s.chlorideMgPerL())
                .line(1, "freeChlorineMgPerL", s.freeChlorineMgPerL())
                .line(1, "combinedChlorineMgPerL", s.combinedChlorineMgPerL())
                .line(1, "statedChlorineMgPerL", s.statedChlorineMgPerL());
    }

    private void unknowns(Map<Unknown, Prior> unknowns) {
        open(0, "unknowns");
        for (Unknown unknown : Unknown.values()) {
            Prior prior = unknowns.get(unknown);
            if (prior != null) {
                out.append("  ")
                        .append(unknown.key())
                        .append(": ")
                        .append(prior(prior))
                        .append('\n');
            }
        }
    }

    private static String prior(Prior prior) {
        if (prior instanceof Prior.LogNormal p) {
            return pair("lognormal", "median", p.median(), "sd", p.sd());
        }
        if (prior instanceof Prior.Uniform p) {
            return pair("uniform", "low", p.low(), "high", p.high());
        }
        if (prior instanceof Prior.Gaussian p) {
            return pair("normal", "mean", p.mean(), "sd", p.sd());
        }
        return "{known: " + written(((Prior.Known) prior).value()) + "}";
    }

    private static String pair(String kind, String one, double first, String other, double second) {
        return "{" + kind + ": {" + one + ": " + written(first) + ", " + other + ": " + written(second) + "}}";
    }

    private void keeper(Scenario.Keeper k) {
        open(0, "keeper").line(1, "visitsAtHours", k.visitsAtHours()).line(1, "days", k.days());
        out.append("  away: [")
                .append(String.join(
                        ", ",
                        k.away().stream()
                                .map(a -> "{fromDay: " + written(a.fromDay()) + ", toDay: " + written(a.toDay()) + "}")
                                .toList()))
                .append("]\n");
        line(1, "decisions", k.decisions()).line(1, "decisionVisits", k.decisionVisits());
    }

    private void shelf(Scenario.Shelf s) {
        open(0, "shelf")
                .line(1, "saltG", s.saltG())
                .line(1, "bicarbonateG", s.bicarbonateG())
                .line(1, "sodaAshG", s.sodaAshG())
                .line(1, "ammoniumChlorideG", s.ammoniumChlorideG())
                .line(1, "thiosulfateG", s.thiosulfateG())
                .line(1, "strips", s.strips())
                .line(1, "chlorideStrips", s.chlorideStrips())
                .line(1, "oxygenMeter", s.oxygenMeter())
                .line(1, "phMeter", s.phMeter())
                .some(1, "ripeMediaShare", s.ripeMediaShare())
                .some(1, "spareAirKlaPerHour", s.spareAirKlaPerHour());
    }
}
