package startwater.app.model;

import java.util.HashMap;
import java.util.Map;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** What a learner has done in one lesson: answers typed, options picked, sliders moved. It outlives a change of language. */
public final class LessonModel {
    private final String id;
    private final Map<String, StringProperty> typed = new HashMap<>();
    private final Map<String, IntegerProperty> picked = new HashMap<>();
    private final Map<String, DoubleProperty> sliders = new HashMap<>();

    /** @param id id of the lesson, the same in every language */
    public LessonModel(String id) {
        this.id = id;
    }

    public String id() {
        return id;
    }

    /** What is typed at a step of a block. */
    public StringProperty typed(int block, int step) {
        return typed.computeIfAbsent(block + "." + step, key -> new SimpleStringProperty(""));
    }

    /** Which option of a block is picked; -1 for none yet. */
    public IntegerProperty picked(int block) {
        return picked(block, "");
    }

    /** Which option of one of several things in a block is picked; -1 for none yet. */
    public IntegerProperty picked(int block, String what) {
        return picked.computeIfAbsent(block + "." + what, key -> new SimpleIntegerProperty(-1));
    }

    /** Where a slider of a block stands. @param at where it stands at first */
    public DoubleProperty slider(int block, String name, double at) {
        return sliders.computeIfAbsent(block + "." + name, key -> new SimpleDoubleProperty(at));
    }
}
