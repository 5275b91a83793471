package startwater.rehearse;

import java.util.ArrayList;
import java.util.List;
import startwater.bench.UnitSystem;
import startwater.text.Texts;

/** An outlook in words: what, and how much with its unit. For terminal, window and paper. */
public final class OutlookText {
    /** Days at which the chance is said. */
    private static final int CHANCE_STEP = 14;

    private static final double BUSY = 0.5;

    private final Outlook outlook;
    private final Texts texts;
    private final UnitSystem system;

    public OutlookText(Outlook outlook, Texts texts, UnitSystem system) {
        this.outlook = outlook;
        this.texts = texts;
        this.system = system;
    }

    /** One line: what it is, and how much. */
    public record Row(String what, String much) {}

    /** All lines, the time first. */
    public List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(row("ready", ready()));
        rows.add(row("chance", chances()));
        rows.add(row("ammoniaPeak", peak(outlook.ammoniaPeak(), outlook.ammoniaPeakDay())));
        rows.add(row("nitritePeak", peak(outlook.nitritePeak(), outlook.nitritePeakDay())));
        rows.add(row("ration", texts.text("reh.out.rationIs", grams(outlook.rationG()), outlook.fish())));
        rows.add(row(
                "carries",
                texts.text(
                        "reh.out.carriesIs",
                        grams(outlook.carriedG().low()),
                        StrictMath.floor(outlook.carriedFish().low()))));
        rows.add(row(
                "water",
                texts.text(
                        "reh.out.waterIs",
                        litres(outlook.litres().low()),
                        litres(outlook.litres().high()),
                        texts.number(outlook.volumes().low(), 2),
                        texts.number(outlook.volumes().high(), 2))));
        dose(rows, "salt", outlook.saltG());
        dose(rows, "bicarbonate", outlook.bicarbonateG());
        dose(rows, "neutraliser", outlook.neutraliserG());
        dose(rows, "ammonium", outlook.ammoniumG());
        rows.add(row("strips", pieces(outlook.strips())));
        if (outlook.chlorideStrips().high() > 0) {
            rows.add(row("chlorideStrips", pieces(outlook.chlorideStrips())));
        }
        rows.add(row("work", work()));
        rows.add(row("loss", loss()));
        if (outlook.second() != null) {
            rows.add(row("second", second(outlook.second())));
        }
        return rows;
    }

    private Row row(String key, String much) {
        return new Row(texts.text("reh.out." + key), much);
    }

    /** The ready day with its band. */
    public String ready() {
        Spread ready = outlook.ready();
        if (Double.isInfinite(ready.middle())) {
            return texts.text("reh.out.readyNever", outlook.days());
        }
        return Double.isInfinite(ready.high())
                ? texts.text("reh.out.readyOpen", day(ready.middle()), day(ready.low()), outlook.days())
                : texts.text("reh.out.readyBand", day(ready.middle()), day(ready.low()), day(ready.high()));
    }

    private String chances() {
        List<String> chances = new ArrayList<>();
        for (int day = CHANCE_STEP; day <= outlook.days(); day += CHANCE_STEP) {
            chances.add(texts.text("reh.out.chanceBy", day, Math.rint(100 * outlook.readyBy(day))));
            if (outlook.readyBy(day) == outlook.readyBy(outlook.days())) {
                break;
            }
        }
        return String.join("; ", chances);
    }

    private String peak(Spread height, Spread day) {
        return texts.text(
                "reh.out.peak",
                texts.number(height.low(), 2),
                texts.number(height.high(), 2),
                day(day.low()),
                day(day.high()));
    }

    private void dose(List<Row> rows, String key, Spread grams) {
        if (grams.high() > 0) {
            rows.add(
                    row(key, texts.text("reh.out.upTo", new Amount(grams.high(), Measure.MASS).enough(texts, system))));
        }
    }

    private String pieces(Spread count) {
        return texts.text("reh.out.upToPieces", Math.ceil(count.high()));
    }

    private String work() {
        int[] busy = outlook.busy(BUSY);
        String days = texts.text(
                "reh.out.workIs",
                day(outlook.workDays().low()),
                day(outlook.workDays().high()));
        return busy[0] < 0 ? days : days + "; " + texts.text("reh.out.busy", busy[0], busy[1]);
    }

    private String loss() {
        if (!outlook.fishIn()) {
            return texts.text("reh.out.lossNone");
        }
        double middle = Math.rint(outlook.deaths().middle());
        double high = Math.rint(outlook.deaths().high());
        String usual = high == 0
                ? texts.text("reh.out.lossFew", outlook.fish())
                : texts.text("reh.out.lossIs", middle, outlook.fish(), high);
        double disasters = Math.rint(100 * outlook.disasters());
        return disasters == 0 ? usual : usual + "; " + texts.text("reh.out.lossMost", disasters);
    }

    private String second(Outlook.Second second) {
        if (Double.isInfinite(second.ready().high())) {
            return texts.text("reh.out.secondOpen", second.days());
        }
        Integer latest = second.latestStart();
        double high = day(second.ready().high());
        if (latest != null && second.moveDay() != null) {
            return texts.text(
                    "reh.out.secondBy",
                    latest,
                    day(second.ready().low()),
                    high,
                    second.moveDay(),
                    grams(second.massG()));
        }
        return texts.text("reh.out.secondTakes", day(second.ready().low()), high);
    }

    /** Days count from the filling; one that has begun counts. */
    private static double day(double value) {
        return Math.ceil(value);
    }

    private String grams(double value) {
        return new Amount(value, Measure.MASS).say(texts, system);
    }

    private String litres(double value) {
        return new Amount(value, Measure.VOLUME).about(texts, system);
    }
}
