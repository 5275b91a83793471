package startwater.app;

import java.util.HashMap;
import java.util.Map;
import startwater.app.Gallery.Exhibit;
import startwater.app.view.part.TankLook;
import startwater.app.view.part.TankPicture;
import startwater.strip.FishMood;

/** What hangs in the gallery; all values are invented. */
final class GalleryExhibits {
    private GalleryExhibits() {}

    static Map<String, Exhibit> all() {
        Map<String, Exhibit> all = new HashMap<>();
        for (FishMood mood : FishMood.values()) {
            String name = "tank-" + mood.name().toLowerCase(java.util.Locale.ROOT);
            double haze = mood == FishMood.BEGGING ? 0.15 : mood == FishMood.SLOW ? 0.7 : 0.3;
            all.put(name, tank(mood, TankLook.Shape.CATFISH, haze, true));
        }
        all.put("tank-tilapia", tank(FishMood.CALM, TankLook.Shape.TILAPIA, 0.0, true));
        all.put("tank-noair", tank(FishMood.GASPING, TankLook.Shape.TILAPIA, 0.5, false));
        return all;
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
