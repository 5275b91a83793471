package startwater.app.view.part;

import java.util.List;
import javafx.animation.AnimationTimer;
import javafx.beans.value.ObservableValue;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import javafx.stage.Window;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.quantity.Stream;
import startwater.strip.FishMood;

/**
 * The tank as a keeper sees it. The fish move gently, at most twelve drawings a second, and only while the window shows them;
 * {@link #setStill} stops that.
 */
public final class TankPicture extends Painted {
    private static final long LEAST_GAP_NANOS = 83_000_000;
    private static final double[] FADE = {0.0, 0.36, 0.66};
    private static final int MOST_DEAD = 12;
    private static final int BUBBLES = 74;

    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            tick(now);
        }
    };
    private final ObservableValue<Boolean> showing;
    private TankLook look;
    private boolean still;
    private boolean running;
    private long lastNanos;
    private double seconds;
    private List<Swimmer> shoal = List.of();
    private double shoalWidth = -1;
    private double shoalHeight = -1;

    public TankPicture(TankLook look) {
        super(AccessibleRole.IMAGE_VIEW, 352, 260);
        this.look = look;
        setAccessibleText(look.summary());
        showing = sceneProperty()
                .flatMap(Scene::windowProperty)
                .flatMap(Window::showingProperty)
                .orElse(false);
        showing.addListener((property, old, now) -> animate());
    }

    /** Shows another state of the tank. */
    public void show(TankLook next) {
        look = next;
        shoalWidth = -1;
        setAccessibleText(next.summary());
        repaint();
    }

    /** Whether the picture stands still, for people who prefer that and for print. */
    public void setStill(boolean still) {
        this.still = still;
        animate();
        repaint();
    }

    /** Whether the fish move now. */
    boolean isMoving() {
        return running;
    }

    private void animate() {
        boolean run = !still && Boolean.TRUE.equals(showing.getValue());
        if (run == running) {
            return;
        }
        running = run;
        if (run) {
            lastNanos = 0;
            timer.start();
        } else {
            timer.stop();
        }
    }

    private void tick(long now) {
        if (now - lastNanos < LEAST_GAP_NANOS) {
            return;
        }
        if (lastNanos != 0) {
            seconds += Math.min(0.25, (now - lastNanos) / 1e9);
        }
        lastNanos = now;
        if (isSeen()) {
            paintNow();
        }
    }

    private boolean isSeen() {
        for (Node node = this; node != null; node = node.getParent()) {
            if (!node.isVisible()) {
                return false;
            }
        }
        return true;
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        if (width < 40 || height < 40) {
            return;
        }
        TankBody body = TankBody.within(width, height, look.waterFraction());
        double stoneX = body.left() + 0.82 * body.width();
        if (width != shoalWidth || height != shoalHeight) {
            shoal = Shoal.of(look, body, stoneX);
            shoalWidth = width;
            shoalHeight = height;
        }
        body.paintBack(pen, look.haze());
        for (int depth = 2; depth >= 0; depth--) {
            paintFish(pen, body, depth);
            paintVeil(pen, body, depth);
            if (depth == 1 && look.airOn()) {
                paintBubbles(pen, body, stoneX);
            }
        }
        paintSpecks(pen, body);
        paintLying(pen, body);
        body.paintSurface(pen, still ? 0 : seconds);
        paintRings(pen, body);
        paintFloating(pen, body);
        paintHose(pen, body, stoneX);
        body.paintWall(pen);
        pen.text(look.label(), body.left() + 8, body.rim() + 10, Pen.LABEL, false, pen.color(Token.QUIET));
    }

    private void paintFish(Pen pen, TankBody body, int depth) {
        double time = still ? 0 : seconds;
        boolean clamped = look.mood() == FishMood.SLOW;
        for (Swimmer s : shoal) {
            if (s.depth() == depth) {
                FishFigure.paint(
                        pen, drifted(s, time, body), look.shape(), clamped, s.phase() + time * beat(), FADE[depth]);
            }
        }
    }

    private Swimmer drifted(Swimmer s, double time, TankBody body) {
        double reach = s.breaksSurface() ? 0.6 : 0.05 * s.length() * beat();
        double dx = reach * (Math.sin(0.5 * time + s.phase()) - Math.sin(s.phase()));
        double dy = 0.5 * reach * (Math.sin(0.8 * time + 2 * s.phase()) - Math.sin(2 * s.phase()));
        double y = Math.min(body.floor() - 4, s.y() + dy);
        return new Swimmer(
                s.x() + dx, y, s.length(), s.noseUpDegrees(), s.facesRight(), s.depth(), s.phase(), s.breaksSurface());
    }

    /** Tail beat, radians a second. */
    private double beat() {
        return switch (look.mood()) {
            case BEGGING -> 9;
            case CALM -> 5;
            case OFF_FEED -> 3.5;
            case SLOW -> 1.6;
            case GASPING -> 6;
        };
    }

    /** A third of the haze before each plane of fish, thicker low down. */
    private void paintVeil(Pen pen, TankBody body, int depth) {
        double share = look.haze() * (depth == 0 ? 0.28 : 0.46);
        if (share <= 0) {
            return;
        }
        pen.gc()
                .setFill(new LinearGradient(
                        0,
                        body.surface(),
                        0,
                        body.drain(),
                        false,
                        CycleMethod.NO_CYCLE,
                        new Stop(0, pen.color(Token.VEIL, 0.45 * share)),
                        new Stop(1, pen.color(Token.VEIL, share))));
        body.waterPath(pen.gc());
        pen.gc().fill();
    }

    private void paintSpecks(Pen pen, TankBody body) {
        Stream stream = Stream.of(look.seed(), 43);
        Color color = pen.color(Token.SPECK, 0.55);
        int specks = (int) Math.round(220 * look.haze());
        for (int i = 0; i < specks; i++) {
            double x = body.left() + body.width() * stream.uniform();
            double y = body.surface() + body.depth() * Math.sqrt(0.04 + 0.96 * stream.uniform());
            pen.dot(x, y, 0.5 + 0.6 * stream.uniform(), color);
        }
    }

    private void paintBubbles(Pen pen, TankBody body, double stoneX) {
        Stream stream = Stream.of(look.seed(), 44);
        double time = still ? 0 : seconds;
        double rise = body.floor() - 6 - body.surface();
        for (int i = 0; i < BUBBLES; i++) {
            double speed = 0.16 + 0.12 * stream.uniform();
            double way = (stream.uniform() + time * speed) % 1.0;
            double side = 2 * stream.uniform() - 1;
            double wobble = 1.6 * Math.sin(9 * way + 6 * side + i);
            double x = stoneX + side * (4 + 0.07 * body.width() * Math.pow(way, 0.8)) + wobble * way;
            double radius = (0.9 + 2.6 * way) * (0.6 + 0.6 * stream.uniform());
            pen.dot(x, body.floor() - 6 - way * rise, radius, pen.color(Token.BUBBLE, 0.35));
            pen.ring(x, body.floor() - 6 - way * rise, radius, 1, pen.color(Token.BUBBLE, 0.95));
        }
    }

    /** Feed on the floor. */
    private void paintLying(Pen pen, TankBody body) {
        Stream stream = Stream.of(look.seed(), 45);
        int pellets = (int) Math.round(46 * look.uneaten());
        for (int i = 0; i < pellets; i++) {
            double side = 2 * stream.uniform() - 1;
            double x = body.middle() + side * 0.46 * body.width();
            double slope = (1 - Math.abs(side) * 0.92) * (body.drain() - body.floor());
            pen.dot(x, body.floor() + slope - 2.2 - 3 * stream.uniform(), 1.7, pen.color(Token.PELLET));
        }
    }

    private void paintRings(Pen pen, TankBody body) {
        for (Swimmer s : shoal) {
            if (s.breaksSurface() && s.depth() < 2) {
                double size = s.depth() == 0 ? 1 : 0.75;
                for (int ring = 1; ring <= 2; ring++) {
                    double half = 6.5 * ring * size;
                    pen.gc().setStroke(pen.color(Token.RIPPLE, ring == 1 ? 0.95 : 0.5));
                    pen.gc().setLineWidth(1);
                    pen.gc().strokeOval(s.snoutX() - half, body.surface() - 1 - 0.26 * half, 2 * half, 0.52 * half);
                }
            }
        }
    }

    /** The dead, and feed that still floats. */
    private void paintFloating(Pen pen, TankBody body) {
        Stream stream = Stream.of(look.seed(), 46);
        int pellets = (int) Math.round(26 * look.uneaten());
        for (int i = 0; i < pellets; i++) {
            double x = body.left() + body.width() * (0.08 + 0.6 * stream.uniform());
            pen.dot(x, body.surface() - 1 - 0.5 * body.bulge() * stream.uniform(), 1.5, pen.color(Token.PELLET));
        }
        int dead = look.shape() == TankLook.Shape.NONE ? 0 : Math.min(MOST_DEAD, look.deadCount());
        double length = Math.min(0.15 * body.width(), 0.8 * body.width() / Math.max(1, dead));
        for (int i = 0; i < dead; i++) {
            double share = (i + 0.5) / Math.max(3, dead);
            double x = body.left() + body.width() * (0.06 + 0.7 * share) + 4 * (2 * stream.uniform() - 1);
            double y = body.surface() - 2 + 2 * stream.uniform();
            double tilt = 6 * (2 * stream.uniform() - 1);
            FishFigure.paintDead(
                    pen, new Swimmer(x, y, length, tilt, stream.uniform() < 0.5, 0, i, false), look.shape());
        }
    }

    private static void paintHose(Pen pen, TankBody body, double stoneX) {
        GraphicsContext gc = pen.gc();
        double hoseX = body.right() - 9;
        gc.beginPath();
        gc.moveTo(hoseX, body.rim() - 6);
        gc.lineTo(hoseX, body.floor() - 16);
        gc.quadraticCurveTo(hoseX, body.floor() - 4, stoneX + 10, body.floor() - 3);
        gc.setStroke(pen.color(Token.TANK_WALL, 0.85));
        gc.setLineWidth(1.75);
        gc.stroke();
        gc.setFill(pen.color(Token.TANK_WALL));
        gc.fillRoundRect(stoneX - 11, body.floor() - 6, 22, 6, 6, 6);
    }
}
