package startwater.score;

import java.util.Objects;
import java.util.Set;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.TankWatch;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;

/** Lets a policy play a drill on its hidden tank, strip by strip, from the log alone. */
public final class PolicyPlayer {
    private static final long EYES = 0x6579_6573L;

    private PolicyPlayer() {}

    /** Plays to the end. @param variant which hidden tank */
    public static DrillRun play(Scenario scenario, Policy policy, long variant, DrillRun.Pace pace) {
        return play(scenario, policy, variant, pace, TankWatch.NONE);
    }

    /** The same under the eyes of {@code watch}. */
    public static DrillRun play(Scenario scenario, Policy policy, long variant, DrillRun.Pace pace, TankWatch watch) {
        DrillRun run = DrillRun.start(scenario, variant, pace, StandIn.BY_THE_RULES, watch);
        Notebook book = new Notebook(scenario);
        while (!run.over()) {
            visit(run, policy, book);
        }
        return run;
    }

    /** Plays one decision: reads what the policy tests, decides, and enters all visits up to the next decision. */
    static void visit(DrillRun run, Policy policy, Notebook book) {
        int seen = run.past().size();
        enter(run, book, run.now());
        if (!policy.writes()) {
            book.forget();
        }
        test(run, policy, book);
        boolean planned =
                run.scenario().keeper().decisionVisits().contains(run.now().visit());
        run.decide(policy.decide(book, run.log(), planned), null);
        // What the shelf allowed, not what was asked for, goes into the books.
        book.did(Objects.requireNonNull(run.past().visits().get(seen).decision()));
        for (int i = seen + 1; i < run.past().size(); i++) {
            VisitRecord visit = run.past().visits().get(i);
            enter(run, book, visit);
            if (visit.decision() != null) {
                book.did(visit.decision());
            }
        }
    }

    private static void enter(DrillRun run, Notebook book, VisitRecord visit) {
        book.enter(visit, run.calendar().nextVisitAfter(visit.minute()));
    }

    private static void test(DrillRun run, Policy policy, Notebook book) {
        Set<Pad> pads = policy.tests(book);
        dip(run, pads, policy, book);
        if (!pads.isEmpty() && policy.testsAgain(book)) {
            dip(run, pads, policy, book);
        }
        if (pads.contains(Pad.CHLORIDE) && run.chlorideStripsLeft() > 0) {
            read(run, run.dipChloride(), Pad.CHLORIDE, policy, book);
        }
    }

    private static void dip(DrillRun run, Set<Pad> pads, Policy policy, Notebook book) {
        if (pads.stream().anyMatch(p -> p != Pad.CHLORIDE) && run.stripsLeft() > 0) {
            DippedStrip strip = run.dip(1);
            for (Pad pad : pads) {
                if (pad != Pad.CHLORIDE) {
                    read(run, strip, pad, policy, book);
                }
            }
        }
    }

    private static void read(DrillRun run, DippedStrip strip, Pad pad, Policy policy, Notebook book) {
        double sigma = ReadingModel.readingSigmaBlocks(pad, Observation.READER_SIGMA_LAB);
        double normal =
                Stream.of(run.variant(), EYES, strip.number(), pad.ordinal()).normal();
        int stop = ReadingModel.readStop(pad, strip.position(pad), sigma, normal);
        Written written = new Written(pad, stop, strip.dilution(), strip.number());
        if (policy.writes()) {
            run.write(written);
        }
        book.read(pad, written.value());
    }
}
