package startwater.content;

import java.util.List;
import startwater.course.Catalogue;
import startwater.course.Catalogue.LessonCard;
import startwater.drill.Skill;

/** The drills and lessons of a library as the coach sees them. */
public final class CourseShelf {
    private CourseShelf() {}

    /** The sound ones; in what they train, all languages are alike. */
    public static Catalogue of(Library library) {
        List<LessonCard> lessons = library.lessons(Languages.ENGLISH).stream()
                .map(l -> new LessonCard(
                        l.id(), l.number(), l.skills().stream().map(Skill::of).toList(), l.after()))
                .toList();
        return Catalogue.of(lessons, library.scenarios());
    }
}
