package startwater.content;

import java.util.Arrays;
import java.util.List;
import startwater.bench.SumKind;

/** Ways of drawing a sum that moves with its inputs. */
public enum FigureKind {
    /** Toxic share of the ammonia against pH, with the share and the mg/L at the sliders' values. */
    TOXIC_SHARE("toxic-share", new Reckoning.OfBench(SumKind.TOXIC_AMMONIA));

    private final String id;
    private final Reckoning sum;

    FigureKind(String id, Reckoning sum) {
        this.id = id;
        this.sum = sum;
    }

    /** Its name in a lesson. */
    public String id() {
        return id;
    }

    /** What it draws. */
    public Reckoning sum() {
        return sum;
    }

    /** @throws IllegalArgumentException without such a figure */
    static FigureKind byId(String id) {
        return Arrays.stream(values())
                .filter(kind -> kind.id.equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No figure is called " + id));
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(FigureKind::id).toList();
    }
}
