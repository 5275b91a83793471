package startwater.rehearse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import startwater.content.Library;
import startwater.content.WholeFile;
import startwater.drill.Scenario;

/** Writes a rehearsal down: the drill, its form beside it, and the second system's drill where there is one. */
public final class RehearsalFiles {
    private static final String YAML = ".yaml";
    private static final String SECOND = "-second";
    private static final String OWN = "-own";

    private RehearsalFiles() {}

    /**
     * What was written.
     *
     * @param drill the drill of the first system
     * @param form the form beside it
     */
    public record Written(Path drill, Path form) {}

    /** The file name a form asks for by its name, such as {@code porch-barrel.yaml}. */
    public static String nameOf(Form form) {
        return id(form.answer(Entry.NAME)) + YAML;
    }

    /** A drill's id of a name; none that ships has it, since what a learner did is kept by it. */
    private static String id(String name) {
        String id = OwnWords.slug(name);
        return Library.shipped().ids().contains(id) ? id + OWN : id;
    }

    /** The drill a form stands for. @param id file name without its ending */
    public static Scenario drill(Form form, String id) {
        return OwnScenario.of(OwnSystem.of(form), id);
    }

    /**
     * Writes drill and form, each whole or not at all.
     *
     * @param file path of the drill; its name is made such as a drill's id must be
     * @param outlook of the form, for the mass of the fish when they move; null leaves the second system out
     * @throws IOException where the folder cannot be written
     */
    public static Written write(Form form, Path file, @org.jspecify.annotations.Nullable Outlook outlook)
            throws IOException {
        OwnSystem own = OwnSystem.of(form);
        Path name = file.getFileName();
        String id = id(name == null ? "" : name.toString().replaceAll("\\.ya?ml$", ""));
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            throw new IOException(file.toString());
        }
        Files.createDirectories(folder);
        Path drill = folder.resolve(id + YAML);
        Path beside = folder.resolve(id + FormFile.ENDING);
        WholeFile.replace(beside, FormFile.write(form));
        WholeFile.replace(drill, ScenarioYaml.of(OwnScenario.of(own, id)));
        if (outlook != null && outlook.second() != null) {
            String other = id + SECOND;
            WholeFile.replace(
                    folder.resolve(other + YAML),
                    ScenarioYaml.of(
                            OwnScenario.second(own, other, outlook.second().massG())));
        }
        return new Written(drill, beside);
    }
}
