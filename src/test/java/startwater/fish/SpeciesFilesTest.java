package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Each species file: every value with unit, source and tag, and curves that give what the file states. */
class SpeciesFilesTest {
    /** seen: read in the source; derived: computed from seen values; memory: not confirmed; tuned: chosen to fit. */
    private static final Set<String> TAGS =
            Set.of("seen", "derived", "derived, weak", "memory", "tuned", "common practice, no source", "-");

    private static final double STATED = 0.10;

    static List<String> ids() {
        return Species.ids();
    }

    private static Set<Map.Entry<String, JsonNode>> values(String id) throws IOException {
        return file(id).required("values").properties();
    }

    private static JsonNode file(String id) throws IOException {
        try (InputStream in = Objects.requireNonNull(
                SpeciesFilesTest.class.getResourceAsStream("/startwater/fish/" + id + ".json"))) {
            return JsonMapper.builder().build().readTree(in);
        }
    }

    @Test
    void fourSpeciesAreThere() {
        assertThat(Species.ids()).containsExactly("nile-tilapia", "channel-catfish", "rainbow-trout", "common-carp");
        assertThatThrownBy(() -> Species.byId("goldfish"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("goldfish")
                .hasMessageContaining("nile-tilapia");
    }

    @ParameterizedTest
    @MethodSource("ids")
    void everyValueHasUnitSourceAndTag(String id) throws IOException {
        assertThat(file(id).required("id").asString()).isEqualTo(id);
        for (Map.Entry<String, JsonNode> value : values(id)) {
            String at = id + ": " + value.getKey();
            assertThat(value.getValue().required("unit").asString()).as(at).isNotBlank();
            assertThat(value.getValue().required("source").asString()).as(at).hasSizeGreaterThan(4);
            assertThat(value.getValue().required("tag").asString()).as(at).isIn(TAGS);
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void aFileIsReadNumberByNumber(String id) throws IOException {
        Species read = new SpeciesFiles.Reader(id, file(id)).species();
        JsonNode values = file(id).required("values");
        assertThat(read.chlorideHalfMgPerL()).isEqualTo(value(values, "nitrite.chlorideHalfMgPerL"));
        assertThat(read.warmLimitC()).isEqualTo(value(values, "temperature.warmLimitC"));
        assertThat(read.appetite().heatEndC()).isEqualTo(value(values, "appetite.heatEndC"));
        assertThat(read.appetite().coldLine().slope())
                .isEqualTo(values.required("appetite.coldLine")
                        .required("value")
                        .get(1)
                        .asDouble());
        assertThat(read.curve(Stressor.NITRITE).threshold()).isEqualTo(value(values, "survival.nitrite.threshold"));
        assertThat(read.feed().massRangeG().low())
                .isEqualTo(
                        values.required("feed.massG").required("value").get(0).asDouble());
    }

    private static double value(JsonNode values, String name) {
        return values.required(name).required("value").asDouble();
    }

    @ParameterizedTest
    @ValueSource(strings = {"unit", "source", "tag"})
    void aNumberWithoutItsUnitSourceOrTagIsRefused(String field) throws IOException {
        ObjectNode file = (ObjectNode) file("common-carp");
        ((ObjectNode) file.required("values").required("oxygen.criticalMgPerL")).remove(field);
        assertThatThrownBy(() -> new SpeciesFiles.Reader("common-carp", file).species())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContainingAll("common-carp", "oxygen.criticalMgPerL", field);
    }

    @Test
    void aNumberThatIsMissingIsNamed() throws IOException {
        ObjectNode file = (ObjectNode) file("common-carp");
        ((ObjectNode) file.required("values")).remove("temperature.coldLimitC");
        assertThatThrownBy(() -> new SpeciesFiles.Reader("common-carp", file).species())
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("temperature.coldLimitC is missing");
    }

    @ParameterizedTest
    @MethodSource("ids")
    void tunedKineticsNameThePublishedValueTheyAreTunedTo(String id) throws IOException {
        for (String stressor : List.of("ammonia", "nitrite", "chlorine")) {
            String source = file(id).required("values")
                    .required("survival." + stressor + ".slopePerDay")
                    .required("source")
                    .asString();
            assertThat(source).as(id + " " + stressor).containsAnyOf("tuned to", "as channel catfish");
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void curvesGiveTheLethalConcentrationsTheFileStates(String id) throws IOException {
        int stated = 0;
        for (Stressor stressor : Stressor.values()) {
            String key = "stated.lc50." + stressor.name().toLowerCase(Locale.ROOT);
            JsonNode lc50 = file(id).required("values").path(key).path("value");
            for (int i = 0; i < lc50.size(); i++) {
                double hours = file(id).required("values")
                        .required(key + ".hours")
                        .required("value")
                        .get(i)
                        .asDouble();
                double value = lc50.get(i).asDouble();
                assertThat(Species.byId(id).curve(stressor).lc50(hours / 24))
                        .as(id + " " + stressor + " " + hours + " h")
                        .isCloseTo(value, within(STATED * value));
                stated++;
            }
        }
        assertThat(stated).isGreaterThanOrEqualTo(5);
    }

    @ParameterizedTest
    @MethodSource("ids")
    void guidanceLiesUnderWhatKills(String id) {
        Species species = Species.byId(id);
        assertThat(species.guidance().ammoniaMgPerL())
                .isLessThan(species.curve(Stressor.AMMONIA).lc50(4) / 5);
        assertThat(species.guidance().nitriteMgPerL())
                .isLessThan(species.curve(Stressor.NITRITE).lc50(4) / 2);
        assertThat(species.guidance().chlorineMgPerL())
                .isLessThan(species.curve(Stressor.CHLORINE).lc50(4) / 2);
        assertThat(species.guidance().oxygenMgPerL()).isGreaterThan(species.criticalOxygenMgPerL());
    }

    @Test
    void troutAreTheMostDelicateAndLikeItColdest() {
        Species trout = Species.byId("rainbow-trout");
        for (String id : Species.ids()) {
            Species other = Species.byId(id);
            if (!id.equals("rainbow-trout")) {
                assertThat(trout.curve(Stressor.AMMONIA).lc50(4))
                        .isLessThan(other.curve(Stressor.AMMONIA).lc50(4));
                assertThat(trout.curve(Stressor.NITRITE).lc50(4))
                        .isLessThan(other.curve(Stressor.NITRITE).lc50(4));
                assertThat(trout.guidance().oxygenMgPerL())
                        .isGreaterThan(other.guidance().oxygenMgPerL());
                assertThat(trout.appetite().temperature(14))
                        .isGreaterThan(other.appetite().temperature(14));
            }
        }
        assertThat(trout.appetite().temperature(14)).isEqualTo(1);
        assertThat(trout.appetite().temperature(24)).isZero();
    }

    @Test
    void feedingStopsWhereTheSourcesSay() {
        assertThat(Species.byId("nile-tilapia").appetite().temperature(17)).isZero();
        assertThat(Species.byId("nile-tilapia").appetite().temperature(28)).isEqualTo(1);
        assertThat(Species.byId("channel-catfish").appetite().temperature(10)).isZero();
        assertThat(Species.byId("channel-catfish").appetite().temperature(19)).isLessThan(0.5);
        assertThat(Species.byId("channel-catfish").appetite().temperature(28)).isEqualTo(1);
    }

    @Test
    void biggerFishEatASmallerShare() {
        for (String id : Species.ids()) {
            FeedTable feed = Species.byId(id).feed();
            double last = 1;
            for (double mass = 0.01; mass < 2000; mass *= 1.3) {
                double share = feed.fractionAtBest(mass);
                assertThat(share).as(id + " " + mass + " g").isBetween(0.005, last);
                last = share;
            }
        }
    }
}
