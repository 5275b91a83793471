package startwater.score;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.fish.Stressor;
import startwater.strip.Pad;

/**
 * What came of judging one decision: nothing in it knows the hidden tank.
 *
 * @param options all options on the same plausible tanks, best first by expected loss
 * @param own place of the learner's choice among them
 * @param regret of the choice, % of the stock: its expected loss over that of the best option, or of a second strip first
 *     where that is worth its price
 * @param standardError of that regret, % of the stock
 * @param mark 0..100
 * @param word sound, costly or dangerous
 * @param scored whether the visit counts: some option would have made a difference
 * @param arguable whether another reasonable view would accept the choice
 * @param stock fish the percentages refer to
 * @param days how far ahead the options were followed
 * @param decisive the variable that decides, with its path under the choice and under the best option
 * @param ranges what the log made plausible today, by pad
 * @param foresight the mark for the prediction, or null without one
 * @param surprise how improbable the written readings are in all plausible tanks, nats over the expected; large is odd
 * @param credited false where the world contradicts the log and the decision earns no credit
 * @param information what one more strip before deciding would have been worth
 * @param lines the explanation, in order
 */
public record Verdict(
        List<Option> options,
        int own,
        double regret,
        double standardError,
        double mark,
        Word word,
        boolean scored,
        boolean arguable,
        double stock,
        double days,
        Path decisive,
        List<Range> ranges,
        @Nullable Foresight foresight,
        double surprise,
        boolean credited,
        Information information,
        List<Line> lines) {
    public Verdict {
        options = List.copyOf(options);
        ranges = List.copyOf(ranges);
        lines = List.copyOf(lines);
    }

    /** The three words. */
    public enum Word {
        SOUND,
        COSTLY,
        DANGEROUS
    }

    /**
     * One option.
     *
     * @param decision what is done
     * @param deaths expected deaths, fish of the stock
     * @param deathsLow tenth of the plausible tanks, fish
     * @param deathsHigh ninetieth of a hundred, fish
     * @param deathsBeside expected deaths in the nursery beside, fish; among {@code deaths}
     * @param byCause expected deaths by {@link Stressor}, fish
     * @param parts expected loss by {@link Component}, % of the stock
     * @param loss expected loss, % of the stock
     * @param own whether it is the learner's
     * @param rules whether it is what the standing rules say
     */
    public record Option(
            Decision decision,
            double deaths,
            double deathsLow,
            double deathsHigh,
            double deathsBeside,
            List<Double> byCause,
            List<Double> parts,
            double loss,
            boolean own,
            boolean rules) {
        public Option {
            byCause = List.copyOf(byCause);
            parts = List.copyOf(parts);
        }

        public double deathsBy(Stressor cause) {
            return byCause.get(cause.ordinal());
        }

        public double part(Component component) {
            return parts.get(component.ordinal());
        }
    }

    /** The variable that decides a visit. */
    public enum Variable {
        /** Un-ionised ammonia, mg N/L. */
        TOXIC_AMMONIA,
        /** Nitrite counted against chloride, mg N/L. */
        EFFECTIVE_NITRITE,
        /** Oxygen, mg/L: harms downwards. */
        OXYGEN,
        /** Total ammonia, mg N/L: without fish. */
        TOTAL_AMMONIA,
        /** Total residual chlorine, mg/L. */
        CHLORINE
    }

    /**
     * How the deciding variable goes on.
     *
     * @param variable which
     * @param hours hours from the visit, rising
     * @param own tenth, median and ninetieth under the choice, one triple an hour entry
     * @param best the same under the best option
     * @param guidance level from which it harms
     * @param returnHours hours until the keeper may act again
     * @param todayFromLog today's value worked from the log, or NaN
     */
    public record Path(
            Variable variable,
            List<Double> hours,
            List<Band> own,
            List<Band> best,
            double guidance,
            double returnHours,
            double todayFromLog) {
        public Path {
            hours = List.copyOf(hours);
            own = List.copyOf(own);
            best = List.copyOf(best);
        }
    }

    /** A decision in a line of a system without fish: its words leave out the feed. */
    public record WithoutFish(Decision decision) {}

    /** Expected deaths in a line, fish: they are said as people count. */
    public record Fish(double count) {}

    /** Tenth, median and ninetieth of the plausible tanks. */
    public record Band(double low, double middle, double high) {}

    /** What the log made plausible for what a pad answers to, at the visit, in the pad's unit. */
    public record Range(Pad pad, Band today, Band next) {}

    /**
     * Worth of testing before the decision, all in % of the stock.
     *
     * @param strip of one more strip, its colour pads read together
     * @param price of a strip and the minutes it takes
     * @param perfect of knowing the water itself: no test is worth more
     * @param pads of each pad alone that there is still a strip for
     */
    public record Information(double strip, double price, double perfect, List<PadWorth> pads) {
        public Information {
            pads = List.copyOf(pads);
        }

        /** Whether one more strip is worth its price. */
        public boolean retest() {
            return strip > price;
        }

        /** The pad that is worth most, or null where none is worth anything. */
        public @Nullable PadWorth mostTelling() {
            return pads.stream()
                    .filter(p -> p.worth() > 0)
                    .reduce((a, b) -> b.worth() > a.worth() ? b : a)
                    .orElse(null);
        }
    }

    /** Worth of reading one pad, % of the stock. @param read whether it was read at this visit, so that this is once more */
    public record PadWorth(Pad pad, boolean read, double worth) {}

    /**
     * How well the next strip was foreseen.
     *
     * @param mark 0..100
     * @param chance the model's own chance of the block that was said
     * @param likeliest the likeliest block
     * @param likeliestChance its chance
     */
    public record Foresight(double mark, double chance, int likeliest, double likeliestChance) {}

    /**
     * One line of the explanation: a key into the language files and its parameters, already worked out on this case.
     *
     * @param key text key, for example {@code why.nitrite}
     * @param severity what colour and weight it gets
     * @param parameters numbers and words in the order of the text; numbers are unrounded
     */
    public record Line(String key, Severity severity, List<Object> parameters) {
        public Line {
            parameters = List.copyOf(parameters);
        }

        /** How a line weighs. */
        public enum Severity {
            FACT,
            OWN,
            BEST,
            HARM,
            RULE
        }
    }

    private static final int LEADING = 3;

    /** The lines to be read first, at most three: what the log earns, what the numbers said, what it does, what it costs. */
    public List<Line> leading() {
        List<Line> first = new ArrayList<>();
        for (String start : List.of("credit.", "said.", "does.", "costs.")) {
            lines.stream().filter(l -> l.key().startsWith(start)).findFirst().ifPresent(first::add);
        }
        return List.copyOf(first.subList(0, Math.min(LEADING, first.size())));
    }

    /** All other lines, in order. */
    public List<Line> folded() {
        List<Line> first = leading();
        return lines.stream().filter(l -> !first.contains(l)).toList();
    }

    public Option chosen() {
        return options.get(own);
    }

    public Option best() {
        return options.get(0);
    }
}
