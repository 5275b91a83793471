package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.Calendar;
import startwater.drill.Scenario;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** A keeper who comes to a tank visit by visit with a notebook; what is seen there can be set before each. */
final class Keeping {
    final Notebook book;
    /** Minutes since the system was filled, of the next visit. */
    int minute = 10 * Calendar.DAY;
    /** To the visit after. */
    int hours = 12;

    double temperatureC = 26;
    double oxygenMgPerL = 7;

    @Nullable
    FishMood mood;

    boolean air = true;
    int flowPercent = 100;
    int found;
    int alive;
    int toCome;

    Keeping(Scenario s) {
        book = new Notebook(s);
        alive = s.fishCount();
        toCome = s.stockCount() - alive;
        mood = alive > 0 ? FishMood.CALM : null;
    }

    /** Comes and reads these pads, pad and value in turn. */
    Notebook comes(Object... readings) {
        book.arrive(
                minute,
                minute + hours * 60,
                new Notebook.Sight(temperatureC, oxygenMgPerL, mood, air, flowPercent, found, alive, toCome));
        for (int i = 0; i < readings.length; i += 2) {
            book.read((Pad) readings[i], ((Number) readings[i + 1]).doubleValue());
        }
        minute += hours * 60;
        return book;
    }
}
