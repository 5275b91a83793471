package startwater.app.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.geometry.VPos;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.chart.FanChart;
import startwater.app.chart.StartUpChart;
import startwater.app.model.RehearsalModel;
import startwater.rehearse.Entry;
import startwater.rehearse.Finding;
import startwater.rehearse.Outlook;
import startwater.rehearse.OutlookText;
import startwater.rehearse.Spread;
import startwater.text.Texts;

/** What to expect: the time line with its band, the numbers with their units, and what speaks against the system. */
final class OutlookPane extends VBox {
    /** Days that are shown beyond the last likely ready day. */
    private static final int BEYOND = 7;

    private final Texts texts;
    private final Consumer<Entry> correct;

    /** @param correct opens the line of the form that a finding is about */
    OutlookPane(Texts texts, Consumer<Entry> correct) {
        super(16);
        this.texts = texts;
        this.correct = correct;
        setId("outlook");
        setFillWidth(true);
    }

    /** Shows what came of a rehearsal, or what will stand here. */
    void show(RehearsalModel.@Nullable Result result) {
        getChildren().clear();
        if (result == null) {
            getChildren().add(Ui.text(texts.text("rehwin.empty"), "sw-sentence", "sw-quiet"));
            return;
        }
        Outlook outlook = result.outlook();
        if (outlook == null) {
            getChildren().add(Ui.text(texts.text("reh.out.refused"), "sw-sentence", "sw-danger"));
            findings(result);
            return;
        }
        OutlookText said = new OutlookText(outlook, texts, result.form().units());
        getChildren()
                .addAll(
                        Ui.text(texts.text("reh.out.ready") + ": " + said.ready(), "sw-sentence", "sw-strong"),
                        Ui.text(texts.text("reh.out.caution"), "sw-strong"),
                        chart(outlook, said),
                        Ui.text(texts.text("reh.out.readyMeans"), "sw-label", "sw-quiet"),
                        rows(said));
        findings(result);
        getChildren()
                .add(Ui.text(texts.text("reh.out.tanks", outlook.tanks(), outlook.days()), "sw-label", "sw-quiet"));
    }

    private Region chart(Outlook outlook, OutlookText said) {
        Spread ready = outlook.ready();
        double far = Double.isInfinite(ready.high()) ? outlook.days() : ready.high() + BEYOND;
        int days = (int) Math.min(outlook.days(), Math.ceil(far));
        FanChart.Path ammonia = path(outlook.ammonia(), days, "rehwin.chartAmmonia");
        FanChart.Path nitrite = path(outlook.nitrite(), days, "rehwin.chartNitrite");
        StartUpChart chart = new StartUpChart(new StartUpChart.Data(
                ammonia,
                nitrite,
                window(ready, days),
                texts.text("rehwin.chartUnit"),
                texts.text("rehwin.chartDays"),
                texts.language().locale(),
                texts.text("rehwin.chartSummary", texts.text("reh.out.ready"), said.ready())));
        return new Tabled(texts, "outlook", chart, () -> BandTable.of(texts, List.of(ammonia, nitrite)));
    }

    private FanChart.Path path(List<Spread> daily, int days, String label) {
        return new FanChart.Path(
                List.of(texts.text(label)),
                IntStream.range(0, days)
                        .mapToObj(day -> new FanChart.Point(
                                day + 0.5,
                                daily.get(day).low(),
                                daily.get(day).middle(),
                                daily.get(day).high()))
                        .toList());
    }

    private StartUpChart.@Nullable Window window(Spread ready, int days) {
        if (Double.isInfinite(ready.middle())) {
            return null;
        }
        boolean open = Double.isInfinite(ready.high());
        String label = open
                ? texts.text("rehwin.chartReadyOpen", Math.ceil(ready.middle()), Math.ceil(ready.low()))
                : texts.text(
                        "rehwin.chartReady",
                        Math.ceil(ready.middle()),
                        Math.ceil(ready.low()),
                        Math.ceil(ready.high()));
        return new StartUpChart.Window(ready.low(), ready.middle(), open ? days : ready.high(), label);
    }

    private Region rows(OutlookText said) {
        GridPane grid = new GridPane();
        grid.setHgap(16);
        grid.setVgap(6);
        ColumnConstraints what = new ColumnConstraints();
        what.setPercentWidth(34);
        ColumnConstraints much = new ColumnConstraints();
        much.setPercentWidth(66);
        much.setFillWidth(true);
        grid.getColumnConstraints().addAll(what, much);
        List<OutlookText.Row> rows = said.rows();
        for (int i = 1; i < rows.size(); i++) {
            Label name = Ui.text(rows.get(i).what(), "sw-quiet");
            GridPane.setValignment(name, VPos.TOP);
            grid.add(name, 0, i);
            grid.add(Ui.text(rows.get(i).much()), 1, i);
        }
        return grid;
    }

    private void findings(RehearsalModel.Result result) {
        if (result.findings().isEmpty()) {
            getChildren().add(Ui.text(texts.text("reh.out.noFindings"), "sw-quiet"));
            return;
        }
        for (Finding.Weight weight : Finding.Weight.values()) {
            List<Finding> those =
                    result.findings().stream().filter(f -> f.weight() == weight).toList();
            if (!those.isEmpty()) {
                VBox card = new VBox(10, Ui.text(texts.text("reh.weight." + weight), "sw-sentence", "sw-strong"));
                those.forEach(f -> card.getChildren().add(finding(f, result)));
                getChildren().add(card);
            }
        }
    }

    private VBox finding(Finding finding, RehearsalModel.Result result) {
        Hyperlink line =
                Ui.link(texts.text("reh.label." + finding.entry().key()), () -> correct.accept(finding.entry()));
        return new VBox(
                2,
                line,
                Ui.text(finding.reason(texts, result.form().units())),
                Ui.text(finding.advice(texts, result.form().units()), "sw-quiet"));
    }
}
