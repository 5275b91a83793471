package startwater.app.model;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleConsumer;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import startwater.bench.UnitSystem;
import startwater.content.WholeFile;
import startwater.page.PageFile;
import startwater.page.Paper;
import startwater.rehearse.Entry;
import startwater.rehearse.Finding;
import startwater.rehearse.Form;
import startwater.rehearse.FormFile;
import startwater.rehearse.FormReader;
import startwater.rehearse.Outlook;
import startwater.rehearse.OutlookChecks;
import startwater.rehearse.OwnSystem;
import startwater.rehearse.ReadinessList;
import startwater.rehearse.Rehearsal;
import startwater.rehearse.RehearsalFiles;
import startwater.rehearse.SystemChecks;
import startwater.text.Refusal;
import startwater.text.Texts;

/** The rehearsal of one's own system: the form as it is being filled in, and the last outlook. The form is kept as it changes. */
public final class RehearsalModel {
    private static final String KEPT = "rehearsal" + FormFile.ENDING;

    private final Path folder;
    private final int tanks;
    private final ObjectProperty<Form> form;
    private final ObjectProperty<@Nullable Result> result = new SimpleObjectProperty<>();
    private final AtomicInteger wanted = new AtomicInteger();

    /**
     * What came of a rehearsal.
     *
     * @param form the form it was reckoned from
     * @param outlook what to expect; null where the system was refused
     * @param findings what speaks against it, weightiest first
     */
    public record Result(Form form, @Nullable Outlook outlook, List<Finding> findings) {
        public Result {
            findings = List.copyOf(findings);
        }
    }

    /** A rehearsal whose form, drills and lists lie in a folder. */
    public RehearsalModel(Path folder) {
        this(folder, Rehearsal.TANKS);
    }

    /** @param tanks hidden tanks of an outlook, 1 or more */
    public RehearsalModel(Path folder, int tanks) {
        this.folder = folder;
        this.tanks = tanks;
        this.form = new SimpleObjectProperty<>(kept(folder.resolve(KEPT)));
    }

    /** The form of the last time; an unreadable one is left where it lies under another name. */
    private static Form kept(Path file) {
        if (!Files.exists(file)) {
            return Form.EMPTY;
        }
        try {
            return FormFile.read(file);
        } catch (FormFile.Unreadable e) {
            try {
                Files.move(
                        file, file.resolveSibling(KEPT + ".unread"), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
            } catch (IOException stays) {
                // It stays where it is; the next answer is kept over it.
            }
            return Form.EMPTY;
        }
    }

    public ReadOnlyObjectProperty<Form> formProperty() {
        return form;
    }

    public Form form() {
        return form.get();
    }

    /** The last outlook, or null. */
    public ReadOnlyObjectProperty<@Nullable Result> resultProperty() {
        return result;
    }

    /** Whether the last outlook is of another form than the present one. */
    public boolean stale() {
        Result last = result.get();
        return last != null && !last.form().equals(form());
    }

    /** Takes an answer as typed. */
    public void answer(Entry entry, String typed) {
        Form changed = form().with(entry, typed);
        if (!changed.equals(form())) {
            form.set(changed);
            keep();
        }
    }

    /** Reads and shows numbers in other units. */
    public void units(UnitSystem system) {
        form.set(form().in(system));
        keep();
    }

    /** Takes a whole form in place of the present one. */
    public void take(Form other) {
        form.set(other);
        keep();
    }

    private void keep() {
        Path data = folder.toAbsolutePath().getParent();
        if (data != null && !Files.isDirectory(data)) {
            // A stick that was taken out is not made anew on this computer.
            return;
        }
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(KEPT), FormFile.write(form()), StandardCharsets.UTF_8);
        } catch (IOException e) {
            // The form stays in the window; saving says what is wrong with the folder.
        }
    }

    /** Why an answer cannot be taken, or null. */
    public @Nullable Refusal refusal(Entry entry) {
        return FormReader.refusal(form(), entry);
    }

    /** Calls off what is being reckoned. */
    public void cancel() {
        wanted.incrementAndGet();
    }

    /**
     * Reckons the outlook of the present form. Takes seconds: not for the window's own thread.
     *
     * @param progress how far it is, 0..1; called from several threads
     * @return null where it was called off
     */
    public @Nullable Result reckon(DoubleConsumer progress) {
        int mine = wanted.incrementAndGet();
        Form now = form();
        List<Finding> findings = new ArrayList<>(SystemChecks.of(now));
        if (!SystemChecks.possible(findings)) {
            return new Result(now, null, findings);
        }
        OwnSystem own = OwnSystem.of(now);
        try {
            Outlook outlook = Rehearsal.of(own, tanks, 1, (done, most) -> {
                progress.accept((double) done / most);
                return wanted.get() == mine;
            });
            findings.addAll(OutlookChecks.of(own, outlook));
            findings.sort(java.util.Comparator.comparing(Finding::weight));
            return new Result(now, outlook, findings);
        } catch (CancellationException calledOff) {
            return null;
        }
    }

    /** Shows an outlook. */
    public void show(Result reckoned) {
        result.set(reckoned);
    }

    /** Whether drill and list of the present form can be written. */
    public boolean ready() {
        Result last = result.get();
        return last != null && last.outlook() != null && !stale();
    }

    /** Writes drill and form; returns the drill's file. @throws IOException where the folder cannot be written */
    public Path save() throws IOException {
        Result last = result.get();
        Outlook outlook = last == null ? null : last.outlook();
        return RehearsalFiles.write(form(), folder.resolve(RehearsalFiles.nameOf(form())), outlook)
                .drill();
    }

    /**
     * Writes the list of what to have ready; returns its file.
     *
     * @param ending of its name: {@code .html}, or {@code .pdf}
     * @throws IOException where the folder cannot be written
     */
    public Path list(Texts texts, String ending) throws IOException {
        Result last = result.get();
        if (last == null || last.outlook() == null) {
            throw new IllegalStateException("There is no outlook to print.");
        }
        Files.createDirectories(folder);
        Path file = folder.resolve(RehearsalFiles.nameOf(form()).replace(".yaml", ending));
        String page = ReadinessList.of(last.form(), last.outlook(), last.findings(), texts);
        // Letter where the form is in US units.
        Paper paper = last.form().units() == UnitSystem.US ? Paper.LETTER : Paper.A4;
        WholeFile.replace(file, PageFile.bytes(file, page, paper));
        return file;
    }
}
