package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Desk;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.app.Hands;
import startwater.content.Library;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.Resumed;
import startwater.text.Language;

/** Journeys through the window with the keys and the mouse that a person has. */
class WindowRobotTest {
    private static final int MOST_TABS = 120;
    private static final int MOST_WAITS = 5;

    @TempDir
    private Path folder;

    private final Hands hands = new Hands();

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    private void open(Language language) {
        open(language, Desks.nameless(folder));
    }

    private void open(Language language, Desk desk) {
        Fx.run(() -> {
            shell = new Shell(language, desk);
            stage = Stages.show(shell);
            stage.requestFocus();
        });
        // The coach's word brings the first button; a way of keys that was counted before it would be another one
        // after.
        waitFor(() -> there("start"));
        Hands.settle();
    }

    @AfterEach
    void close() {
        Stages.close(shell, stage);
    }

    @Test
    void theFishInDrillIsPlayedToItsEndByKeyboardAlone() {
        open(Language.EN);
        press(node -> "card-hungry-second-week".equals(node.getId()));
        int decisions = 0;
        waitFor(() -> shows("Dip a strip"));
        while (decisions < 9 && !shows("Back to the shelf")) {
            press(button("Dip a strip"));
            tabTo(node -> "reading".equals(node.getId()));
            for (String reading : new String[] {"1", "0.5-1"}) {
                type(reading);
                hands.key(KeyCode.ENTER);
            }
            if (decisions % 2 == 0 && Fx.call(() -> all().anyMatch(toggle("half")))) {
                tabTo(toggle("full").or(toggle("half")).or(toggle("none")));
                hands.key(KeyCode.LEFT);
            }
            press(node -> node instanceof Button b && b.getText().startsWith("Do it"));
            waitFor(() -> shows("Go on"));
            press(button("Go on"));
            decisions++;
            waitFor(() -> shows("Dip a strip") || shows("Back to the shelf"));
        }
        assertThat(decisions).isBetween(3, 8);
        waitFor(() -> text("What to take away"));
        press(button("Back to the shelf"));
        waitFor(() -> there("start"));
        waitFor(() -> Desks.look(folder).history().finished() == 1);
        assertThat(Desks.look(folder).history().open()).isEmpty();
        assertThat(Desks.look(folder).history().observed()).hasSize(decisions);
    }

    @Test
    void aWholeDrillByMouseFromTheShelfToWhatIsDoneNextTime() {
        open(Language.EN);
        click(node -> "card-first-strips".equals(node.getId()));
        waitFor(() -> shows("Dip a strip"));
        int decisions = 0;
        while (decisions < 9 && !shows("Back to the shelf")) {
            click(button("Dip a strip"));
            click(button("Write it down"));
            click(button("Write it down"));
            if (decisions == 0) {
                click(node -> "take-back".equals(node.getId()));
                click(button("Write it down"));
                click(node -> "help-link".equals(node.getId()));
                click(node -> "help-close".equals(node.getId()));
                click(toggle("rinse"));
            }
            click(node -> node instanceof Button b && b.getText().startsWith("Do it"));
            waitFor(() -> shows("Go on"));
            if (decisions == 0) {
                click(node -> "open-known".equals(node.getId()));
                waitFor(() -> there("known-of") && there("table-known"));
                click(node -> "table-known".equals(node.getId()));
                click(node -> "table-known".equals(node.getId()));
                click(node -> "open-why".equals(node.getId()));
            }
            click(button("Go on"));
            decisions++;
            waitFor(() -> shows("Dip a strip") || shows("Back to the shelf"));
        }
        assertThat(decisions).isBetween(2, 8);
        waitFor(() -> text("What to take away"));
        Fx.run(() -> ((Hyperlink) shell.lookup("#table-truth")).fire());
        TableView<?> numbers = (TableView<?>) find(TableView.class::isInstance);
        assertThat(Fx.call(() -> numbers.getColumns().get(7).getCellData(0))).isEqualTo("40");
        scrollDown();
        click(node -> "next-time".equals(node.getId()));
        type("If it reads twice alike I believe it");
        click(button("Keep it"));
        click(button("Back to the shelf"));
        waitFor(() -> there("start"));
        click(node -> "card-first-strips".equals(node.getId()));
        waitFor(() -> text("If it reads twice alike I believe it"));
    }

    private void scrollDown() {
        Fx.run(() -> shell.lookupAll(".scroll-pane").stream()
                .map(ScrollPane.class::cast)
                .forEach(pane -> pane.setVvalue(1)));
    }

    @Test
    void helpOpensByKeyBesideTheWorkAndEscapeGoesBack() {
        open(Language.ES);
        press(node -> "card-first-strips".equals(node.getId()));
        waitFor(() -> shows("Mojar una tira"));
        tabTo(button("Mojar una tira"));
        hands.key(KeyCode.F1);
        waitFor(() -> find(node -> "help".equals(node.getId())).isVisible());
        hands.key(KeyCode.ESCAPE);
        waitFor(() -> !find(node -> "help".equals(node.getId())).isVisible());
        assertThat(button("Mojar una tira").test(Fx.call(this::focusOrRoot))).isTrue();
    }

    @Test
    void oneVisitByMouseAndTheWayBackToTheShelfKeepWhatWasDecided() {
        open(Language.EN);
        click(node -> "card-first-strips".equals(node.getId()));
        waitFor(() -> shows("Dip a strip"));
        click(button("Dip a strip"));
        click(button("Write it down"));
        click(node -> node instanceof Button b && b.getText().startsWith("Do it"));
        waitFor(() -> shows("Go on"));
        click(button("Go on"));
        waitFor(() -> shows("Dip a strip"));
        click(node -> node instanceof Labeled l && "leave".equals(l.getText()));
        waitFor(() -> text("You left this drill half way. It goes on where you were."));
        Fx.run(shell::close);
        Resumed taken = new Attempts(Desks.nameless(folder).learner())
                .goOnOrBegin(Library.shipped().scenario("first-strips").get(), Entry.Mode.PRACTICE, "en");
        assertThat(taken.run().asked()).isEqualTo(2);
        assertThat(taken.verdicts()).hasSize(1);
    }

