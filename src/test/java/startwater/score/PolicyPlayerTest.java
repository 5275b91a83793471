package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.drill.TankWatch;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** How a policy plays: strips it uses, what it writes, and what goes into its books. */
class PolicyPlayerTest {
    /** Two days at 7 and 17 h; the learner is asked at the first visit and the third. */
    private static final Scenario SHORT = shortened(TrialScenario.secondWeek(15));

    private static final Set<Pad> COLOURS = Set.of(Pad.AMMONIA, Pad.NITRITE);
    private static final Set<Pad> ALL = Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.CHLORIDE);

    static Scenario shortened(Scenario s) {
        return s.withKeeper(new Scenario.Keeper(List.of(7.0, 17.0), 2, List.of(), 2, List.of(0, 2)));
    }

    /** Always reads the same, does the same, and notes what it was told. */
    private static final class Fixed implements Policy {
        private final Set<Pad> pads;
        private final boolean again;
        private final boolean writes;
        private final Decision decision;
        private final List<Boolean> planned = new ArrayList<>();
        private final List<DrillLog> logs = new ArrayList<>();
        private final List<Double> remembered = new ArrayList<>();

        Fixed(Set<Pad> pads, boolean again, boolean writes, Decision decision) {
            this.pads = pads;
            this.again = again;
            this.writes = writes;
            this.decision = decision;
        }

        static Fixed reading(Set<Pad> pads) {
            return new Fixed(pads, false, true, Decision.LEAVE_ALONE);
        }

        @Override
        public String id() {
            return "fixed";
        }

        @Override
        public Set<Pad> tests(Notebook book) {
            remembered.add(book.value(Pad.AMMONIA));
            return pads;
        }

        @Override
        public boolean testsAgain(Notebook book) {
            return again;
        }

        @Override
        public boolean writes() {
            return writes;
        }

        @Override
        public Decision decide(Notebook book) {
            return decision;
        }

        @Override
        public Decision decide(Notebook book, DrillLog log, boolean atPlannedVisit) {
            planned.add(atPlannedVisit);
            logs.add(log);
            return decision;
        }
    }

    private final Notebook book = new Notebook(SHORT);

    private DrillRun firstVisit(Scenario s, Policy policy) {
        DrillRun run = DrillRun.start(s, 3, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES);
        PolicyPlayer.visit(run, policy, book);
        return run;
    }

    private static int used(DrillRun run) {
        return run.scenario().shelf().strips() - run.stripsLeft();
    }

    private static int chlorideUsed(DrillRun run) {
        return run.scenario().shelf().chlorideStrips() - run.chlorideStripsLeft();
    }

    @Test
    void oneStripHasAllColourPadsAndChlorideItsOwn() {
        DrillRun run = firstVisit(SHORT, Fixed.reading(ALL));
        assertThat(used(run)).isEqualTo(1);
        assertThat(chlorideUsed(run)).isEqualTo(1);
        List<Written> written = run.past().visits().get(0).written();
        assertThat(written).extracting(Written::pad).containsExactlyInAnyOrderElementsOf(ALL);
        for (Written w : written) {
            assertThat(w.strip()).isZero();
            assertThat(w.dilution()).isEqualTo(1);
            assertThat(book.value(w.pad())).isEqualTo(w.value());
        }
    }

    @Test
    void noStripIsWetForAPadThatIsNotRead() {
        DrillRun colours = firstVisit(SHORT, Fixed.reading(COLOURS));
        assertThat(used(colours)).isEqualTo(1);
        assertThat(chlorideUsed(colours)).isZero();
        DrillRun chloride = firstVisit(SHORT, Fixed.reading(Set.of(Pad.CHLORIDE)));
        assertThat(used(chloride)).isZero();
        assertThat(chlorideUsed(chloride)).isEqualTo(1);
        DrillRun none = firstVisit(SHORT, new Fixed(Set.of(), true, true, Decision.LEAVE_ALONE));
        assertThat(used(none)).isZero();
        assertThat(chlorideUsed(none)).isZero();
    }

    @Test
    void whoDoubtsAReadingDipsASecondStripAndGoesByThat() {
        DrillRun run = firstVisit(SHORT, new Fixed(ALL, true, true, Decision.LEAVE_ALONE));
        assertThat(used(run)).isEqualTo(2);
        assertThat(chlorideUsed(run)).isEqualTo(1);
        Written last = Objects.requireNonNull(run.past().visits().get(0).lastWritten(Pad.AMMONIA));
        assertThat(last.strip()).isEqualTo(1);
        assertThat(book.value(Pad.AMMONIA)).isEqualTo(last.value());
    }

    @Test
    void whatIsNotOnTheShelfCannotBeRead() {
        Scenario bare = SHORT.change()
                .shelf(new Scenario.Shelf(5000, 3000, 0, 0, 100, 1, 0, true, false))
                .made();
        DrillRun run = firstVisit(bare, new Fixed(ALL, true, true, Decision.LEAVE_ALONE));
        assertThat(run.stripsLeft()).isZero();
        assertThat(run.past().visits().get(0).written())
                .extracting(Written::pad)
                .containsExactlyInAnyOrderElementsOf(COLOURS);
        assertThat(book.value(Pad.CHLORIDE)).isNaN();
    }

    /** Eyes are good to about half a block. */
    @Test
    void whatIsWrittenLiesNearTheColour() {
        DrillRun run = PolicyPlayer.play(SHORT, Fixed.reading(ALL), 3, DrillRun.Pace.EVERY_VISIT);
        int read = 0;
        for (VisitRecord v : run.past().visits()) {
            for (Written w : v.written()) {
                DippedStrip strip = Objects.requireNonNull(run.strip(w.pad(), w.strip()));
                assertThat(w.stop() / 2.0).isCloseTo(strip.position(w.pad()), within(1.5));
                read++;
            }
        }
        assertThat(read).isEqualTo(4 * 3);
    }

    @Test
    void whoDoesNotWriteLeavesTheLogEmptyAndForgets() {
        Fixed policy = new Fixed(ALL, false, false, Decision.LEAVE_ALONE);
        DrillRun run = PolicyPlayer.play(SHORT, policy, 3, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.past().visits()).allMatch(v -> v.written().isEmpty());
        assertThat(used(run)).isEqualTo(4);
        assertThat(policy.remembered).hasSize(4).allMatch(value -> value.isNaN());
        Fixed writer = Fixed.reading(ALL);
        PolicyPlayer.play(SHORT, writer, 3, DrillRun.Pace.EVERY_VISIT);
        assertThat(writer.remembered.subList(1, 4)).noneMatch(value -> value.isNaN());
    }

    @Test
    void aPolicyIsToldWhereTheLearnerIsAskedAndSeesItsOwnReadings() {
        Fixed policy = Fixed.reading(COLOURS);
        DrillRun run = PolicyPlayer.play(SHORT, policy, 3, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.over()).isTrue();
        assertThat(policy.planned).containsExactly(true, false, true, false);
        for (int visit = 0; visit < 4; visit++) {
            DrillLog seen = policy.logs.get(visit);
            assertThat(seen.size()).isEqualTo(visit + 1);
            assertThat(seen.last().decision()).isNull();
            assertThat(seen.last().written()).hasSize(2);
        }
    }

    /** 5,000 g of salt are there. */
    @Test
    void whatTheShelfAllowedGoesIntoTheBooks() {
        firstVisit(SHORT, new Fixed(Set.of(), false, true, Decision.LEAVE_ALONE.withSalt(9000)));
        assertThat(book.last().saltG()).isEqualTo(5000);
        assertThat(book.saltLeftG()).isZero();
        assertThat(book.decisions()).isEqualTo(1);
    }

    /** Asked at the first visit and the third: the second is lived through by the orders, and entered. */
    @Test
    void visitsBetweenTwoDecisionsAreEnteredToo() {
        DrillRun run = DrillRun.start(SHORT, 3, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        PolicyPlayer.visit(run, new Fixed(COLOURS, false, true, Decision.LEAVE_ALONE.withFeed(0.5)), book);
        assertThat(run.past().size()).isEqualTo(2);
        assertThat(book.minute()).isEqualTo(run.past().last().minute());
        assertThat(book.decisions()).isEqualTo(2);
        assertThat(book.hoursSince(Pad.AMMONIA)).isEqualTo(10);
        assertThat(book.hoursToNextVisit()).isEqualTo(14);
        assertThat(book.last()).isEqualTo(Decision.LEAVE_ALONE.withFeed(0.5));
        assertThat(used(run)).isEqualTo(1);
    }

    /** Whoever is called reads with a kit of their own; that stands in the books as well, with the change they made. */
    @Test
    void whatAHelperReadIsEntered() {
        Decision call = Decision.LEAVE_ALONE.withFollowUp(Decision.FollowUp.CALL);
        DrillRun run = firstVisit(SHORT, new Fixed(Set.of(), false, true, call));
        VisitRecord between = run.past().last();
        assertThat(between.written()).isNotEmpty().allMatch(Written::byKit);
        double read = Objects.requireNonNull(between.lastWritten(Pad.AMMONIA)).value();
        double change = Objects.requireNonNull(between.decision()).change();
        assertThat(read).isPositive();
        assertThat(book.value(Pad.AMMONIA)).isCloseTo(read * (1 - change), within(1e-9));
        assertThat(book.decisions()).isEqualTo(2);
    }

    @Test
    void theSameTankPlaysTheSameAndAnotherDoesNotAndOneMayWatch() {
        DrillRun run = PolicyPlayer.play(SHORT, Policies.CAREFUL, 3, DrillRun.Pace.EVERY_VISIT);
        int[] passed = {0};
        TankWatch watch = new TankWatch() {
            @Override
            public void passed(TankSim tank, double[] before, double days) {
                passed[0]++;
            }
        };
        DrillRun watched = PolicyPlayer.play(SHORT, Policies.CAREFUL, 3, DrillRun.Pace.EVERY_VISIT, watch);
        assertThat(watched.past()).isEqualTo(run.past());
        assertThat(passed[0]).isPositive();
        assertThat(PolicyPlayer.play(SHORT, Policies.CAREFUL, 4, DrillRun.Pace.EVERY_VISIT)
                        .past())
                .isNotEqualTo(run.past());
    }
}
