package startwater.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.course.Calibration.Said;
import startwater.course.Graded;
import startwater.course.Grading;
import startwater.course.Lever;
import startwater.course.MarkedVisit;
import startwater.course.Past;
import startwater.course.Play;
import startwater.course.Source;
import startwater.drill.Habit;
import startwater.drill.Skill;

/** Tells the coach what a learner file holds. Skills that this program does not know are passed over. */
public final class CourseHistory {
    private final List<Graded> graded = new ArrayList<>();
    private final List<Said> said = new ArrayList<>();
    private final Map<String, Played> played = new LinkedHashMap<>();
    private String lesson = "";
    private int lessons;
    private final Set<String> answered = new HashSet<>();

    private CourseHistory() {}

    /** What of one attempt or one reading is gathered. */
    private static final class Played {
        private final Source source;
        private final Map<Lever, Integer> best = new EnumMap<>(Lever.class);
        private final Set<Habit> habits = EnumSet.noneOf(Habit.class);
        private double marks;
        private int scored;
        private Past.@Nullable Mark mark;

        Played(Source source) {
            this.source = source;
        }

        /** What the best choices pulled most often, the more telling of equals. */
        private Play play() {
            Lever most = best.entrySet().stream()
                    .reduce((a, b) -> b.getValue() > a.getValue() ? b : a)
                    .map(Map.Entry::getKey)
                    .orElse(Lever.WAIT);
            return new Play(source, most, habits);
        }
    }

    /** Everything in a history. */
    public static Past of(History history) {
        List<Past.Resolved> resolved = history.notes().values().stream()
                .distinct()
                .sorted(Comparator.comparing(History.Note::at).reversed())
                .map(n -> new Past.Resolved(n.text(), n.at()))
                .toList();
        return of(history.observed(), resolved);
    }

    /** @param observed oldest first @param resolved if-then sentences, the latest first */
    static Past of(List<Observed> observed, List<Past.Resolved> resolved) {
        CourseHistory all = new CourseHistory();
        for (Observed o : observed) {
            if (o instanceof Observed.Visit visit) {
                all.visit(visit);
            } else if (o instanceof Observed.Answer answer) {
                all.answer(answer.answer());
            }
        }
        List<Past.Mark> marks = all.played.values().stream()
                .flatMap(p -> Optional.ofNullable(p.mark).stream())
                .toList();
        return new Past(
                all.graded, all.played.values().stream().map(Played::play).toList(), all.said, marks, resolved);
    }

    private void visit(Observed.Visit v) {
        lesson = "";
        MarkedVisit visit = marked(v.marks(), v.came());
        graded.addAll(Grading.of(v.at(), v.scenario(), skills(v.skills()), visit));
        Played play = played.computeIfAbsent(v.attempt(), id -> new Played(Source.drill(v.scenario())));
        play.habits.addAll(visit.habits());
        if (visit.scored()) {
            play.best.merge(Lever.main(visit.best()), 1, Integer::sum);
            play.marks += visit.mark();
            play.scored++;
            play.mark = new Past.Mark(v.at(), v.scenario(), play.marks / play.scored);
        }
        MarkedVisit.Foreseen foreseen = visit.foreseen();
        if (foreseen != null) {
            Boolean came = foreseen.came();
            said.add(new Said(foreseen.sureness(), came == null ? foreseen.chance() : came ? 1 : 0));
        }
    }

    /** Only the first answer to a question tells something; one given after the solution does not. */
    private void answer(Entry.Answered a) {
        if (!a.lesson().equals(lesson)) {
            lesson = a.lesson();
            lessons++;
            answered.clear();
        }
        played.computeIfAbsent("lesson " + lessons, id -> new Played(Source.lesson(a.lesson())));
        if (!answered.add(a.block() + "." + a.step())) {
            return;
        }
        graded.addAll(Grading.answer(a.at(), a.lesson(), skills(a.skills()), a.score(), a.options(), a.sureness()));
        if (a.sureness() != null) {
            said.add(new Said(a.sureness(), a.score()));
        }
    }

    /** The marks of a visit as the coach reads them. @param came whether what was foretold came, or null where unknown */
    public static MarkedVisit marked(Entry.Marks m, @Nullable Boolean came) {
        Entry.Working sum = m.working();
        Entry.Foresight f = m.foresight();
        MarkedVisit.Worked worked = sum == null
                ? null
                : Skill.find(sum.skill())
                        .map(k -> new MarkedVisit.Worked(k, sum.mark(), sum.slip()))
                        .orElse(null);
        return new MarkedVisit(
                m.scored(),
                m.credited(),
                m.decision(),
                m.word(),
                m.decisive(),
                m.own(),
                m.best(),
                m.read(),
                m.readRight(),
                worked,
                f == null ? null : new MarkedVisit.Foreseen(f.pad(), f.sureness(), f.mark(), f.chance(), came));
    }

    private static List<Skill> skills(List<String> ids) {
        return ids.stream().flatMap(id -> Skill.find(id).stream()).toList();
    }
}
