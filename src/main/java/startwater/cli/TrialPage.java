package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import startwater.score.Act;
import startwater.score.DrillTrial;
import startwater.score.DrillTrial.Reason;
import startwater.score.DrillTrial.Row;
import startwater.score.TrialFit;
import startwater.text.Texts;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What a trial found, as lines for a reader and as JSON for a program. */
final class TrialPage {
    private final Texts texts;

    TrialPage(Texts texts) {
        this.texts = texts;
    }

    /** Why a drill is fit or not, in one line. */
    String why(List<Reason> reasons) {
        return reasons.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    String sentence(Reason reason) {
        Object[] spoken = reason.parameters().stream()
                .map(p -> p instanceof Act act ? words(act) : p instanceof Double d ? texts.number(d) : p)
                .toArray();
        return texts.text(reason.key(), spoken);
    }

    private String words(Act act) {
        return act.parts().stream().map(part -> texts.text("trial.act." + part)).collect(Collectors.joining(", "));
    }

    /** One drill: the verdict, a row a policy, and what was most at stake. */
    List<String> lines(DrillTrial drill) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.text(drill.fit() ? "trial.fit" : "trial.unfit", drill.scenario(), why(drill.why())));
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "",
                texts.text("trial.column.mark"),
                texts.text("trial.column.passed"),
                texts.text("trial.column.deaths"),
                texts.text("trial.column.filter"),
                texts.text("trial.column.water")));
        for (Row row : drill.policies()) {
            rows.add(List.of(
                    "  " + row.policy(),
                    number(row.mark(), 0),
                    number(100 * row.passed(), 0),
                    number(100 * row.outcome().deathsFraction(), 2),
                    number(row.outcome().daysToFilter(), 1),
                    number(row.outcome().waterVolumes(), 1)));
        }
        lines.addAll(Columns.lines(rows, 1));
        DrillTrial.Pivot pivot = drill.pivot();
        if (pivot != null) {
            lines.add("  "
                    + texts.text(
                            "trial.pivot", pivot.visit() + 1, words(pivot.best()), Math.round(100 * pivot.share())));
        }
        lines.add("  " + texts.text("trial.arguable", drill.arguable(), drill.steps()));
        return lines;
    }

    /** What holds over all drills together: how many decisions are arguable, and which act is best most often. */
    String totals(List<DrillTrial> drills) {
        TrialFit.Totals totals = TrialFit.totals(drills);
        return totals.commonest() == null
                ? texts.text("trial.totalsNone")
                : texts.text(
                        "trial.totals",
                        totals.steps(),
                        totals.arguable(),
                        Math.round(100 * totals.arguableShare()),
                        words(totals.commonest()),
                        Math.round(100 * totals.commonestShare()));
    }

    private String number(double value, int decimals) {
        return Double.isNaN(value) ? "–" : texts.decimals(value, decimals);
    }

    /** One drill as JSON. A mark that was not worked out is null. */
    ObjectNode json(DrillTrial drill) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("scenario", drill.scenario());
        node.put("fit", drill.fit());
        node.put("why", why(drill.why()));
        ArrayNode policies = node.putArray("policies");
        for (Row row : drill.policies()) {
            ObjectNode policy = policies.addObject();
            policy.put("policy", row.policy());
            put(policy, "mark", row.mark());
            put(policy, "deaths_fraction", row.outcome().deathsFraction());
            put(policy, "days_to_filter", row.outcome().daysToFilter());
            put(policy, "water_volumes", row.outcome().waterVolumes());
        }
        return node;
    }

    private static void put(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            node.put(key, value);
        } else {
            node.putNull(key);
        }
    }
}
