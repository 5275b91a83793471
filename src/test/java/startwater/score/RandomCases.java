package startwater.score;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.strip.Pad;

/** Decisions on the shipped drills that a learner might come to: a few visits read and decided at random. */
final class RandomCases {
    private RandomCases() {}

    /** One case of every shipped drill and seed. */
    static List<Case> ofShippedDrills(int seeds) {
        List<Case> cases = new ArrayList<>();
        for (Scenario s : Library.shipped().scenarios()) {
            for (int seed = 0; seed < seeds; seed++) {
                cases.add(of(s, seed));
            }
        }
        return cases;
    }

    /** So many cases, the shipped drills in turn. */
    static List<Case> inTurn(int cases) {
        List<Scenario> drills = Library.shipped().scenarios();
        List<Case> some = new ArrayList<>();
        for (int seed = 0; seed < cases; seed++) {
            some.add(of(drills.get(seed % drills.size()), seed));
        }
        return some;
    }

    /** The last of one to three visits. */
    static Case of(Scenario s, long seed) {
        DrillRun run = DrillRun.start(s, seed, DrillRun.Pace.LEARNER);
        Notebook book = new Notebook(s);
        Policy keeper = new Anybody(Stream.of(seed, 77));
        int visits = 1 + (int) (seed % 3);
        int place = 0;
        for (int i = 0; i < visits && !run.over(); i++) {
            place = run.past().size();
            PolicyPlayer.visit(run, keeper, book);
        }
        return new Case(s, run.past().upTo(place));
    }

    /** The same log with another decision at its end. */
    static Case withChoice(Case c, Decision choice) {
        List<VisitRecord> visits = new ArrayList<>(c.log().visits());
        int last = visits.size() - 1;
        visits.set(last, visits.get(last).decided(choice, null));
        return new Case(c.scenario(), new DrillLog(visits));
    }

    /** Reads what is careful, or nothing one time in four, and does anything that the shelf allows. */
    private record Anybody(Stream draws) implements Policy {
        private static final double[] FEEDS = {0, 0.5, 1};
        private static final double[] CHANGES = {0, 0, 0.2, 0.5, 0.75};

        @Override
        public String id() {
            return "anybody";
        }

        @Override
        public Set<Pad> tests(Notebook book) {
            return draws.below(4) == 0 ? Set.of() : Policies.CAREFUL.tests(book);
        }

        @Override
        public Decision decide(Notebook book) {
            Decision d = Decision.LEAVE_ALONE
                    .withFeed(FEEDS[draws.below(FEEDS.length)])
                    .withChange(CHANGES[draws.below(CHANGES.length)]);
            if (draws.below(3) == 0) {
                d = d.withSalt(Math.min(book.saltLeftG(), 50 * draws.below(10)));
            }
            return draws.below(4) == 0 ? d.withBicarbonate(Math.min(book.bicarbonateLeftG(), 40)) : d;
        }
    }
}
