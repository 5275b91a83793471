package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The schema for editors against the reader, the records, and a general-purpose validator of JSON Schema. */
class ScenarioSchemaTest {
    private static final Path FILE = Path.of("src/main/resources/startwater/content/scenario.schema.json");
    private static final JsonMapper JSON = JsonMapper.builder().build();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(ScenarioSchema.json());

    @Test
    void theFileIsTheOneMadeFromTheShapes() throws IOException {
        assertThat(Files.readString(FILE))
                .as("write ScenarioSchema.json() to " + FILE)
                .isEqualTo(ScenarioSchema.json());
    }

    /** A YAML file as JSON, by the loader of the library and not by our own reader. */
    private static JsonNode json(String yaml) {
        Object loaded = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        return JSON.valueToTree(loaded);
    }

    private static boolean valid(String yaml) {
        return SCHEMA.validate(json(yaml)).isEmpty();
    }

    @TestFactory
    Stream<DynamicTest> everyShippedDrillIsValid() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.sorted().toList().stream()
                    .map(file -> DynamicTest.dynamicTest(
                            file.toString(), () -> assertThat(SCHEMA.validate(json(Files.readString(file))))
                                    .isEmpty()));
        }
    }

    /** Slips of shape, which a schema can see; the reader sees them too, and more. */
    @TestFactory
    Stream<DynamicTest> slipsOfShapeAreRefusedByBoth() {
        Edited good = Edited.shipped("scenarios/hungry-second-week.yaml");
        List<String[]> slips = List.of(
                new String[] {"schema: 1", "schema: 2"},
                new String[] {"id: hungry-second-week", "id: Hungry_Week"},
                new String[] {"volumeL: 2400", "volumeL: 24"},
                new String[] {"volumeL: 2400", "volumel: 2400"},
                new String[] {"volumeL: 2400", "volumeL: much"},
                new String[] {"  volumeL: 2400\n", ""},
                new String[] {"count: 240", "count: 240.5"},
                new String[] {"channel-catfish", "goldfish"},
                new String[] {"oxygenMeter: true", "oxygenMeter: 1"},
                new String[] {"rules: [5, 3]", "rules: [5, 16]"},
                new String[] {"[nitrite-chloride, ration,", "[ration, ration,"},
                new String[] {"[0, 2, 4, 8, 14, 20]", "[0, 1, 2, 3, 4, 5, 6, 7, 8]"},
                new String[] {"{lognormal: {median: 0.003, sd: 0.8}}", "{triangle: {low: 1, high: 2}}"},
                new String[] {"{lognormal: {median: 0.003, sd: 0.8}}", "{lognormal: {median: 0.003}}"},
                new String[] {"events: []", "events: [{atDay: 9, kind: flood}]"},
                new String[] {"title: The hungry second week", "title: The very hungry second week of them"},
                new String[] {"aobSeedShare:", "aobSeed:"});
        return slips.stream()
                .map(slip -> DynamicTest.dynamicTest(slip[0].strip() + " -> " + slip[1], () -> {
                    Edited edited = good.with(slip[0], slip[1]);
                    assertThat(valid(edited.text())).as("schema").isFalse();
                    assertThat(ScenarioReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8))
                                    .ok())
                            .as("reader")
                            .isFalse();
                }));
    }

    private static List<String> components(Class<? extends Record> type) {
        return Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> keysAreTheComponentsOfTheRecords() {
        Map<Class<? extends Record>, GroupShape> pairs = new LinkedHashMap<>();
        pairs.put(Scenario.Words.class, ScenarioShape.WORDS);
        pairs.put(Scenario.Water.class, ScenarioShape.SYSTEM);
        pairs.put(Scenario.Fish.class, ScenarioShape.FISH);
        pairs.put(Scenario.Source.class, ScenarioShape.SOURCE);
        pairs.put(Scenario.Start.class, ScenarioShape.START);
        pairs.put(Scenario.Before.class, ScenarioShape.BEFORE);
        pairs.put(Scenario.Keeper.class, ScenarioShape.KEEPER);
        pairs.put(Scenario.Away.class, ScenarioShape.AWAY);
        pairs.put(Scenario.Shelf.class, ScenarioShape.SHELF);
        pairs.put(Scenario.Happening.class, ScenarioShape.EVENT);
        pairs.put(Scenario.Nursery.class, ScenarioShape.NURSERY);
        return pairs.entrySet().stream()
                .map(pair -> DynamicTest.dynamicTest(
                        pair.getKey().getSimpleName(),
                        () -> assertThat(pair.getValue().keys()).isEqualTo(components(pair.getKey()))));
    }

    @Test
    void theFileHoldsTheWholeScenarioAfterItsSchemaNumber() {
        List<String> keys = ScenarioShape.FILE.keys();
        assertThat(keys.get(0)).isEqualTo("schema");
        assertThat(keys.subList(1, keys.size())).isEqualTo(components(Scenario.class));
    }

    @Test
    void everyUnknownHasItsKey() {
        JsonNode keys = JSON.readTree(ScenarioSchema.json()).at("/properties/unknowns/properties");
        assertThat(keys.propertyNames())
                .containsExactlyElementsOf(
                        Arrays.stream(Unknown.values()).map(Unknown::key).toList());
    }

    @Test
    void everyKeySaysWhatItIs() {
        ScenarioShape.FILE
                .fields()
                .forEach(field -> assertThat(field.says()).as(field.key()).isNotBlank());
    }
}
