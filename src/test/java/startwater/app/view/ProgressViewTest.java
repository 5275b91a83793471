package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.app.Fx;
import startwater.app.chart.CalibrationChart;
import startwater.app.chart.LevelBar;
import startwater.app.chart.MarksChart;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.course.Past;
import startwater.text.Language;

class ProgressViewTest {
    private final List<String> opened = new ArrayList<>();

    private ProgressView view(Past past, Language language, int percent) {
        ProgressView view = new ProgressView(
                ProgressExamples.model(past),
                ProgressExamples.words(language),
                id -> opened.add("drill " + id),
                id -> opened.add("lesson " + id));
        Look look = new Look(Theme.LIGHT, percent);
        look.dress(new Scene(view, 1280 - 208 * look.scale(), 800));
        view.applyCss();
        view.layout();
        return view;
    }

    @ParameterizedTest
    @EnumSource
    void everySkillAndChartIsSaid(Language language) {
        Fx.run(() -> {
            ProgressView view = view(ProgressExamples.someWay(), language, 100);
            Set<String> said = view.lookupAll("*").stream()
                    .filter(n -> n instanceof LevelBar)
                    .map(javafx.scene.Node::getAccessibleText)
                    .collect(Collectors.toSet());
            assertThat(said).as("one bar a skill").hasSize(startwater.drill.Skill.values().length);
            assertThat(view.lookupAll("*"))
                    .filteredOn(n -> n instanceof CalibrationChart || n instanceof MarksChart)
                    .hasSize(2)
                    .allMatch(n -> n.getAccessibleText() != null
                            && n.getAccessibleText().length() > 20);
            assertThat(view.lookupAll("*"))
                    .filteredOn(n -> n instanceof ButtonBase)
                    .allMatch(n -> n.getAccessibleText() != null && n.isFocusTraversable());
        });
    }

    @Test
    void aNewLearnerHasOneButton() {
        Fx.run(() -> {
            ProgressView view = view(Past.NOTHING, Language.EN, 100);
            assertThat(view.lookupAll("*"))
                    .filteredOn(n -> n instanceof ButtonBase)
                    .hasSize(1);
            ((ButtonBase) view.lookup("#progress-start")).fire();
            assertThat(opened).containsExactly("drill first-strips");
        });
    }

    @Test
    void alternativesOpenToo() {
        Fx.run(() -> {
            ProgressView view = view(ProgressExamples.someWay(), Language.EN, 100);
            ((ButtonBase) view.lookup("#progress-or-0")).fire();
            ((ButtonBase) view.lookup("#progress-or-1")).fire();
            ((ButtonBase) view.lookup("#progress-start")).fire();
            assertThat(opened).doesNotHaveDuplicates().hasSize(3);
        });
    }

    @ParameterizedTest
    @EnumSource
    void nothingIsCutOffAtTwiceTheSize(Language language) {
        Fx.run(() -> {
            ProgressView view = view(ProgressExamples.someWay(), language, 200);
            double width = view.getScene().getWidth();
            assertThat(view.lookupAll(".label")).allSatisfy(n -> {
                Label label = (Label) n;
                assertThat(label.localToScene(label.getBoundsInLocal()).getMaxX())
                        .as(label.getText())
                        .isLessThanOrEqualTo(width);
            });
        });
    }
}
