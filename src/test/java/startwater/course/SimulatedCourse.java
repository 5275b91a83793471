package startwater.course;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import startwater.content.CourseShelf;
import startwater.content.Library;
import startwater.drill.Skill;

/** A learner goes through the shipped drills and lessons until all skills count as known. */
final class SimulatedCourse {
    static final Catalogue CATALOGUE = CourseShelf.of(Library.shipped());
    static final int MOST = 400;
    /** Scored visits of a drill, and questions of a lesson. */
    static int visits = 4;
    static int perDay = 3;
    private static final int QUESTIONS = 3;
    private static final Instant START = Instant.parse("2024-03-04T08:00:00Z");

    private final SimulatedLearner who;
    private final List<Graded> graded = new ArrayList<>();
    final List<Play> plays = new ArrayList<>();
    int drills;
    boolean trace;
    int drillRight;
    int drillAnswers;
    private Learner learner = new Learner(List.of(), ZoneOffset.UTC);

    SimulatedCourse(SimulatedLearner who) {
        this.who = who;
    }

    /** Which way it goes. */
    enum Way {
        COACH,
        /** Each drill in turn, the lessons on its skills before it the first time; then all drills over and over. */
        FIXED,
        /** The same, without drills all of whose skills are known by then. */
        FIXED_SKIPPING
    }

    void go(Way way, long seed) {
        List<Item> fixed = fixed();
        int at = 0;
        while (!done() && plays.size() < MOST) {
            LocalDate today = today();
            Item next;
            if (way == Way.COACH) {
                Suggestion s0 = Coach.rank(CATALOGUE, learner, plays, today, seed).get(0);
                next = s0.item();
                if (trace) {
                    StringBuilder b = new StringBuilder();
                    for (Skill k : CATALOGUE.skills()) { SkillState st = learner.state(k); b.append(String.format(" %s%.2f%s", k.id().substring(0, 4), st.known(), st.wasMastered() ? "*" : st.dueOn(today) ? "!" : "")); }
                    System.out.println(today + " " + next.source().id() + " " + s0.skill().id() + String.format(" %.2f ", s0.value()) + s0.open() + " " + s0.reason().key() + b);
                }
            } else {
                Item item = fixed.get(at);
                int turns = 0;
                while (way == Way.FIXED_SKIPPING && turns++ < fixed.size() && known(item)) {
                    at = next(at, fixed);
                    item = fixed.get(at);
                }
                next = item;
                at = next(at, fixed);
                if (!next.drill() && CATALOGUE.drilled(next.main()) && plays.stream().anyMatch(p -> p.source().equals(next0(next)))) {
                    continue;
                }
            }
            play(next);
        }
    }

    private static Source next0(Item i) { return i.source(); }

    private int next(int at, List<Item> fixed) {
        return (at + 1) % fixed.size();
    }

    private boolean known(Item item) {
        return item.skills().stream().allMatch(k -> learner.state(k).mastered());
    }

    private static List<Item> fixed() {
        List<Item> all = new ArrayList<>();
        for (Item drill : CATALOGUE.drills()) {
            for (Skill k : drill.skills()) {
                CATALOGUE.lessonsOn(k).stream().filter(l -> !all.contains(l)).forEach(all::add);
            }
            all.add(drill);
        }
        CATALOGUE.items().stream().filter(l -> !all.contains(l)).forEach(all::add);
        return all;
    }

    boolean done() {
        return CATALOGUE.skills().stream().allMatch(k -> learner.state(k).wasMastered());
    }

    double trulyKnown() {
        return CATALOGUE.skills().stream().filter(who::knows).count()
                / (double) CATALOGUE.skills().size();
    }

    LocalDate today() {
        return LocalDate.ofInstant(now(), ZoneOffset.UTC);
    }

    private Instant now() {
        return START.plusSeconds(86_400L * (plays.size() / perDay) + 3600L * (plays.size() % perDay));
    }

    void play(Item item) {
        Instant now = now();
        int turns = item.drill() ? visits : QUESTIONS;
        for (int turn = 0; turn < turns; turn++) {
            for (Skill skill : item.skills()) {
                double weight = skill == item.main() ? 1 : 0.5;
                boolean right = who.answers(skill);
                who.learns(skill, weight);
                graded.add(new Graded(now, item.source(), skill, right ? 1 : 0, weight, 0, null, item.best()));
                if (item.drill()) {
                    drillAnswers++;
                    drillRight += right ? 1 : 0;
                }
            }
        }
        drills += item.drill() ? 1 : 0;
        plays.add(new Play(item.source(), item.best(), Set.of()));
        learner = new Learner(graded, ZoneOffset.UTC);
    }
}
