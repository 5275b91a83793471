package startwater.cli;

import java.util.List;
import java.util.Map;
import startwater.content.Lesson;
import startwater.content.SkillMap;
import startwater.drill.Scenario;
import startwater.page.Html;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What a teacher wants of a drill on paper: the setting, the rules, the skills with their published units, the author's note. */
final class TeacherSheet {
    private TeacherSheet() {}

    /**
     * The page.
     *
     * @param note the author's note by part, as it stands in the file
     * @param lessons those there are in the language
     * @param texts with the words of drills and lessons
     */
    static String of(Scenario drill, Map<String, String> note, List<Lesson> lessons, Texts texts) {
        String language = texts.language().code();
        Scenario.Words words = drill.words(language);
        Html html = new Html(language, texts.text("sheet.title", drill.number() + "  " + words.title()));
        html.tag("h2", texts.text("sheet.setting")).raw("<table>");
        html.row("td", texts.text("sheet.place"), words.place());
        html.row("td", texts.text("sheet.water"), words.water());
        html.row("td", texts.text("sheet.stock"), words.stock());
        html.row("td", texts.text("sheet.keeper"), words.keeper()).raw("</table>");
        html.tag(
                "p",
                texts.text("sheet.length", drill.keeper().days(), drill.keeper().decisions()));
        html.tag("p", texts.text("sheet.replay"));
        html.tag("h2", texts.text("sheet.story")).tag("p", words.story()).tag("p", words.goal());
        html.tag("h2", texts.text("sheet.rules")).raw("<ul>");
        DrillWords said = new DrillWords(texts);
        drill.rules().forEach(rule -> html.tag("li", said.why().rule(rule)));
        html.raw("</ul>").tag("p", words.debrief());
        skills(drill, html, texts);
        html.tag("h2", texts.text("sheet.lessons")).raw("<ul>");
        lessons.stream()
                .filter(lesson -> lesson.skills().stream().anyMatch(drill.skills()::contains))
                .forEach(lesson -> html.tag("li", lesson.number() + "  " + lesson.title()));
        html.raw("</ul>").tag("h2", texts.text("sheet.note")).raw("<table>");
        note.forEach((part, what) -> html.row("td", part, what));
        html.row("td", texts.text("sheet.exposes"), String.join(", ", drill.exposes()));
        return html.raw("</table>").tag("p", "quiet", texts.text("caution")).page();
    }

    private static void skills(Scenario drill, Html html, Texts texts) {
        html.tag("h2", texts.text("sheet.skills")).raw("<table>");
        html.row("th", texts.text("sheet.skill"), texts.text("sheet.unit"), texts.text("sheet.part"));
        for (String skill : drill.skills()) {
            for (SkillMap.Row row : SkillMap.of(skill)) {
                html.row(
                        "td",
                        texts.text("skill." + skill),
                        row.unit(),
                        row.part(texts.language().code()));
            }
        }
        html.raw("</table>");
    }
}
