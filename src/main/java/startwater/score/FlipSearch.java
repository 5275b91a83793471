package startwater.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Verdict.Line;
import startwater.score.Verdict.Line.Severity;
import startwater.strip.Pad;

/** Searches the nearest single change that flips the best option. Pure: the case alone decides. */
final class FlipSearch {
    /** Readings farther off than this, stops, are another story and not a near miss. */
    private static final int FARTHEST_STOPS = 8;
    /** A changed reading must leave so many waters, or the belief cannot tell what it would mean. */
    private static final double LEAST_WATERS = 6;
    /** Candidates that are scored anew before the search gives up. */
    private static final int CONFIRMED_AT_MOST = 3;
    /** An unread pad is named with a reading of at least this chance. */
    private static final double LEAST_CHANCE = 0.03;

    private static final int UNREAD_DISTANCE = 6;
    private static final double SOONER_DISTANCE = 0.4;
    private static final int ONE_DAY = 1;

    private final Case original;
    private final Scored scored;
    /** Place of what is best as things are. */
    private final int was;

    private final Decision before;
    private final int waters;

    private FlipSearch(Case original, int waters, Scored scored) {
        this.original = original;
        this.waters = waters;
        this.scored = scored;
        this.was = scored.losses().best();
        this.before = scored.options().get(was);
    }

    static Optional<Flip> search(Case c, Care care) {
        return search(c, care.waters());
    }

    /** The same on so many waters: fewer are quicker and rougher. */
    static Optional<Flip> search(Case c, int waters) {
        FlipSearch search = new FlipSearch(c, waters, Judge.score(c, waters));
        return search.amended().or(search::byEvidence);
    }

    /** The least amendment that makes a choice that is not among the best one of them. */
    private Optional<Flip> amended() {
        if (!scored.worse(scored.own())) {
            return Optional.empty();
        }
        List<Decision> amendments = List.copyOf(amendments());
        if (amendments.isEmpty()) {
            return Optional.empty();
        }
        Scored with = scored.with(amendments);
        for (Decision d : amendments) {
            int at = with.options().indexOf(d);
            if (!with.worse(at)) {
                Case changed = original.choosing(d);
                Line line = line("flip.choice", original.choice(), d, with.regret(at));
                return Optional.of(new Flip(Flip.Kind.CHOICE, 1, changed, d, null, line));
            }
        }
        return Optional.empty();
    }

    /** One part of the choice made as in the best option, or the feed halved or held. */
    private Set<Decision> amendments() {
        Decision own = original.choice();
        Set<Decision> all = new LinkedHashSet<>();
        all.add(own.withSalt(before.saltG()));
        all.add(own.withFeed(own.feed() / 2));
        all.add(own.withFeed(before.feed()));
        all.add(own.withChange(before.change()));
        all.add(own.withBicarbonate(before.bicarbonateG()));
        all.add(own.withAmmoniumChloride(before.ammoniumChlorideG()));
        all.add(own.withAir(before.air()));
        all.add(own.withFilter(before.filter()));
        all.add(own.withStock(before.stock()));
        all.add(own.withRipeMedia(before.ripeMedia()));
        all.add(own.withNeutralise(before.neutralise()));
        all.add(own.withFollowUp(before.helpers()));
        all.remove(own);
        return all;
    }

    /** A change that flips the waters at hand. @param reading the new reading; of no meaning where none is changed */
    private record Candidate(Flip.Kind kind, double distance, Case changed, Written reading) {}

