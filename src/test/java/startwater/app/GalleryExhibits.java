package startwater.app;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import startwater.app.Gallery.Exhibit;
import startwater.app.view.part.ScaleLook;
import startwater.app.view.part.ScaleView;
import startwater.app.view.part.StripLook;
import startwater.app.view.part.StripView;
import startwater.app.view.part.TankLook;
import startwater.app.view.part.TankPicture;
import startwater.strip.FishMood;
import startwater.strip.Pad;
import startwater.strip.PadColours;

/** What hangs in the gallery; all values are invented. */
final class GalleryExhibits {
    private GalleryExhibits() {}

    static Map<String, Exhibit> all() {
        Map<String, Exhibit> all = new HashMap<>();
        for (FishMood mood : FishMood.values()) {
            String name = "tank-" + mood.name().toLowerCase(Locale.ROOT);
            double haze = mood == FishMood.BEGGING ? 0.15 : mood == FishMood.SLOW ? 0.7 : 0.3;
            all.put(name, tank(mood, TankLook.Shape.CATFISH, haze, true));
        }
        all.put("tank-tilapia", tank(FishMood.CALM, TankLook.Shape.TILAPIA, 0.0, true));
        all.put("tank-noair", tank(FishMood.GASPING, TankLook.Shape.TILAPIA, 0.5, false));
        all.putAll(GalleryCharts.all());
        all.put("controls", new Exhibit(620, 440, GalleryControls::board));
        all.put("strip", new Exhibit(464, 116, GalleryExhibits::strip));
        for (Pad pad : Pad.values()) {
            double at = 0.45 * pad.scale().stops();
            String name = "scale-" + pad.name().toLowerCase(Locale.ROOT);
            all.put(name, new Exhibit(432, 106, () -> scale(pad, (int) at)));
        }
        return all;
    }

    private static Node strip() {
        List<StripLook.PadLook> pads = List.of(
                pad("ammonia", "1", false, Pad.AMMONIA, 4.2),
                pad("nitrite", "matching", true, Pad.NITRITE, 4.1),
                pad("nitrate", "5", false, Pad.NITRATE, 4.1),
                pad("pH", "7.8", false, Pad.PH, 4.1),
                pad("alkalinity", "50–100", false, Pad.ALKALINITY, 3.6),
                pad("chlorine", "", true, Pad.CHLORINE, 0.2));
        StripView view = new StripView(new StripLook(pads, "Six pads."));
        view.inHandProperty().set(1);
        return view;
    }

    private static StripLook.PadLook pad(String name, String written, boolean open, Pad pad, double position) {
        return new StripLook.PadLook(name, written, open, color(pad, position), name);
    }

    private static Color color(Pad pad, double position) {
        return Color.web(PadColours.of(pad).srgb(position).hex());
    }

    private static Node scale(Pad pad, int stop) {
        List<String> labels = new ArrayList<>();
        List<String> stops = new ArrayList<>();
        List<Color> colors = new ArrayList<>();
        for (int i = 0; i < pad.scale().stops(); i++) {
            stops.add(pad.scale().stopText(i, Locale.ENGLISH));
            if (i % 2 == 0) {
                labels.add(stops.get(i));
                if (pad.matchedByColour()) {
                    colors.add(color(pad, i / 2.0));
                }
            }
        }
        ScaleView view = new ScaleView(
                pad.matchedByColour()
                        ? ScaleLook.matched(labels, colors, color(pad, stop / 2.0 + 0.15), stops, "pad")
                        : ScaleLook.column(labels, stop / 2.0 + 0.15, stops, "pad"));
        view.stopProperty().set(stop);
        return view;
    }

    private static Exhibit tank(FishMood mood, TankLook.Shape shape, double haze, boolean air) {
        int dead = mood == FishMood.SLOW ? 4 : 0;
        double uneaten = mood == FishMood.OFF_FEED ? 0.7 : 0.0;
        TankLook look = new TankLook(
                240, 10, mood, dead, haze, uneaten, air, 0.95, "2,400 L", shape, 5, "The fish crowd to you.");
        return new Exhibit(352, 260, () -> {
            TankPicture picture = new TankPicture(look);
            picture.setStill(true);
            return picture;
        });
    }
}
