package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import startwater.bench.Measure;
import startwater.bench.Words;
import startwater.content.Block;
import startwater.content.Inline;
import startwater.content.Lesson;
import startwater.page.Html;
import startwater.page.Paper;
import startwater.strip.Pad;
import startwater.strip.PadColours;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** A lesson on paper: figures as they stand at first, room to write where the learner works, the answers on a page of their own. */
public final class LessonPage implements Block.Cases<Html> {
    private final Html html;
    private final DrillWords words;
    private final Texts texts;
    private final Words bench;
    private final List<String> answers = new ArrayList<>();

    private LessonPage(Lesson lesson, Texts texts, Paper paper) {
        this.words = new DrillWords(texts);
        this.texts = texts;
        this.bench = Words.of(texts.language().code());
        this.html = paper.page(lesson.language(), lesson.number() + "  " + lesson.title());
    }

    /** The page. @param texts with the words of drills and lessons in the language of the lesson */
    public static String of(Lesson lesson, Texts texts, Paper paper) {
        LessonPage page = new LessonPage(lesson, texts, paper);
        lesson.blocks().forEach(block -> block.match(page));
        page.html.raw("<section class=\"answers\">").tag("h2", texts.text("print.answers"));
        page.html.raw("<ol>");
        page.answers.forEach(answer -> page.html.tag("li", answer));
        page.html.raw("</ol></section>").tag("h2", texts.text("lesson.sources"));
        lesson.sources().forEach(source -> page.html.tag("p", "quiet", source));
        page.html.tag("p", "quiet", texts.text("caution"));
        return page.html.page();
    }

    /** Marks a place of the page with the number of its answer. */
    private String answered(String answer) {
        answers.add(answer);
        return " (" + answers.size() + ")";
    }

    private String blank(String unit, String answer) {
        return "<p>= <span class=\"blank\">&#160;</span> " + Html.text(unit) + Html.text(answered(answer)) + "</p>";
    }

    @Override
    public Html heading(Block.Heading heading) {
        return html.raw("<h" + heading.level() + ">" + inline(heading.words()) + "</h" + heading.level() + ">");
    }

    @Override
    public Html paragraph(Block.Paragraph paragraph) {
        return html.raw("<p>" + inline(paragraph.words()) + "</p>");
    }

    @Override
    public Html items(Block.Items items) {
        String list = items.numbered() ? "ol" : "ul";
        html.raw("<" + list + ">");
        items.items().forEach(item -> html.raw("<li>" + inline(item) + "</li>"));
        return html.raw("</" + list + ">");
    }

    @Override
    public Html figure(Block.Figure figure) {
        var plot = figure.plot(figure.atFirst());
        html.raw("<div class=\"card\">").raw(PlotSvg.of(plot, texts));
        html.tag("p", texts.text(plot.said(), plot.numbers().toArray()));
        String at = figure.kind().sum().inputs().stream()
                .filter(input -> figure.atFirst().containsKey(input.name()))
                .map(input -> texts.text("slider." + input.name()) + " "
                        + bench.amount(new Measure(
                                input.name(), figure.atFirst().getOrDefault(input.name(), 0.0), input.unit())))
                .collect(Collectors.joining(", "));
        return html.tag("p", "quiet", texts.text("print.at", at)).raw("</div>");
    }

    @Override
    public Html worked(Block.Worked worked) {
        html.raw("<div class=\"card\">").tag("p", worked.ask());
        int shown = worked.steps().size() - worked.blank();
        for (int i = 0; i < worked.steps().size(); i++) {
            Block.Step step = worked.steps().get(i);
            Measure value = worked.value(step);
            html.tag("p", (i + 1) + "  " + step.say());
            if (i < shown) {
                html.tag("p", "= " + bench.amount(value));
            } else {
                html.raw(blank(bench.unit(value.unit()), bench.amount(value)));
            }
        }
        return html.raw("</div>");
    }

    @Override
    public Html choice(Block.Choice choice) {
        html.raw("<div class=\"card\">").tag("p", choice.ask());
        Block.Option right = choice.options().stream()
                .filter(Block.Option::right)
                .findFirst()
                .orElseThrow();
        for (Block.Option option : choice.options()) {
            html.tag("p", "☐  " + option.says());
        }
        String wrong = choice.options().stream()
                .filter(option -> !option.right())
                .map(option -> option.says() + " " + texts.text("lesson.notSo") + " " + option.reason())
                .collect(Collectors.joining(" "));
        return html.tag(
                        "p",
                        answered(right.says() + " " + right.reason() + " " + wrong)
                                .strip())
                .raw("</div>");
    }

