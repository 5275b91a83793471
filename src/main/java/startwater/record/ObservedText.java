package startwater.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Observations as lines of the index: small, since there is one for every visit ever marked. */
final class ObservedText {
    private static final ObjectNode USUAL = ActText.of(Decision.LEAVE_ALONE);

    private ObservedText() {}

    static String line(Observed observed) {
        if (observed instanceof Observed.Answer answer) {
            return EntryText.line(answer.answer());
        }
        Observed.Visit v = (Observed.Visit) observed;
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("kind", "visit").put("scenario", v.scenario()).put("attempt", v.attempt());
        node.put("mode", ActText.name(v.mode()));
        EntryWriter.texts(node, "skills", v.skills());
        node.put("visit", v.visit());
        EntryWriter.marks(node, v.marks());
        node.set("own", sparse(v.marks().own()));
        node.set("best", sparse(v.marks().best()));
        return EntryText.JSON.writeValueAsString(node.put("at", v.at().toString()));
    }

    /** Only what differs from leaving all alone. */
    private static ObjectNode sparse(Decision decision) {
        ObjectNode node = ActText.of(decision);
        USUAL.properties().forEach(usual -> {
            if (usual.getValue().equals(node.get(usual.getKey()))) {
                node.remove(usual.getKey());
            }
        });
        return node;
    }

    /** The observation of a line. @throws Field.Missing where it is none */
    static Observed read(String line) {
        try {
            JsonNode node = EntryText.JSON.readTree(line);
            if (!Field.text(node, "kind").equals("visit")) {
                if (EntryText.read(line).entry() instanceof Entry.Answered answered) {
                    return new Observed.Answer(answered);
                }
                throw new Field.Missing("kind");
            }
            ObjectNode full = (ObjectNode) node;
            full.set("own", USUAL.deepCopy().setAll((ObjectNode) Field.object(node, "own")));
            full.set("best", USUAL.deepCopy().setAll((ObjectNode) Field.object(node, "best")));
            return new Observed.Visit(
                    Field.text(node, "scenario"),
                    Field.text(node, "attempt"),
                    Field.name(node, "mode", Entry.Mode.class),
                    Field.texts(node, "skills"),
                    Field.whole(node, "visit"),
                    EntryReader.marks(full),
                    null,
                    Field.at(node));
        } catch (JacksonException | IllegalArgumentException damaged) {
            throw new Field.Missing("line");
        }
    }

    /** Tells each prediction what the next visit of its attempt made of it. */
    static List<Observed> cameTrue(List<Observed> all) {
        List<Observed> told = new ArrayList<>(all);
        Map<String, Integer> last = new HashMap<>();
        for (int i = 0; i < told.size(); i++) {
            if (told.get(i) instanceof Observed.Visit visit) {
                @Nullable Integer before = last.put(visit.attempt(), i);
                if (before != null && told.get(before) instanceof Observed.Visit foretold) {
                    told.set(before, foretold.with(visit.marks().came()));
                }
            }
        }
        return List.copyOf(told);
    }
}
