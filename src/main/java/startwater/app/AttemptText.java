package startwater.app;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.StandIn;
import startwater.strip.Pad;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * An attempt as JSON lines: which drill and which hidden tank, then one line a visit with what was written and done. The
 * tank itself is not in it: it is played again, bit for bit.
 */
final class AttemptText {
    private static final int FORMAT = 1;
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private AttemptText() {}

    static String of(DrillRun run) {
        StringBuilder out = new StringBuilder();
        ObjectNode head = JsonNodeFactory.instance.objectNode();
        head.put("format", FORMAT);
        head.put("scenario", run.scenario().id());
        head.put("content", ContentHash.ofPlay(run.scenario()));
        head.put("variant", run.variant());
        // Strips that were dipped and never written down are spent all the same.
        head.put("strips_left", run.stripsLeft());
        head.put("chloride_strips_left", run.chlorideStripsLeft());
        out.append(JSON.writeValueAsString(head)).append('\n');
        for (VisitRecord visit : run.log().visits()) {
            if (visit.asked()) {
                out.append(JSON.writeValueAsString(visit(visit))).append('\n');
            }
        }
        return out.toString();
    }

    private static ObjectNode visit(VisitRecord visit) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("visit", visit.visit());
        var written = node.putArray("written");
        for (Written w : visit.written()) {
            written.addObject()
                    .put("pad", w.pad().name())
                    .put("stop", w.stop())
                    .put("dilution", w.dilution())
                    .put("strip", w.strip());
        }
        if (visit.decision() != null) {
            node.set("decision", decision(visit.decision()));
        }
        if (visit.prediction() != null) {
            node.putObject("prediction")
                    .put("pad", visit.prediction().pad().name())
                    .put("block", visit.prediction().block())
                    .put("sureness", visit.prediction().sureness().name());
        }
        return node;
    }

    private static ObjectNode decision(Decision d) {
        return JsonNodeFactory.instance
                .objectNode()
                .put("feed_share", d.feed())
                .put("change_share", d.change())
                .put("neutralise", d.neutralise())
                .put("salt_g", d.saltG())
                .put("bicarbonate_g", d.bicarbonateG())
                .put("soda_ash_g", d.sodaAshG())
                .put("ammonium_chloride_g", d.ammoniumChlorideG())
                .put("air", d.air().name())
                .put("filter", d.filter().name())
                .put("follow_up", d.helpers().name())
                .put("pump", d.pump())
                .put("heater", d.heater())
                .put("stock_share", d.stock())
                .put("ripe_media_share", d.ripeMedia());
    }

    static Optional<String> scenarioId(List<String> lines) {
        return head(lines).map(h -> h.path("scenario").asString(""));
    }

    private static Optional<JsonNode> head(List<String> lines) {
        JsonNode head = lines.isEmpty() ? null : read(lines.get(0));
        return Optional.ofNullable(head).filter(h -> h.path("format").asInt(0) == FORMAT);
    }

    private static @Nullable JsonNode read(String line) {
        try {
            return JSON.readTree(line);
        } catch (JacksonException e) {
            return null;
        }
    }

    /** Plays it again; a line that makes no sense ends the replay there, and what was before it is kept. */
    static Optional<DrillRun> replay(List<String> lines, Scenario scenario) {
        Optional<JsonNode> head = head(lines)
                .filter(h -> h.path("scenario").asString("").equals(scenario.id()))
                .filter(h -> h.path("content").asString("").equals(ContentHash.ofPlay(scenario)));
        if (head.isEmpty()) {
            return Optional.empty();
        }
        DrillRun run = DrillRun.start(
                scenario, head.get().path("variant").asLong(1), DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        try {
            for (String line : lines.subList(1, lines.size())) {
                JsonNode visit = read(line);
                if (visit == null
                        || run.over()
                        || visit.path("visit").asInt(-1) != run.now().visit()) {
                    break;
                }
                play(run, visit);
            }
        } catch (IllegalArgumentException | IllegalStateException broken) {
            return Optional.of(run);
        }
        while (run.stripsLeft() > head.get().path("strips_left").asInt(Integer.MAX_VALUE) && !run.over()) {
            run.dip(1);
        }
        while (run.chlorideStripsLeft()
                        > head.get().path("chloride_strips_left").asInt(Integer.MAX_VALUE)
                && !run.over()) {
            run.dipChloride();
        }
        return Optional.of(run);
    }

    private static void play(DrillRun run, JsonNode visit) {
        for (JsonNode w : visit.path("written")) {
            Pad pad = Pad.valueOf(w.path("pad").asString(""));
            Written written = new Written(
                    pad,
                    w.path("stop").asInt(0),
                    w.path("dilution").asInt(1),
                    w.path("strip").asInt(0));
            spend(run, written);
            run.write(written);
        }
        JsonNode d = visit.path("decision");
        if (d.isObject()) {
            run.decide(decision(d), prediction(visit.path("prediction")));
        }
    }

    /** Strips are counted through the run, so one that is written from has been dipped. */
    private static void spend(DrillRun run, Written w) {
        if (w.pad() == Pad.CHLORIDE) {
            while (run.scenario().shelf().chlorideStrips() - run.chlorideStripsLeft() <= w.strip()) {
                run.dipChloride();
            }
        } else {
            while (run.scenario().shelf().strips() - run.stripsLeft() <= w.strip()) {
                run.dip(w.dilution());
            }
        }
    }

    private static Decision decision(JsonNode d) {
        return new Decision(
                d.path("feed_share").asDouble(1),
                d.path("change_share").asDouble(0),
                d.path("neutralise").asBoolean(true),
                d.path("salt_g").asDouble(0),
                d.path("bicarbonate_g").asDouble(0),
                d.path("soda_ash_g").asDouble(0),
                d.path("ammonium_chloride_g").asDouble(0),
                Decision.Air.valueOf(d.path("air").asString("ON")),
                Decision.FilterCare.valueOf(d.path("filter").asString("LEAVE")),
                Decision.FollowUp.valueOf(d.path("follow_up").asString("NONE")),
                d.path("pump").asBoolean(true),
                d.path("heater").asBoolean(true),
                d.path("stock_share").asDouble(0),
                d.path("ripe_media_share").asDouble(0));
    }

    private static @Nullable Prediction prediction(JsonNode p) {
        return p.isObject()
                ? new Prediction(
                        Pad.valueOf(p.path("pad").asString("")),
                        p.path("block").asInt(0),
                        Prediction.Sureness.valueOf(p.path("sureness").asString("FAIRLY_SURE")))
                : null;
    }
}
