package startwater.cli;

import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import startwater.classroom.Attempt;
import startwater.classroom.ClassTable;
import startwater.classroom.Collector;
import startwater.classroom.DecisionItem;
import startwater.classroom.DrillStatistics;
import startwater.classroom.HandedIn;
import startwater.classroom.stats.Interval;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** A class as one JSON object. What is not known is left out. */
final class ClassJson {
    private ClassJson() {}

    static ObjectNode of(List<HandedIn> all, ZoneId zone) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        var attempts = node.putArray("attempts");
        all.forEach(h -> attempt(attempts.addObject(), h));
        List<Attempt> counting = Collector.counting(all);
        ClassTable table = ClassTable.of(counting, zone);
        var learners = node.putArray("learners");
        for (ClassTable.Row row : table.rows()) {
            ObjectNode one = learners.addObject().put("learner", row.learner());
            one.put("attempts", row.attempts()).put("finished", row.finished());
            number(one, "mark", row.mark());
            ObjectNode skills = one.putObject("skills");
            for (int i = 0; i < table.skills().size(); i++) {
                ClassTable.Cell cell = row.cells().get(i);
                if (cell.seen() > 0) {
                    skills.putObject(table.skills().get(i).id())
                            .put("known", cell.known())
                            .put("seen", cell.seen());
                }
            }
        }
        var drills = node.putArray("drills");
        DrillStatistics.all(counting).forEach(d -> drill(drills.addObject(), d));
        return node;
    }

    private static void attempt(ObjectNode node, HandedIn h) {
        node.put("file", h.file()).put("learner", h.learner());
        node.put("status", name(h.status())).put("checked", h.checked());
        Attempt a = h.attempt();
        if (a != null) {
            node.put("attempt", a.id().toString()).put("drill", a.scenario().id());
            node.put("variant", a.variant()).put("mode", name(a.mode())).put("finished", a.whole());
            number(node, "mark", a.mark());
        }
        var findings = node.putArray("findings");
        h.findings().forEach(f -> {
            ObjectNode one = findings.addObject().put("kind", name(f.kind()));
            if (!f.detail().isEmpty()) {
                one.put("detail", f.detail());
            }
        });
    }

    private static void drill(ObjectNode node, DrillStatistics d) {
        node.put("drill", d.scenario().id()).put("learners", d.attempts().size());
        number(node, "kr20", d.analysis().reliability());
        interval(node, "kr20_within", d.analysis().reliabilityWithin());
        var items = node.putArray("decisions");
        for (DecisionItem item : d.items()) {
            ObjectNode one = items.addObject()
                    .put("decision", item.number())
                    .put("learners", item.marks().n());
            number(one, "mark", item.marks().mean());
            number(one, "sd", item.marks().sd());
            number(one, "facility", item.item().facility());
            interval(one, "facility_within", item.item().facilityWithin());
            number(one, "discrimination", item.item().discrimination());
            interval(one, "discrimination_within", item.item().discriminationWithin());
            one.put("dangerous", item.dangerous()).put("arguable", item.arguable());
            var reasons = one.putArray("discuss");
            item.reasons().forEach(r -> reasons.add(name(r)));
            var chosen = one.putArray("chosen");
            item.chosen().forEach(c -> {
                ObjectNode act = chosen.addObject().put("act", c.code()).put("learners", c.count());
                number(act, "mark", c.meanMark());
                number(act, "mark_elsewhere", c.meanRest());
            });
        }
        var wrong = node.putArray("first_wrong");
        d.firstWrong().forEach(f -> wrong.addObject().put("act", f.code()).put("learners", f.count()));
        var readings = node.putArray("readings");
        d.readings().forEach(r -> readings.addObject()
                .put("pad", name(r.pad()))
                .put("written", r.written())
                .put("too_low", r.tooLow())
                .put("too_high", r.tooHigh()));
    }

    private static String name(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    private static void number(ObjectNode node, String field, double value) {
        if (Double.isFinite(value)) {
            node.put(field, value);
        }
    }

    private static void interval(ObjectNode node, String field, Interval interval) {
        if (interval.known()) {
            node.putArray(field).add(interval.low()).add(interval.high());
        }
    }
}
