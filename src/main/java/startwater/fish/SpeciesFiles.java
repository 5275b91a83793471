package startwater.fish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Reads the species files, once. They ship with the program, so a fault in one is a fault of the build. */
final class SpeciesFiles {
    private static final List<String> IDS = List.of("nile-tilapia", "channel-catfish", "rainbow-trout", "common-carp");
    private static final Map<String, Species> ALL = readAll();

    private SpeciesFiles() {}

    static List<String> ids() {
        return IDS;
    }

    static Species byId(String id) {
        Species species = ALL.get(id);
        if (species == null) {
            throw new IllegalArgumentException("Species: '" + id + "' is not known. Use one of " + IDS + ".");
        }
        return species;
    }

    private static Map<String, Species> readAll() {
        JsonMapper mapper = JsonMapper.builder().build();
        Map<String, Species> all = new LinkedHashMap<>();
        for (String id : IDS) {
            try (InputStream in = Objects.requireNonNull(
                    SpeciesFiles.class.getResourceAsStream("/startwater/fish/" + id + ".json"), id)) {
                all.put(id, new Reader(id, mapper.readTree(in)).species());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return all;
    }

    /** One file: every number is an object with value, unit, source and tag. */
    record Reader(String id, JsonNode root) {
        Species species() {
            List<SurvivalCurve> curves = new ArrayList<>();
            for (Stressor stressor : Stressor.values()) {
                curves.add(curve("survival." + stressor.name().toLowerCase(java.util.Locale.ROOT)));
            }
            return new Species(
                    id,
                    Species.Shape.valueOf(root.required("shape").asString()),
                    curves,
                    number("nitrite.chlorideHalfMgPerL"),
                    number("nitrite.methaemoglobinHalfMgPerL"),
                    number("temperature.coldLimitC"),
                    number("temperature.warmLimitC"),
                    appetite(),
                    new FeedTable(numbers("feed.massG"), numbers("feed.percentPerDay")),
                    new Species.Guidance(
                            number("guidance.ammoniaMgPerL"),
                            number("guidance.nitriteMgPerL"),
                            number("guidance.oxygenMgPerL"),
                            number("guidance.chlorineMgPerL"),
                            number("guidance.carbonDioxideMgPerL"),
                            number("guidance.warmingCPerDay"),
                            number("guidance.coolingCPerDay")),
                    number("survival.ammonia.sizeExponent"),
                    number("oxygen.criticalMgPerL"),
                    new Species.Respiration(
                            number("respiration.uptakeOfOneGramMgPerKgHour"),
                            number("respiration.massExponent"),
                            number("respiration.theta")));
        }

        private SurvivalCurve curve(String path) {
            return new SurvivalCurve(
                    number(path + ".killRatePerDay"),
                    number(path + ".threshold"),
                    number(path + ".slopePerDay"),
                    number(path + ".lowThreshold"),
                    number(path + ".lowSlopePerDay"));
        }

        private Appetite appetite() {
            double[] cold = numbers("appetite.coldLine");
            double[] warm = numbers("appetite.warmLine");
            return new Appetite(
                    number("appetite.ammoniaStartMgPerL"),
                    number("appetite.ammoniaSpanMgPerL"),
                    new Appetite.Line(cold[0], cold[1]),
                    new Appetite.Line(warm[0], warm[1]),
                    number("appetite.bendC"),
                    number("appetite.heatEndC"),
                    number("appetite.heatSpanC"));
        }

        private JsonNode at(String path) {
            JsonNode node = root.path("values").path(path);
            if (node.isMissingNode()) {
                throw new IllegalStateException("species " + id + ": " + path + " is missing");
            }
            for (String field : List.of("unit", "source", "tag")) {
                if (!node.path(field).isString()) {
                    throw new IllegalStateException("species " + id + ": " + path + " has no " + field);
                }
            }
            return node.required("value");
        }

        private double number(String path) {
            return at(path).asDouble();
        }

        private double[] numbers(String path) {
            JsonNode array = at(path);
            double[] values = new double[array.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = array.get(i).asDouble();
            }
            return values;
        }
    }
}
