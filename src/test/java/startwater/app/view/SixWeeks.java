package startwater.app.view;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import javafx.scene.control.ButtonBase;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Desk;
import startwater.app.Fx;
import startwater.content.Library;
import startwater.text.Language;

/** A program of its own: plays the six-week drill to its end in the window and says how much memory it holds. */
final class SixWeeks {
    private static final String DRILL = "free-start";
    private static final double MEGA = 1e6;

    private SixWeeks() {}

    /** @param args the data folder */
    public static void main(String[] args) throws Exception {
        Path data = Files.createDirectories(Path.of(args[0]));
        Shell shell = Fx.call(() -> {
            Desk desk = Desk.in(data);
            desk.choose("Ana");
            Shell made = new Shell(Language.EN, desk);
            Stages.show(made);
            return made;
        });
        Fx.run(() -> shell.start(Library.shipped().scenario(DRILL).get()));
        int decisions = 0;
        double most = 0;
        wait(shell, "dip");
        while (!there(shell, "to-home")) {
            press(shell, "dip");
            for (int i = 0; i < 4; i++) {
                press(shell, "write");
            }
            press(shell, "go");
            wait(shell, "go-on");
            for (String fold : List.of("open-known", "open-why")) {
                press(shell, fold);
            }
            most = Math.max(most, heldMb());
            press(shell, "go-on");
            wait(shell, "dip", "to-home");
            decisions++;
        }
        wait(shell, "next-time");
        System.out.printf(
                Locale.ROOT,
                "memory: %s played to its end in the window, %d decisions, heap held after collection %.0f MB, at most %.0f MB, of %.0f MB allowed%n",
                DRILL,
                decisions,
                heldMb(),
                most,
                Runtime.getRuntime().maxMemory() / MEGA);
        System.exit(decisions > 2 ? 0 : 1);
    }

    private static double heldMb() {
        System.gc();
        System.gc();
        Runtime now = Runtime.getRuntime();
        return (now.totalMemory() - now.freeMemory()) / MEGA;
    }

    private static boolean there(Shell shell, String id) {
        return Fx.call(() -> shell.lookup("#" + id) != null);
    }

    private static void press(Shell shell, String id) {
        Fx.run(() -> {
            if (shell.lookup("#" + id) instanceof ButtonBase b && !b.isDisabled()) {
                b.fire();
            }
        });
        WaitForAsyncUtils.waitForFxEvents(2);
    }

    private static void wait(Shell shell, String... ids) throws TimeoutException {
        WaitForAsyncUtils.waitFor(
                120, TimeUnit.SECONDS, () -> List.of(ids).stream().anyMatch(id -> there(shell, id)));
    }
}
