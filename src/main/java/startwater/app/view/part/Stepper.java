package startwater.app.view.part;

import java.util.function.DoubleFunction;
import java.util.function.Function;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.scene.control.Button;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.jspecify.annotations.Nullable;

/**
 * An amount: less, the number with its unit, more. The up and down keys step, a number can be typed. What cannot be read is put
 * back as it was.
 */
public final class Stepper extends HBox {
    /** The words of a stepper, for screen readers. */
    public record Names(String amount, String less, String more) {}

    private final DoubleProperty amount = new SimpleDoubleProperty(this, "amount") {
        @Override
        public void set(double value) {
            super.set(Math.max(least, Math.min(most, value)));
        }
    };
    private final double least;
    private final double most;
    private final double step;
    private final DoubleFunction<String> format;
    private final Function<String, @Nullable Double> parse;
    private final TextField field = new TextField();

    /**
     * @param least smallest amount
     * @param most largest amount
     * @param step of the keys and buttons
     * @param format the amount with its unit
     * @param parse what was typed, or null where it is no amount
     */
    public Stepper(
            Names names,
            double least,
            double most,
            double step,
            DoubleFunction<String> format,
            Function<String, @Nullable Double> parse) {
        if (!(least <= most && step > 0)) {
            throw new IllegalArgumentException("stepper: needs least <= most and a step above 0");
        }
        this.least = least;
        this.most = most;
        this.step = step;
        this.format = format;
        this.parse = parse;
        amount.set(least);
        getStyleClass().add("sw-stepper");
        setMaxWidth(USE_PREF_SIZE);
        Button less = button("−", names.less(), -1);
        Button more = button("+", names.more(), 1);
        field.setPrefColumnCount(5);
        field.setAccessibleText(names.amount());
        HBox.setHgrow(field, Priority.ALWAYS);
        field.setOnAction(event -> typed());
        field.focusedProperty().addListener((property, old, now) -> {
            if (!now) {
                typed();
            }
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
        getChildren().addAll(less, field, more);
        amount.addListener(change -> write());
        write();
    }

    /** The amount, held between least and most. */
    public DoubleProperty amountProperty() {
        return amount;
    }

    /** The field between the buttons, for focus. */
    public TextField field() {
        return field;
    }

    private Button button(String sign, String name, int direction) {
        Button button = new Button(sign);
        button.setAccessibleText(name);
        button.setFocusTraversable(false);
        button.setOnAction(event -> step(direction));
        return button;
    }

    /** To the next multiple of the step, so a typed amount finds back to even ones. */
    private void step(int direction) {
        typed();
        double steps = (amount.get() - least) / step;
        double next = direction > 0 ? Math.floor(steps + 1e-9) + 1 : Math.ceil(steps - 1e-9) - 1;
        amount.set(least + next * step);
    }

    private void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.UP || event.getCode() == KeyCode.DOWN) {
            step(event.getCode() == KeyCode.UP ? 1 : -1);
            event.consume();
        }
    }

    private void typed() {
        Double value = parse.apply(field.getText().strip());
        if (value != null && !value.isNaN()) {
            amount.set(value);
        }
        write();
    }

    private void write() {
        field.setText(format.apply(amount.get()));
    }
}
