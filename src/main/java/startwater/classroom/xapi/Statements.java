package startwater.classroom.xapi;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.classroom.Attempt;
import startwater.classroom.Step;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.score.Verdict;
import startwater.strip.Scale;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * What learners did, as xAPI statements: shaped as 1.0.3 asks and sound under 2.0 (IEEE 9274.1.1). A decision is answered
 * as a performance, a prediction as a choice; a second strip at a visit is an interaction; a drill is completed, and under
 * exam passed or failed; a worked lesson is experienced, a skill that is known is mastered. A score stands on the answers
 * and on passed and failed, never on completed. Nobody is named: an agent is an account with a pseudonym.
 *
 * <p>The id of a statement follows from the attempt and the event, so that sending it twice adds nothing.
 */
public final class Statements {
    private static final DateTimeFormatter MILLIS = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);
    private static final String ACTIVITY_TYPES = "http://adlnet.gov/expapi/activities/";
    private static final int MOST = 100;
    private static final double CENTISECONDS = 100;

    private final Names names;
    private final String classroom;

    /**
     * A maker of statements.
     *
     * @param names addresses of things
     * @param classroom name of the class, part of the home page of its learners' accounts; two classes may use the same
     *     pseudonyms
     */
    public Statements(Names names, String classroom) {
        this.names = names;
        this.classroom = classroom;
    }

    /** A lesson that was worked through. @param learner pseudonym @param title in English and Spanish */
    public record LessonWorked(UUID event, String learner, String lesson, String english, String spanish, Instant at) {}

    /** A skill that counts as known. @param learner pseudonym @param probability that it is known, 0..1 */
    public record SkillKnown(
            UUID event, String learner, String skill, String english, String spanish, double probability, Instant at) {}

    /** The statements of an attempt, in the order of the events. */
    public List<ObjectNode> of(Attempt attempt) {
        List<ObjectNode> all = new ArrayList<>();
        for (Step step : attempt.steps()) {
            for (int i = 0; i < step.retests().size(); i++) {
                all.add(retest(attempt, step, i));
            }
            Prediction prediction = step.prediction();
            if (prediction != null) {
                all.add(predicted(attempt, step, prediction));
            }
            all.add(decided(attempt, step));
        }
        Instant finished = attempt.finished();
        if (finished != null) {
            all.add(completed(attempt, finished));
            if (attempt.exam() && !Double.isNaN(attempt.mark())) {
                all.add(judged(attempt, finished));
            }
        }
        return all;
    }

    /** The statement of a lesson. */
    public ObjectNode of(LessonWorked lesson) {
        ObjectNode s = event(lesson.event(), "lesson", lesson.learner(), Verb.EXPERIENCED);
        activity(s, names.lesson(lesson.lesson()), "lesson", lesson.english(), lesson.spanish());
        return at(s, lesson.at());
    }

    /** The statement of a skill. */
    public ObjectNode of(SkillKnown skill) {
        ObjectNode s = event(skill.event(), "skill", skill.learner(), Verb.MASTERED);
        activity(s, names.skill(skill.skill()), "objective", skill.english(), skill.spanish());
        s.putObject("result")
                .put("success", true)
                .putObject("extensions")
                .put(names.extension("probability-known"), skill.probability());
        return at(s, skill.at());
    }

    private ObjectNode retest(Attempt a, Step step, int place) {
        ObjectNode s = event(a.id(), "retest-" + step.number() + "-" + place, a.learner(), Verb.INTERACTED);
        activity(
                s,
                names.decision(a.scenario().id(), step.number()) + "/second-strip",
                "interaction",
                "Second strip, " + title(a, "en"),
                "Segunda tira, " + title(a, "es"));
        context(s, a);
        return at(s, step.retests().get(place));
    }

    private ObjectNode predicted(Attempt a, Step step, Prediction p) {
        ObjectNode s = event(a.id(), "prediction-" + step.number(), a.learner(), Verb.ANSWERED);
        ObjectNode definition = activity(
                s,
                names.decision(a.scenario().id(), step.number()) + "/prediction",
                "cmi.interaction",
                "Next strip, decision " + step.number() + ", " + title(a, "en"),
                "Próxima tira, decisión " + step.number() + ", " + title(a, "es"));
        Scale scale = p.pad().scale();
        definition.put("interactionType", "choice");
        var choices = definition.putArray("choices");
        IntStream.range(0, scale.blocks())
                .forEach(block -> choices.addObject().put("id", Performance.number(scale.blockValue(block))));
        ObjectNode result = s.putObject("result");
        Entry.@Nullable Marks mark = step.marks();
        Entry.Foresight foresight = mark == null ? null : mark.foresight();
        if (foresight != null) {
            score(result, foresight.mark());
        }
        result.put("response", Performance.number(scale.blockValue(p.block())));
        result.putObject("extensions")
                .put(names.extension("confidence"), p.sureness().chance())
                .put(names.extension("pad"), p.pad().name().toLowerCase(Locale.ROOT));
        context(s, a);
        return at(s, step.at());
    }

    private ObjectNode decided(Attempt a, Step step) {
        ObjectNode s = event(a.id(), "decision-" + step.number(), a.learner(), Verb.ANSWERED);
        ObjectNode definition = activity(
                s,
                names.decision(a.scenario().id(), step.number()),
                "cmi.interaction",
                "Decision " + step.number() + ", " + title(a, "en"),
                "Decisión " + step.number() + ", " + title(a, "es"));
        definition.put("interactionType", "performance");
        var steps = definition.putArray("steps");
        Performance.ids().forEach(id -> steps.addObject().put("id", id));
        ObjectNode result = s.putObject("result");
        Entry.@Nullable Marks mark = step.marks();
        if (mark != null && mark.scored()) {
            score(result, mark.decision());
            result.put("success", mark.word() == Verdict.Word.SOUND);
        }
        result.put("response", Performance.response(step.decision()));
        result.put("duration", duration(step.took()));
        if (mark != null) {
            extensions(result.putObject("extensions"), mark);
        }
        context(s, a);
        return at(s, step.at());
    }

    private void extensions(ObjectNode out, Entry.Marks mark) {
        out.put(names.extension("scored"), mark.scored());
        out.put(names.extension("word"), mark.word().name().toLowerCase(Locale.ROOT));
        out.put(names.extension("regret"), mark.regret());
        if (mark.read() > 0) {
            out.put(names.extension("readings"), mark.read());
            out.put(names.extension("readings-right"), mark.readRight());
        }
    }

    private ObjectNode completed(Attempt a, Instant finished) {
        ObjectNode s = drill(a, "completed", Verb.COMPLETED);
        ObjectNode result = s.putObject("result")
                .put("completion", true)
                .put("duration", duration(Duration.between(a.begun(), finished)));
        if (!Double.isNaN(a.mark())) {
            result.putObject("extensions").put(names.extension("mark"), Math.rint(a.mark()));
        }
        context(s, a);
        return at(s, finished);
    }

    private ObjectNode judged(Attempt a, Instant finished) {
        ObjectNode s = drill(a, "judged", a.passed() ? Verb.PASSED : Verb.FAILED);
        ObjectNode result = s.putObject("result");
        score(result, a.mark());
        result.put("success", a.passed()).put("duration", duration(Duration.between(a.begun(), finished)));
        context(s, a);
        return at(s, finished);
    }

    private ObjectNode drill(Attempt a, String event, Verb verb) {
        ObjectNode s = event(a.id(), event, a.learner(), verb);
        activity(s, names.drill(a.scenario().id()), "simulation", title(a, "en"), title(a, "es"));
        return s;
    }

    private static String title(Attempt a, String language) {
        Scenario.Words words = a.scenario().words(language);
        return words.title();
    }

    private ObjectNode event(UUID space, String event, String learner, Verb verb) {
        ObjectNode s = JsonNodeFactory.instance.objectNode();
        s.put("id", NameUuid.of(space, event).toString());
        s.putObject("actor")
                .put("objectType", "Agent")
                .putObject("account")
                .put("homePage", names.handout(classroom))
                .put("name", learner);
        s.putObject("verb")
                .put("id", verb.iri())
                .putObject("display")
                .put("en", verb.english())
                .put("es", verb.spanish());
        return s;
    }

    /** Puts the object in and returns its definition. */
    private static ObjectNode activity(ObjectNode s, String id, String type, String english, String spanish) {
        ObjectNode definition = s.putObject("object")
                .put("objectType", "Activity")
                .put("id", id)
                .putObject("definition");
        definition.put("type", ACTIVITY_TYPES + type);
        definition.putObject("name").put("en", english).put("es", spanish);
        return definition;
    }

    /** Scaled, and raw as a whole number: what the stricter profiles ask for. */
    private static void score(ObjectNode result, double mark) {
        long raw = Math.round(Math.max(0, Math.min(MOST, mark)));
        result.putObject("score")
                .put("scaled", raw / (double) MOST)
                .put("raw", raw)
                .put("min", 0)
                .put("max", MOST);
    }

    private void context(ObjectNode s, Attempt a) {
        ObjectNode context = s.putObject("context");
        context.put("registration", a.id().toString());
        context.put("platform", "Startwater " + a.version());
        context.put("language", a.language());
        ObjectNode activities = context.putObject("contextActivities");
        activities
                .putArray("parent")
                .addObject()
                .put("id", names.drill(a.scenario().id()));
        if (!a.handout().isEmpty()) {
            activities.putArray("grouping").addObject().put("id", names.handout(a.handout()));
        }
        context.putObject("extensions").put(names.extension("variant"), Long.toString(a.variant()));
    }

    private static ObjectNode at(ObjectNode s, Instant when) {
        return s.put("timestamp", MILLIS.format(when));
    }

    /** ISO 8601, in hundredths of a second; never negative, whatever the clocks said. */
    static String duration(Duration took) {
        double seconds = Math.max(0, took.toMillis()) / 1000.0;
        return "PT" + Performance.number(Math.rint(seconds * CENTISECONDS) / CENTISECONDS) + "S";
    }
}
