package startwater.page;

import com.openhtmltopdf.css.constants.IdentValue;
import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.css.value.FontSpecification;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.FSFont;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.File;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Draws the few kinds of SVG that our pages hold into a PDF: rectangles, circles, lines, polylines and words, where a whole
 * SVG library would be larger than the program. An element of another kind is an error, not a gap on paper.
 */
final class SvgDrawing implements SVGDrawer {
    private static final String BLACK = "#000000";

    @Override
    public void importFontFaceRules(List<FontFaceRule> fonts, SharedContext shared) {
        // Our pages bring no fonts of their own.
    }

    @Override
    public void addFontFile(File file, String family, @Nullable Integer weight, FontStyle style) {
        // Words are drawn in the typeface of the page.
    }

    @Override
    public SVGImage buildSVGImage(
            Element svg, Box box, CssContext context, double cssWidth, double cssHeight, double dotsPerPixel) {
        return new Picture(svg, dotsPerPixel);
    }

    @Override
    public void close() {
        // Holds nothing.
    }

    /** One picture. Lengths within it are in its own units, {@link #scale} gives dots of the page for one. */
    private static final class Picture implements SVGImage {
        private final Element svg;
        private final double scale;
        private final double width;
        private final double height;

        Picture(Element svg, double dotsPerPixel) {
            this.svg = svg;
            String[] box = svg.getAttribute("viewBox").split(" ");
            this.width = number(svg, "width") * dotsPerPixel;
            this.scale = width / Double.parseDouble(box[2]);
            this.height = Double.parseDouble(box[3]) * scale;
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.ceil(width);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.ceil(height);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double left, double top) {
            for (Node node = svg.getFirstChild(); node != null; node = node.getNextSibling()) {
                if (node instanceof Element shape) {
                    draw(shape, device, context, left, top);
                }
            }
        }

        private void draw(Element e, OutputDevice device, RenderingContext context, double left, double top) {
            switch (e.getTagName()) {
                case "title" -> {}
                case "text" -> words(e, device, context, left, top);
                case "rect" ->
                    paint(
                            e,
                            new Rectangle2D.Double(
                                    left + at(e, "x"), top + at(e, "y"), at(e, "width"), at(e, "height")),
                            BLACK,
                            device);
                case "circle" -> {
                    double r = at(e, "r");
                    paint(
                            e,
                            new Ellipse2D.Double(left + at(e, "cx") - r, top + at(e, "cy") - r, 2 * r, 2 * r),
                            BLACK,
                            device);
                }
                case "line" ->
                    paint(
                            e,
                            new Line2D.Double(
                                    left + at(e, "x1"), top + at(e, "y1"), left + at(e, "x2"), top + at(e, "y2")),
                            "none",
                            device);
                case "polyline" -> paint(e, polyline(e, left, top), BLACK, device);
                default -> throw new IllegalArgumentException("SVG element " + e.getTagName());
            }
        }

        private Path2D polyline(Element e, double left, double top) {
            Path2D path = new Path2D.Double();
            for (String point : e.getAttribute("points").split(" ")) {
                String[] xy = point.split(",");
                double x = left + scale * Double.parseDouble(xy[0]);
                double y = top + scale * Double.parseDouble(xy[1]);
                if (path.getCurrentPoint() == null) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
            return path;
        }

        private void paint(Element e, Shape shape, String usualFill, OutputDevice device) {
            String fill = attribute(e, "fill", usualFill);
            if (!fill.equals("none")) {
                device.setColor(colour(fill));
                device.fill(shape);
            }
            String stroke = attribute(e, "stroke", "none");
            if (!stroke.equals("none")) {
                device.setColor(colour(stroke));
                double wide = Double.parseDouble(attribute(e, "stroke-width", "1"));
                device.setStroke(new BasicStroke(
                        (float) (wide * scale), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes(e), 0));
                device.draw(shape);
            }
        }

        private float @Nullable [] dashes(Element e) {
            String text = e.getAttribute("stroke-dasharray");
            if (text.isEmpty()) {
                return null;
            }
            String[] each = text.split(" ");
            float[] dashes = new float[each.length];
            for (int i = 0; i < each.length; i++) {
                dashes[i] = (float) (scale * Double.parseDouble(each[i]));
            }
            return dashes;
        }

        private void words(Element e, OutputDevice device, RenderingContext context, double left, double top) {
            FontSpecification wanted = new FontSpecification();
            wanted.families = new String[] {Pdf.FAMILY};
            wanted.fontWeight = IdentValue.NORMAL;
            wanted.fontStyle = IdentValue.NORMAL;
            wanted.variant = IdentValue.NORMAL;
            wanted.size = (float) (scale * number(svg, "font-size"));
            FSFont font = context.getFont(wanted);
            String words = e.getTextContent();
            int wide = context.getTextRenderer().getWidth(context.getFontContext(), font, words);
            double before =
                    switch (attribute(e, "text-anchor", "start")) {
                        case "end" -> wide;
                        case "middle" -> wide / 2.0;
                        default -> 0;
                    };
            device.setFont(font);
            device.setColor(colour(attribute(e, "fill", BLACK)));
            context.getTextRenderer()
                    .drawString(device, words, (float) (left + at(e, "x") - before), (float) (top + at(e, "y")));
        }

        private double at(Element e, String name) {
            return scale * number(e, name);
        }

        private static double number(Element e, String name) {
            return Double.parseDouble(e.getAttribute(name));
        }

        private static String attribute(Element e, String name, String usual) {
            return e.hasAttribute(name) ? e.getAttribute(name) : usual;
        }

        private static FSRGBColor colour(String hex) {
            return new FSRGBColor(Integer.parseInt(hex.substring(1), 16));
        }
    }
}
