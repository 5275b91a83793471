package startwater.content;

import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import startwater.bench.Given;
import startwater.bench.Measure;
import startwater.drill.Observation;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;

/** A part of a lesson: prose, or something that the tool brings alive. A new kind joins here and in {@link BlockKind}. */
public sealed interface Block {
    /** What must be the same in both languages: its kind and its numbers. Empty for prose. */
    default String skeleton() {
        return "";
    }

    /** Answers by kind. */
    <T> T match(Cases<T> cases);

    /** One answer for each kind of block. */
    interface Cases<T> {
        T heading(Heading heading);

        T paragraph(Paragraph paragraph);

        T items(Items items);

        T figure(Figure figure);

        T worked(Worked worked);

        T choice(Choice choice);

        T number(NumberQuestion question);

        T strip(StripReading strip);

        T predict(Predict predict);

        T drill(DrillLink link);

        T caution(Caution caution);
    }

    /** @param level 2 or 3 */
    record Heading(int level, List<Inline> words) implements Block {
        public Heading {
            words = List.copyOf(words);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.heading(this);
        }
    }

    record Paragraph(List<Inline> words) implements Block {
        public Paragraph {
            words = List.copyOf(words);
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.paragraph(this);
        }
    }

    /** @param numbered whether the items have numbers */
    record Items(boolean numbered, List<List<Inline>> items) implements Block {
        public Items {
            items = items.stream().map(List::copyOf).toList();
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.items(this);
        }
    }

    /**
     * A live picture.
     *
     * @param kind what is drawn
     * @param sliders the inputs that move, by name
     * @param fixed the inputs that do not
     * @param species species id, or empty where the sum asks for none
     * @param caption what to try
     */
    record Figure(
            FigureKind kind, Map<String, Slider> sliders, Map<String, Double> fixed, String species, String caption)
            implements Block {
        public Figure {
            sliders = Map.copyOf(sliders);
            fixed = Map.copyOf(fixed);
        }

        /** The inputs with every slider where it stands at first. */
        public Map<String, Double> atFirst() {
            Map<String, Double> inputs = new HashMap<>(fixed);
            sliders.forEach((name, slider) -> inputs.put(name, slider.at()));
            return inputs;
        }

        /** What is to be drawn. @param inputs by name, as the sliders stand */
        public Plot plot(Map<String, Double> inputs) {
            return kind.draw(this, new Given(inputs, species));
        }

        /** The right end of a slider, or what is fixed, or else this. */
        double high(String input, double otherwise) {
            Slider slider = sliders.get(input);
            return slider != null ? slider.high() : fixed.getOrDefault(input, otherwise);
        }

        /** The left end of a slider, or this where it is none. */
        double low(String input, double otherwise) {
            Slider slider = sliders.get(input);
            return slider != null ? slider.low() : otherwise;
        }

        @Override
        public String skeleton() {
            return "figure " + kind.id() + sorted(sliders) + sorted(fixed) + species;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.figure(this);
        }
    }

    /** @param at where it stands at first */
    record Slider(double low, double high, double step, double at) {}

    /**
     * A sum worked step by step. Its last {@code blank} steps are left to the learner: none in a full example, all when the
     * learner works alone.
     *
     * @param sum which sum
     * @param given its inputs
     * @param ask the question
     * @param steps in order
     * @param blank number of last steps left open
     * @param tolerancePercent how far off an answer may be, relative
     */
    record Worked(Reckoning sum, Given given, String ask, List<Step> steps, int blank, double tolerancePercent)
            implements Block {
        public Worked {
            steps = List.copyOf(steps);
        }

        /** The number that a step arrives at. */
        public Measure value(Step step) {
            return sum.result(given, step.find());
        }

        @Override
        public String skeleton() {
            List<String> found = steps.stream().map(Step::find).toList();
            return "worked " + sum.id() + sorted(given) + found + " blank " + blank + " " + tolerancePercent;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.worked(this);
        }
    }

    /** @param say what is done, @param find the result of the sum at which it arrives */
    record Step(String say, String find) {}

    /** A choice: one option is right, each says why it is or is not. */
    record Choice(String ask, List<Option> options) implements Block {
        public Choice {
            options = List.copyOf(options);
        }

        @Override
        public String skeleton() {
            return "question choice " + options.stream().map(Option::right).toList();
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.choice(this);
        }
    }

