package startwater.record;

import static startwater.record.Field.at;

import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction;
import startwater.score.UnitSlip;
import startwater.score.Verdict;
import startwater.strip.Pad;
import tools.jackson.databind.JsonNode;

/** Entries from JSON. */
final class EntryReader {
    private EntryReader() {}

    /** The entry of a line, or null for a kind that is not known. @throws Field.Missing where something is not there */
    static @Nullable Entry entry(String kind, JsonNode node) {
        return switch (kind) {
            case "learner" ->
                new Entry.Learner(
                        Field.whole(node, "format"), Field.text(node, "id"), Field.text(node, "name"), at(node));
            case "resolved" ->
                new Entry.Resolved(
                        Field.textOrNull(node, "attempt"),
                        Field.texts(node, "skills"),
                        Field.text(node, "text"),
                        at(node));
            case "answered" -> answered(node);
            case "begun", "dipped", "wrote", "erased", "worked", "decided", "marked", "finished", "abandoned" ->
                ofAttempt(kind, Field.text(node, "attempt"), Field.whole(node, "n"), node);
            default -> null;
        };
    }

    private static Entry ofAttempt(String kind, String attempt, int n, JsonNode node) {
        return switch (kind) {
            case "begun" -> begun(attempt, n, node);
            case "dipped" ->
                new Entry.Dipped(
                        attempt,
                        n,
                        Field.flag(node, "chloride"),
                        Field.whole(node, "strip"),
                        Field.whole(node, "dilution"),
                        at(node));
            case "wrote" ->
                new Entry.Wrote(
                        attempt,
                        n,
                        Field.name(node, "pad", Pad.class),
                        Field.whole(node, "stop"),
                        Field.whole(node, "dilution"),
                        Field.whole(node, "strip"),
                        at(node));
            case "erased" ->
                new Entry.Erased(attempt, n, Field.name(node, "pad", Pad.class), Field.whole(node, "strip"), at(node));
            case "worked" -> worked(attempt, n, node);
            case "decided" -> decided(attempt, n, node);
            case "marked" -> new Entry.Marked(attempt, n, Field.whole(node, "visit"), marks(node), at(node));
            case "finished" -> finished(attempt, n, node);
            default -> new Entry.Abandoned(attempt, n, at(node));
        };
    }

    private static Entry.Begun begun(String attempt, int n, JsonNode node) {
        return new Entry.Begun(
                attempt,
                n,
                Field.text(node, "scenario"),
                Field.texts(node, "skills"),
                Field.text(node, "content"),
                Field.text(node, "engine"),
                Field.big(node, "variant"),
                Field.name(node, "mode", Entry.Mode.class),
                Field.text(node, "language"),
                Field.textOrNull(node, "handout"),
                at(node));
    }

    private static Entry.Worked worked(String attempt, int n, JsonNode node) {
        return new Entry.Worked(
                attempt,
                n,
                Field.whole(node, "visit"),
                Field.text(node, "skill"),
                Field.number(node, "given"),
                Field.number(node, "exact"),
                Field.number(node, "mark"),
                Field.nameOrNull(node, "slip", UnitSlip.class),
                at(node));
    }

    private static Entry.Decided decided(String attempt, int n, JsonNode node) {
        JsonNode seen = Field.object(node, "seen");
        return new Entry.Decided(
                attempt,
                n,
                Field.whole(node, "visit"),
                ActText.decision(Field.object(node, "decision")),
                ActText.prediction(Field.objectOrNull(node, "prediction")),
                new Entry.Sight(
                        Field.number(seen, "day"),
                        Field.number(seen, "temperature_c"),
                        Field.numberOrNull(seen, "oxygen_mg_per_l"),
                        Field.numberOrNull(seen, "ph"),
                        Field.whole(seen, "alive"),
                        Field.whole(seen, "found")),
                Field.text(node, "log"),
                Field.text(node, "tank"),
                at(node));
    }

    /** The marks of a visit, from a line or from the index. */
    static Entry.Marks marks(JsonNode node) {
        JsonNode reading = Field.object(node, "reading");
        JsonNode working = Field.objectOrNull(node, "working");
        JsonNode foresight = Field.objectOrNull(node, "foresight");
        return new Entry.Marks(
                Field.whole(reading, "of"),
                Field.whole(reading, "right"),
                working == null
                        ? null
                        : new Entry.Working(
                                Field.text(working, "skill"),
                                Field.number(working, "mark"),
                                Field.flag(working, "slip")),
                Field.number(node, "decision"),
                Field.name(node, "word", Verdict.Word.class),
                Field.number(node, "regret_percent"),
                Field.flag(node, "scored"),
                Field.flag(node, "arguable"),
                Field.flag(node, "credited"),
                Field.name(node, "decisive", Verdict.Variable.class),
                ActText.decision(Field.object(node, "own")),
                ActText.decision(Field.object(node, "best")),
                foresight == null
                        ? null
                        : new Entry.Foresight(
                                Field.name(foresight, "pad", Pad.class),
                                Field.name(foresight, "sureness", Prediction.Sureness.class),
                                Field.number(foresight, "mark"),
                                Field.number(foresight, "chance")),
                Field.flagOrNull(node, "came"));
    }

    private static Entry.Finished finished(String attempt, int n, JsonNode node) {
        return new Entry.Finished(
                attempt,
                n,
                Field.numberOrNull(node, "mark"),
                Field.flag(node, "passed"),
                Field.whole(node, "alive"),
                Field.number(node, "expected_deaths"),
                Field.number(node, "luck"),
                Field.numberOrNull(node, "filter_day"),
                at(node));
    }

    private static Entry.Answered answered(JsonNode node) {
        return new Entry.Answered(
                Field.text(node, "lesson"),
                Field.texts(node, "skills"),
                Field.whole(node, "block"),
                Field.whole(node, "step"),
                Field.number(node, "score"),
                Field.whole(node, "options"),
                Field.nameOrNull(node, "sureness", Prediction.Sureness.class),
                at(node));
    }
}
