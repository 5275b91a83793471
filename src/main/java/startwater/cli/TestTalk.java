package startwater.cli;

import java.text.Normalizer;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.cli.Terminal.Answer;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Written;
import startwater.record.Steps;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.ReadingEntry;
import startwater.text.Texts;

/** The test of one visit: which pads, where each colour lies, what the learner writes. */
final class TestTalk {
    private static final int MOST_DILUTION = 100;

    private final Terminal terminal;
    private final DrillWords words;
    private final Texts texts;
    private final DrillRun run;
    private final Steps steps;
    private boolean dipped;

    TestTalk(Terminal terminal, DrillWords words, DrillRun run, Steps steps) {
        this.steps = steps;
        this.terminal = terminal;
        this.words = words;
        this.texts = words.texts();
        this.run = run;
    }

    /** Reads what is still unread of strips that were dipped before the drill was left. */
    void goOn(List<DippedStrip> wet) {
        for (DippedStrip strip : wet) {
            dipped = true;
            List<Pad> unread = strip.positions().keySet().stream()
                    .filter(pad ->
                            run.now().written().stream().noneMatch(w -> w.pad() == pad && w.strip() == strip.number()))
                    .sorted()
                    .toList();
            if (!unread.isEmpty()) {
                terminal.gap();
                terminal.say(texts.text("learners.wet"));
                unread.forEach(pad -> read(strip, pad));
            }
        }
    }

    /** Tests until nothing more is asked for. */
    void test() {
        while (run.stripsLeft() > 0 || run.chlorideStripsLeft() > 0) {
            Order order = terminal.ask(
                    texts.text(dipped ? "play.testMore" : "play.test", run.stripsLeft(), run.chlorideStripsLeft()),
                    this::order);
            if (order.pads().isEmpty()) {
                return;
            }
            dip(order);
        }
    }

    /** @param dilution how many times the sample is diluted, 1 for none */
    private record Order(Set<Pad> pads, int dilution) {}

    private Answer<Order> order(String typed) {
        Set<Pad> pads = EnumSet.noneOf(Pad.class);
        int dilution = 1;
        for (String word : typed.toLowerCase(Locale.ROOT).split("[\\s,]+")) {
            if (word.isEmpty()) {
                continue;
            }
            if (word.equals(texts.text("play.all"))) {
                pads.addAll(EnumSet.complementOf(EnumSet.of(Pad.CHLORIDE)));
            } else if (word.matches("x?\\d{1,4}")) {
                dilution = Integer.parseInt(word.replace("x", ""));
                if (dilution < 1 || dilution > MOST_DILUTION) {
                    return Answer.refused(texts.text("play.badDilution", MOST_DILUTION));
                }
            } else {
                Pad pad = pad(word);
                if (pad == null) {
                    return Answer.refused(texts.text("play.noPad", word));
                }
                pads.add(pad);
            }
        }
        if (dilution > 1 && pads.isEmpty()) {
            return Answer.refused(texts.text("play.diluteWhat"));
        }
        return outOf(pads) ? Answer.refused(texts.text("play.noStrip")) : Answer.of(new Order(pads, dilution));
    }

    private boolean outOf(Set<Pad> pads) {
        boolean usual = pads.stream().anyMatch(p -> p != Pad.CHLORIDE);
        return (usual && run.stripsLeft() <= 0) || (pads.contains(Pad.CHLORIDE) && run.chlorideStripsLeft() <= 0);
    }

    private @Nullable Pad pad(String word) {
        for (Pad pad : Pad.values()) {
            if (unaccented(words.pad(pad).toLowerCase(Locale.ROOT)).equals(unaccented(word))
                    || pad.name().toLowerCase(Locale.ROOT).equals(word)) {
                return pad;
            }
        }
        return null;
    }

    /** Accents are often left out where they are hard to type. */
    private static String unaccented(String word) {
        return Normalizer.normalize(word, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
    }

    private void dip(Order order) {
        dipped = true;
        if (order.pads().stream().anyMatch(p -> p != Pad.CHLORIDE)) {
            DippedStrip strip = run.dip(order.dilution());
            steps.dipped(strip, false);
            order.pads().stream().filter(p -> p != Pad.CHLORIDE).forEach(p -> read(strip, p));
        }
        if (order.pads().contains(Pad.CHLORIDE)) {
            DippedStrip strip = run.dipChloride();
            steps.dipped(strip, true);
            read(strip, Pad.CHLORIDE);
        }
    }

    private void read(DippedStrip strip, Pad pad) {
        terminal.gap();
        String unit = words.unit(pad);
        String name = unit.isEmpty() ? words.pad(pad) : words.pad(pad) + ", " + unit;
        terminal.say(strip.dilution() > 1 ? texts.text("play.diluted", name, strip.dilution()) : name);
        StringBuilder labels = new StringBuilder();
        StringBuilder numbers = new StringBuilder();
        for (int block = 0; block < pad.scale().blocks(); block++) {
            labels.append(String.format(Locale.ROOT, "%7s", words.block(pad, block)));
            numbers.append(String.format(Locale.ROOT, "%7d", block + 1));
        }
        terminal.say(labels.toString());
        terminal.say(numbers.toString());
        terminal.say(texts.text("play.lies", texts.decimals(strip.position(pad) + 1, 1)));
        int stop = terminal.ask(texts.text("play.reading"), typed -> reading(pad, typed));
        if (stop >= 0) {
            Written written = new Written(pad, stop, strip.dilution(), strip.number());
            run.write(written);
            steps.wrote(written);
            terminal.say(texts.text("play.wrote", words.pad(pad), words.written(written)));
        }
    }

    /** The stop, or -1 for a pad that is left unread. */
    private Answer<Integer> reading(Pad pad, String typed) {
        if (typed.isEmpty()) {
            return Answer.of(-1);
        }
        ReadingEntry entry = ReadingEntry.of(pad, typed);
        return entry.refusal() == null
                ? Answer.of(entry.stop())
                : Answer.refused(entry.refusal().say(texts));
    }
}
