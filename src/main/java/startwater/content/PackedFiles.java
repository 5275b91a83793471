package startwater.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The files packed with the program, whether it runs from a jar or from a folder of classes. */
final class PackedFiles {
    /** A file that is always there: the others lie in folders beside it. */
    private static final String LANDMARK = "scenario.schema.json";

    private PackedFiles() {}

    /** The files of a folder beside the landmark, by name. @param shownAs folder to name in faults */
    static List<Loaded> in(String folder, String ending, String shownAs) {
        URL landmark = Objects.requireNonNull(PackedFiles.class.getResource(LANDMARK), LANDMARK);
        try {
            URLConnection connection = landmark.openConnection();
            if (connection instanceof JarURLConnection jar) {
                try (FileSystem inside =
                        FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()))) {
                    return list(inside.getPath(jar.getEntryName()), folder, ending, shownAs);
                }
            }
            return list(Path.of(landmark.toURI()), folder, ending, shownAs);
        } catch (IOException e) {
            throw new UncheckedIOException("The files packed with the program cannot be read", e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("The program lies at an odd address: " + landmark, e);
        }
    }

    private static List<Loaded> list(Path landmark, String folder, String ending, String shownAs) throws IOException {
        Path at = landmark.resolveSibling(folder);
        if (!Files.isDirectory(at)) {
            return List.of();
        }
        List<Path> paths = new ArrayList<>();
        try (Stream<Path> found = Files.list(at)) {
            found.filter(path -> path.toString().endsWith(ending)).forEach(paths::add);
        }
        paths.sort(null);
        List<Loaded> files = new ArrayList<>();
        for (Path path : paths) {
            files.add(Loaded.of(shownAs + "/" + path.getFileName(), Files.readAllBytes(path)));
        }
        return files;
    }
}
