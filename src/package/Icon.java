import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import javax.imageio.ImageIO;

/** Draws the icon: a strip with three pads that is half in the water, and a fish below. Run: java Icon.java SIZE FILE. */
final class Icon {
    private static final Color PAPER = new Color(0xFBFAF6);
    private static final Color INK = new Color(0x18252C);
    private static final Color WATER = new Color(0x0E5A73);
    private static final Color SHALLOW = new Color(0x58B4CE);
    private static final Color[] PADS = {new Color(0xE6C95B), new Color(0xD98A5B), new Color(0xB0577E)};

    public static void main(String[] args) throws IOException {
        int size = Integer.parseInt(args[0]);
        BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.scale(size / 64.0, size / 64.0);
        paint(g);
        g.dispose();
        ImageIO.write(image, "png", new File(args[1]));
    }

    private static void paint(Graphics2D g) {
        RoundRectangle2D tile = new RoundRectangle2D.Double(2, 2, 60, 60, 10, 10);
        g.setColor(PAPER);
        g.fill(tile);
        Area water = new Area(tile);
        water.intersect(new Area(new Rectangle2D.Double(0, 28, 64, 36)));
        g.setColor(WATER);
        g.fill(water);
        g.setColor(SHALLOW);
        g.fill(new Rectangle2D.Double(2, 28, 60, 2));
        strip(g);
        fish(g);
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.6f));
        g.draw(tile);
    }

    private static void strip(Graphics2D g) {
        g.setColor(Color.WHITE);
        RoundRectangle2D body = new RoundRectangle2D.Double(13, 8, 11, 46, 3, 3);
        g.fill(body);
        for (int i = 0; i < PADS.length; i++) {
            g.setColor(PADS[i]);
            g.fill(new Rectangle2D.Double(14.6, 24 + 9.4 * i, 7.8, 7.4));
        }
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.2f));
        g.draw(body);
    }

    private static void fish(Graphics2D g) {
        g.setColor(PAPER);
        Path2D body = new Path2D.Double();
        body.moveTo(30, 45);
        body.curveTo(35, 37, 44, 37, 49, 44);
        body.lineTo(56, 38.5);
        body.quadTo(53.5, 45, 56, 51.5);
        body.lineTo(49, 46);
        body.curveTo(44, 53, 35, 53, 30, 45);
        body.closePath();
        g.fill(body);
        g.setColor(INK);
        g.fill(new Ellipse2D.Double(35, 42.4, 2.4, 2.4));
    }
}
