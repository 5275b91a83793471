package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.DebriefModel;
import startwater.app.theme.Look;
import startwater.drill.Prediction;
import startwater.score.ReadingMark;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The four marks side by side, never summed, and what is no mark: luck. */
final class DebriefMarks extends VBox {
    private static final double COLUMN = 118;

    private final DebriefModel model;
    private final Verdict verdict;
    private final DrillWords words;
    private final Texts texts;

    DebriefMarks(DebriefModel model, DrillWords words, Look look) {
        super(8);
        this.model = model;
        this.verdict = model.verdict();
        this.words = words;
        this.texts = words.texts();
        FlowPane marks = new FlowPane(16, 8, decision(), reading(), working(), foresight());
        for (var mark : marks.getChildren()) {
            ((VBox) mark).setPrefWidth(COLUMN * look.scale());
        }
        marks.setPrefWrapLength(4 * (COLUMN + 16) * look.scale());
        getChildren().add(marks);
        for (String line : beside()) {
            getChildren().add(Ui.text(line, "sw-label", "sw-quiet"));
        }
    }

    private static VBox mark(String name, String value, String meaning, boolean large, String tone) {
        return new VBox(
                2,
                Ui.text(name, "sw-label", "sw-strong"),
                Ui.text(value, large ? "sw-title" : "sw-statement", tone),
                Ui.text(meaning, "sw-label", tone.equals("sw-danger") ? tone : "sw-quiet"));
    }

    private VBox decision() {
        boolean scored = verdict.scored();
        String tone =
                switch (verdict.word()) {
                    case DANGEROUS -> "sw-danger";
                    case SOUND -> "sw-safe";
                    case COSTLY -> "sw-ink";
                };
        return mark(
                texts.text("win.decisionMark"),
                scored ? texts.number(Math.rint(verdict.mark())) : "–",
                scored ? words.word(verdict.word()) : texts.text("win.notScored"),
                true,
                scored ? tone : "sw-ink");
    }

    private VBox reading() {
        ReadingMark readings = model.readings();
        String meaning = readings.total() == 0
                ? texts.text("win.nothingRead")
                : readings.worst() == null
                        ? texts.text("win.allRead")
                        : texts.text(
                                readings.worst().blocks() < 0 ? "win.readLow" : "win.readHigh",
                                words.pad(readings.worst().pad()),
                                Math.rint(Math.abs(readings.worst().blocks())));
        String value = readings.total() == 0 ? "–" : texts.text("win.ofSo", readings.right(), readings.total());
        return mark(texts.text("win.readingMark"), value, meaning, false, "sw-ink");
    }

    private VBox working() {
        WorkingMark sum = model.working();
        return mark(
                texts.text("win.workingMark"),
                sum == null ? "–" : texts.text(sum.right() ? "win.workingRight" : "win.workingOff"),
                sum == null
                        ? texts.text("win.notWorked")
                        : texts.text("win.workedAgainst", texts.number(sum.given(), 2), texts.number(sum.exact(), 2)),
                false,
                "sw-ink");
    }

    private VBox foresight() {
        Verdict.Foresight f = verdict.foresight();
        Prediction said = model.decided().prediction();
        return mark(
                texts.text("win.foresightMark"),
                f == null ? "–" : texts.number(Math.rint(f.mark())),
                foreseen(f, said),
                false,
                "sw-ink");
    }

    private String foreseen(Verdict.@Nullable Foresight f, @Nullable Prediction said) {
        if (f == null || said == null) {
            return texts.text("win.notForeseen");
        }
        String own = words.block(said.pad(), said.block());
        return f.likeliest() == said.block()
                ? texts.text("win.likeliest", own, Math.rint(100 * f.chance()))
                : texts.text(
                        "win.likelier",
                        own,
                        Math.rint(100 * f.chance()),
                        words.block(said.pad(), f.likeliest()),
                        Math.rint(100 * f.likeliestChance()));
    }

    private List<String> beside() {
        List<String> lines = new ArrayList<>();
        if (verdict.arguable()) {
            lines.add(texts.text("win.arguable"));
        }
        lines.add(
                model.fishIn()
                        ? texts.text(
                                "win.luck",
                                model.diedSince(),
                                words.when(model.nowMinute(), model.decided().minute()))
                        : texts.text("win.marksApart"));
        return lines;
    }
}
