package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;
import startwater.app.chart.KnownChart;
import startwater.app.chart.Tick;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.quantity.RoundStep;
import startwater.score.KnownOverTime;
import startwater.score.KnownOverTime.Moment;
import startwater.score.KnownOverTime.Quantity;
import startwater.score.KnownOverTime.Span;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** Of one quantity at a time: what the log allowed at every visit, the truth through it, and what was written. */
final class KnownPane extends VBox {
    private static final int STEPS = 5;
    private static final int MOST_DAYS = 12;

    private final KnownOverTime known;
    private final DrillRun run;
    private final DrillWords words;
    private final Texts texts;
    private final List<TruthPoint> truth;
    private final Label inside = Ui.text("", "sw-label", "sw-quiet");
    private final VBox chart = new VBox();

    /** @param first what is shown first */
    KnownPane(KnownOverTime known, DrillRun run, DrillWords words, Quantity first) {
        super(6);
        this.known = known;
        this.run = run;
        this.words = words;
        this.texts = words.texts();
        this.truth = known.truth(run);
        ComboBox<Quantity> of = new ComboBox<>();
        of.getItems().addAll(Quantity.values());
        of.setConverter(new StringConverter<>() {
            @Override
            public String toString(@Nullable Quantity q) {
                return q == null ? "" : name(q);
            }

            @Override
            public @Nullable Quantity fromString(String name) {
                return null;
            }
        });
        of.setAccessibleText(texts.text("win.knownOf"));
        of.setId("known-of");
        of.valueProperty().addListener((p, was, is) -> show(is));
        getChildren().addAll(of, chart, inside);
        of.setValue(first);
    }

    private String name(Quantity q) {
        return texts.text("known." + q.name().toLowerCase(Locale.ROOT));
    }

    private static @Nullable Pad pad(Quantity q) {
        return switch (q) {
            case TOTAL_AMMONIA -> Pad.AMMONIA;
            case NITRITE -> Pad.NITRITE;
            case ALKALINITY -> Pad.ALKALINITY;
            case PH -> Pad.PH;
            case CHLORIDE -> Pad.CHLORIDE;
            case TOXIC_AMMONIA, EFFECTIVE_NITRITE, OXYGEN, AOB_SHARE, NOB_SHARE -> null;
        };
    }

    private void show(Quantity q) {
        Pad pad = pad(q);
        double most = most(q);
        double step = RoundStep.of(most / STEPS);
        DoubleUnaryOperator at = pad == null ? v -> v / step : v -> pad.scale().position(v);
        List<KnownChart.Range> ranges = new ArrayList<>();
        List<KnownChart.At> line = new ArrayList<>();
        int within = 0;
        for (int i = 0; i < known.moments().size(); i++) {
            Moment moment = known.moments().get(i);
            Span span = moment.span(q);
            double real = q.of(truth.get(i));
            ranges.add(new KnownChart.Range(moment.day(), at.applyAsDouble(span.low()), at.applyAsDouble(span.high())));
            line.add(new KnownChart.At(moment.day(), at.applyAsDouble(real)));
            within += span.holds(real) ? 1 : 0;
        }
        int now = known.moments().size() - 1;
        Span today = known.moments().get(now).span(q);
        double times = q.shownTimes();
        String said = texts.text(
                        "win.range",
                        name(q),
                        texts.number(today.low() * times, 2),
                        texts.number(today.high() * times, 2),
                        texts.number(q.of(truth.get(now)) * times, 2))
                + (now == 0 ? "" : " " + texts.text("known.inside", within, now + 1));
        inside.setText(said);
        KnownChart picture = new KnownChart(new KnownChart.Data(
                pad == null ? linear(q, step, most) : blocks(pad),
                days(),
                ranges,
                line,
                pad == null ? List.of() : written(pad),
                texts.text("win.logAllowed"),
                texts.text("win.tankWas"),
                texts.text("win.wrote"),
                said));
        chart.getChildren().setAll(new Tabled(texts, "known", picture, () -> numbers(q)));
    }

    private Tabled.Rows numbers(Quantity q) {
        double times = q.shownTimes();
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < known.moments().size(); i++) {
            Moment moment = known.moments().get(i);
            rows.add(List.of(
                    texts.number(moment.day(), 3),
                    texts.number(moment.span(q).low() * times, 2),
                    texts.number(moment.span(q).high() * times, 2),
                    texts.number(q.of(truth.get(i)) * times, 2)));
        }
        return new Tabled.Rows(
                List.of(
                        texts.text("chart.day"),
                        texts.text("chart.low", texts.text("win.logAllowed")),
                        texts.text("chart.high", texts.text("win.logAllowed")),
                        texts.text("win.tankWas")),
                rows);
    }

    private double most(Quantity q) {
        double most = 1e-6;
        for (int i = 0; i < known.moments().size(); i++) {
            most = Math.max(most, known.moments().get(i).span(q).high());
            most = Math.max(most, q.of(truth.get(i)));
        }
        return most;
    }

    private List<Tick> linear(Quantity q, double step, double most) {
        double times = q.shownTimes();
        List<Tick> ticks = new ArrayList<>();
        for (int i = 0; i <= Math.ceil(most / step) + 1; i++) {
            ticks.add(Tick.of(i, texts.number(i * step * times)));
        }
        return ticks;
    }

    private List<Tick> blocks(Pad pad) {
        List<Tick> ticks = new ArrayList<>();
        for (int block = 0; block < pad.scale().blocks(); block++) {
            ticks.add(Tick.of(block, words.block(pad, block)));
        }
        return ticks;
    }

    /** A few visits are named each by its day; of many, every so many days. */
    private List<Tick> days() {
        List<Moment> moments = known.moments();
        if (moments.size() <= MOST_DAYS) {
            return moments.stream()
                    .map(m -> Tick.of(m.day(), texts.text("end.day", (int) m.day())))
                    .toList();
        }
        int first = (int) Math.ceil(moments.get(0).day());
        int last = (int) moments.get(moments.size() - 1).day();
        int stride = Math.max(1, (int) Math.ceil((last - first + 1) / (double) MOST_DAYS));
        List<Tick> days = new ArrayList<>();
        for (int day = first; day <= last; day += stride) {
            days.add(Tick.of(day, texts.text("end.day", day)));
        }
        return days;
    }

    private List<KnownChart.At> written(Pad pad) {
        double last = known.moments().get(known.moments().size() - 1).day();
        return run.past().visits().stream()
                .filter(v -> v.day() <= last)
                .flatMap(v -> v.written().stream()
                        .filter(w -> w.pad() == pad)
                        .map(w -> new KnownChart.At(v.day(), pad.scale().position(w.value()))))
                .toList();
    }
}
