package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.score.KnownOverTime;
import startwater.score.KnownOverTime.Moment;
import startwater.score.KnownOverTime.Quantity;
import startwater.score.KnownOverTime.Span;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** Of every quantity, what the log allowed at each visit with a decision and what the tank was, in a terminal. */
final class KnownPage {
    private final Terminal terminal;
    private final Texts texts;

    KnownPage(Terminal terminal, DrillWords words) {
        this.terminal = terminal;
        this.texts = words.texts();
    }

    /** @param run which is over */
    void print(KnownOverTime known, DrillRun run) {
        List<TruthPoint> truth = known.truth(run);
        terminal.gap();
        terminal.say("-- " + texts.text("play.known") + " --");
        for (Quantity q : Quantity.values()) {
            List<List<String>> rows = new ArrayList<>();
            int inside = 0;
            for (int i = 0; i < known.moments().size(); i++) {
                Moment moment = known.moments().get(i);
                Span span = moment.span(q);
                double real = q.of(truth.get(i));
                boolean within = span.holds(real);
                inside += within ? 1 : 0;
                if (moment.asked()) {
                    rows.add(List.of(
                            "  " + texts.text("end.day", (int) moment.day()),
                            number(q, span.low()),
                            "–",
                            number(q, span.high()),
                            texts.text(within ? "play.knownTruth" : "play.knownOutside", number(q, real))));
                }
            }
            terminal.say(texts.text("known." + q.name().toLowerCase(Locale.ROOT)) + ": "
                    + texts.text("known.inside", inside, known.moments().size()));
            Columns.lines(rows, 1).forEach(terminal::say);
        }
    }

    private String number(Quantity q, double value) {
        return texts.number(q.shownTimes() * value, 2);
    }
}
