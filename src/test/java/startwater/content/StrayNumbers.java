package startwater.content;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.bench.Given;
import startwater.drill.Scenario;
import startwater.score.WhyText;
import startwater.strip.Pad;

/** Finds the numbers of a lesson that are neither worked, nor given, nor taught, nor told with a source. */
final class StrayNumbers {
    private StrayNumbers() {}

    /** Numbers of a lesson that come from nowhere, each with where it stands. */
    static List<String> in(String file, String text) {
        Lesson lesson = LessonReader.read(file, text.getBytes(StandardCharsets.UTF_8), null)
                .get();
        String name = Path.of(file).getFileName().toString();
        LessonFront front = Objects.requireNonNull(LessonFront.of(text, name, Faults.of(file)));
        ToldNumbers always =
                sources(lesson).and(rules(lesson)).and(listed(lesson)).and(named(front));
        ToldNumbers inProse = always.and(namedInputs(front));
        List<String> strays = new ArrayList<>();
        for (int i = 0; i < lesson.blocks().size(); i++) {
            Block block = lesson.blocks().get(i);
            ToldNumbers prose = inProse.and(section(lesson.blocks(), i));
            block.match(new Reader(always, inProse, prose, strays));
        }
        return strays;
    }

    private static ToldNumbers sources(Lesson lesson) {
        return ToldNumbers.of(String.join(" ", lesson.sources()));
    }

    /** What the taught rules say, for fish of warm water and for trout. */
    private static ToldNumbers rules(Lesson lesson) {
        ToldNumbers told = new ToldNumbers();
        WhyText words = WhyText.in(Locale.ENGLISH);
        for (String drill : List.of("hungry-second-week", "soft-water")) {
            Scenario scenario = Library.shipped().drill(drill).orElseThrow();
            for (int rule : lesson.rules()) {
                told.exact().addAll(ToldNumbers.of(words.rule(rule, scenario)).exact());
            }
        }
        return told;
    }

    private static ToldNumbers listed(Lesson lesson) {
        ToldNumbers told = new ToldNumbers();
        ListedNumber.all().stream()
                .filter(row -> row.lesson() == lesson.number())
                .forEach(row -> told.exact().add(Double.valueOf(row.number())));
        return told;
    }

    private static ToldNumbers named(LessonFront front) {
        ToldNumbers told = new ToldNumbers();
        front.numbers().values().forEach(number -> told.worked().add(Math.abs(number.value())));
        return told;
    }

    private static ToldNumbers namedInputs(LessonFront front) {
        ToldNumbers told = new ToldNumbers();
        Fields values = front.fields().group("values");
        for (String name : values.keys()) {
            Fields inputs = values.group(name).group("inputs");
            inputs.keys().forEach(key -> told.exact().add(inputs.number(key)));
        }
        return told;
    }

    /** The inputs of the live blocks between the headings around a place. */
    private static ToldNumbers section(List<Block> blocks, int at) {
        int from = at;
        while (from > 0 && !(blocks.get(from) instanceof Block.Heading)) {
            from--;
        }
        int to = at + 1;
        while (to < blocks.size() && !(blocks.get(to) instanceof Block.Heading)) {
            to++;
        }
        ToldNumbers told = new ToldNumbers();
        for (Block block : blocks.subList(from, to)) {
            if (block instanceof Block.Worked worked) {
                told.exact().addAll(worked.given().numbers().values());
            }
        }
        return told;
    }

    private record Reader(ToldNumbers always, ToldNumbers explained, ToldNumbers prose, List<String> strays)
            implements Block.Cases<Void> {
        private @Nullable Void look(String text, ToldNumbers told) {
            for (String number : new TreeSet<>(ToldNumbers.in(text))) {
                if (!told.holds(number)) {
                    strays.add(number + " in: " + text);
                }
            }
            return null;
        }

        private static String said(List<Inline> words) {
            StringBuilder out = new StringBuilder();
            for (Inline word : words) {
                out.append(word instanceof Inline.Words run ? run.text() : " ");
            }
            return out.toString();
        }

        @Override
        public Void heading(Block.Heading heading) {
            return look(said(heading.words()), prose);
        }

        @Override
        public Void paragraph(Block.Paragraph paragraph) {
            return look(said(paragraph.words()), prose);
        }

        @Override
        public Void items(Block.Items items) {
            items.items().forEach(item -> look(said(item), prose));
            return null;
        }

        @Override
        public Void figure(Block.Figure figure) {
            ToldNumbers told = ToldNumbers.inputs(new Given(figure.atFirst(), figure.species()));
            figure.sliders().values().forEach(s -> IntStream.rangeClosed(
                            0, (int) Math.rint((s.high() - s.low()) / s.step()))
                    .forEach(step -> told.exact().add(s.low() + step * s.step())));
            return look(figure.caption(), always.and(told));
        }

        @Override
        public Void worked(Block.Worked worked) {
            ToldNumbers told = always.and(ToldNumbers.inputs(worked.given()))
                    .and(ToldNumbers.results(worked.sum().work(worked.given())));
            look(worked.ask(), told);
            worked.steps().forEach(step -> look(step.say(), told));
            return null;
        }

        @Override
        public Void choice(Block.Choice choice) {
            ToldNumbers told = ToldNumbers.of(choice.ask() + " "
                    + choice.options().stream().map(Block.Option::says).collect(Collectors.joining(" ")));
            choice.options().forEach(option -> look(option.reason(), explained.and(told)));
            return null;
        }

        @Override
        public Void number(Block.NumberQuestion question) {
            ToldNumbers told = always.and(ToldNumbers.inputs(question.given()))
                    .and(ToldNumbers.results(question.sum().work(question.given())));
            look(question.ask(), told);
            return look(question.because(), explained.and(told));
        }

        /** What the pads show: the blocks around each, in the sample and in the tank. */
        @Override
        public Void strip(Block.StripReading strip) {
            ToldNumbers told = new ToldNumbers();
            for (Map.Entry<Pad, Double> in : strip.water().entrySet()) {
                double position = in.getKey().scale().position(strip.value(in.getKey()));
                IntStream.of((int) Math.floor(position), (int) Math.ceil(position))
                        .mapToDouble(block -> in.getKey().scale().blockValue(block))
                        .flatMap(v -> DoubleStream.of(v, v * strip.dilution()))
                        .forEach(told.exact()::add);
                told.exact().add(in.getValue());
            }
            look(strip.ask(), always.and(told));
            return look(strip.because(), always.and(told));
        }

        @Override
        public Void predict(Block.Predict predict) {
            ToldNumbers told = always.and(ToldNumbers.inputs(predict.given()))
                    .and(ToldNumbers.results(predict.sum().work(predict.given())));
            told.exact().add(predict.pad().scale().blockValue(predict.block()));
            look(predict.ask(), told);
            return look(predict.because(), explained.and(told));
        }

        @Override
        public Void drill(Block.DrillLink link) {
            return look(link.say(), always);
        }

        @Override
        public Void caution(Block.Caution caution) {
            return look(caution.say(), always);
        }
    }
}
