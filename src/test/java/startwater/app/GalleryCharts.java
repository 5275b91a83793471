package startwater.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import startwater.app.Gallery.Exhibit;
import startwater.app.chart.CalibrationChart;
import startwater.app.chart.CauseBars;
import startwater.app.chart.FanChart;
import startwater.app.chart.KnownChart;
import startwater.app.chart.LevelBar;
import startwater.app.chart.LogTrend;
import startwater.app.chart.MarksChart;
import startwater.app.chart.OptionBars;
import startwater.app.chart.Tick;
import startwater.app.chart.TimeLine;
import startwater.app.chart.Tone;

/** Charts for the gallery; all values are invented. */
final class GalleryCharts {
    private static final List<String> STEPS = List.of("0", "0.1", "0.2", "0.5", "1", "2", "5", "10", "20");

    private GalleryCharts() {}

    static Map<String, Exhibit> all() {
        Map<String, Exhibit> all = new HashMap<>();
        all.put("trend", new Exhibit(352, 152, () -> new LogTrend(trend(3))));
        all.put("trend-first", new Exhibit(352, 152, () -> new LogTrend(trend(0))));
        all.put("options", new Exhibit(624, 250, () -> new OptionBars(options(6))));
        all.put("options-own-best", new Exhibit(624, 250, () -> new OptionBars(options(0))));
        all.put("options-long", new Exhibit(480, 100, () -> new OptionBars(longLabels())));
        all.put("fan", new Exhibit(592, 256, () -> new FanChart(fan(true))));
        all.put("fan-low", new Exhibit(592, 256, () -> new FanChart(fan(false))));
        all.put("causes", new Exhibit(320, 132, () -> new CauseBars(causes())));
        all.put("known", new Exhibit(520, 168, () -> new KnownChart(known(4))));
        all.put("known-once", new Exhibit(520, 168, () -> new KnownChart(known(1))));
        all.put("level", new Exhibit(132, 14, () -> new LevelBar(new LevelBar.Data(0.81, 0.7, Tone.SAFE, "81"))));
        all.put("calibration", new Exhibit(440, 230, () -> new CalibrationChart(calibration())));
        all.put("marks", new Exhibit(440, 200, () -> new MarksChart(marks(48, 55, 72, 66, 84))));
        all.put("marks-one", new Exhibit(440, 200, () -> new MarksChart(marks(97))));
        all.put("timeline", new Exhibit(1232, 460, () -> new TimeLine(timeLine())));
        return all;
    }

    private static CauseBars.Data causes() {
        return new CauseBars.Data(
                "yours",
                "best",
                List.of(
                        new CauseBars.Row("nitrite", 4.1, 0.1, "4.1", "0.1"),
                        new CauseBars.Row("toxic ammonia", 0.9, 0.3, "0.9", "0.3"),
                        new CauseBars.Row("low oxygen", 0.0, 0.0, "0.0", "0.0")),
                new CauseBars.Row("all deaths", 5.0, 0.4, "5.0", "0.4"),
                "Causes.");
    }

    private static CalibrationChart.Data calibration() {
        return new CalibrationChart.Data(
                List.of(
                        new CalibrationChart.Column("not sure", 0.35, 0.4, 0.14, 0.73, "40 % of 5"),
                        new CalibrationChart.Column("fairly sure", 0.65, 0.56, 0.3, 0.78, "56 % of 9"),
                        new CalibrationChart.Column("sure", 0.9, 1, 0.8, 1, "100 % of 11")),
                List.of("0 %", "25 %", "50 %", "75 %", "100 %"),
                "Sure against right.");
    }

    private static MarksChart.Data marks(double... marks) {
        List<Double> all = new ArrayList<>();
        for (double mark : marks) {
            all.add(mark);
        }
        String last = Integer.toString((int) marks[marks.length - 1]);
        return new MarksChart.Data(all, 70, "pass, 70", last, "13 days ago", "yesterday", "Marks.");
    }

