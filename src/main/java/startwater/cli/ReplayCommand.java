package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
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
import startwater.classroom.ClassWords;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.drill.Scenario;
import startwater.record.Difference;
import startwater.record.EngineVersion;
import startwater.record.RefusedException;
import startwater.record.Replay;
import startwater.text.Texts;

/** {@code replay}: plays the attempts of learner files again, and says whether the same comes of them. */
@Command(name = "replay")
public final class ReplayCommand implements Callable<Integer> {
    private static final int DIFFERENT = 1;

    @Spec
    private @Nullable CommandSpec spec;

    @ParentCommand
    private @Nullable Startwater parent;

    @Parameters(arity = "1..*", paramLabel = "FILE", descriptionKey = "replay.files")
    private List<Path> files = List.of();

    @Option(names = "--drill", paramLabel = "FILE", descriptionKey = "replay.drill")
    private List<Path> named = List.of();

    @Option(names = "--fast", descriptionKey = "replay.fast")
    private boolean fast;

    @Mixin
    private final CommonOptions common = new CommonOptions();

    private int same;
    private int different;
    private int apart;

    @Override
    public Integer call() {
        CommandSpec own = Objects.requireNonNull(spec);
        Texts texts = CliTexts.of(common.lang, own);
        PrintWriter out = own.commandLine().getOut();
        DrillFinder drills = new DrillFinder(
                DataFolder.at(Objects.requireNonNull(parent).data()),
                named.stream().flatMap(file -> in(file, texts).stream()).toList());
        for (Path file : files) {
            out.println(file);
            int before = same + different + apart;
            try {
                new Replay(id -> drill(drills, id), fast)
                        .all(file, report -> told(report, drills.folder(), texts, out))
                        .forEach(n -> out.println("  " + Notices.say(n, texts)));
            } catch (RefusedException refused) {
                throw new WrongUseException(Notices.say(refused.notice(), texts));
            } catch (IOException unreadable) {
                throw new WrongUseException(texts.text(
                        "record.cannotRead", file, unreadable.getClass().getSimpleName()));
            }
            if (same + different + apart == before) {
                out.println("  " + texts.text("replay.none"));
            }
        }
        out.println(texts.text("replay.sum", same + different + apart, same, different, apart));
        return different == 0 ? 0 : DIFFERENT;
    }

    /** The drills of a hand-out, or the one of a drill file. */
    private static List<Scenario> in(Path file, Texts texts) {
        if (!file.toString().endsWith(HandoutFile.ENDING)) {
            return List.of(DrillShelf.find(file.toString(), texts));
        }
        Texts classWords = Texts.of(texts.language(), ClassWords.FILE, CliTexts.FILE);
        return ClassOptions.opened(file, classWords).drills().stream()
                .map(Handout.Drill::scenario)
                .toList();
    }

    private static @Nullable Scenario drill(DrillFinder drills, String id) {
        return drills.find(id).orElse(null);
    }

    private void told(Replay.Report report, Path own, Texts texts, PrintWriter out) {
        switch (report.outcome()) {
            case SAME -> same++;
            case DIFFERENT -> different++;
            default -> apart++;
        }
        String when = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)
                .withZone(ZoneId.systemDefault())
                .format(report.begun().at());
        out.println("  "
                + texts.text(
                        "replay.line",
                        report.begun().scenario(),
                        String.valueOf(report.begun().variant()),
                        when,
                        texts.text("replay." + report.state().name().toLowerCase(Locale.ROOT)),
                        outcome(report, own, texts)));
        out.flush();
    }

    private static String outcome(Replay.Report report, Path own, Texts texts) {
        Difference d = report.difference();
        String engine = report.begun().engine();
        if (d == null) {
            String key = report.outcome().name().toLowerCase(Locale.ROOT);
            return texts.text("replay." + key, engine, EngineVersion.here(), own);
        }
        String what = texts.text("replay.what." + d.what().name().toLowerCase(Locale.ROOT));
        return report.outcome() == Replay.Outcome.OTHER_VERSION
                ? texts.text(
                        "replay.otherDiffers",
                        engine,
                        EngineVersion.here(),
                        d.visit() + 1,
                        what,
                        shown(d.kept()),
                        shown(d.now()))
                : texts.text("replay.different", d.visit() + 1, what, shown(d.kept()), shown(d.now()));
    }

    /** As it is, to the last figure; a fingerprint by its beginning, nothing as a dash. */
    private static String shown(Object value) {
        String text = value instanceof List<?> list && list.isEmpty() ? "–" : value.toString();
        return text.matches("[0-9a-f]{64}") ? text.substring(0, 8) + "…" : text;
    }
}
