package startwater.cli;

import java.util.Locale;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import startwater.cli.Terminal.Answer;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Prediction;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Scenario;
import startwater.strip.Pad;
import startwater.text.Amounts;
import startwater.text.Amounts.Amount;
import startwater.text.DrillWords;
import startwater.text.NumberEntry;
import startwater.text.Texts;
import startwater.text.VisitFacts;
import startwater.water.Dose;

/** The decision of one visit, asked item by item and said back before it is done. */
final class DecideTalk {
    private final Terminal terminal;
    private final DrillWords words;
    private final Texts texts;
    private final VisitFacts facts;

    DecideTalk(Terminal terminal, DrillWords words, VisitFacts facts) {
        this.terminal = terminal;
        this.words = words;
        this.texts = words.texts();
        this.facts = facts;
    }

    /** Asks until the learner says that it is to be done. */
    Decision decide() {
        terminal.gap();
        terminal.say(texts.text(
                "play.next", words.when(facts.nextMinute(), facts.visit().minute())));
        while (true) {
            Decision d = items();
            DrillWords.Statement said = words.statement(d, facts);
            terminal.say(said.main() + " " + said.rest());
            if (terminal.ask(texts.text("play.doIt"), this::yes)) {
                return d;
            }
        }
    }

    private Decision items() {
        Decision d = Decision.LEAVE_ALONE;
        if (facts.toCome() > 0) {
            d = d.withStock(terminal.ask(texts.text("play.stock", facts.toCome()), this::fish));
        }
        VisitFacts fed = facts.with(d);
        if (fed.fishIn()) {
            d = d.withFeed(terminal.ask(texts.text("play.feed", words.grams(fed.rationG())), t -> feed(t, fed)));
        }
        d = d.withChange(terminal.ask(texts.text("play.change", facts.volumeL()), t -> amount(t, Amounts::change)));
        if (d.change() > 0 && facts.chlorinated()) {
            d = d.withNeutralise(terminal.ask(texts.text("play.neutralise"), this::yes));
        }
        d = d.withSalt(dose("play.salt", Dose.SODIUM_CHLORIDE))
                .withBicarbonate(dose("play.bicarbonate", Dose.SODIUM_BICARBONATE))
                .withSodaAsh(dose("play.sodaAsh", Dose.SODIUM_CARBONATE))
                .withAmmoniumChloride(dose("play.ammonium", Dose.AMMONIUM_CHLORIDE));
        return devices(d);
    }

    /** Air, filter, what stands, and what is to come: asked only where there is something to choose. */
    private Decision devices(Decision start) {
        boolean standing = !facts.seen().pump();
        Air[] airs = facts.spareAir() ? Air.values() : new Air[] {Air.ON, Air.OFF};
        FilterCare[] cares = standing
                ? FilterCare.values()
                : new FilterCare[] {FilterCare.LEAVE, FilterCare.RINSE, FilterCare.SCRUB};
        Decision d = start.withAir(terminal.ask(
                texts.text(facts.spareAir() ? "play.airAll" : "play.air"), t -> choice(t, "play.air.", airs)));
        d = d.withFilter(terminal.ask(
                texts.text(standing ? "play.filterStanding" : "play.filter"), t -> choice(t, "play.filter.", cares)));
        if (standing && facts.seen().power()) {
            d = d.withPump(terminal.ask(texts.text("play.pump"), this::yes));
        }
        if (!facts.seen().heater() && facts.seen().power()) {
            d = d.withHeater(terminal.ask(texts.text("play.heater"), this::yes));
        }
        if (facts.ripeMediaLeft() > 0) {
            double left = Math.rint(100 * facts.ripeMediaLeft());
            d = d.withRipeMedia(terminal.ask(texts.text("play.media", left), this::media));
        }
        return d.withFollowUp(
                terminal.ask(texts.text("play.follow"), t -> choice(t, "play.follow.", FollowUp.values())));
    }

