package startwater.content;

import static startwater.content.GroupShape.group;
import static startwater.content.GroupShape.may;
import static startwater.content.GroupShape.need;
import static startwater.content.ListShape.list;
import static startwater.content.NumberShape.number;
import static startwater.content.NumberShape.whole;
import static startwater.content.TextShape.text;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Function;
import startwater.fish.Species;
import startwater.strip.Pad;

/** The kinds of fenced block in a lesson: what each holds, which rules it keeps, and what becomes of it. */
enum BlockKind {
    FIGURE("figure", figure(), LessonRules::figure, BlockBinder::figure),
    WORKED("worked", worked(), LessonRules::worked, BlockBinder::worked),
    QUESTION("question", question(), LessonRules::question, BlockBinder::question),
    STRIP("strip", strip(), LessonRules::strip, BlockBinder::strip),
    PREDICT("predict", predict(), LessonRules::predict, BlockBinder::predict),
    DRILL("drill", drill(), LessonRules::drill, BlockBinder::drill),
    CAUTION("caution", caution(), LessonRules::caution, BlockBinder::caution);

    private final String id;
    private final Shape shape;
    private final BiConsumer<LessonRules, Fields> rules;
    private final Function<Fields, Block> bind;

    BlockKind(String id, Shape shape, BiConsumer<LessonRules, Fields> rules, Function<Fields, Block> bind) {
        this.id = id;
        this.shape = shape;
        this.rules = rules;
        this.bind = bind;
    }

    String id() {
        return id;
    }

    Shape shape() {
        return shape;
    }

    void check(LessonRules with, Fields fields) {
        rules.accept(with, fields);
    }

    /** The block. Only for fields that broke no rule. */
    Block bind(Fields fields) {
        return bind.apply(fields);
    }

    static Optional<BlockKind> byId(String id) {
        return Arrays.stream(values()).filter(kind -> kind.id.equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(BlockKind::id).toList();
    }

    private static final class Part {
        static final int LONG = 400;
        static final int SHORT = 160;
        static final NumberShape ANY = number(-1e6, 1e6);
        static final Shape INPUTS = new MapShape(ANY, 12);
        static final Shape SPECIES = new WordShape(Species.ids());
        static final Shape SUM = new WordShape(Reckoning.ids());
    }

    private static Shape figure() {
        GroupShape slider = group(
                need("low", Part.ANY, "Left end"),
                need("high", Part.ANY, "Right end"),
                need("step", number(1e-6, 1e6), "Step"),
                need("at", Part.ANY, "Where it stands at first"));
        return group(
                need("kind", new WordShape(FigureKind.ids()), "What is drawn"),
                need("sliders", new MapShape(slider, 6), "The inputs that move"),
                may("fixed", Part.INPUTS, "The inputs that do not move"),
                may("species", Part.SPECIES, "Which species, where the sum asks for it"),
                need("caption", text(Part.LONG), "What to try"));
    }

    private static Shape worked() {
        GroupShape step = group(
                need("say", text(Part.LONG), "What is done"),
                need("find", text(60), "Which result of the sum comes of it"));
        return group(
                need("sum", Part.SUM, "Which sum"),
                need("inputs", Part.INPUTS, "Its inputs"),
                may("species", Part.SPECIES, "Which species, where the sum asks for it"),
                need("ask", text(Part.LONG), "The question"),
                need("steps", list(step, 1, 6), "The steps in order"),
                need("blank", whole(0, 6), "How many of the last steps are left to the learner"),
                may("tolerancePercent", number(0.1, 50), "How far off an answer may be, %"));
    }

    private static Shape question() {
        GroupShape option = group(
                need("says", text(Part.SHORT), "The option"),
                need("right", new FlagShape(), "Whether it is the right one"),
                need("reason", text(Part.LONG), "Why it is or is not"));
        Map<String, GroupShape> kinds = new LinkedHashMap<>();
        kinds.put(
                "choice",
                group(
                        need("ask", text(Part.LONG), "The question"),
                        need("options", list(option, 2, 6), "The options")));
        kinds.put("number", numberAsked(need("tolerancePercent", number(0.1, 50), "How far off it may be, %")));
        kinds.put("estimate", numberAsked(need("factor", number(1.05, 10), "Right within this factor")));
        return new KindShape(kinds);
    }

    private static GroupShape numberAsked(GroupShape.Field tolerance) {
        return group(
                need("ask", text(Part.LONG), "The question"),
                need("sum", Part.SUM, "Which sum gives the answer"),
                need("inputs", Part.INPUTS, "Its inputs"),
                may("species", Part.SPECIES, "Which species, where the sum asks for it"),
                need("find", text(60), "Which result is asked for"),
                tolerance,
                need("because", text(Part.LONG), "Why it is so"));
    }

    private static Shape strip() {
        GroupShape.Field[] pads = Arrays.stream(Pad.values())
                .map(pad -> may(PadNames.of(pad), padRange(pad), "What is in the water, in the unit of the pad"))
                .toArray(GroupShape.Field[]::new);
        return group(
                need("ask", text(Part.LONG), "The question"),
                need("water", group(pads), "What is in the water, by pad"),
                may("dilution", whole(1, 10), "How many times the sample was diluted"),
                may("seed", whole(0, 99_999), "Which strip of the bottle"),
                need("because", text(Part.LONG), "What the reading means"));
    }

    /** The scale's ends and, beyond the upper one, what a dilution of ten brings back. */
    private static NumberShape padRange(Pad pad) {
        double last = pad.scale().blockValue(pad.scale().blocks() - 1);
        return number(pad.scale().blockValue(0), pad == Pad.PH ? last : 10 * last);
    }

    private static Shape predict() {
        return group(
                need("ask", text(Part.LONG), "What is known, and what is asked"),
                need("pad", new WordShape(PadNames.all()), "The pad that will be read"),
                need("sum", Part.SUM, "Which sum gives the answer"),
                need("inputs", Part.INPUTS, "Its inputs"),
                may("species", Part.SPECIES, "Which species, where the sum asks for it"),
                need("find", text(60), "Which result the pad will show"),
                need("because", text(Part.LONG), "Why it comes out so"));
    }

    private static Shape drill() {
        return group(need("id", text(60), "Which drill"), need("say", text(Part.LONG), "What to look for in it"));
    }

    private static Shape caution() {
        return group(need("say", text(Part.LONG), "What can hurt, and who decides"));
    }
}
