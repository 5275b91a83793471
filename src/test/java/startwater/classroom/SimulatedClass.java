package startwater.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.record.Attempts;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;
import startwater.record.Resumed;
import startwater.record.Storage;
import startwater.score.Case;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.score.Review;
import startwater.score.Verdict;
import startwater.strip.Pad;

/** Learners who play what was handed out, each in a folder of their own, by the program's own way of keeping attempts. */
final class SimulatedClass {
    static final Instant START = Instant.parse("2026-03-02T08:00:00Z");

    private final Path folder;
    private final Handout handout;
    private final Function<Case, Verdict> judge;

    /** @param folder where the learners' folders lie */
    SimulatedClass(Path folder, Handout handout, Function<Case, Verdict> judge) {
        this.folder = folder;
        this.handout = handout;
        this.judge = judge;
    }

    /** A learner plays all drills by a policy and hands in. @return the text of the file to hand in */
    String play(int number, String policy) throws IOException {
        Path home = folder.resolve("home-" + number);
        AtomicLong ids = new AtomicLong();
        AtomicLong ticks = new AtomicLong();
        Means means = new Means(
                Storage.DISK,
                () -> START.plusMillis(7_123L * ticks.incrementAndGet() + 13L * number),
                () -> new UUID(0x4000L | ((long) number << 32), Long.MIN_VALUE | ids.incrementAndGet()).toString());
        try (LearnerFile file = open(home, "p" + number, means)) {
            String id = Objects.requireNonNull(file.history().learner()).id();
            for (Handout.Drill drill : handout.drills()) {
                play(file, drill.scenario(), handout.variant(id), policy, number);
            }
            return AttemptsFile.text(Files.readString(file.file()), handout.id());
        }
    }

    private static LearnerFile open(Path home, String name, Means means) throws IOException {
        Learners learners = new Learners(home, means);
        return learners.open(name);
    }

    private void play(LearnerFile file, Scenario scenario, long variant, String policy, int number) {
        DrillRun model = PolicyPlayer.play(scenario, Policies.byId(policy), variant, DrillRun.Pace.LEARNER);
        Resumed at = new Attempts(file)
                .begin(scenario, variant, handout.mode(), number % 2 == 0 ? "es" : "en", handout.id());
        DrillRun run = at.run();
        List<Verdict> verdicts = new ArrayList<>();
        int visit = 0;
        for (VisitRecord record : model.past().visits()) {
            if (!record.asked() || record.decision() == null) {
                continue;
            }
            record.written().forEach(w -> read(run, at, w));
            Prediction said = new Prediction(
                    Pad.NITRITE, (number + visit) % 9, Prediction.Sureness.values()[(number + visit) % 3]);
            run.decide(Objects.requireNonNull(record.decision()), said);
            at.steps().decided(record.decision(), said);
            List<VisitRecord> asked = run.past().visits().stream()
                    .filter(v -> v.asked() && v.decision() != null)
                    .toList();
            VisitRecord done = asked.get(asked.size() - 1);
            Verdict verdict = judge.apply(
                    new Case(scenario, run.past().upTo(run.past().visits().indexOf(done))));
            verdicts.add(verdict);
            at.steps().marked(done, verdict);
            visit++;
        }
        at.steps().finished(Review.of(run, verdicts));
    }

    private static void read(DrillRun run, Resumed at, Written w) {
        while (run.strip(w.pad(), w.strip()) == null) {
            boolean chloride = w.pad() == Pad.CHLORIDE;
            DippedStrip strip = chloride ? run.dipChloride() : run.dip(w.dilution());
            at.steps().dipped(strip, chloride);
        }
        run.write(w);
        at.steps().wrote(w);
    }
}
