package startwater.classroom.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.page.Html;
import startwater.page.Paper;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What a learner writes on beside a drill: for each decision a blank strip, the readings, the guess and how sure. */
public final class Worksheet {
    private Worksheet() {}

    /** The page. @param texts of the class, see {@link startwater.classroom.ClassWords#texts} */
    public static String of(Scenario drill, Texts texts, Paper paper) {
        String language = texts.language().code();
        Scenario.Words words = drill.words(language);
        DrillWords said = new DrillWords(texts);
        Html html = paper.page(language, texts.text("work.title", words.title()));
        html.raw("<p>" + Html.text(texts.text("work.name")) + " <span class=\"blank\">&#160;</span></p>");
        html.tag("p", words.story()).tag("p", words.goal());
        int decisions = drill.keeper().decisions();
        for (int number = 1; number <= decisions; number++) {
            html.raw("<div class=\"card\">").tag("h3", texts.text("work.decision", number));
            strip(html, said, texts);
            line(html, texts.text("work.think"));
            line(html, texts.text("work.decide"));
            String sure = List.of(Prediction.Sureness.values()).stream()
                    .map(s -> "☐ " + said.sureness(s))
                    .collect(Collectors.joining("   "));
            line(html, texts.text("work.guess"));
            html.tag("p", texts.text("work.sure") + "   " + sure).raw("</div>");
        }
        line(html, texts.text("work.ifThen"));
        return html.tag("p", "quiet", texts.text("caution")).page();
    }

    /** One row a pad: its blocks by number and value, to be ticked; the last cell takes what is written down. */
    private static void strip(Html html, DrillWords said, Texts texts) {
        html.raw("<table class=\"grid\">");
        for (Pad pad : Pad.values()) {
            String blocks = IntStream.range(0, pad.scale().blocks())
                    .mapToObj(b -> "<td>" + (b + 1) + ": " + Html.text(said.block(pad, b)) + "</td>")
                    .collect(Collectors.joining());
            int idle = 9 - pad.scale().blocks();
            html.raw("<tr><td>" + Html.text(said.padAndUnit(pad)) + "</td>" + blocks
                    + (idle > 0 ? "<td colspan=\"" + idle + "\"></td>" : "") + "<td class=\"write\">"
                    + Html.text(texts.text("work.written")) + "</td></tr>");
        }
        html.raw("</table>");
    }

    private static void line(Html html, String ask) {
        html.raw("<p>" + Html.text(ask) + " <span class=\"blank\" style=\"min-width:24em\">&#160;</span></p>");
    }
}
