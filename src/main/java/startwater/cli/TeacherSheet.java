package startwater.cli;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import startwater.classroom.sheet.AnswerKey;
import startwater.content.DesignNote;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.SkillMap;
import startwater.drill.Scenario;
import startwater.page.Html;
import startwater.page.Paper;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What a teacher wants of a drill on paper: the setting, the rules, the skills with their published units, the author's note. */
public final class TeacherSheet {
    private static final List<String> QUESTIONS = List.of("sheet.q1", "sheet.q2", "sheet.q3");
    /** Common practice, no source: a pair takes a minute and a half over a decision. */
    private static final double MINUTES_A_DECISION = 1.5;

    private TeacherSheet() {}

    /**
     * The page.
     *
     * @param library with the lessons
     * @param texts of the class
     * @param key what each option is worth, or null to leave it out
     */
    public static String of(Scenario drill, Library library, Texts texts, Paper paper, @Nullable AnswerKey key) {
        String language = texts.language().code();
        Scenario.Words words = drill.words(language);
        Map<String, String> note = DesignNote.of(drill.id());
        List<Lesson> lessons = library.lessons(language);
        Html html = paper.page(language, texts.text("sheet.title", drill.number() + "  " + words.title()));
        html.tag("h2", texts.text("sheet.setting")).raw("<table>");
        html.row("td", texts.text("sheet.place"), words.place());
        html.row("td", texts.text("sheet.water"), words.water());
        html.row("td", texts.text("sheet.stock"), words.stock());
        html.row("td", texts.text("sheet.keeper"), words.keeper()).raw("</table>");
        html.tag(
                "p",
                texts.text("sheet.length", drill.keeper().days(), drill.keeper().decisions()));
        html.tag(
                "p",
                texts.text("sheet.time", MINUTES_A_DECISION * drill.keeper().decisions()));
        html.tag("p", texts.text("sheet.setUp", drill.id()));
        html.tag("p", texts.text("sheet.replay"));
        html.tag("h2", texts.text("sheet.story")).tag("p", words.story()).tag("p", words.goal());
        html.tag("h2", texts.text("sheet.rules")).raw("<ul>");
        new DrillWords(texts).rules(drill).forEach(rule -> html.tag("li", rule));
        html.raw("</ul>").tag("p", words.debrief());
        html.tag("h2", texts.text("sheet.questions")).raw("<ol>");
        QUESTIONS.forEach(question -> html.tag("li", texts.text(question)));
        html.raw("</ol>").tag("h2", texts.text("sheet.wrongIdeas")).raw("<ul>");
        drill.exposes().stream()
                .filter(habit -> texts.keys().contains("wrong." + habit))
                .forEach(habit -> html.tag("li", texts.text("wrong." + habit)));
        html.raw("</ul>");
        skills(drill, html, texts);
        html.tag("h2", texts.text("sheet.lessons")).raw("<ul>");
        lessons.stream()
                .filter(lesson -> lesson.skills().stream().anyMatch(drill.skills()::contains))
                .forEach(lesson -> html.tag("li", lesson.number() + "  " + lesson.title()));
        html.raw("</ul>").tag("h2", texts.text("sheet.note")).raw("<table>");
        note.forEach((part, what) -> html.row("td", part(part, texts), sentence(what)));
        html.row(
                "td",
                texts.text("sheet.exposes"),
                sentence(drill.exposes().stream()
                        .map(habit -> texts.text("sheet.habit." + habit))
                        .collect(Collectors.joining(", "))));
        html.raw("</table>");
        if (key != null) {
            key.write(html, texts);
        }
        return html.tag("p", "quiet", texts.text("caution")).page();
    }

    /** A part of the note by its name in the language of the sheet; one of the author's own as it stands. */
    private static String part(String name, Texts texts) {
        String key = "sheet.part." + name.toLowerCase(Locale.ROOT).replace(' ', '-');
        return texts.keys().contains(key) ? texts.text(key) : name;
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
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
