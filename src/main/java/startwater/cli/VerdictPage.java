package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import startwater.score.ReadingMark;
import startwater.score.SecondLook;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The look back on one decision, in a terminal: sentences, the options side by side, the marks. */
final class VerdictPage {
    private final Terminal terminal;
    private final DrillWords words;
    private final Texts texts;

    VerdictPage(Terminal terminal, DrillWords words) {
        this.terminal = terminal;
        this.words = words;
        this.texts = words.texts();
    }

    void print(Verdict v, ReadingMark reading, boolean fishIn) {
        terminal.gap();
        terminal.say("-- " + texts.text("play.lookBack") + " --");
        v.lines().forEach(line -> terminal.say(words.why().format(line)));
        terminal.gap();
        table(v, fishIn);
        terminal.gap();
        terminal.say(marks(v, reading));
    }

    /** What is told a moment later: what would have changed the answer, and the choice as a habit. */
    void print(SecondLook look) {
        look.lines().forEach(line -> terminal.say(words.why().format(line)));
    }

    private void table(Verdict v, boolean fishIn) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "",
                texts.text("play.options", v.days()),
                texts.text("play.deaths", v.stock()),
                texts.text("play.range"),
                texts.text("play.loss")));
        for (int i = 0; i < v.options().size(); i++) {
            Verdict.Option o = v.options().get(i);
            rows.add(List.of(
                    tag(o, i),
                    words.option(o.decision(), fishIn),
                    texts.decimals(o.deaths(), 1),
                    texts.decimals(o.deathsLow(), 1) + "–" + texts.decimals(o.deathsHigh(), 1),
                    texts.decimals(o.loss(), 2)));
        }
        Columns.lines(rows, 2).forEach(terminal::say);
    }

    private String tag(Verdict.Option o, int place) {
        return o.own() ? texts.text("play.yours") : place == 0 ? texts.text("play.best") : "";
    }

    private String marks(Verdict v, ReadingMark reading) {
        List<String> marks = new ArrayList<>();
        marks.add(
                v.scored()
                        ? texts.text("play.markDecision", Math.rint(v.mark()), words.word(v.word()))
                        : texts.text("play.markNone"));
        if (v.arguable()) {
            marks.add(texts.text("play.arguable"));
        }
        if (reading.total() > 0) {
            marks.add(texts.text("play.markReading", reading.right(), reading.total()));
        }
        if (v.foresight() != null) {
            marks.add(texts.text("play.markForesight", Math.rint(v.foresight().mark())));
        }
        return String.join(" ", marks);
    }
}
