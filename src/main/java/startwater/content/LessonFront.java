package startwater.content;

import static startwater.content.GroupShape.group;
import static startwater.content.GroupShape.may;
import static startwater.content.GroupShape.need;
import static startwater.content.ListShape.list;
import static startwater.content.ListShape.set;
import static startwater.content.NumberShape.number;
import static startwater.content.NumberShape.whole;
import static startwater.content.TextShape.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import startwater.bench.Measure;
import startwater.bench.Unit;
import startwater.bench.Words;
import startwater.fish.Species;

/** The front block of a lesson and the numbers that it names for the prose. */
final class LessonFront {
    private static final String FENCE = "---";
    /** A computed number named in the text of a block. */
    private static final Pattern NAMED = Pattern.compile("`=\\s*([^`\\n]*?)\\s*`");

    private static final GroupShape NAMED_NUMBER = group(
            need("sum", new WordShape(Reckoning.ids()), "Which sum"),
            need("inputs", new MapShape(number(-1e6, 1e6), 12), "Its inputs"),
            may("species", new WordShape(Species.ids()), "Which species, where the sum asks for it"),
            need("find", text(60), "Which result"),
            may("percent", new FlagShape(), "Whether a share is shown as a percentage"),
            need("decimals", whole(0, 6), "Decimals shown"));

    static final GroupShape SHAPE = group(
            need("title", text(48), "Short name"),
            need("minutes", whole(1, 30), "How long it takes"),
            need("skills", set(new WordShape(ScenarioShape.skillIds()), 1, 4), "What it teaches"),
            need("rules", set(whole(1, ScenarioShape.STANDING_RULES), 0, 6), "Standing rules it teaches"),
            may("after", set(text(60), 0, 6), "Lessons that come first, by id"),
            may("competencies", list(text(160), 0, 12), "Published units of competency it covers"),
            need("sources", list(text(240), 1, 12), "Where its facts come from"),
            may("values", new MapShape(NAMED_NUMBER, 40), "Numbers computed for prose and blocks, by name"));

    private final Fields fields;
    private final int lines;
    private final String language;
    private final Faults faults;
    private final Map<String, Inline.Computed> numbers = new LinkedHashMap<>();
    private final Set<String> used = new HashSet<>();

    private LessonFront(Fields fields, int lines, String language, Faults faults) {
        this.fields = fields;
        this.lines = lines;
        this.language = language;
        this.faults = faults;
    }

    /** The front block at the top of a text with its numbers worked, or null with the fault noted. */
    static @Nullable LessonFront of(String text, String name, Faults faults) {
        LessonFront front = read(text, name, faults);
        if (front != null) {
            front.work();
        }
        return front;
    }

    /** The front block as it stands, its numbers not worked yet; or null with the fault noted. */
    static @Nullable LessonFront read(String text, String name, Faults faults) {
        String[] all = text.split("\n", -1);
        if (!all[0].stripTrailing().equals(FENCE)) {
            faults.add(1, Complaint.NO_FRONT);
            return null;
        }
        int end = 1;
        StringBuilder yaml = new StringBuilder();
        while (end < all.length && !all[end].stripTrailing().equals(FENCE)) {
            yaml.append(all[end]).append('\n');
            end++;
        }
        if (end == all.length) {
            faults.add(1, Complaint.OPEN_FRONT);
            return null;
        }
        Faults part = faults.below(1);
        Node tree = YamlTree.of(yaml.toString(), part);
        Fields fields = tree == null
                ? Fields.NONE
                : SHAPE.read(name, YamlTree.line(tree.getStartMark()), tree, part)
                        .group();
        return new LessonFront(fields, end + 1, LessonReader.language(name), part);
    }

    /** Lines that it takes up. */
    int lines() {
        return lines;
    }

    Fields fields() {
        return fields;
    }

    /** The computed numbers, by name. */
    Map<String, Inline.Computed> numbers() {
        return Map.copyOf(numbers);
    }

    /** The line of a key in the file. */
    int line(String key) {
        return fields.line(key) + 1;
    }

    private void work() {
        Fields values = fields.group("values");
        for (String name : values.keys()) {
            Fields f = values.group(name);
            new SumRules(faults).check(f, List.of(f));
            // With any fault there will be no lesson, so a stand-in will do.
            numbers.put(name, faults.none() ? computed(name, f) : new Inline.Computed(name, 0, "", 0));
        }
    }

    private Inline.Computed computed(String name, Fields f) {
        Measure result = NamedNumber.of(f);
        return f.flag("percent")
                ? new Inline.Computed(name, 100 * result.value(), Unit.PERCENT.symbol(), f.whole("decimals"))
                : new Inline.Computed(
                        name, result.value(), Words.of(language).unit(result.unit()), f.whole("decimals"));
    }

    /** The body of a block with its computed numbers written out. @param line of the fence, @param at where to note faults */
    String filled(String body, int line, Faults at) {
        Matcher named = NAMED.matcher(body);
        StringBuilder out = new StringBuilder();
        while (named.find()) {
            int below = (int) body.substring(0, named.start())
                            .chars()
                            .filter(c -> c == '\n')
                            .count()
                    + 1;
            named.appendReplacement(out, Matcher.quoteReplacement(written(named(named.group(1), line + below, at))));
        }
        return named.appendTail(out).toString();
    }

    private String written(Inline.Computed number) {
        String digits = Words.of(language)
                .digits(BigDecimal.valueOf(number.value()).setScale(number.decimals(), RoundingMode.HALF_UP));
        return number.unit().isEmpty() ? digits : digits + " " + number.unit();
    }

    /** The number that the prose names; a fault when there is none. @param at where to note it */
    Inline.Computed named(String name, int line, Faults at) {
        used.add(name);
        Inline.Computed number = numbers.get(name);
        if (number == null) {
            at.add(line, Complaint.VALUE_UNKNOWN, "value", name, "known", Shown.list(numbers.keySet()));
            return new Inline.Computed(name, 0, "", 0);
        }
        return number;
    }

    /** Notes the numbers that no prose has used. */
    void unused() {
        Fields values = fields.group("values");
        numbers.keySet().stream()
                .filter(name -> !used.contains(name))
                .forEach(name -> faults.add(values.line(name), Complaint.VALUE_UNUSED, "value", name));
    }
}