    @Test
    void whatIsNoNumberStaysInItsFieldWithTheReason() {
        open(Language.EN);
        press(node -> "card-first-strips".equals(node.getId()));
        waitFor(() -> shows("Dip a strip"));
        press(button("Dip a strip"));
        tabTo(node -> "reading".equals(node.getId()));
        type("lots");
        hands.key(KeyCode.ENTER);
        assertThat(Fx.call(() -> ((TextField) focus()).getText())).isEqualTo("lots");
        Label reason = (Label) find(node -> "reading-refusal".equals(node.getId()));
        assertThat(reason.getText()).contains("This is no number.");
    }

    @Test
    void theLanguageIsSwitchedWhileTheWindowRunsAndKept() {
        open(Language.EN);
        assertThat(text("What comes next")).isTrue();
        tabTo(toggle("English"));
        hands.key(KeyCode.RIGHT);
        waitFor(() -> text("Lo que sigue"));
        assertThat(text("What comes next")).isFalse();
        waitFor(() -> Desk.in(folder)
                .settings()
                .filter(s -> s.language().equals("es"))
                .isPresent());
    }

    @Test
    void aBrokenDrillShowsTheSentenceOfItsCheckAndTheOthersStayWhole() throws IOException {
        Files.createDirectories(folder.resolve("scenarios"));
        Path file = folder.resolve("scenarios/broken.yaml");
        Files.writeString(file, "id: broken\nvolume: many\n");
        open(Language.EN);
        String said =
                startwater.content.ScenarioReader.read(file).faults().get(0).line("en");
        Label faults = (Label) find(node -> "faults-broken.yaml".equals(node.getId()));
        assertThat(faults.getText()).startsWith(said);
        waitFor(() -> shows("Start this drill"));
    }

    @Test
    void textGrowsToTwiceItsSizeByKeysAndNothingIsLost() {
        open(Language.EN);
        for (int i = 0; i < 5; i++) {
            hands.chord(KeyCode.CONTROL, KeyCode.EQUALS);
        }
        assertThat(text("Text 200\u00a0%")).isTrue();
        waitFor(() -> shows("Start this drill"));
    }

    @Test
    void aLessonIsReadAndItsWrongAnswerStaysWithHowFarItIsOff() {
        open(Language.EN);
        press(node -> "lessons".equals(node.getId()));
        press(node -> node.getId() != null && node.getId().startsWith("lesson-01"));
        tabTo(node -> node instanceof TextField);
        type("0.5");
        hands.key(KeyCode.ENTER);
        assertThat(Fx.call(() -> ((TextField) focus()).getText())).isEqualTo("0.5");
        assertThat(Fx.call(() ->
                        all().anyMatch(n -> n instanceof Label l && l.getText().contains("% off"))))
                .isTrue();
    }

    private void type(String words) {
        hands.type(stage.getScene(), words);
    }

    private Node focus() {
        return stage.getScene().getFocusOwner();
    }

    private void tabTo(Predicate<Node> wanted) {
        for (int i = 0; i < MOST_TABS; i++) {
            Node at = Fx.call(this::focusOrRoot);
            if (wanted.test(at)) {
                return;
            }
            hands.key(KeyCode.TAB);
            // A page that is only just made takes a key a moment later.
            for (int wait = 0; wait < MOST_WAITS && Fx.call(this::focusOrRoot) == at; wait++) {
                WaitForAsyncUtils.sleep(20, java.util.concurrent.TimeUnit.MILLISECONDS);
            }
        }
        throw new AssertionError("no tab leads there; the focus is at " + Fx.call(this::focusOrRoot));
    }

    private Node focusOrRoot() {
        return focus() == null ? shell : focus();
    }

    private void press(Predicate<Node> wanted) {
        tabTo(wanted);
        hands.key(KeyCode.SPACE);
    }

    private void click(Predicate<Node> wanted) {
        hands.click(() -> all().filter(wanted).findFirst().orElse(null));
    }

    private static Predicate<Node> button(String words) {
        return node -> node instanceof Button b && b.getText().equals(words);
    }

    private static Predicate<Node> toggle(String words) {
        return node -> node instanceof ToggleButton t && t.getText().equals(words);
    }

    private boolean shows(String button) {
        return Fx.call(() -> all().anyMatch(n -> button(button).test(n) && !n.isDisabled()));
    }

    private boolean there(String id) {
        return Fx.call(() -> all().anyMatch(n -> id.equals(n.getId())));
    }

    private boolean text(String words) {
        return Fx.call(() -> all().anyMatch(n -> n instanceof Labeled l && words.equals(l.getText())));
    }

    private Node find(Predicate<Node> wanted) {
        return Fx.call(() -> all().filter(wanted).findFirst().orElseThrow());
    }

    private java.util.stream.Stream<Node> all() {
        shell.applyCss();
        shell.layout();
        return shell.lookupAll("*").stream();
    }

    private static void waitFor(BooleanSupplier what) {
        for (int i = 0; i < 900 && !what.getAsBoolean(); i++) {
            WaitForAsyncUtils.sleep(20, java.util.concurrent.TimeUnit.MILLISECONDS);
        }
        assertThat(what.getAsBoolean()).isTrue();
    }
}
