package startwater.app.view;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import startwater.app.model.ProgressModel;
import startwater.content.CourseShelf;
import startwater.content.Library;
import startwater.course.Calibration.Said;
import startwater.course.Graded;
import startwater.course.Lever;
import startwater.course.Past;
import startwater.course.Play;
import startwater.course.Source;
import startwater.drill.Habit;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.text.Language;

/** Invented learners for the progress page. */
final class ProgressExamples {
    static final LocalDate TODAY = LocalDate.parse("2024-03-18");

    private ProgressExamples() {}

    static ProgressModel model(Past past) {
        return ProgressModel.of(CourseShelf.of(Library.shipped()), past, TODAY, ZoneOffset.UTC, 5);
    }

    static CoachWords words(Language language) {
        return new CoachWords(Shell.words(language), Library.shipped());
    }

    /** Two weeks on: some known, some due again, some on the way, and surer than right. */
    static Past someWay() {
        List<Graded> graded = new ArrayList<>();
        days(graded, Skill.READ_STRIP, 1, 1, 1, 3, 8, 13);
        days(graded, Skill.UNITS, 0.9, 2, 2, 4, 9, 12);
        days(graded, Skill.NITRITE_CHLORIDE, 0.95, 3, 3, 6, 7);
        days(graded, Skill.RATION, 0.9, 3, 3, 3, 9);
        days(graded, Skill.WATER_CHANGE, 0.7, 6, 9, 11);
        days(graded, Skill.CYCLE_SENSE, 0.4, 3, 6, 11, 13);
        days(graded, Skill.TOXIC_AMMONIA, 0.8, 13);
        String[] drills = {"first-strips", "hungry-second-week", "hard-water", "same-tank-away", "hungry-second-week"};
        double[] mark = {48, 55, 72, 66, 84};
        List<Play> plays = new ArrayList<>();
        List<Past.Mark> marks = new ArrayList<>();
        for (int i = 0; i < drills.length; i++) {
            plays.add(new Play(Source.drill(drills[i]), Lever.values()[i], Set.of()));
            marks.add(new Past.Mark(day(3 * i + 1), drills[i], mark[i]));
        }
        plays.add(new Play(Source.drill("hard-water"), Lever.CHANGE, Set.of(Habit.HALF_EVERY_DAY)));
        List<Said> said = new ArrayList<>();
        said(said, Sureness.NOT_SURE, 2, 5);
        said(said, Sureness.FAIRLY_SURE, 5, 9);
        said(said, Sureness.SURE, 6, 11);
        return new Past(
                graded,
                plays,
                said,
                marks,
                List.of(
                        new Past.Resolved("If nitrite shows, I weigh the salt before I touch the feed.", day(11)),
                        new Past.Resolved("If two strips disagree, I dip a third and wait.", day(4))));
    }

    private static void said(List<Said> all, Sureness word, int came, int of) {
        for (int i = 0; i < of; i++) {
            all.add(new Said(word, i < came ? 1 : 0));
        }
    }

    private static Instant day(int day) {
        return Instant.parse("2024-03-04T09:00:00Z").plusSeconds(86_400L * day);
    }

    private static void days(List<Graded> all, Skill skill, double x, int... days) {
        for (int day : days) {
            all.add(new Graded(day(day), Source.drill("hard-water"), skill, x, 1, 0, null, null));
        }
    }
}
