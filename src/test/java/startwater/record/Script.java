package startwater.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Stream;
import startwater.score.Review;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.strip.Pad;

/**
 * A learner who does everything there is to do, as chance has it: strips that are dipped and never written, readings that
 * are corrected or taken back, sums, decisions, predictions.
 */
final class Script {
    static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    private static final double[] FEEDS = {0, 0.5, 1};
    private static final double[] CHANGES = {0, 0.25, 0.5};

    private final Stream chance;
    private final DrillRun run;
    private final Steps steps;
    private final List<Verdict> verdicts;

    Script(long seed, Resumed at) {
        this.chance = Stream.of(seed, 7);
        this.run = at.run();
        this.steps = at.steps();
        this.verdicts = new ArrayList<>(at.verdicts());
    }

    /** The time stands still and ids are counted, so that the same steps give the same bytes. */
    static Means means(Storage storage) {
        AtomicInteger ids = new AtomicInteger();
        return new Means(storage, () -> NOON, () -> "id-" + ids.incrementAndGet());
    }

    static Means means() {
        return means(Storage.DISK);
    }

    /** Plays so many visits, or to the end. @param judge whether decisions are judged, which takes most of the time */
    void play(int visits, boolean judge) {
        for (int i = 0; i < visits && !run.over(); i++) {
            look();
            decide();
            if (judge) {
                List<VisitRecord> decided = Marking.decided(run);
                verdicts.add(MarkCheck.judged(run, decided.get(decided.size() - 1), steps.care()));
                steps.marked(decided.get(decided.size() - 1), verdicts.get(verdicts.size() - 1));
            }
        }
        if (run.over() && judge) {
            steps.finished(Review.of(run, verdicts));
        }
    }

    /** What is done at a visit before the decision. */
    void look() {
        if (run.stripsLeft() > 1) {
            DippedStrip strip = run.dip(pick(3) == 0 ? 10 : 1);
            steps.dipped(strip, false);
            for (Pad pad : strip.positions().keySet().stream().sorted().toList()) {
                if (pick(4) > 0) {
                    read(strip, pad);
                }
            }
            if (pick(2) == 0) {
                steps.dipped(run.dip(1), false);
            }
        }
        if (run.chlorideStripsLeft() > 0 && pick(2) == 0) {
            DippedStrip strip = run.dipChloride();
            steps.dipped(strip, true);
            read(strip, Pad.CHLORIDE);
        }
        if (pick(2) == 0) {
            steps.worked("toxic-ammonia", WorkingMark.of(0.01 * (1 + pick(9)), 0.05));
        }
    }

    private void read(DippedStrip strip, Pad pad) {
        int last = pad.scale().stops() - 1;
        int shown = (int) Math.rint(2 * strip.position(pad)) + pick(3) - 1;
        write(strip, pad, Math.max(0, Math.min(last, shown)));
        if (pick(5) == 0) {
            write(strip, pad, pick(last));
        }
        if (pick(5) == 0) {
            List<Written> written = run.now().written();
            Written gone = written.get(written.size() - 1);
            run.erase(gone);
            steps.erased(gone);
        }
    }

    private void write(DippedStrip strip, Pad pad, int stop) {
        Written written = new Written(pad, stop, strip.dilution(), strip.number());
        run.write(written);
        steps.wrote(written);
    }

    private void decide() {
        Decision decision = Decision.LEAVE_ALONE
                .withFeed(FEEDS[pick(FEEDS.length)])
                .withChange(CHANGES[pick(CHANGES.length)])
                .withSalt(pick(3) == 0 ? 120 : 0)
                .withFollowUp(pick(4) == 0 ? Decision.FollowUp.LOOK_AGAIN : Decision.FollowUp.NONE);
        Prediction prediction = pick(3) == 0
                ? null
                : new Prediction(
                        Pad.NITRITE, pick(Pad.NITRITE.scale().blocks()), Prediction.Sureness.values()[pick(3)]);
        run.decide(decision, prediction);
        steps.decided(decision, prediction);
    }

    private int pick(int of) {
        return Math.min(of - 1, (int) (of * chance.uniform()));
    }
}
