package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import startwater.app.view.part.TankLook;
import startwater.app.view.part.TankPicture;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;
import startwater.fish.Species;
import startwater.strip.FishMood;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What is in front of the keeper: the tank as drawn, the same in words, and what the meters say. */
final class TankPane extends VBox {
    private static final double MUCH_UNEATEN_G = 60;

    private final DrillWords words;
    private final Texts texts;
    private final Scenario scenario;

    TankPane(DrillWords words, Scenario scenario) {
        super(8);
        this.words = words;
        this.texts = words.texts();
        this.scenario = scenario;
    }

    void show(VisitRecord visit, DrillRun run) {
        Seen seen = visit.seen();
        List<String> sight = words.sight(seen);
        int perMark = Math.max(1, Math.round(seen.alive() / 24f));
        TankPicture picture = new TankPicture(new TankLook(
                seen.alive(),
                perMark,
                Objects.requireNonNullElse(seen.mood(), FishMood.CALM),
                Math.min(12, seen.found()),
                Math.min(1, seen.haze()),
                Math.min(1, seen.uneatenG() / MUCH_UNEATEN_G),
                seen.air(),
                1,
                texts.text("win.volume", texts.number(scenario.system().volumeL())),
                shape(),
                run.variant(),
                String.join(" ", sight)));
        GridPane facts = new GridPane();
        facts.setHgap(16);
        facts.setVgap(6);
        List<VBox> known = new ArrayList<>();
        known.add(fact(texts.decimals(seen.temperatureC(), 1) + " °C", texts.text("win.water")));
        if (seen.oxygenMgPerL() != null) {
            known.add(fact(texts.decimals(seen.oxygenMgPerL(), 1) + " mg/L", texts.text("win.oxygen")));
        }
        if (scenario.fish() != null) {
            known.add(fact(texts.number(seen.alive()), texts.text("win.alive", seen.found())));
        }
        known.add(fact(texts.text(seen.air() ? "win.on" : "win.off"), texts.text("win.airRuns")));
        for (int i = 0; i < known.size(); i++) {
            facts.add(known.get(i), i, 0);
        }
        getChildren()
                .setAll(
                        Ui.row(
                                8,
                                Ui.text(texts.text("win.tank"), "sw-strong"),
                                Ui.grow(),
                                Ui.text(
                                        scenario.fish() == null ? "" : texts.text("win.perMark", perMark),
                                        "sw-label",
                                        "sw-quiet")),
                        picture,
                        Ui.text(sight.get(0), "sw-strong"),
                        Ui.text(
                                String.join(" ", sight.subList(1, sight.size())) + " " + words.running(seen),
                                "sw-quiet"),
                        facts);
    }

    private TankLook.Shape shape() {
        if (scenario.fish() == null) {
            return TankLook.Shape.NONE;
        }
        return Species.byId(scenario.fish().species()).shape() == Species.Shape.CATFISH
                ? TankLook.Shape.CATFISH
                : TankLook.Shape.TILAPIA;
    }

    private static VBox fact(String value, String name) {
        return new VBox(Ui.text(value, "sw-sentence", "sw-strong"), Ui.text(name, "sw-label", "sw-quiet"));
    }
}
