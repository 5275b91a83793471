package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.model.DrillModel;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.strip.Pad;
import startwater.text.Amounts;
import startwater.text.DrillWords;
import startwater.text.Texts;
import startwater.text.VisitFacts;
import startwater.water.Dose;

/** What is decided on at a visit, every amount with its meaning beside it, and what the next strip will show. */
final class DecisionPane extends VBox {
    private final DrillModel model;
    private final DrillWords words;
    private final Texts texts;
    private final VisitFacts facts;
    private final Runnable changed;

    DecisionPane(DrillModel model, DrillWords words, Runnable changed) {
        super(8);
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.facts = model.facts();
        this.changed = changed;
        getChildren()
                .addAll(
                        Ui.row(
                                12,
                                Ui.text(texts.text("win.decide"), "sw-sentence", "sw-strong"),
                                Ui.text(texts.text(
                                        "win.next",
                                        words.when(
                                                facts.nextMinute(),
                                                facts.visit().minute())))),
                        amounts(),
                        orders(),
                        foresight(),
                        Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
    }

    private FlowPane amounts() {
        Scenario s = facts.scenario();
        FlowPane fields = new FlowPane(18, 8);
        VisitFacts fed = facts.with(Decision.LEAVE_ALONE.withStock(1));
        if (fed.fishIn()) {
            Ui.Choice<Double> feed = new Ui.Choice<>(
                    texts.text("win.feed"),
                    List.of(0.0, 0.5, 1.0),
                    v -> texts.text(v == 0 ? "win.none" : v == 0.5 ? "win.half" : "win.full"),
                    v -> set(() -> model.feedProperty().set(v)));
            feed.select(nearestFeed());
            fields.getChildren().add(field("win.feed", feed, texts.text("win.feedMeans", words.grams(fed.rationG()))));
        }
        fields.getChildren()
                .add(field(
                        "win.change",
                        new Ui.Stepper(
                                texts.text("win.change"),
                                texts,
                                model.changeProperty(),
                                0.05,
                                0.95,
                                v -> texts.number(100 * v) + " %",
                                typed -> Amounts.change(typed, facts)),
                        texts.text(
                                "win.changeMeans",
                                texts.number(facts.volumeL()),
                                texts.decimals(s.source().temperatureC(), 0))));
        dose(fields, "win.salt", Dose.SODIUM_CHLORIDE, s.shelf().saltG(), model.saltProperty());
        dose(fields, "win.buffer", Dose.SODIUM_BICARBONATE, s.shelf().bicarbonateG(), model.bufferProperty());
        dose(fields, "win.ammonium", Dose.AMMONIUM_CHLORIDE, s.shelf().ammoniumChlorideG(), model.ammoniumProperty());
        Ui.Choice<Boolean> air = new Ui.Choice<>(
                texts.text("win.air"),
                List.of(true, false),
                v -> texts.text(v ? "win.on" : "win.off"),
                v -> set(() -> model.airProperty().set(v)));
        air.select(model.airProperty().get());
        fields.getChildren().add(field("win.air", air, ""));
        devices(fields);
        arrivals(fields);
        return fields;
    }

    /** Spare air and what stands: offered where there is something to choose. */
    private void devices(Pane fields) {
        if (facts.spareAir()) {
            flag(fields, "win.spareAir", model.spareAirProperty());
        }
        if (facts.seen().power() && !facts.seen().pump()) {
            flag(fields, "win.pump", model.pumpProperty());
        }
        if (facts.seen().power() && !facts.seen().heater()) {
            flag(fields, "win.heater", model.heaterProperty());
        }
    }

    private void flag(Pane fields, String key, BooleanProperty value) {
        Ui.Choice<Boolean> choice = new Ui.Choice<>(
                texts.text(key),
                List.of(true, false),
                v -> texts.text(v ? "win.on" : "win.off"),
                v -> set(() -> value.set(v)));
        choice.select(value.get());
        fields.getChildren().add(field(key, choice, ""));
    }

    /** Fish and ripe media that can go in now: none, half or all of what is left. */
    private void arrivals(Pane fields) {
        Scenario.Fish planned = facts.scenario().plannedFish();
        if (planned != null && facts.toCome() > 0) {
            part(fields, "win.stock", Math.min(1, (double) facts.toCome() / planned.count()), model.stockProperty());
        }
        if (facts.ripeMediaLeft() > 0) {
            part(fields, "win.media", facts.ripeMediaLeft(), model.ripeMediaProperty());
        }
    }

    private void part(Pane fields, String key, double all, DoubleProperty value) {
        Ui.Choice<Double> choice = new Ui.Choice<>(
                texts.text(key),
                List.of(0.0, 0.5, 1.0),
                v -> texts.text(v == 0 ? "win.part.none" : v == 0.5 ? "win.part.half" : "win.part.all"),
                v -> set(() -> value.set(v * all)));
        choice.select(value.get() == 0 ? 0.0 : value.get() < all ? 0.5 : 1.0);
        fields.getChildren().add(field(key, choice, ""));
    }

    /** What is ordered beside amounts, in one line. */
    private FlowPane orders() {
        Ui.Choice<FilterCare> filter = new Ui.Choice<>(
                texts.text("win.filter"),
                facts.seen().pump()
                        ? List.of(FilterCare.LEAVE, FilterCare.RINSE, FilterCare.SCRUB)
                        : List.of(FilterCare.values()),
                v -> texts.text("win.filter." + ScreenKeys.of(v)),
                v -> set(() -> model.filterProperty().set(v)));
        filter.select(model.filterProperty().get());
        Ui.Choice<FollowUp> follow = new Ui.Choice<>(
                texts.text("win.follow"),
                List.of(FollowUp.values()),
                v -> texts.text("win.follow." + ScreenKeys.of(v)),
                v -> set(() -> model.followUpProperty().set(v)));
        follow.select(model.followUpProperty().get());
        FlowPane row = new FlowPane(18, 6);
        row.getChildren().addAll(inLine("win.filter", filter), inLine("win.follow", follow));
        if (facts.chlorinated()) {
            Ui.Choice<Boolean> neutralise = new Ui.Choice<>(
                    texts.text("win.newWater"),
                    List.of(true, false),
                    v -> texts.text(v ? "win.neutralised" : "win.raw"),
                    v -> set(() -> model.neutraliseProperty().set(v)));
            neutralise.select(model.neutraliseProperty().get());
            row.getChildren().add(inLine("win.newWater", neutralise));
        }
        return row;
    }

    private Region inLine(String key, Region control) {
        return Ui.row(8, Ui.text(texts.text(key), "sw-label", "sw-strong"), control);
    }

    private double nearestFeed() {
        double feed = model.feedProperty().get();
        return feed < 0.25 ? 0 : feed < 0.75 ? 0.5 : 1;
    }

    private VBox field(String key, Region control, String meaning) {
        VBox box = new VBox(4, Ui.text(texts.text(key), "sw-label", "sw-strong"), control);
        if (!meaning.isEmpty()) {
            box.getChildren().add(Ui.text(meaning, "sw-label", "sw-quiet"));
        }
        return box;
    }

    private void dose(FlowPane fields, String key, Dose compound, double shelfG, DoubleProperty grams) {
        if (shelfG <= 0) {
            return;
        }
        double step = compound == Dose.AMMONIUM_CHLORIDE ? 0.5 : Math.max(5, Math.rint(facts.volumeL() / 240) * 5);
        Label meaning = Ui.text("", "sw-label", "sw-quiet");
        Runnable means = () -> meaning.setText(texts.text(
                key + "Means",
                texts.number(facts.added(affected(compound), model.decision()), 2),
                words.grams(facts.leftG(compound))));
        grams.addListener((p, was, is) -> means.run());
        means.run();
        VBox box = field(
                key,
                new Ui.Stepper(
                        texts.text(key),
                        texts,
                        grams,
                        step,
                        facts.leftG(compound),
                        v -> words.grams(v) + " g",
                        typed -> Amounts.dose(compound, typed, facts)),
                "");
        box.getChildren().add(meaning);
        fields.getChildren().add(box);
    }

    private static Pad affected(Dose compound) {
        return switch (compound) {
            case SODIUM_CHLORIDE -> Pad.CHLORIDE;
            case AMMONIUM_CHLORIDE -> Pad.AMMONIA;
            default -> Pad.ALKALINITY;
        };
    }

    private FlowPane foresight() {
        Pad pad = facts.padToForesee();
        List<Integer> blocks = new ArrayList<>();
        for (int b = 0; b < pad.scale().blocks(); b++) {
            blocks.add(b);
        }
        Ui.Choice<Integer> block = new Ui.Choice<>(
                texts.text("win.foresee", words.pad(pad)),
                blocks,
                b -> words.block(pad, b),
                b -> set(() -> model.foreseenProperty().set(b)));
        Ui.Choice<Prediction.Sureness> sure = new Ui.Choice<>(
                texts.text("win.iAm"),
                List.of(Prediction.Sureness.values()),
                words::sureness,
                v -> set(() -> model.surenessProperty().set(v)));
        sure.select(model.surenessProperty().get());
        return new FlowPane(
                12,
                8,
                Ui.text(texts.text("win.foresee", words.pad(pad)), "sw-strong"),
                block,
                Ui.text(texts.text("win.iAm"), "sw-strong"),
                sure);
    }

    private void set(Runnable change) {
        change.run();
        changed.run();
    }
}
