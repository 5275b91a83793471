package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;
import startwater.record.RefusedException;
import startwater.text.Texts;

/** {@code learners}: who has learned on this computer; a copy of one's own work, a new name, or all of it deleted. */
@Command(name = "learners")
public final class LearnersCommand implements Callable<Integer> {
    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable Startwater parent;

    @Parameters(index = "0", arity = "0..1", paramLabel = "ACTION", descriptionKey = "learners.action")
    private String action = "list";

    @Parameters(index = "1..*", arity = "0..2", paramLabel = "NAME", hidden = true)
    private List<String> words = List.of();

    @Option(names = "--yes", descriptionKey = "learners.yes")
    private boolean yes;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    @Override
    public Integer call() throws IOException {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        PrintWriter out = own.commandLine().getOut();
        Path data = DataFolder.at(Objects.requireNonNull(parent).data());
        Learners learners = new Learners(data, Means.USUAL);
        try {
            switch (action) {
                case "list" -> list(learners, data, texts, out);
                case "export" -> export(learners, texts, out);
                case "rename" -> rename(learners, texts, out);
                case "delete" -> delete(learners, texts, out);
                default -> throw new WrongUseException(texts.text("learners.noAction", action));
            }
        } catch (RefusedException refused) {
            throw new WrongUseException(Notices.say(refused.notice(), texts));
        }
        return 0;
    }

    private static void list(Learners learners, Path data, Texts texts, PrintWriter out) {
        List<Learners.Known> all = learners.list();
        if (all.isEmpty()) {
            out.println(texts.text("learners.none", data));
        }
        all.forEach(
                k -> out.println(texts.text("learner.card", Notices.name(k.name(), texts), k.finished(), k.open())));
    }

    private String word(int place, String what, Texts texts) {
        if (words.size() <= place) {
            throw new WrongUseException(texts.text("learners.needs", action, what));
        }
        return words.get(place);
    }

    private Learners.Known chosen(Learners learners, Texts texts) {
        String name = word(0, "NAME", texts);
        return learners.find(name)
                .orElseThrow(() -> new WrongUseException(texts.text(
                        "learners.unknown",
                        name,
                        learners.list().stream()
                                .map(k -> k.name().isEmpty() ? k.key() : k.name())
                                .collect(Collectors.joining(", ")))));
    }

    private void export(Learners learners, Texts texts, PrintWriter out) throws IOException {
        Learners.Known known = chosen(learners, texts);
        Path to = Path.of(word(1, "FILE", texts));
        try {
            learners.export(known.key(), to);
        } catch (FileAlreadyExistsException there) {
            throw new WrongUseException(texts.text("learners.exists", to));
        } catch (IOException failed) {
            throw new WrongUseException(texts.text("learner.exportFailed", to, String.valueOf(failed.getMessage())));
        }
        out.println(texts.text("learner.exported", to));
    }

    private void rename(Learners learners, Texts texts, PrintWriter out) throws IOException {
        Learners.Known known = chosen(learners, texts);
        String name = word(1, "NEW", texts);
        try (LearnerFile file = learners.openKey(known.key())) {
            if (file.trouble().isPresent()) {
                throw new RefusedException(file.trouble().get());
            }
            file.name(name);
        }
        out.println(texts.text("learners.renamed", Notices.name(known.name(), texts), name));
    }

    private void delete(Learners learners, Texts texts, PrintWriter out) throws IOException {
        Learners.Known known = chosen(learners, texts);
        String name = Notices.name(known.name(), texts);
        if (!yes) {
            throw new WrongUseException(
                    texts.text("learners.yes", name, Notices.files(learners.belongings(known.key()))));
        }
        try {
            out.println(texts.text("learner.deleted", Notices.files(learners.delete(known.key()))));
        } catch (RefusedException elsewhere) {
            throw elsewhere;
        } catch (IOException failed) {
            throw new WrongUseException(texts.text("learner.deleteFailed", String.valueOf(failed.getMessage())));
        }
    }
}
