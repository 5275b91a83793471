package startwater.classroom;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.content.Library;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.record.AttemptCheck;
import startwater.record.Difference;
import startwater.record.EngineVersion;
import startwater.record.Entry;

/**
 * The first look at one attempt: it is played again on its hidden tank, and what can be seen without judging it is checked.
 *
 * @param handout what was handed out, or null where anything may come back
 * @param now what time it is, for times in the future
 */
record FirstPass(@Nullable Handout handout, Instant now) {
    private static final String A_UUID = "[0-9a-fA-F]{8}(-[0-9a-fA-F]{4}){3}-[0-9a-fA-F]{12}";
    private static final Instant EARLIEST = Instant.parse("2020-01-01T00:00:00Z");
    private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);
    private static final double FULL = 100;

    /** Looks at one attempt. @param lines of it, in the order of the file */
    HandedIn look(String file, String learner, String learnerId, String id, List<Entry.OfAttempt> lines) {
        List<Finding> findings = new ArrayList<>();
        if (!(lines.get(0) instanceof Entry.Begun begun) || !id.matches(A_UUID)) {
            findings.add(new Finding(Finding.Kind.LOG_CHANGED, Difference.What.LINES.name()));
            return new HandedIn(file, learner, null, null, findings, false);
        }
        handedOut(begun, learnerId, findings);
        Scenario scenario = drill(begun.scenario());
        if (scenario == null) {
            findings.add(new Finding(Finding.Kind.NO_DRILL, PlainName.of(begun.scenario())));
            return new HandedIn(file, learner, null, null, findings, false);
        }
        if (!ContentHash.ofPlay(scenario).equals(begun.content())) {
            findings.add(Finding.of(Finding.Kind.DRILL_CHANGED));
            return new HandedIn(file, learner, null, null, findings, false);
        }
        boolean ours = EngineVersion.here().equals(begun.engine());
        AttemptCheck check = AttemptCheck.of(scenario, begun, lines);
        times(lines, findings);
        if (!ours) {
            // Another build may play otherwise: what does not come out proves nothing.
            findings.add(Finding.of(Finding.Kind.OTHER_VERSION));
        } else {
            comesOut(check, findings);
        }
        if (lines.stream().noneMatch(Entry.Finished.class::isInstance)) {
            findings.add(Finding.of(Finding.Kind.OPEN));
        }
        Attempt attempt = attempt(learner, scenario, check, lines);
        return new HandedIn(file, learner, attempt, ours ? check : null, findings, false);
    }

    private void handedOut(Entry.Begun begun, String learnerId, List<Finding> findings) {
        if (handout == null) {
            return;
        }
        if (!handout.id().equals(begun.handout())) {
            findings.add(Finding.of(Finding.Kind.OTHER_HANDOUT));
            return;
        }
        if (begun.variant() != handout.variant(learnerId)) {
            findings.add(Finding.of(Finding.Kind.OTHER_TANK));
        }
        if (begun.mode() != handout.mode()) {
            findings.add(Finding.of(Finding.Kind.OTHER_MODE));
        }
        if (handout.drill(begun.scenario()).isEmpty()) {
            findings.add(new Finding(Finding.Kind.NO_DRILL, PlainName.of(begun.scenario())));
        }
    }

    private @Nullable Scenario drill(String id) {
        Optional<Scenario> own = handout == null ? Optional.empty() : handout.drill(id);
        return own.or(() -> Library.shipped().drill(id)).orElse(null);
    }

    private static void comesOut(AttemptCheck check, List<Finding> findings) {
        Optional<Difference> difference = check.difference();
        if (difference.isPresent()) {
            findings.add(new Finding(
                    Finding.Kind.LOG_CHANGED, difference.get().what().name()));
            return;
        }
        for (VisitRecord visit : check.decided()) {
            if (!visit.written().stream().allMatch(w -> dippedSo(check.run(), w))) {
                findings.add(new Finding(Finding.Kind.LOG_CHANGED, Difference.What.READING.name()));
                return;
            }
        }
        if (check.decided().stream().anyMatch(v -> !check.marks().containsKey(v.visit()))) {
            findings.add(Finding.of(Finding.Kind.NOT_MARKED));
        }
        marks(check, findings);
    }

    /** A reading counts with the dilution with which its strip was dipped. */
    private static boolean dippedSo(DrillRun run, Written w) {
        DippedStrip strip = run.strip(w.pad(), w.strip());
        return strip != null && strip.dilution() == w.dilution();
    }

    /** What of the marks can be seen without judging: readings, sums, what came, the act itself, and the mean. */
    private static void marks(AttemptCheck check, List<Finding> findings) {
        boolean outside = check.marks().values().stream()
                .anyMatch(m -> !(m.decision() >= 0 && m.decision() <= FULL) || !Double.isFinite(m.regret()));
        boolean otherAct = check.decided().stream()
                .anyMatch(v -> check.marks().containsKey(v.visit())
                        && !Objects.equals(
                                Objects.requireNonNull(check.marks().get(v.visit()))
                                        .own(),
                                v.decision()));
        boolean strangers = check.marks().keySet().stream()
                .anyMatch(n -> check.decided().stream().noneMatch(v -> v.visit() == n));
        if (outside || strangers) {
            findings.add(new Finding(Finding.Kind.MARK_CHANGED, Difference.What.DECISION_MARK.name()));
        } else if (otherAct) {
            findings.add(new Finding(Finding.Kind.MARK_CHANGED, Difference.What.OWN.name()));
        }
        check.wrongMarks((visit, c) ->
                        check.marks(visit, Objects.requireNonNull(check.marks().get(visit.visit()))))
                .forEach(d -> findings.add(
                        new Finding(Finding.Kind.MARK_CHANGED, d.what().name())));
        check.finished().ifPresent(f -> end(check, f, findings));
    }

    private static void end(AttemptCheck check, Entry.Finished f, List<Finding> findings) {
        List<Entry.Marks> scored = check.decided().stream()
                .map(v -> check.marks().get(v.visit()))
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .filter(Entry.Marks::scored)
                .toList();
        double mean =
                scored.stream().mapToDouble(Entry.Marks::decision).average().orElse(Double.NaN);
        boolean all = check.decided().stream().allMatch(v -> check.marks().containsKey(v.visit()));
        Double said = f.mark();
        boolean same = said == null ? Double.isNaN(mean) : Math.abs(said - mean) < 1e-9;
        if (all && !same) {
            findings.add(new Finding(Finding.Kind.MARK_CHANGED, Difference.What.MARK.name()));
        }
        boolean dangerous = scored.stream().anyMatch(m -> m.word() == startwater.score.Verdict.Word.DANGEROUS);
        if (all && f.passed() != (!dangerous && !(mean < Attempt.PASS))) {
            findings.add(new Finding(Finding.Kind.MARK_CHANGED, Difference.What.PASSED.name()));
        }
    }

    private void times(List<Entry.OfAttempt> lines, List<Finding> findings) {
        Instant before = EARLIEST;
        for (Entry.OfAttempt line : lines) {
            if (line.at().isBefore(before) || line.at().isAfter(now.plus(CLOCKS_DIFFER))) {
                findings.add(Finding.of(Finding.Kind.ODD_TIMES));
                return;
            }
            before = line.at();
        }
    }

    /** The attempt as it was played again, as far as it came. */
    private static Attempt attempt(String learner, Scenario scenario, AttemptCheck check, List<Entry.OfAttempt> lines) {
        Entry.Begun begun = check.begun();
        Map<Integer, Entry.Decided> decided = new HashMap<>();
        Map<Integer, List<Instant>> retests = new HashMap<>();
        List<Instant> dips = new ArrayList<>();
        for (Entry.OfAttempt line : lines) {
            if (line instanceof Entry.Dipped d && !d.chloride()) {
                dips.add(within(d.at()));
            } else if (line instanceof Entry.Decided d) {
                decided.put(d.visit(), d);
                retests.put(d.visit(), List.copyOf(dips.subList(Math.min(1, dips.size()), dips.size())));
                dips.clear();
            }
        }
        List<Step> steps = new ArrayList<>();
        Instant before = within(begun.at());
        for (VisitRecord visit : check.decided()) {
            Entry.Decided line = decided.get(visit.visit());
            Instant at = line == null ? before : within(line.at());
            steps.add(new Step(
                    steps.size() + 1,
                    visit.visit(),
                    at,
                    Duration.between(before, at),
                    visit.written().stream().map(w -> reading(check.run(), w)).toList(),
                    retests.getOrDefault(visit.visit(), List.of()),
                    Objects.requireNonNull(visit.decision()),
                    visit.prediction(),
                    check.marks().get(visit.visit())));
            before = at;
        }
        Function<String, String> plain = s -> s.replaceAll("[^A-Za-z0-9.-]", "");
        String engine = plain.apply(begun.engine());
        return new Attempt(
                UUID.fromString(begun.attempt()),
                learner,
                begun.handout() == null ? "" : PlainName.of(begun.handout()),
                scenario,
                begun.variant(),
                begun.mode(),
                begun.language().equals("es") ? "es" : "en",
                engine.substring(0, Math.min(engine.length(), 40)),
                within(begun.at()),
                check.finished().map(f -> within(f.at())).orElse(null),
                steps);
    }

    /** A time that every calendar can write. */
    private static Instant within(Instant at) {
        Instant latest = Instant.parse("2999-12-31T23:59:59Z");
        return at.isBefore(EARLIEST) ? EARLIEST : at.isAfter(latest) ? latest : at;
    }

    private static Reading reading(DrillRun run, Written w) {
        DippedStrip strip = run.strip(w.pad(), w.strip());
        return new Reading(w, strip == null ? Double.NaN : w.stop() / 2.0 - strip.position(w.pad()));
    }
}
