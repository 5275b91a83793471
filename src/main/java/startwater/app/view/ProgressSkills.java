package startwater.app.view;

import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.chart.LevelBar;
import startwater.app.chart.Tone;
import startwater.app.model.ProgressModel;
import startwater.course.SkillState;
import startwater.course.SkillState.Standing;
import startwater.text.Texts;

/** The skills by how they stand, each with its chance as a bar and when it was last seen. */
final class ProgressSkills extends VBox {
    private static final double TILE = 224;
    private static final double AIM = 0.95;
    private static final List<Standing> ORDER =
            List.of(Standing.FADING, Standing.LEARNING, Standing.KNOWN, Standing.NOT_MET);

    private final ProgressModel model;
    private final CoachWords words;
    private final Texts texts;

    ProgressSkills(ProgressModel model, CoachWords words) {
        super(16);
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        getStyleClass().add("sw-hairline-top");
        setPadding(new Insets(20, 0, 0, 0));
        getChildren()
                .add(new VBox(
                        4,
                        Ui.text(texts.text("progress.skills"), "sw-sentence", "sw-strong"),
                        Ui.text(texts.text("progress.skillsHow"), "sw-label", "sw-quiet")));
        for (Standing standing : ORDER) {
            List<SkillState> skills = model.skills(standing);
            if (!skills.isEmpty()) {
                getChildren().add(group(standing, skills));
            }
        }
    }

    private Region group(Standing standing, List<SkillState> skills) {
        FlowPane tiles = new FlowPane(24, 12);
        skills.forEach(s -> tiles.getChildren().add(tile(standing, s)));
        Sizes.share(tiles, TILE);
        String name = texts.text("progress.count", texts.text("progress.standing." + standing), skills.size());
        VBox group = new VBox(
                8,
                new VBox(
                        Ui.text(name, "sw-strong"),
                        Ui.text(texts.text("progress.about." + standing), "sw-label", "sw-quiet")),
                tiles);
        group.setId("skills-" + standing);
        return group;
    }

    private Region tile(Standing standing, SkillState s) {
        double percent = Math.rint(100 * s.known());
        String name = words.skill(s.skill());
        String seen = seen(s);
        LevelBar bar = new LevelBar(
                new LevelBar.Data(s.known(), AIM, tone(standing), texts.text("progress.level", name, percent, seen)));
        bar.setId("skill-" + s.skill().id());
        HBox.setHgrow(bar, Priority.ALWAYS);
        Label number = Ui.text(texts.number(percent), "sw-label", "sw-strong");
        // Bars of one length can be compared, whatever number stands beside them.
        number.setStyle("-fx-min-width: 1.8em;");
        return new VBox(2, Ui.text(name), Ui.row(10, bar, number), Ui.text(seen, "sw-label", "sw-quiet"));
    }

    private String seen(SkillState s) {
        String last = texts.text("progress.seen", model.daysSince(s));
        return s.due() == null
                ? last
                : texts.text("progress.both", last, texts.text("progress.returns", model.daysUntil(s)));
    }

    private static Tone tone(Standing standing) {
        return switch (standing) {
            case KNOWN -> Tone.SAFE;
            case LEARNING, FADING -> Tone.WATER;
            case NOT_MET -> Tone.QUIET;
        };
    }
}
