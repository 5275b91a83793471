package startwater.drill;

import java.util.EnumMap;
import java.util.Map;
import startwater.strip.Pad;

/**
 * A wet strip: where each pad's colour lies on its scale.
 *
 * @param number which strip of the run, from 0
 * @param dilution how many times the sample was diluted
 * @param positions continuous position in blocks by pad
 */
public record DippedStrip(int number, int dilution, Map<Pad, Double> positions) {
    public DippedStrip {
        positions = Map.copyOf(new EnumMap<>(positions));
    }

    public double position(Pad pad) {
        Double at = positions.get(pad);
        if (at == null) {
            throw new IllegalArgumentException("Strip " + number + " has no " + pad + " pad.");
        }
        return at;
    }
}
