package startwater.classroom.xapi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import startwater.classroom.Attempt;
import startwater.classroom.Pupils;
import startwater.record.Entry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Statements against our own schema, the event map, and spoiled copies that the schema must refuse. */
class StatementsTest {
    private static final Statements MAKER = new Statements(Names.USUAL, "greenhouse 3");
    private static final Schema SCHEMA = schema();

    private static Schema schema() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Files.readString(Path.of("src/test/resources/xapi/statement.schema.json")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Every kind of statement there is. */
    static List<ObjectNode> all() {
        List<ObjectNode> all = new ArrayList<>();
        all.addAll(MAKER.of(Pupils.attempt("p-0412", "hungry-second-week", "careful", 7, Entry.Mode.EXAM)));
        all.addAll(MAKER.of(Pupils.attempt("pez ñandú 7", "hungry-second-week", "half-every-day", 4, Entry.Mode.EXAM)));
        all.addAll(MAKER.of(Pupils.attempt("p-0413", "first-strips", "do-nothing", 1, Entry.Mode.PRACTICE)));
        Instant at = Instant.parse("2026-03-02T09:00:00Z");
        UUID event = new UUID(4096 << 12 | 4 << 12, Long.MIN_VALUE);
        all.add(MAKER.of(new Statements.LessonWorked(
                event, "p-0412", "05-nitrite-and-salt", "Nitrite and salt", "Nitrito y sal", at)));
        all.add(MAKER.of(new Statements.SkillKnown(
                event, "p-0412", "nitrite-chloride", "Nitrite and chloride", "Nitrito y cloruro", 0.96, at)));
        return all;
    }

    private static String verb(JsonNode s) {
        return s.path("verb").path("id").asString("").replaceFirst(".*/", "");
    }

    @Test
    void everyKindOfStatementIsSoundByOurSchema() {
        for (ObjectNode s : all()) {
            assertThat(SCHEMA.validate(s)).as(s.toString()).isEmpty();
        }
        assertThat(all().stream().map(StatementsTest::verb).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(
                        "answered", "interacted", "experienced", "completed", "failed", "passed", "mastered");
    }

    @Test
    void theEventsOfAnExamBecomeTheStatementsOfTheMap() {
        Attempt exam = Pupils.attempt("a", "hungry-second-week", "careful", 7, Entry.Mode.EXAM);
        List<ObjectNode> s = MAKER.of(exam);
        int decisions = exam.steps().size();
        assertThat(decisions).isGreaterThan(2);
        assertThat(s.stream().collect(Collectors.groupingBy(StatementsTest::verb, Collectors.counting())))
                .containsEntry("answered", 2L * decisions)
                .containsEntry("interacted", 1L)
                .containsEntry("completed", 1L)
                .containsEntry(exam.passed() ? "passed" : "failed", 1L)
                .hasSize(4);
        assertThat(verb(s.get(s.size() - 2))).isEqualTo("completed");
        Attempt practice = Pupils.attempt("a", "hungry-second-week", "careful", 7, Entry.Mode.PRACTICE);
        assertThat(MAKER.of(practice)).extracting(StatementsTest::verb).doesNotContain("passed", "failed");
    }

    @Test
    void theSameAttemptGetsTheSameIdsAndEveryEventItsOwn() {
        List<String> ids = all().stream().map(s -> s.path("id").asString("")).toList();
        assertThat(new HashSet<>(ids)).hasSameSizeAs(ids);
        assertThat(all().stream().map(s -> s.path("id").asString("")).toList()).isEqualTo(ids);
        assertThat(StatementFile.text(all())).isEqualTo(StatementFile.text(all()));
    }

    @Test
    void aNameGivesTheUuidThatOtherProgramsGive() {
        // Value of uuid5(NAMESPACE_DNS, 'python.org') in the documentation of Python's uuid module.
        UUID dns = UUID.fromString("6ba7b810-9dad-11d1-80b4-00c04fd430c8");
        assertThat(NameUuid.of(dns, "python.org")).hasToString("886313e1-3b8a-5372-9b90-0c9aee199e5d");
    }

    @Test
    void visitsThatDoNotCountCarryNoScore() {
        ObjectNode first = MAKER.of(Pupils.attempt("a", "hungry-second-week", "careful", 7, Entry.Mode.EXAM))
                .get(1);
        assertThat(first.path("object").path("id").asString("")).endsWith("/decisions/1");
        assertThat(first.path("result").has("score")).isFalse();
        assertThat(first.path("result").has("success")).isFalse();
    }

    @Test
    void durationsAreInHundredthsAndNeverNegative() {
        assertThat(Statements.duration(Duration.ofMillis(42_504))).isEqualTo("PT42.5S");
        assertThat(Statements.duration(Duration.ofMillis(-5))).isEqualTo("PT0S");
        assertThat(Statements.duration(Duration.ofDays(40))).isEqualTo("PT3456000S");
    }

    @Test
    void aHomeMustBeAnAddress() {
        for (String bad : List.of(
                "",
                "school",
                "ftp://a.example",
                "https://a.example/",
                "https://u:p@a.example",
                "https://a.example?x=1")) {
            assertThatThrownBy(() -> new Names(bad)).as(bad).isInstanceOf(IllegalArgumentException.class);
        }
        assertThat(new Names("https://school.example/ponds").drill("a b"))
                .isEqualTo("https://school.example/ponds/drills/a%20b");
    }

    /** What the conformance requirements of xAPI 1.0.3 forbid, each done to a sound statement. */
    @TestFactory
    Stream<DynamicTest> aSpoiledStatementIsRefused() {
        Map<String, Consumer<ObjectNode>> spoil = new LinkedHashMap<>();
        spoil.put("no actor", s -> s.remove("actor"));
        spoil.put("no verb", s -> s.remove("verb"));
        spoil.put("no object", s -> s.remove("object"));
        spoil.put("a null", s -> s.withObject("/context").putNull("platform"));
        spoil.put("an empty object", s -> s.putObject("context"));
        spoil.put("an unknown property", s -> s.put("grade", 7));
        spoil.put("a key in another case", s -> s.set("Timestamp", s.remove("timestamp")));
        spoil.put("a version", s -> s.put("version", "1.0.3"));
        spoil.put("an id that is no UUID", s -> s.put("id", "42"));
        spoil.put("a verb without scheme", s -> s.withObject("/verb").put("id", "answered"));
        spoil.put("a language key that is none", s -> s.withObject("/verb/display")
                .put("english please", "x"));
        spoil.put("two identifiers", s -> s.withObject("/actor").put("mbox", "mailto:a@b.example"));
        spoil.put("an e-mail as a name", s -> s.withObject("/actor/account").put("name", "a@b.example"));
        spoil.put("a scaled score over 1", s -> s.withObject("/result/score").put("scaled", 1.2));
        spoil.put("a raw score over its maximum", s -> s.withObject("/result/score")
                .put("raw", 101));
        spoil.put("a score in words", s -> s.withObject("/result/score").put("scaled", "0.8"));
        spoil.put("a duration in words", s -> s.withObject("/result").put("duration", "42 s"));
        spoil.put("a duration in thousandths", s -> s.withObject("/result").put("duration", "PT1.234S"));
        spoil.put("success in words", s -> s.withObject("/result").put("success", "yes"));
        spoil.put("a time without zone", s -> s.put("timestamp", "2026-03-02T08:00:00.120"));
        spoil.put("a time without milliseconds", s -> s.put("timestamp", "2026-03-02T08:00:00Z"));
        spoil.put("an extension without address", s -> s.withObject("/result/extensions")
                .put("regret", 1));
        spoil.put("an interaction without type", s -> s.withObject("/object/definition")
                .remove("interactionType"));
        spoil.put("choices of a performance", s -> s.withObject("/object/definition")
                .putArray("choices")
                .addObject()
                .put("id", "a"));
        spoil.put("completion of an answer", s -> s.withObject("/result").put("completion", true));
        spoil.put("a score for completing", s -> s.withObject("/verb")
                .put("id", "http://adlnet.gov/expapi/verbs/completed"));
        ObjectNode sound = MAKER.of(Pupils.attempt("a", "hungry-second-week", "careful", 7, Entry.Mode.EXAM)).stream()
                .filter(s -> s.path("result").has("score")
                        && s.path("object").path("definition").has("steps"))
                .findFirst()
                .orElseThrow();
        assertThat(SCHEMA.validate(sound)).isEmpty();
        return spoil.entrySet().stream()
                .map(e -> DynamicTest.dynamicTest(e.getKey(), () -> {
                    ObjectNode copy = sound.deepCopy();
                    e.getValue().accept(copy);
                    assertThat(SCHEMA.validate(copy)).isNotEmpty();
                }));
    }
}