    private Optional<Flip> byEvidence() {
        List<Candidate> candidates = new ArrayList<>();
        VisitRecord visit = original.visit();
        for (Written w : visit.written()) {
            reread(w, candidates);
        }
        for (Pad pad : Pad.values()) {
            if (pad != Pad.CHLORIDE && visit.written().stream().noneMatch(w -> w.pad() == pad)) {
                unread(pad, candidates);
            }
        }
        sooner().ifPresent(c -> candidates.add(new Candidate(Flip.Kind.SOONER, SOONER_DISTANCE, c, NO_READING)));
        candidates.sort(Comparator.comparingDouble(Candidate::distance));
        return candidates.stream()
                .limit(CONFIRMED_AT_MOST)
                .map(this::confirmed)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static final Written NO_READING = new Written(Pad.AMMONIA, 0, 1, Written.OWN_KIT);

    /** The nearest other stop of a written pad that flips the best on the waters at hand. */
    private void reread(Written w, List<Candidate> candidates) {
        for (int off = 1; off <= FARTHEST_STOPS; off++) {
            for (int stop : new int[] {w.stop() - off, w.stop() + off}) {
                if (stop >= 0 && stop < w.pad().scale().stops()) {
                    Written other = new Written(w.pad(), stop, w.dilution(), w.strip());
                    if (flips(reweighed(w, other))) {
                        candidates.add(
                                new Candidate(Flip.Kind.READING, off / 2.0, original.rereading(w, other), other));
                        return;
                    }
                }
            }
        }
    }

    /** The likeliest reading of a pad that was not read that flips the best. */
    private void unread(Pad pad, List<Candidate> candidates) {
        Written best = null;
        double most = LEAST_CHANCE;
        double[] weights = scored.belief().waterWeights();
        int strip = StripsUsed.number(original.log(), pad);
        for (int stop = 0; stop < pad.scale().stops(); stop += 2) {
            Written w = new Written(pad, stop, 1, strip);
            double chance = 0;
            for (int i = 0; i < weights.length; i++) {
                chance += weights[i] * likelihood(w, i);
            }
            if (chance >= most && flips(reweighed(null, w))) {
                most = chance;
                best = w;
            }
        }
        if (best != null) {
            candidates.add(
                    new Candidate(Flip.Kind.UNREAD, UNREAD_DISTANCE - most, original.rereading(null, best), best));
        }
    }

    /** The same case with a visit a day from now, where the next one is farther off. */
    private Optional<Case> sooner() {
        int now = original.visit().minute();
        if (scored.belief().calendar().nextVisitAfter(now) - now <= Calendar.DAY + 60) {
            return Optional.empty();
        }
        Scenario back = original.scenario().presentFrom((double) now / Calendar.DAY + ONE_DAY - 0.1);
        return Optional.of(new Case(back, original.log()));
    }

    private double likelihood(Written w, int water) {
        return Observation.likelihood(
                w,
                scored.belief().water(water).sim().state(),
                scored.belief().water(water).sim().draw());
    }

    /** Weights of all tanks with one reading in place of another; empty where too few waters are left. */
    private double[] reweighed(@Nullable Written old, Written other) {
        Belief belief = scored.belief();
        double[] waters = belief.waterWeights();
        double sum = 0;
        for (int i = 0; i < waters.length; i++) {
            waters[i] *= likelihood(other, i) / (old == null ? 1 : likelihood(old, i));
            sum += waters[i];
        }
        double squares = 0;
        for (int i = 0; i < waters.length; i++) {
            waters[i] /= sum;
            squares += waters[i] * waters[i];
        }
        return 1 / squares < LEAST_WATERS ? new double[0] : belief.tankWeights(waters);
    }

    private boolean flips(double[] weights) {
        if (weights.length == 0) {
            return false;
        }
        Losses losses = scored.losses().weighed(weights);
        int best = losses.best();
        return unlike(scored.options().get(best), before) && losses.regret(was) > Scored.band(losses, was);
    }

    /** Whether two acts differ in more than the grams of a dose. */
    static boolean unlike(Decision a, Decision b) {
        return a.feed() != b.feed()
                || a.change() != b.change()
                || a.stock() != b.stock()
                || !Options.kind(a).equals(Options.kind(b));
    }

    /** Scores the changed case anew: what was best must be worse there than the new best by more than can be told. */
    private Optional<Flip> confirmed(Candidate c) {
        Case changed = c.changed().choosing(before);
        Scored again = c.kind() == Flip.Kind.SOONER
                ? Judge.score(changed, scored.belief().in(changed.scenario()))
                : Judge.score(changed, waters);
        Decision best = again.options().get(again.losses().best());
        if (!again.worse(again.own()) || !unlike(best, before)) {
            return Optional.empty();
        }
        Pad pad = c.kind() == Flip.Kind.SOONER ? null : c.reading().pad();
        return Optional.of(new Flip(c.kind(), c.distance(), changed, best, pad, line(c, again, best)));
    }

    private Line line(String key, Object... parameters) {
        return Explainer.line(scored.book(), key, Severity.FACT, parameters);
    }

    private Line line(Candidate c, Scored again, Decision best) {
        double regret = again.losses().regret(again.own());
        Written w = c.reading();
        return switch (c.kind()) {
            case SOONER -> line("flip.sooner", before, best, regret);
            case UNREAD -> line("flip.unread", w.pad(), w.value(), before, best, regret);
            default -> {
                double read = original.visit().written().stream()
                        .filter(o -> o.pad() == w.pad() && o.strip() == w.strip())
                        .findFirst()
                        .map(Written::value)
                        .orElseThrow();
                yield line("flip.reading", w.pad(), w.value(), read, before, best, regret);
            }
        };
    }
}