    private static KnownChart.Data known(int visits) {
        List<Tick> days = new ArrayList<>();
        List<KnownChart.Range> ranges = new ArrayList<>();
        List<KnownChart.At> written = new ArrayList<>();
        for (int i = 0; i < visits; i++) {
            days.add(new Tick(i, "day " + (i + 3), i == visits - 1));
            ranges.add(new KnownChart.Range(i, 2.2 + 0.8 * i, 3.4 + 0.9 * i));
            written.add(new KnownChart.At(i, 2.5 + 0.5 * i));
        }
        List<KnownChart.At> truth = new ArrayList<>();
        for (double day = 0; day <= visits - 1 + 1e-9; day += 0.25) {
            truth.add(new KnownChart.At(day, 2.7 + 0.9 * day));
        }
        return new KnownChart.Data(
                steps(), days, ranges, truth, written, "your log allowed", "this tank", "you wrote", "What was known.");
    }

    private static TimeLine.Data timeLine() {
        List<Tick> days = new ArrayList<>();
        List<TimeLine.At> tan = new ArrayList<>();
        List<TimeLine.At> no2 = new ArrayList<>();
        for (double day = 0; day <= 28.001; day += 0.25) {
            tan.add(new TimeLine.At(
                    day, 5.6 * Math.exp(-Math.pow((day - 7) / 6.5, 2)) + 0.15 * Math.sin(2 * day) + 0.4));
            no2.add(new TimeLine.At(day, 6.4 * Math.exp(-Math.pow((day - 15) / 6.0, 2)) + 0.1));
        }
        for (int day = 0; day <= 28; day += 2) {
            days.add(new Tick(day, "day " + (day + 1), false));
        }
        double[] visits = {1, 4, 6, 9, 12, 15, 19, 24};
        TimeLine.Word[] words = {
            TimeLine.Word.SOUND, TimeLine.Word.SOUND, TimeLine.Word.COSTLY, TimeLine.Word.SOUND,
            TimeLine.Word.DANGEROUS, TimeLine.Word.COSTLY, TimeLine.Word.SOUND, TimeLine.Word.SOUND
        };
        String[] marks = {"92", "88", "61", "84", "18", "55", "90", "97"};
        List<TimeLine.Decision> decisions = new ArrayList<>();
        List<TimeLine.At> tanWritten = new ArrayList<>();
        List<TimeLine.At> no2Written = new ArrayList<>();
        for (int i = 0; i < visits.length; i++) {
            String word = words[i].name().toLowerCase(Locale.ROOT);
            decisions.add(new TimeLine.Decision(visits[i], words[i], marks[i], word));
            int at = (int) (4 * visits[i]);
            tanWritten.add(new TimeLine.At(visits[i], Math.rint(2 * tan.get(at).value() + 0.4) / 2));
            no2Written.add(new TimeLine.At(visits[i], Math.rint(2 * no2.get(at).value() - 0.4) / 2));
        }
        return new TimeLine.Data(
                "Nitrite and ammonia, mg N/L: lines are the truth, marks what you wrote",
                "Fish alive",
                steps(),
                days,
                List.of(
                        new TimeLine.Trace(List.of("ammonia"), LogTrend.Mark.SQUARE, Tone.QUIET, tan, tanWritten),
                        new TimeLine.Trace(List.of("nitrite"), LogTrend.Mark.DOT, Tone.WATER, no2, no2Written)),
                decisions,
                List.of(
                        stock("yours, 231", Tone.OWN, 240, 240, 239, 236, 232, 231, 231),
                        stock("standing rules, 240", Tone.BEST, 240, 240, 240, 240, 240, 240, 240),
                        stock("do nothing, 171", Tone.QUIET, 240, 238, 228, 204, 182, 171, 171)),
                Locale.ENGLISH,
                "The run.");
    }

    private static TimeLine.Stock stock(String label, Tone tone, double... alive) {
        List<TimeLine.At> points = new ArrayList<>();
        double[] days = {0, 8, 13, 15, 18, 22, 28};
        for (int i = 0; i < alive.length; i++) {
            points.add(new TimeLine.At(days[i], alive[i]));
        }
        return new TimeLine.Stock(label, tone, points);
    }

    private static List<Tick> steps() {
        List<Tick> steps = new ArrayList<>();
        for (int i = 0; i < STEPS.size(); i++) {
            steps.add(Tick.of(i, STEPS.get(i)));
        }
        return steps;
    }

