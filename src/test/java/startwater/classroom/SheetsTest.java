package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.classroom.sheet.AnswerKey;
import startwater.classroom.sheet.ResultSheet;
import startwater.classroom.sheet.Worksheet;
import startwater.page.Html;
import startwater.page.Paper;
import startwater.record.Entry;
import startwater.text.Language;
import startwater.text.Texts;

/** Sheets are whole pages that need nothing else, in both languages, and nobody's name can break them. */
class SheetsTest {
    private static final Pattern TAG = Pattern.compile("<(/?)([a-z0-9]+)[^>]*?(/?)>");
    private static final String DRILL = "hungry-second-week";

    private static void sound(String page) {
        assertThat(page)
                .startsWith("<!DOCTYPE html>")
                .doesNotContain("<script", "src=", "href=", "url(", "@import", "{0}");
        ArrayDeque<String> open = new ArrayDeque<>();
        Matcher tags = TAG.matcher(page.substring(page.indexOf("<html")));
        while (tags.find()) {
            if (tags.group(2).equals("meta")) {
                continue;
            }
            if (tags.group(1).isEmpty()) {
                open.push(tags.group(2));
            } else {
                assertThat(open.pop()).isEqualTo(tags.group(2));
            }
        }
        assertThat(open).isEmpty();
    }

    private static List<Attempt> attempts() {
        return List.of(
                Pupils.attempt("<b>\"p1\"</b><script>", DRILL, "careful", 4, Entry.Mode.EXAM),
                Pupils.attempt("p2", DRILL, "half-every-day", 5, Entry.Mode.EXAM));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void resultsAndRecordsHaveAPageALearner(Language language) {
        Texts texts = ClassWords.texts(language);
        for (Paper paper : Paper.values()) {
            ResultSheet sheets = new ResultSheet(texts, paper, p -> p, ZoneOffset.UTC);
            String results = sheets.results(attempts());
            String records = sheets.completions(attempts());
            for (String page : List.of(results, records)) {
                sound(page);
                assertThat(page.split("<section class=\"sheet\">", -1)).hasSize(3);
                assertThat(page).contains(paper == Paper.A4 ? "size:A4" : "size:letter", "&lt;b&gt;");
            }
            assertThat(records).contains(Html.text(texts.text("done.noLicence")));
            assertThat(sheets.completions(attempts())).isEqualTo(records);
        }
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void theWorksheetHasAStripForEveryDecision(Language language) {
        String page = Worksheet.of(Pupils.drill(DRILL), ClassWords.texts(language), Paper.A4);
        sound(page);
        assertThat(page.split("<table class=\"grid\">", -1))
                .hasSize(1 + Pupils.drill(DRILL).keeper().decisions());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void theKeyShowsEveryDecisionWithItsOptions(Language language) {
        Texts texts = ClassWords.texts(language);
        Html html = Paper.LETTER.page(language.code(), "x");
        AnswerKey.of(Pupils.drill(DRILL), 3, FakeJudge::judge).write(html, texts);
        String page = html.page();
        sound(page);
        assertThat(page.split("<h3>", -1)).hasSizeGreaterThan(6);
        assertThat(page).contains(Html.text(texts.text("key.deaths")));
    }
}
