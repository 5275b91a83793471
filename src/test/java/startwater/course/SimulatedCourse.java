package startwater.course;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import startwater.content.CourseShelf;
import startwater.content.Library;
import startwater.drill.Skill;

/**
 * A learner goes through the shipped drills and lessons, three a day, until every skill has reached mastery. A drill has four
 * visits that count, a lesson three questions; each gives one answer on each of its skills, with weight 1 on the main one and
 * 1/2 on the others, as {@link Grading} gives them.
 */
final class SimulatedCourse {
    static final Catalogue CATALOGUE = CourseShelf.of(Library.shipped());
    static final int MOST = 400;
    private static final int VISITS = 4;
    private static final int QUESTIONS = 3;
    private static final int PER_DAY = 3;
    private static final Instant START = Instant.parse("2024-03-04T08:00:00Z");

    final List<Play> plays = new ArrayList<>();
    /** Main skill, best play and such of what was chosen, for the rules of the coach. */
    final List<Suggestion> chosen = new ArrayList<>();

    private final SimulatedLearner who;
    private final Tracer tracer = new Tracer(ZoneOffset.UTC);
    private Learner learner = tracer.learner();
    private int drills;
    private int right;
    private int answers;

    /** Which way it goes. */
    enum Way {
        COACH,
        /** Drills by number, each with the lessons on its skills before it the first time; then all drills again and again. */
        FIXED,
        /** The same, and what has nothing left to learn in it is passed over. */
        FIXED_SKIPPING
    }

    SimulatedCourse(SimulatedLearner who) {
        this.who = who;
    }

    SimulatedCourse go(Way way, long seed) {
        List<Item> fixed = fixed();
        int at = 0;
        while (!done() && plays.size() < MOST) {
            if (way == Way.COACH) {
                Suggestion first =
                        Coach.rank(CATALOGUE, learner, plays, today(), seed).get(0);
                chosen.add(first);
                play(first.item());
                continue;
            }
            Item item = fixed.get(at);
            at = (at + 1) % fixed.size();
            boolean known =
                    item.skills().stream().allMatch(k -> learner.state(k).mastered());
            if (!readBefore(item) && !(way == Way.FIXED_SKIPPING && known)) {
                play(item);
            }
        }
        return this;
    }

    /** A lesson is read once; again only where no drill trains what it teaches. */
    private boolean readBefore(Item item) {
        return !item.drill()
                && CATALOGUE.drilled(item.main())
                && plays.stream().anyMatch(p -> p.source().equals(item.source()));
    }

    private static List<Item> fixed() {
        List<Item> all = new ArrayList<>();
        Set<Item> there = new HashSet<>();
        for (Item drill : CATALOGUE.drills()) {
            for (Skill skill : drill.skills()) {
                CATALOGUE.lessonsOn(skill).stream().filter(there::add).forEach(all::add);
            }
            all.add(drill);
        }
        CATALOGUE.items().stream().filter(i -> !i.drill() && there.add(i)).forEach(all::add);
        return all;
    }

    boolean done() {
        return CATALOGUE.skills().stream().allMatch(k -> learner.state(k).wasMastered());
    }

    /** Share of the skills that are truly there. */
    double trulyKnown() {
        return (double) CATALOGUE.skills().stream().filter(who::knows).count()
                / CATALOGUE.skills().size();
    }

    int drills() {
        return drills;
    }

    /** Share of right answers in drills. */
    double success() {
        return (double) right / answers;
    }

    private Instant now() {
        return START.plusSeconds(86_400L * (plays.size() / PER_DAY) + 3600L * (plays.size() % PER_DAY));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(now(), ZoneOffset.UTC);
    }

    private void play(Item item) {
        int turns = item.drill() ? VISITS : QUESTIONS;
        for (int turn = 0; turn < turns; turn++) {
            for (Skill skill : item.skills()) {
                double weight = skill == item.main() ? 1 : 0.5;
                boolean correct = who.answers(skill);
                who.learns(skill, weight);
                tracer.add(new Graded(now(), item.source(), skill, correct ? 1 : 0, weight, 0, null, item.best()));
                if (item.drill()) {
                    answers++;
                    right += correct ? 1 : 0;
                }
            }
        }
        drills += item.drill() ? 1 : 0;
        plays.add(new Play(item.source(), item.best(), Set.of()));
        learner = tracer.learner();
    }
}