    @Override
    public Html number(Block.NumberQuestion question) {
        Measure answer = question.answer();
        html.raw("<div class=\"card\">").tag("p", question.ask());
        return html.raw(blank(bench.unit(answer.unit()), bench.amount(answer) + ". " + question.because()))
                .raw("</div>");
    }

    @Override
    public Html strip(Block.StripReading strip) {
        html.raw("<div class=\"card\">").tag("p", strip.ask());
        List<String> readings = new ArrayList<>();
        for (Pad pad : strip.water().keySet()) {
            html.raw(pad(pad, strip.position(pad)));
            readings.add(words.pad(pad) + " " + words.stop(pad, pad.scale().nearestStop(strip.position(pad)), 1));
        }
        return html.tag(
                        "p",
                        answered(String.join(", ", readings) + ". " + strip.because())
                                .strip())
                .raw("</div>");
    }

    /** The pad, and under it its scale; a column is told by the place of its edge. */
    private String pad(Pad pad, double position) {
        StringBuilder row = new StringBuilder("<p>" + Html.text(words.padAndUnit(pad)) + "</p>");
        row.append("<svg viewBox=\"0 0 560 92\" width=\"540\" font-size=\"13\" role=\"img\">");
        int blocks = pad.scale().blocks();
        double pitch = 540.0 / blocks;
        if (pad.matchedByColour()) {
            row.append(box(10, 4, 60, colour(pad, position)));
        } else {
            row.append(box(10, 4, 10 + pitch * (position + 0.5), "#FFFFFF"));
        }
        for (int block = 0; block < blocks; block++) {
            String fill = pad.matchedByColour() ? colour(pad, block) : "#FFFFFF";
            row.append(box(10 + pitch * block, 42, pitch - 6, fill));
            row.append(String.format(
                    Locale.ROOT,
                    "<text x=\"%.1f\" y=\"88\" text-anchor=\"middle\">%s</text>",
                    10 + pitch * block + (pitch - 6) / 2,
                    Html.text(words.block(pad, block))));
        }
        return row.append("</svg>").toString();
    }

    private static String box(double x, double y, double width, String fill) {
        return String.format(
                Locale.ROOT,
                "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"30\" fill=\"%s\" stroke=\"#7C8B93\"/>",
                x,
                y,
                width,
                fill);
    }

    private static String colour(Pad pad, double position) {
        return PadColours.of(pad).srgb(position).hex();
    }

    @Override
    public Html predict(Block.Predict predict) {
        html.raw("<div class=\"card\">").tag("p", predict.ask());
        Pad pad = predict.pad();
        String blocks = IntStream.range(0, pad.scale().blocks())
                .mapToObj(block -> "☐ " + words.block(pad, block))
                .collect(Collectors.joining("   "));
        html.tag("p", texts.text("lesson.willRead", words.pad(pad)) + "  " + blocks);
        html.tag("p", texts.text("print.sure"));
        return html.tag(
                        "p",
                        answered(bench.amount(predict.answer()) + ". " + predict.because())
                                .strip())
                .raw("</div>");
    }

    @Override
    public Html drill(Block.DrillLink link) {
        return html.raw("<div class=\"card\">")
                .tag("p", texts.text("print.drill", link.id()))
                .tag("p", link.say())
                .raw("</div>");
    }

    @Override
    public Html caution(Block.Caution caution) {
        return html.raw("<div class=\"card\">")
                .tag("b", texts.text("lesson.caution"))
                .tag("p", caution.say())
                .raw("</div>");
    }

    private String inline(List<Inline> runs) {
        return runs.stream().map(this::inline).collect(Collectors.joining());
    }

    private String inline(Inline run) {
        return run.match(new Inline.Cases<String>() {
            @Override
            public String words(Inline.Words it) {
                String safe = Html.text(it.text());
                return it.style() == Inline.Style.PLAIN ? safe : "<b>" + safe + "</b>";
            }

            @Override
            public String computed(Inline.Computed number) {
                String unit = number.unit().isEmpty() ? "" : " " + number.unit();
                return "<b>" + Html.text(texts.decimals(number.value(), number.decimals()) + unit) + "</b>";
            }
        });
    }
}