    private static LogTrend.Data trend(int days) {
        List<Tick> names = new ArrayList<>();
        List<LogTrend.Point> ammonia = new ArrayList<>();
        List<LogTrend.Point> nitrite = new ArrayList<>();
        String[] name = {"Wed", "Thu", "Fri", "Sat"};
        double[] tan = {5, 5.5, 5, 4.5};
        double[] no2 = {1.5, 3, 4, 4.5};
        for (int i = 0; i <= days; i++) {
            names.add(new Tick(i, name[i], i == days));
            ammonia.add(new LogTrend.Point(i, tan[i], false));
            nitrite.add(new LogTrend.Point(i, no2[i], i == days));
        }
        return new LogTrend.Data(
                steps(),
                names,
                List.of(
                        new LogTrend.Series(List.of("ammonia 1–2"), LogTrend.Mark.SQUARE, Tone.QUIET, ammonia),
                        new LogTrend.Series(List.of("nitrite", "on the pad"), LogTrend.Mark.DOT, Tone.WATER, nitrite)),
                "Trend.");
    }

    private static OptionBars.Data options(int own) {
        String[] labels = {
            "no feed, change a third",
            "no feed, 220 g salt",
            "half feed, change a third",
            "half feed, 220 g salt",
            "full feed, change a third",
            "full feed, 220 g salt",
            "full feed, change a tenth",
        };
        double[] mean = {0.2, 0.4, 0.9, 1.3, 2.6, 3.0, 5.2};
        double[] low = {0, 0, 0.1, 0.2, 0.6, 0.7, 1.8};
        double[] high = {0.6, 0.9, 2.2, 3.3, 5.9, 6.4, 11.7};
        List<OptionBars.Row> rows = new ArrayList<>();
        for (int i = 0; i < labels.length; i++) {
            rows.add(new OptionBars.Row(
                    labels[i],
                    mean[i],
                    low[i],
                    high[i],
                    String.format(Locale.ENGLISH, "%.1f", mean[i]),
                    i == own,
                    i == 0));
        }
        return new OptionBars.Data(rows, "yours", "best", Locale.ENGLISH, "Seven options.");
    }

    private static OptionBars.Data longLabels() {
        return new OptionBars.Data(
                List.of(
                        new OptionBars.Row(
                                "media ración y recambio de la tercera parte", 0.4, 0, 1.1, "0,4", false, true),
                        new OptionBars.Row(
                                "ración completa, sin ningún otro cambio", 11.2, 4, 22, "11,2", true, false)),
                "lo suyo",
                "lo mejor",
                Locale.forLanguageTag("es"),
                "Dos opciones.");
    }

    private static FanChart.Data fan(boolean harmful) {
        double size = harmful ? 1 : 0.22;
        List<FanChart.Point> own = new ArrayList<>();
        List<FanChart.Point> best = new ArrayList<>();
        for (double day = 0; day <= 3.0001; day += 0.25) {
            double middle = size * 0.3 * Math.exp(0.46 * day);
            own.add(new FanChart.Point(day, 0.72 * middle, middle, (1.12 + 0.12 * day) * middle));
        }
        for (double day = 3; day <= 7.0001; day += 0.25) {
            own.add(new FanChart.Point(day, 0.07, 0.12, 0.19 - 0.005 * day));
        }
        for (double day = 0; day <= 7.0001; day += 0.25) {
            double middle = 0.06 + 0.05 * Math.sin(day / 2.3);
            best.add(new FanChart.Point(day, 0.75 * middle, middle, 1.3 * middle));
        }
        List<Tick> days = new ArrayList<>();
        String[] names = {"Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun", "Mon"};
        for (int i = 0; i < names.length; i++) {
            days.add(new Tick(i, names[i], i == 3));
        }
        return new FanChart.Data(
                days,
                new FanChart.Path(List.of("yours: full feed", "1.2 by Thursday"), own),
                new FanChart.Path(List.of("best: no feed, salt now"), best),
                new FanChart.Level(0.5, "harms from 0.5"),
                new FanChart.Moment(3, List.of("you are back and add salt", "from here the rules act")),
                new FanChart.Level(size * 0.35, "today 0.35"),
                Locale.ENGLISH,
                "The fan.");
    }
}