    /** Share of the planned fish, from a number, a share of those to come, or all. */
    private Answer<Double> fish(String typed) {
        Scenario.Fish planned = facts.scenario().plannedFish();
        double all = planned == null ? 0 : (double) facts.toCome() / planned.count();
        if (typed.isEmpty()) {
            return Answer.of(0.0);
        }
        if (typed.toLowerCase(Locale.ROOT).equals(texts.text("play.all.fish"))) {
            return Answer.of(Math.min(1, all));
        }
        NumberEntry entry = NumberEntry.of(typed);
        double share = entry.refusal() != null || planned == null
                ? Double.NaN
                : switch (entry.unit()) {
                    case "%" -> all * entry.value() / 100;
                    case "" -> Math.rint(entry.value()) / planned.count();
                    default -> Double.NaN;
                };
        return share <= Math.min(1, all)
                ? Answer.of(share)
                : Answer.refused(texts.text("play.onlyFish", facts.toCome()));
    }

    private Answer<Double> media(String typed) {
        if (typed.isEmpty()) {
            return Answer.of(0.0);
        }
        NumberEntry entry = NumberEntry.of(typed);
        boolean share = entry.refusal() == null
                && (entry.unit().isEmpty() || entry.unit().equals("%"));
        return share && entry.value() <= 100 * facts.ripeMediaLeft()
                ? Answer.of(entry.value() / 100)
                : Answer.refused(texts.text("play.onlyShare", Math.rint(100 * facts.ripeMediaLeft())));
    }

    private double dose(String key, Dose compound) {
        double left = facts.leftG(compound);
        return left > 0
                ? terminal.ask(texts.text(key, left), t -> amount(t, (typed, f) -> Amounts.dose(compound, typed, f)))
                : 0;
    }

    private Answer<Double> feed(String typed, VisitFacts fed) {
        String word = typed.toLowerCase(Locale.ROOT);
        if (word.isEmpty() || word.equals(texts.text("play.full"))) {
            return Answer.of(1.0);
        }
        if (word.equals(texts.text("play.half"))) {
            return Answer.of(0.5);
        }
        return word.equals(texts.text("play.none")) ? Answer.of(0.0) : amount(typed, (t, f) -> Amounts.feed(t, fed));
    }

    private Answer<Double> amount(String typed, BiFunction<String, VisitFacts, Amount> reader) {
        if (typed.isEmpty()) {
            return Answer.of(0.0);
        }
        Amount amount = reader.apply(typed, facts);
        return amount.refusal() == null
                ? Answer.of(amount.value())
                : Answer.refused(amount.refusal().say(texts));
    }

    /** The first of the choices for an empty line. */
    private <E extends Enum<E>> Answer<E> choice(String typed, String key, E[] choices) {
        if (typed.isEmpty()) {
            return Answer.of(choices[0]);
        }
        for (E choice : choices) {
            if (texts.text(key + choice.name().toLowerCase(Locale.ROOT)).equals(typed.toLowerCase(Locale.ROOT))) {
                return Answer.of(choice);
            }
        }
        return Answer.refused(texts.text("play.noChoice", typed));
    }

    private Answer<Boolean> yes(String typed) {
        String word = typed.toLowerCase(Locale.ROOT);
        if (word.isEmpty() || texts.text("play.yes").startsWith(word)) {
            return Answer.of(true);
        }
        return texts.text("play.no").startsWith(word)
                ? Answer.of(false)
                : Answer.refused(texts.text("play.noChoice", typed));
    }

    /** What the next strip will show, and how sure the learner is; null when left out. */
    @Nullable
    Prediction foresee() {
        Pad pad = facts.padToForesee();
        int block = terminal.ask(texts.text("play.foresee", words.pad(pad), words.unit(pad)), t -> block(pad, t));
        if (block < 0) {
            return null;
        }
        Sureness sure = terminal.ask(texts.text("play.sure"), this::sureness);
        return new Prediction(pad, block, sure);
    }

    private Answer<Integer> block(Pad pad, String typed) {
        if (typed.isEmpty()) {
            return Answer.of(-1);
        }
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return Answer.refused(entry.refusal().say(texts));
        }
        for (int block = 0; block < pad.scale().blocks(); block++) {
            if (Math.abs(pad.scale().blockValue(block) - entry.value()) < 1e-9) {
                return Answer.of(block);
            }
        }
        return Answer.refused(texts.text("play.noBlock", typed));
    }

    private Answer<Sureness> sureness(String typed) {
        return switch (typed) {
            case "1" -> Answer.of(Sureness.NOT_SURE);
            case "", "2" -> Answer.of(Sureness.FAIRLY_SURE);
            case "3" -> Answer.of(Sureness.SURE);
            default -> Answer.refused(texts.text("play.noChoice", typed));
        };
    }
}