    record Option(String says, boolean right, String reason) {}

    /**
     * A number to work out or to estimate.
     *
     * @param estimate whether a rough answer is enough
     * @param find the result of the sum that is asked for
     * @param tolerance for a sum, percent; for an estimate, the factor within which it is right
     * @param because why it is so
     */
    record NumberQuestion(
            boolean estimate, String ask, Reckoning sum, Given given, String find, double tolerance, String because)
            implements Block {
        /** The right answer. */
        public Measure answer() {
            return sum.result(given, find);
        }

        /** Whether an answer is near enough. */
        public boolean accepts(double given) {
            double right = answer().value();
            return estimate
                    ? given >= right / tolerance && given <= right * tolerance
                    : Math.abs(given - right) <= Math.abs(right) * tolerance / 100;
        }

        @Override
        public String skeleton() {
            String kind = estimate ? "question estimate " : "question number ";
            return kind + sum.id() + sorted(given) + " " + find + " " + tolerance;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.number(this);
        }
    }

    /**
     * A wet strip to read.
     *
     * @param ask the question
     * @param water what is in the water by pad, in the unit of the pad; nitrate without the nitrite that its pad counts too
     * @param dilution how many times the sample was diluted
     * @param seed which strip of the bottle: the same seed gives the same strip
     * @param because what the reading means
     */
    record StripReading(String ask, Map<Pad, Double> water, int dilution, long seed, String because) implements Block {
        private static final long DIPPED = 0x6c65_7373_6f6eL;
        /** One block off is human. */
        private static final double HUMAN_BLOCKS = 1;

        public StripReading {
            water = Collections.unmodifiableMap(new EnumMap<>(water));
        }

        /** What the pad answers to in the sample, in its unit. */
        public double value(Pad pad) {
            double here = water.getOrDefault(pad, 0.0);
            double all = pad == Pad.NITRATE ? here + water.getOrDefault(Pad.NITRITE, 0.0) : here;
            return pad == Pad.PH ? all : all / dilution;
        }

        /** Where the wet pad comes to lie on its scale, blocks. */
        public double position(Pad pad) {
            double normal = Stream.of(seed, DIPPED, pad.ordinal()).normal();
            return ReadingModel.padPosition(pad, value(pad), 0, Observation.PAD_SPREAD_BLOCKS, normal);
        }

        /** How far a written stop is off what the pad shows, blocks; under 0 was read too low. */
        public double off(Pad pad, int stop) {
            return pad.scale().stopPosition(stop) - position(pad);
        }

        /** Whether a written stop is near enough. */
        public boolean accepts(Pad pad, int stop) {
            return Math.abs(off(pad, stop)) <= HUMAN_BLOCKS;
        }

        @Override
        public String skeleton() {
            return "strip" + sorted(water) + " 1:" + dilution + " " + seed;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.strip(this);
        }
    }

    /**
     * The next reading to foretell, with how sure the learner is.
     *
     * @param ask what is known and what is asked
     * @param pad which pad
     * @param sum what works the answer out
     * @param given its inputs
     * @param find the result that the pad will show
     * @param because why it comes out so
     */
    record Predict(String ask, Pad pad, Reckoning sum, Given given, String find, String because) implements Block {
        /** What will be in the water. */
        public Measure answer() {
            return sum.result(given, find);
        }

        /** The block of the scale that will be nearest. */
        public int block() {
            return (int) StrictMath.rint(pad.scale().position(answer().value()));
        }

        @Override
        public String skeleton() {
            return "predict " + pad + " " + sum.id() + sorted(given) + " " + find;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.predict(this);
        }
    }

    /** A way into a drill. */
    record DrillLink(String id, String say) implements Block {
        @Override
        public String skeleton() {
            return "drill " + id;
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.drill(this);
        }
    }

    /** What can hurt someone, and who decides. */
    record Caution(String say) implements Block {
        @Override
        public String skeleton() {
            return "caution";
        }

        @Override
        public <T> T match(Cases<T> cases) {
            return cases.caution(this);
        }
    }

    private static String sorted(Given given) {
        return sorted(given.numbers()) + given.speciesId();
    }

    private static String sorted(Map<?, ?> map) {
        return " " + new java.util.TreeMap<>(map);
    }
}
