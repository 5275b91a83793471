package startwater.content;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import startwater.bench.Given;
import startwater.bench.SumKind;

/** Ways of drawing a sum that moves with its inputs. */
public enum FigureKind {
    /** Toxic share of the ammonia against pH. */
    TOXIC_SHARE("toxic-share", new Reckoning.OfBench(SumKind.TOXIC_AMMONIA), Plots::toxicShare),
    /** Chloride that nitrite asks for, and the salt for it. */
    CHLORIDE_NITRITE("chloride-nitrite", new Reckoning.OfBench(SumKind.SALT), Plots::chlorideNitrite),
    /** What is left after one change and the next. */
    REPEATED_CHANGES("repeated-changes", new Reckoning.OfBench(SumKind.AFTER_CHANGE), Plots::changes),
    /** A value on its way to a limit, such as alkalinity by the day. */
    DAYS_LEFT("days-left", new Reckoning.OfBench(SumKind.UNTIL), Plots::daysLeft),
    /** Oxygen running down when the air stops. */
    OXYGEN_MINUTES("oxygen-minutes", new Reckoning.OfBench(SumKind.AIR_OFF), Plots::oxygenMinutes),
    /** Ammonia, nitrite and nitrate of a new filter, day by day. */
    START_UP("start-up", Reckoning.StartUp.RUN, (figure, given) -> Plots.startUp(given)),
    /** The two groups of bacteria of a new filter, day by day. */
    TWO_GROUPS("two-groups", Reckoning.StartUp.RUN, (figure, given) -> Plots.twoGroups(given)),
    /** The feed table along body mass. */
    RATION("ration", new Reckoning.OfBench(SumKind.RATION), Plots::ration);

    private final String id;
    private final Reckoning sum;

    // The functions hold no state; the checker cannot see it.
    @SuppressWarnings("ImmutableEnumChecker")
    private final BiFunction<Block.Figure, Given, Plot> draw;

    FigureKind(String id, Reckoning sum, BiFunction<Block.Figure, Given, Plot> draw) {
        this.id = id;
        this.sum = sum;
        this.draw = draw;
    }

    /** Its name in a lesson. */
    public String id() {
        return id;
    }

    /** What it draws. */
    public Reckoning sum() {
        return sum;
    }

    Plot draw(Block.Figure figure, Given given) {
        return draw.apply(figure, given);
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
