package startwater.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;
import startwater.record.RefusedException;
import startwater.record.Resumed;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/** {@code play}: a drill in the terminal, from the keyboard or from a file of answers. */
@Command(name = "play")
public final class PlayCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @Parameters(index = "0", paramLabel = "DRILL", descriptionKey = "play.drill")
    private String drill = "";

    @Option(names = "--seed", paramLabel = "N", descriptionKey = "play.seed")
    private @Nullable Long seed;

    @Option(names = "--answers", paramLabel = "FILE", descriptionKey = "play.answers")
    private @Nullable Path answers;

    @Option(names = "--learner", paramLabel = "NAME", descriptionKey = "play.learner")
    private @Nullable String learner;

    @ParentCommand
    private @Nullable Startwater parent;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() throws IOException {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        Scenario scenario = DrillShelf.find(drill, texts);
        PrintWriter out = own.commandLine().getOut();
        if (answers == null) {
            play(new Terminal(keyboard(), out, false), texts, scenario);
            return 0;
        }
        if (!Files.isReadable(answers) || Files.isDirectory(answers)) {
            throw new WrongUseException(texts.text("cli.noFile", answers));
        }
        try (BufferedReader in = Files.newBufferedReader(answers, StandardCharsets.UTF_8)) {
            play(new Terminal(in, out, true), texts, scenario);
        } catch (UncheckedIOException unreadable) {
            // Half way: no text, or the stick it lies on was taken out.
            throw new WrongUseException(texts.text("cli.noFile", answers));
        }
        return 0;
    }

    /** Lets a person choose a drill and play it; the end of the input ends it cleanly at any point. @param reason why there is no window */
    public static void offer(PrintWriter out, Language language, String reason) {
        Texts texts = CliTexts.of(language);
        Terminal terminal = terminal(out);
        try {
            terminal.say(texts.text("cli.noWindow", reason));
            DrillShelf.all()
                    .forEach(s -> terminal.say("  " + s.id() + " – "
                            + s.words(texts.language().code()).title()));
            Scenario chosen = terminal.ask(texts.text("play.which"), typed -> {
                try {
                    return Terminal.Answer.of(DrillShelf.find(typed, texts));
                } catch (WrongUseException refused) {
                    return Terminal.Answer.refused(Objects.requireNonNull(refused.getMessage()));
                }
            });
            new TerminalDrill(terminal, new DrillWords(texts), chosen, 1).play();
        } catch (Terminal.EndOfInput end) {
            terminal.say(texts.text("play.stopped"));
        }
        out.flush();
    }

    /** A talk at the keyboard. */
    static Terminal terminal(PrintWriter out) {
        return new Terminal(keyboard(), out, false);
    }

    /** What a terminal sends is in its own character set, not always UTF-8. */
    private static BufferedReader keyboard() {
        return new BufferedReader(new InputStreamReader(System.in, Charset.defaultCharset()));
    }

    private void play(Terminal terminal, Texts texts, Scenario scenario) throws IOException {
        DrillWords words = new DrillWords(texts);
        try {
            if (learner == null) {
                new TerminalDrill(terminal, words, scenario, seed == null ? 1 : seed).play();
            } else {
                kept(terminal, words, scenario, learner);
            }
        } catch (Terminal.EndOfInput end) {
            terminal.say(texts.text("play.stopped"));
        }
        terminal.flush();
    }

    /** Plays under the eyes of a learner's file. */
    private void kept(Terminal terminal, DrillWords words, Scenario scenario, String name) throws IOException {
        Texts texts = words.texts();
        Learners learners =
                new Learners(DataFolder.at(Objects.requireNonNull(parent).data()), Means.USUAL);
        try (LearnerFile file = learners.open(name)) {
            file.notices().forEach(n -> terminal.say(Notices.say(n, texts)));
            file.trouble().ifPresent(n -> terminal.say(Notices.say(n, texts)));
            Attempts attempts = new Attempts(file);
            String language = texts.language().code();
            Resumed at;
            if (seed == null) {
                at = attempts.goOnOrBegin(scenario, Entry.Mode.PRACTICE, language);
            } else {
                attempts.giveUp(scenario);
                at = attempts.begin(scenario, seed, Entry.Mode.PRACTICE, language, null);
            }
            if (at.notice() != null) {
                terminal.say(Notices.say(at.notice(), texts));
            } else if (at.run().past().size() > 0 || !at.wet().isEmpty()) {
                terminal.say(texts.text(
                        "learners.goesOn",
                        words.scenario(scenario).title(),
                        at.run().asked()));
            }
            new TerminalDrill(terminal, words, at)
                    .watching(
                            () -> file.trouble().map(n -> Notices.say(n, texts)).orElse(null))
                    .play();
            file.trouble().ifPresent(n -> terminal.say(Notices.say(n, texts)));
        } catch (RefusedException refused) {
            throw new WrongUseException(Notices.say(refused.notice(), texts));
        }
    }
}
