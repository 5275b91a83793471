package startwater.rehearse;

import java.util.Objects;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.fish.Species;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.strip.Pad;
import startwater.water.Chlorine;

/**
 * What the standing rules make of one hidden tank.
 *
 * @param ready day from the filling on which the filter carries the full ration with ammonia and nitrite under 1 mg/L; infinite
 *     if never
 * @param ammonia at noon each day, mg N/L
 * @param nitrite at noon each day, mg N/L
 * @param massG mean mass of the fish at noon each day, g
 * @param carriedG feed that the filter carries once it is ready, or at the end, g a day
 * @param litres of water changed
 * @param volumes of water changed, tanks
 * @param neutraliserG for the first filling and all changes, g
 * @param work by day: whether more than looking, feeding and testing was to be done
 * @param deaths fish, until then
 * @param over day on which the start-up is over: ready and proved; all sums and peaks run until then
 */
record TankStory(
        double ready,
        double[] ammonia,
        double[] nitrite,
        double[] massG,
        double carriedG,
        double litres,
        double volumes,
        double saltG,
        double bicarbonateG,
        double ammoniumG,
        double neutraliserG,
        int strips,
        int chlorideStrips,
        boolean[] work,
        double deaths,
        int over) {
    /** A filter is proved by two tests; with a day to spare (the standing rules). */
    static final int PROOF_DAYS = 3;

    /** Plays a scenario with a full shelf on one hidden tank. */
    static TankStory of(Scenario s, long seed) {
        int days = s.keeper().days();
        Scenario.Fish fish = Objects.requireNonNull(s.fishHereOrPlanned());
        DayBook book = new DayBook(days, fish);
        DrillRun run = PolicyPlayer.play(s, Policies.CAREFUL, seed, DrillRun.Pace.EVERY_VISIT, book);
        double ready = Double.isNaN(run.filterDay()) ? Double.POSITIVE_INFINITY : run.filterDay();
        double volume = s.system().volumeL();
        int over = Double.isInfinite(ready) ? days : Math.min(days, (int) Math.ceil(ready) + PROOF_DAYS);
        Tally tally = new Tally(over);
        run.past().visits().stream().filter(v -> v.day() < over).forEach(tally::add);
        double litres = tally.changed * volume;
        double gPerL = s.source().statedChlorineMgPerL() * Chlorine.THIOSULFATE_MG_PER_MG / 1000;
        int at = Double.isInfinite(ready) ? days - 1 : Math.min(days - 1, (int) Math.ceil(ready));
        double best = Species.byId(fish.species()).feed().fractionAtBest(book.massG[at]);
        return new TankStory(
                ready,
                book.ammonia,
                book.nitrite,
                book.massG,
                book.carried[at] * fish.count() * book.massG[at] * best,
                litres,
                tally.changed,
                tally.salt,
                tally.bicarbonate,
                tally.ammonium,
                (litres + volume) * gPerL,
                tally.strips,
                tally.chlorideStrips,
                tally.work,
                s.fishCount() * book.dead[Math.max(0, over - 1)],
                over);
    }

    int peakDay(double[] daily) {
        int peak = 0;
        for (int day = 1; day < over; day++) {
            peak = daily[day] > daily[peak] ? day : peak;
        }
        return peak;
    }

    int workDays() {
        int sum = 0;
        for (boolean day : work) {
            sum += day ? 1 : 0;
        }
        return sum;
    }

    /** What was done, added up. */
    private static final class Tally {
        private final boolean[] work;
        private double changed;
        private double salt;
        private double bicarbonate;
        private double ammonium;
        private double feed = 1;
        private int strips;
        private int chlorideStrips;

        Tally(int days) {
            work = new boolean[days];
        }

        void add(VisitRecord visit) {
            strips += dipped(visit, false);
            chlorideStrips += dipped(visit, true);
            Decision d = visit.decision();
            if (d == null) {
                return;
            }
            changed += d.change();
            salt += d.saltG();
            bicarbonate += d.bicarbonateG();
            ammonium += d.ammoniumChlorideG();
            boolean hands = d.change() > 0
                    || d.saltG() > 0
                    || d.bicarbonateG() > 0
                    || d.ammoniumChlorideG() > 0
                    || d.feed() != feed
                    || d.helpers() != Decision.FollowUp.NONE;
            feed = d.feed();
            int day = (int) visit.day();
            if (hands && day < work.length) {
                work[day] = true;
            }
        }

        /** Strips whose readings were written at a visit, of one kind. */
        private static int dipped(VisitRecord visit, boolean chloride) {
            return (int) visit.written().stream()
                    .filter(w -> (w.pad() == Pad.CHLORIDE) == chloride)
                    .mapToInt(Written::strip)
                    .filter(strip -> strip != Written.OWN_KIT)
                    .distinct()
                    .count();
        }
    }
}
