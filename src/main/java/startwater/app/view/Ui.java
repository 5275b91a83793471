package startwater.app.view;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.property.DoubleProperty;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import startwater.quantity.Unbroken;
import startwater.text.Amounts.Amount;
import startwater.text.Texts;

/** The small things that every screen is made of, so that they look and speak the same everywhere. */
final class Ui {
    private Ui() {}

    /** A label that may wrap, but not between a number and its unit, with style classes. */
    static Label text(String words, String... classes) {
        Label label = new Label();
        label.textProperty().addListener((text, was, now) -> label.setText(Unbroken.of(now)));
        label.setText(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(classes);
        return label;
    }

    static Hyperlink link(String words, Runnable act) {
        Hyperlink link = new Hyperlink(words);
        link.setOnAction(e -> act.run());
        link.setAccessibleText(words);
        return link;
    }

    static Button button(String words, String styleClass, Runnable act) {
        Button button = new Button(words);
        if (!styleClass.isEmpty()) {
            button.getStyleClass().add(styleClass);
        }
        button.setOnAction(e -> act.run());
        button.setAccessibleText(words);
        return button;
    }

    /** A page that scrolls up and down, and never sideways. */
    static ScrollPane scroll(Region content) {
        ScrollPane pane = new ScrollPane();
        scroll(pane, content);
        return pane;
    }

    static void scroll(ScrollPane pane, Region content) {
        pane.setContent(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
    }

    static Region grow() {
        Region region = new Region();
        HBox.setHgrow(region, Priority.ALWAYS);
        VBox.setVgrow(region, Priority.ALWAYS);
        return region;
    }

    static HBox row(double gap, Node... nodes) {
        HBox row = new HBox(gap, nodes);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** One of several values, as segments; the keys are those of the part it wraps. */
    static final class Choice<T> extends StackPane {
        private final startwater.app.view.part.Choice segments;
        private final List<T> values;
        private boolean quiet;

        Choice(String name, List<T> values, Function<T, String> words, Consumer<T> chosen) {
            this.values = List.copyOf(values);
            segments = new startwater.app.view.part.Choice(
                    name, values.stream().map(words).toList());
            segments.chosenProperty().addListener((p, was, is) -> {
                if (!quiet && is.intValue() >= 0) {
                    chosen.accept(this.values.get(is.intValue()));
                }
            });
            setAlignment(Pos.CENTER_LEFT);
            setMaxWidth(Region.USE_PREF_SIZE);
            getChildren().add(segments);
        }

        /** Shows a choice without telling anybody. */
        void select(T value) {
            quiet = true;
            segments.chosenProperty().set(values.indexOf(value));
            quiet = false;
        }

        /** Puts the keys on the segment that is chosen. */
        void focusChosen() {
            segments.getChildren()
                    .get(Math.max(0, segments.chosenProperty().get()))
                    .requestFocus();
        }
    }

    /** Less, an amount that can be typed, more; what cannot be stays in the field with the reason below. */
    static final class Stepper extends VBox {
        private final TextField field = new TextField();
        private final Label reason = text("", "sw-label", "sw-danger");

        Stepper(
                String name,
                Texts texts,
                DoubleProperty amount,
                double step,
                double most,
                Function<Double, String> shown,
                Function<String, Amount> read) {
            field.setText(shown.apply(amount.get()));
            field.setPrefColumnCount(5);
            field.setAccessibleText(name);
            HBox.setHgrow(field, Priority.ALWAYS);
            Button less = button("−", "", () -> set(amount, Math.max(0, amount.get() - step), shown));
            less.setAccessibleText(texts.text("win.less", name));
            Button more = button("+", "", () -> set(amount, Math.min(most, amount.get() + step), shown));
            more.setAccessibleText(texts.text("win.more", name));
            HBox bar = new HBox(less, field, more);
            bar.getStyleClass().add("sw-stepper");
            Runnable take = () -> {
                if (field.getText().equals(shown.apply(amount.get()))) {
                    return;
                }
                Amount typed = read.apply(field.getText());
                if (typed.refusal() == null) {
                    set(amount, typed.value(), shown);
                } else {
                    say(typed.refusal().say(texts));
                }
            };
            field.setOnAction(e -> take.run());
            field.focusedProperty().addListener((p, was, is) -> {
                if (!is) {
                    take.run();
                }
            });
            reason.managedProperty().bind(reason.textProperty().isNotEmpty());
            amount.addListener((p, was, is) -> field.setText(shown.apply(is.doubleValue())));
            getChildren().addAll(bar, reason);
        }

        private void set(DoubleProperty amount, double value, Function<Double, String> shown) {
            say("");
            amount.set(value);
            field.setText(shown.apply(value));
        }

        private void say(String words) {
            reason.setText(words);
        }
    }
}
