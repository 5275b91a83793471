package startwater.classroom;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.record.Entry;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.score.Verdict;
import startwater.strip.Pad;

/** Learners for tests: policies play for them, and the clock runs by itself. Their marks are made up from a rule. */
public final class Pupils {
    private static final Instant START = Instant.parse("2026-03-02T08:00:00.120Z");

    private Pupils() {}

    public static Scenario drill(String id) {
        return Library.shipped().scenario(id).get();
    }

    /** An attempt by a policy, with a prediction and a made-up mark at every decision. */
    public static Attempt attempt(String learner, String drill, String policy, long variant, Entry.Mode mode) {
        DrillRun run = PolicyPlayer.play(drill(drill), Policies.byId(policy), variant, DrillRun.Pace.LEARNER);
        List<Step> steps = new ArrayList<>();
        for (VisitRecord visit : run.past().visits()) {
            if (visit.asked() && visit.decision() != null) {
                int number = steps.size() + 1;
                Instant at = START.plus(Duration.ofSeconds(90L * number));
                steps.add(new Step(
                        number,
                        visit.visit(),
                        at,
                        Duration.ofMillis(42_500),
                        visit.written().stream().map(w -> read(run, w)).toList(),
                        number == 2 ? List.of(at.minusSeconds(20)) : List.of(),
                        visit.decision(),
                        new Prediction(Pad.NITRITE, number % 9, Prediction.Sureness.SURE),
                        marks(number, variant, visit.decision())));
            }
        }
        UUID id = new UUID(
                0x1234_5678_9abc_4de0L | variant, 0x8000_0000_0000_0000L | (learner.hashCode() & 0xffff_ffffL));
        return new Attempt(
                id,
                learner,
                "monday",
                run.scenario(),
                variant,
                mode,
                "es",
                "1.0",
                START,
                START.plusSeconds(90L * steps.size() + 30),
                steps);
    }

    private static Reading read(DrillRun run, Written w) {
        DippedStrip strip = run.strip(w.pad(), w.strip());
        return new Reading(w, strip == null ? Double.NaN : w.stop() / 2.0 - strip.position(w.pad()));
    }

    private static Entry.Marks marks(int number, long variant, Decision own) {
        // Even tanks go well, so that some attempts pass.
        double mark = variant % 2 == 0 ? 75 + number : (37.5 * number + 11 * variant) % 101;
        Verdict.Word word = mark < 30 ? Verdict.Word.DANGEROUS : mark < 70 ? Verdict.Word.COSTLY : Verdict.Word.SOUND;
        return new Entry.Marks(
                number == 2 ? 0 : 3,
                number == 2 ? 0 : 2,
                null,
                mark,
                word,
                (100 - mark) / 25,
                number != 1,
                false,
                true,
                Verdict.Variable.EFFECTIVE_NITRITE,
                own,
                own.withFeed(0).withChange(0.25),
                new Entry.Foresight(Pad.NITRITE, Prediction.Sureness.SURE, 60, 0.5),
                null);
    }
}
