package startwater.app.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.score.Case;
import startwater.score.Policies;
import startwater.score.PolicyPlayer;
import startwater.score.Verdict;

/**
 * One decision put to a room: a few options by letter, hands counted for each, and what they are worth once that is
 * revealed. There is no way back behind a reveal.
 */
public final class ProjectorModel {
    private static final int MOST_OPTIONS = 5;
    private static final long SHUFFLE = 0x7072_6f6aL;
    private static final int MOST_HANDS = 99;

    private final Scenario scenario;
    private final VisitRecord visit;
    private final int number;
    private final Verdict verdict;
    private final List<Choice> choices;
    private final BooleanProperty revealed = new SimpleBooleanProperty();
    private final IntegerProperty hands = new SimpleIntegerProperty();

    /**
     * One option on the wall.
     *
     * @param letter A, B, ...
     * @param option with its worth
     * @param best whether it is as good as any
     * @param hands raised for it
     */
    public record Choice(char letter, Verdict.Option option, boolean best, IntegerProperty hands) {}

    private ProjectorModel(Scenario scenario, VisitRecord visit, int number, Verdict verdict, List<Choice> choices) {
        this.scenario = scenario;
        this.visit = visit;
        this.number = number;
        this.verdict = verdict;
        this.choices = List.copyOf(choices);
        choices.forEach(
                c -> c.hands().addListener((p, was, is) -> hands.set(hands.get() + is.intValue() - was.intValue())));
    }

    /**
     * Puts a decision of a drill to the room. The standing rules were kept before it. Takes as long as a mark.
     *
     * @param variant which hidden tank
     * @param number of the decision, from 1; the last one where there are fewer
     * @param judge gives the verdict of a case
     */
    public static ProjectorModel of(Scenario scenario, long variant, int number, Function<Case, Verdict> judge) {
        DrillRun run = PolicyPlayer.play(scenario, Policies.CAREFUL, variant, DrillRun.Pace.LEARNER);
        List<Integer> asked = IntStream.range(0, run.past().size())
                .filter(i -> run.past().visits().get(i).asked()
                        && run.past().visits().get(i).decision() != null)
                .boxed()
                .toList();
        int which = Math.max(1, Math.min(number, asked.size()));
        int at = asked.get(which - 1);
        Verdict verdict = judge.apply(new Case(scenario, run.past().upTo(at)));
        return new ProjectorModel(
                scenario, run.past().visits().get(at), which, verdict, choices(verdict, variant * 31 + which));
    }

    /** The best, the worst and some between, in an order that tells nothing. */
    private static List<Choice> choices(Verdict verdict, long seed) {
        List<Verdict.Option> all = verdict.options();
        int count = Math.min(MOST_OPTIONS, all.size());
        List<Verdict.Option> shown = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            shown.add(all.get(count == 1 ? 0 : i * (all.size() - 1) / (count - 1)));
        }
        Verdict.Option best = verdict.best();
        double[] lots = IntStream.range(0, count)
                .mapToDouble(i -> Stream.of(seed, SHUFFLE, i).uniform())
                .toArray();
        List<Integer> order = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> lots[i]))
                .toList();
        List<Choice> choices = new ArrayList<>();
        for (int place = 0; place < count; place++) {
            Verdict.Option option = shown.get(order.get(place));
            choices.add(new Choice((char) ('A' + place), option, option.equals(best), new SimpleIntegerProperty()));
        }
        return choices;
    }

    public Scenario scenario() {
        return scenario;
    }

    public VisitRecord visit() {
        return visit;
    }

    public int number() {
        return number;
    }

    public Verdict verdict() {
        return verdict;
    }

    public List<Choice> choices() {
        return choices;
    }

    /** Whether the worth of the options is shown. */
    public BooleanProperty revealedProperty() {
        return revealed;
    }

    /** Hands in all. */
    public IntegerProperty handsProperty() {
        return hands;
    }

    /** One hand more or less for an option; no more are counted once all is revealed. */
    public void raise(char letter, int by) {
        if (!revealed.get()) {
            choices.stream().filter(c -> c.letter() == letter).forEach(c -> c.hands()
                    .set(Math.max(0, Math.min(MOST_HANDS, c.hands().get() + by))));
        }
    }

    public void reveal() {
        revealed.set(true);
    }
}
