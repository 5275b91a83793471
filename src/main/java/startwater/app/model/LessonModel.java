package startwater.app.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;

/** What a learner has done in one lesson: answers typed, options picked, sliders moved. It outlives a change of language. */
public final class LessonModel {
    private final String id;
    private final Map<String, StringProperty> typed = new HashMap<>();
    private final Map<String, IntegerProperty> picked = new HashMap<>();
    private final Map<String, DoubleProperty> sliders = new HashMap<>();

    private final Set<String> answered = new HashSet<>();
    private final Answers answers;

    /** Takes the first answer to each question. */
    @FunctionalInterface
    public interface Answers {
        /**
         * @param block number of the block in the lesson, from 0
         * @param step which answer in the block, from 0
         * @param score how right, 0 to 1
         * @param options how many there were to pick from, 0 for a number or a reading
         * @param sureness how sure the learner was, or null where nobody asked
         */
        void answered(int block, int step, double score, int options, @Nullable Sureness sureness);
    }

    /** @param id id of the lesson, the same in every language */
    public LessonModel(String id) {
        this(id, (block, step, score, options, sureness) -> {});
    }

    /** @param answers is told of the first answer to each question; later ones follow a solution that was shown */
    public LessonModel(String id, Answers answers) {
        this.id = id;
        this.answers = answers;
    }

    /** A question is answered. Parameters as in {@link Answers}. */
    public void answer(int block, int step, double score, int options, @Nullable Sureness sureness) {
        if (answered.add(block + "." + step)) {
            answers.answered(block, step, score, options, sureness);
        }
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
