package startwater.rehearse;

import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import startwater.bench.UnitSystem;
import startwater.fish.Species;
import startwater.page.Html;
import startwater.text.Texts;

/** What to have ready before the tank is filled, as one page for A4 and Letter that needs nothing else. */
public final class ReadinessList {
    private static final double BUSY = 0.5;
    private static final double LARGEST_CHANGE = 0.5;
    private static final int CAUTIONS = 5;
    private static final int POWER_LINES = 5;

    private final OwnSystem own;
    private final Outlook outlook;
    private final List<Finding> findings;
    private final Texts texts;
    private final UnitSystem system;
    private final Html html;

    private ReadinessList(Form form, Outlook outlook, List<Finding> findings, Texts texts) {
        this.own = OwnSystem.of(form);
        this.outlook = outlook;
        this.findings = findings;
        this.texts = texts;
        this.system = form.units();
        String name = own.name().isBlank() ? texts.text("reh.drill.title") : own.name();
        this.html = new Html(texts.language().code(), texts.text("reh.list.title", name));
    }

    /** The page. @param findings what was found about form and outlook, @param texts of {@link RehearseTexts} */
    public static String of(Form form, Outlook outlook, List<Finding> findings, Texts texts) {
        ReadinessList list = new ReadinessList(form, outlook, findings, texts);
        list.html.tag("p", "quiet", texts.text("reh.list.intro", outlook.tanks()));
        list.when();
        list.have();
        list.watch();
        list.power();
        list.move();
        list.said(Finding.Weight.WARN, "reh.list.warnings");
        list.said(Finding.Weight.ASSUMED, "reh.list.unknowns");
        list.cautions();
        return list.html.page();
    }

    private void when() {
        html.tag("h2", texts.text("reh.list.when")).raw("<table>");
        new OutlookText(outlook, texts, system).rows().forEach(row -> html.row("td", row.what(), row.much()));
        html.raw("</table>").tag("p", texts.text("reh.out.readyMeans")).tag("p", "card", texts.text("reh.out.caution"));
    }

    private void have() {
        html.tag("h2", texts.text("reh.list.have")).raw("<table>");
        html.row(
                "th",
                texts.text("reh.list.item"),
                texts.text("reh.list.need"),
                texts.text("reh.list.there"),
                texts.text("reh.list.got"));
        OwnSystem.Shelf shelf = own.shelf();
        item("strips", outlook.strips(), Measure.COUNT, shelf.strips());
        item("chlorideStrips", outlook.chlorideStrips(), Measure.COUNT, shelf.chlorideStrips());
        item("salt", outlook.saltG(), Measure.MASS, shelf.saltG());
        item("bicarbonate", outlook.bicarbonateG(), Measure.MASS, shelf.bicarbonateG());
        item("neutraliser", outlook.neutraliserG(), Measure.MASS, shelf.neutraliserG());
        item("ammonium", outlook.ammoniumG(), Measure.MASS, shelf.ammoniumG());
        double volume = Objects.requireNonNull(own.vessel().volumeL());
        String largest = texts.text("reh.list.largest", amount(LARGEST_CHANGE * volume, Measure.VOLUME));
        line(
                texts.text("reh.list.water") + " – " + largest,
                new Amount(outlook.litres().high(), Measure.VOLUME).enough(texts, system),
                "");
        line(texts.text("reh.list.spare"), "1", own.air().spare() ? texts.text("reh.choice.yes") : "");
        line(texts.text("reh.list.thermometer"), "1", "");
        html.raw("</table>");
    }

    private void item(String key, Spread needed, Measure measure, @Nullable Number there) {
        if (needed.high() > 0) {
            line(
                    texts.text("reh.list." + key),
                    measure == Measure.COUNT
                            ? amount(Math.ceil(needed.high()), measure)
                            : new Amount(needed.high(), measure).enough(texts, system),
                    there == null ? texts.text("reh.list.unknown") : amount(there.doubleValue(), measure));
        }
    }

    private void line(String item, String need, String there) {
        html.row("td", item, need, there, "☐");
    }

    private String amount(double value, Measure measure) {
        return new Amount(value, measure).say(texts, system);
    }

    private void watch() {
        html.tag("h2", texts.text("reh.list.watch"));
        List<Double> share = outlook.workShare();
        if (share.stream().noneMatch(s -> s >= BUSY)) {
            html.tag("p", texts.text("reh.list.noBusy"));
            return;
        }
        html.tag("p", texts.text("reh.list.watchIntro")).raw("<table>");
        html.row("th", texts.text("reh.list.days"), texts.text("reh.list.who"));
        for (int day = 0; day < share.size(); day++) {
            if (share.get(day) >= BUSY) {
                int end = day;
                while (end + 1 < share.size() && share.get(end + 1) >= BUSY) {
                    end++;
                }
                html.row(
                        "td",
                        end == day ? texts.text("reh.list.single", day) : texts.text("reh.list.span", day, end),
                        "");
                day = end;
            }
        }
        html.raw("</table>");
    }

    private void power() {
        html.tag("h2", texts.text("reh.list.power")).raw("<ol>");
        for (int i = 1; i <= POWER_LINES; i++) {
            html.tag("li", texts.text("reh.list.power" + i, minutes()));
        }
        html.raw("</ol>");
    }

    private double minutes() {
        OwnSystem.Stock stock = own.stock();
        Species species = Objects.requireNonNull(stock.species());
        double use = Reckoned.oxygenUseMgPerHour(
                species,
                Objects.requireNonNull(stock.count()),
                Objects.requireNonNull(stock.massG()),
                OwnScenario.protein(own),
                OwnScenario.waterC(own.vessel()));
        double volume = Objects.requireNonNull(own.vessel().volumeL());
        return Amount.twoFigures(Reckoned.minutesWithoutAir(species, use, volume), RoundingMode.FLOOR);
    }

    private void move() {
        html.tag("h2", texts.text("reh.list.move"))
                .tag("p", texts.text("reh.list.move1"))
                .raw("<table>")
                .row(
                        "th",
                        texts.text("reh.list.test"),
                        texts.text("reh.list.date"),
                        "NH₃/NH₄⁺, mg N/L",
                        "NO₂⁻, mg N/L",
                        texts.text("reh.list.initials"))
                .row("td", "1", "", "", "", "")
                .row("td", "2", "", "", "", "")
                .raw("</table>")
                .tag("p", texts.text("reh.list.move2"));
    }

    private void said(Finding.Weight weight, String heading) {
        List<Finding> those =
                findings.stream().filter(f -> f.weight() == weight).toList();
        if (!those.isEmpty()) {
            html.tag("h2", texts.text(heading)).raw("<ul>");
            those.forEach(f -> html.tag(
                    "li",
                    texts.text("reh.label." + f.entry().key()) + ": " + f.reason(texts, system) + " "
                            + f.advice(texts, system)));
            html.raw("</ul>");
        }
    }

    private void cautions() {
        html.tag("h2", texts.text("reh.list.cautions")).raw("<ul>");
        for (int i = 1; i <= CAUTIONS; i++) {
            html.tag("li", texts.text("reh.list.caution" + i));
        }
        html.raw("</ul>");
    }
}
