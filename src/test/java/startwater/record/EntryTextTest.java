package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.drill.Prediction.Sureness;
import startwater.score.UnitSlip;
import startwater.score.Verdict;
import startwater.strip.Pad;
import tools.jackson.databind.JsonNode;

class EntryTextTest {
    private static final Instant AT = Instant.parse("2026-05-04T10:11:12.345Z");

    static Entry.Marks marks(boolean all) {
        return new Entry.Marks(
                6,
                5,
                all ? new Entry.Working("toxic-ammonia", 50, true) : null,
                100.0 / 3,
                Verdict.Word.COSTLY,
                0.1 + 0.2,
                true,
                false,
                true,
                Verdict.Variable.EFFECTIVE_NITRITE,
                Decision.LEAVE_ALONE.withSalt(300),
                Decision.LEAVE_ALONE.withFeed(0.5),
                all ? new Entry.Foresight(Pad.NITRITE, Sureness.SURE, 71.3, 0.41) : null,
                all ? Boolean.TRUE : null);
    }

    static Stream<Entry> entries() {
        Decision much = new Decision(
                0.5,
                0.2,
                false,
                300,
                1.5,
                2.5,
                3.5,
                Decision.Air.SPARE,
                Decision.FilterCare.DRAIN,
                Decision.FollowUp.CALL,
                false,
                false,
                0.25,
                0.75);
        Entry.Sight sight = new Entry.Sight(8.25, 26.4, 5.1, null, 240, 0);
        return Stream.of(
                new Entry.Learner(1, "u", "José \"7\"\n", AT),
                new Entry.Begun(
                        "a", 0, "s", List.of("x", "y"), "c", "e", Long.MAX_VALUE, Entry.Mode.EXAM, "es", "h", AT),
                new Entry.Begun("a", 0, "s", List.of(), "c", "e", -1, Entry.Mode.PRACTICE, "en", null, AT),
                new Entry.Dipped("a", 1, true, 3, 10, AT),
                new Entry.Wrote("a", 2, Pad.PH, 9, 1, 3, AT),
                new Entry.Erased("a", 3, Pad.CHLORINE, 3, AT),
                new Entry.Worked("a", 4, 2, "units", 4, 0.04, 50, UnitSlip.AS_AMMONIA, AT),
                new Entry.Worked("a", 4, 2, "units", 0.1, 0.1, 100, null, AT),
                new Entry.Decided("a", 5, 2, much, new Prediction(Pad.PH, 5, Sureness.NOT_SURE), sight, "l", "t", AT),
                new Entry.Decided("a", 5, 2, Decision.LEAVE_ALONE, null, sight, "l", "t", AT),
                new Entry.Marked("a", 6, 2, marks(true), AT),
                new Entry.Marked("a", 6, 2, marks(false), AT),
                new Entry.Finished("a", 7, 63.25, false, 231, 4.5, -4.5, 17.5, AT),
                new Entry.Finished("a", 7, null, true, 0, 0, 0, null, AT),
                new Entry.Abandoned("a", 8, AT),
                new Entry.Resolved("a", List.of("ration"), "If it shows, I salt", AT),
                new Entry.Resolved(null, List.of(), "", AT),
                new Entry.Answered("01-l", List.of("units"), 4, 1, 0.5, 3, Sureness.FAIRLY_SURE, AT),
                new Entry.Answered("01-l", List.of("units"), 4, 1, 1, 0, null, AT));
    }

    @ParameterizedTest
    @MethodSource("entries")
    void aLineIsReadBackToTheLastBit(Entry entry) {
        String line = EntryText.line(entry);
        assertThat(line).doesNotContain("\n").doesNotContain("null").startsWith("{\"kind\":\"");
        assertThat(EntryText.read(line)).isEqualTo(new EntryText.Line(EntryText.Sort.KNOWN, entry));
    }

    /** No line holds more than its kind needs or may have; each thing it needs is missed. */
    @ParameterizedTest
    @MethodSource("entries")
    void aLineThatLacksAFieldIsDamagedOrSaysTheFieldIsNotThere(Entry entry) {
        JsonNode node = EntryText.JSON.readTree(EntryText.line(entry));
        for (String field : node.propertyNames()) {
            var less = (tools.jackson.databind.node.ObjectNode) node.deepCopy();
            less.remove(field);
            EntryText.Line read = EntryText.read(less.toString());
            if (read.entry() != null) {
                assertThat(EntryText.line(read.entry())).as(field).isEqualTo(less.toString());
            } else {
                assertThat(read.sort()).as(field).isEqualTo(EntryText.Sort.DAMAGED);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "x",
                "[]",
                "7",
                "null",
                "{}",
                "{\"kind\":7}",
                "{\"kind\":\"wrote\"}",
                "{\"kind\":\"begun\",\"attempt\":\"a\",\"n\":1e30}",
                "{\"kind\":\"learner\",\"format\":1,\"id\":\"u\",\"name\":\"n\",\"at\":\"yesterday\"}",
                "{\"kind\":\"learner\",\"format\":1,\"id\":\"u\",\"name\":null,\"at\":\"2026-05-04T12:00:00Z\"}"
            })
    void whatIsNoLineIsDamaged(String text) {
        assertThat(EntryText.read(text).sort()).isEqualTo(EntryText.Sort.DAMAGED);
    }

    @Test
    void aDecisionBeyondWhatCanBeDoneIsDamaged() {
        String line = EntryText.line(
                entries().filter(e -> e instanceof Entry.Decided).findFirst().orElseThrow());
        assertThat(EntryText.read(line.replace("\"change_share\":0.2", "\"change_share\":7"))
                        .sort())
                .isEqualTo(EntryText.Sort.DAMAGED);
    }

    @Test
    void aKindFromLaterIsLeftAlone() {
        assertThat(EntryText.read("{\"kind\":\"dreamt\",\"at\":\"2026-05-04T12:00:00Z\"}"))
                .isEqualTo(EntryText.Line.UNKNOWN);
    }

    @Test
    void thePageDescribesEveryKindAndEveryField() throws IOException {
        String page = Files.readString(Path.of("src/docs/learner-file.md"));
        entries().forEach(e -> {
            String kind = EntryText.kind(e);
            assertThat(page).contains("### " + kind);
            assertFields(page, EntryText.JSON.readTree(EntryText.line(e)));
        });
    }

    private static void assertFields(String page, JsonNode node) {
        node.properties().forEach(field -> {
            assertThat(page).containsPattern("[`| ]" + field.getKey() + "[`|, ]");
            if (field.getValue().isObject()) {
                assertFields(page, field.getValue());
            }
        });
    }
}
