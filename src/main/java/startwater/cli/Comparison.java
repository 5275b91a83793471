package startwater.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import startwater.fish.Stressor;
import startwater.score.WhyText;
import startwater.text.Texts;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Policies side by side on the same hidden tanks: a table in words, or one JSON object. */
record Comparison(List<PolicyRuns> sides, long firstSeed) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    /** Causes rarer than this share of the fish are not printed, %. */
    private static final double LEAST_PERCENT = 0.005;

    Comparison {
        sides = List.copyOf(sides);
    }

    private PolicyRuns first() {
        return sides.get(0);
    }

    void print(Texts texts, PrintWriter out) {
        out.println(texts.text(
                "compare.title",
                first().scenario().id(),
                first().scenario().keeper().days(),
                first().runs().size()));
        Columns.lines(rows(texts), 1).forEach(out::println);
    }

    private List<List<String>> rows(Texts texts) {
        WhyText why = WhyText.in(texts.language().locale());
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("", r -> r.policy().id()));
        if (first().fish() > 0) {
            rows.add(row(
                    texts.text("compare.deaths", first().fish()), r -> texts.decimals(100 * r.deathsFraction(), 2)));
            rows.add(row(
                    texts.text("compare.range"),
                    r -> texts.text(
                            "compare.between",
                            texts.decimals(100 * r.deathsQuantile(LOW), 2),
                            texts.decimals(100 * r.deathsQuantile(HIGH), 2))));
            for (Stressor cause : Stressor.values()) {
                if (sides.stream().anyMatch(r -> 100 * r.deathsFraction(cause) >= LEAST_PERCENT)) {
                    rows.add(row(
                            texts.text("compare.cause", why.cause(cause)),
                            r -> texts.decimals(100 * r.deathsFraction(cause), 2)));
                }
            }
        }
        rows.add(row(texts.text("compare.filter"), r -> texts.decimals(r.daysToFilter(), 1)));
        rows.add(row(texts.text("compare.water"), r -> texts.decimals(r.waterVolumes(), 2)));
        rows.add(row(texts.text("compare.feed"), r -> texts.decimals(r.feedG() / 1000, 2)));
        return rows;
    }

    private List<String> row(String what, Function<PolicyRuns, String> cell) {
        List<String> row = new ArrayList<>();
        row.add(what);
        sides.forEach(side -> row.add(cell.apply(side)));
        return row;
    }

    ObjectNode json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("scenario", first().scenario().id());
        node.put("seeds", first().runs().size());
        node.put("first_seed", firstSeed);
        node.put("days", first().scenario().keeper().days());
        node.put("fish", first().fish());
        var policies = node.putArray("policies");
        for (PolicyRuns side : sides) {
            ObjectNode one = policies.addObject();
            one.put("policy", side.policy().id());
            put(one, side);
        }
        return node;
    }

    /** What is told of one policy. */
    static void put(ObjectNode node, PolicyRuns runs) {
        node.put("deaths_fraction", runs.deathsFraction());
        node.put("deaths_fraction_5", runs.deathsQuantile(LOW));
        node.put("deaths_fraction_95", runs.deathsQuantile(HIGH));
        ObjectNode causes = node.putObject("deaths_fraction_by_cause");
        for (Stressor cause : Stressor.values()) {
            causes.put(cause.name().toLowerCase(Locale.ROOT), runs.deathsFraction(cause));
        }
        node.put("days_to_filter", runs.daysToFilter());
        node.put("water_volumes", runs.waterVolumes());
        node.put("feed_g", runs.feedG());
    }
}
