package startwater.record;

import static startwater.record.ActText.name;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Entries as JSON. What is not there is left out. */
final class EntryWriter {
    private EntryWriter() {}

    static ObjectNode node(Entry entry) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("kind", EntryText.kind(entry));
        if (entry instanceof Entry.OfAttempt of) {
            node.put("attempt", of.attempt()).put("n", of.n());
        }
        fill(node, entry);
        return node.put("at", entry.at().toString());
    }

    private static void fill(ObjectNode node, Entry entry) {
        if (entry instanceof Entry.Learner e) {
            node.put("format", e.format()).put("id", e.id()).put("name", e.name());
        } else if (entry instanceof Entry.Begun e) {
            begun(node, e);
        } else if (entry instanceof Entry.Dipped e) {
            node.put("chloride", e.chloride()).put("strip", e.strip()).put("dilution", e.dilution());
        } else if (entry instanceof Entry.Wrote e) {
            node.put("pad", name(e.pad())).put("stop", e.stop());
            node.put("dilution", e.dilution()).put("strip", e.strip());
        } else if (entry instanceof Entry.Erased e) {
            node.put("pad", name(e.pad())).put("strip", e.strip());
        } else if (entry instanceof Entry.Worked e) {
            node.put("visit", e.visit()).put("skill", e.skill()).put("given", e.given());
            node.put("exact", e.exact()).put("mark", e.mark());
            put(node, "slip", e.slip() == null ? null : name(e.slip()));
        } else if (entry instanceof Entry.Decided e) {
            decided(node, e);
        } else if (entry instanceof Entry.Marked e) {
            node.put("visit", e.visit());
            marks(node, e.marks());
        } else if (entry instanceof Entry.Finished e) {
            finished(node, e);
        } else if (entry instanceof Entry.Resolved e) {
            put(node, "attempt", e.attempt());
            texts(node, "skills", e.skills());
            node.put("text", e.text());
        } else if (entry instanceof Entry.Answered e) {
            answered(node, e);
        }
    }

    private static void begun(ObjectNode node, Entry.Begun e) {
        node.put("scenario", e.scenario());
        texts(node, "skills", e.skills());
        node.put("content", e.content()).put("engine", e.engine()).put("variant", e.variant());
        node.put("mode", name(e.mode())).put("language", e.language());
        put(node, "handout", e.handout());
    }

    private static void decided(ObjectNode node, Entry.Decided e) {
        node.put("visit", e.visit());
        node.set("decision", ActText.of(e.decision()));
        if (e.prediction() != null) {
            node.set("prediction", ActText.of(e.prediction()));
        }
        Entry.Sight s = e.seen();
        ObjectNode seen = node.putObject("seen");
        seen.put("day", s.day()).put("temperature_c", s.temperatureC());
        put(seen, "oxygen_mg_per_l", s.oxygenMgPerL());
        put(seen, "ph", s.ph());
        seen.put("alive", s.alive()).put("found", s.found());
        node.put("log", e.log()).put("tank", e.tank());
    }

    /** The marks of a visit, into a line or into the index. */
    static void marks(ObjectNode node, Entry.Marks m) {
        node.putObject("reading").put("right", m.readRight()).put("of", m.read());
        if (m.working() != null) {
            node.putObject("working")
                    .put("skill", m.working().skill())
                    .put("mark", m.working().mark())
                    .put("slip", m.working().slip());
        }
        node.put("decision", m.decision()).put("word", name(m.word())).put("regret_percent", m.regret());
        node.put("scored", m.scored()).put("arguable", m.arguable()).put("credited", m.credited());
        node.put("decisive", name(m.decisive()));
        node.set("own", ActText.of(m.own()));
        node.set("best", ActText.of(m.best()));
        if (m.foresight() != null) {
            node.putObject("foresight")
                    .put("pad", name(m.foresight().pad()))
                    .put("sureness", name(m.foresight().sureness()))
                    .put("mark", m.foresight().mark())
                    .put("chance", m.foresight().chance());
        }
        if (m.came() != null) {
            node.put("came", m.came());
        }
    }

    private static void finished(ObjectNode node, Entry.Finished e) {
        put(node, "mark", e.mark());
        node.put("passed", e.passed()).put("alive", e.alive());
        node.put("expected_deaths", e.expectedDeaths()).put("luck", e.luck());
        put(node, "filter_day", e.filterDay());
    }

    private static void answered(ObjectNode node, Entry.Answered e) {
        node.put("lesson", e.lesson());
        texts(node, "skills", e.skills());
        node.put("block", e.block()).put("step", e.step());
        node.put("score", e.score()).put("options", e.options());
        put(node, "sureness", e.sureness() == null ? null : name(e.sureness()));
    }

    static void texts(ObjectNode node, String field, List<String> texts) {
        var array = node.putArray(field);
        texts.forEach(array::add);
    }

    private static void put(ObjectNode node, String field, @Nullable Double value) {
        if (value != null) {
            node.put(field, value);
        }
    }

    static void put(ObjectNode node, String field, @Nullable String value) {
        if (value != null) {
            node.put(field, value);
        }
    }
}
