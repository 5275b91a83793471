package startwater.content;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes small files so that a crash or a full disk leaves the old file or the new one whole. */
public final class WholeFile {
    private WholeFile() {}

    /** Writes a text beside the file and moves it over. @throws IOException where it cannot be; the old file stays */
    public static void replace(Path file, String text) throws IOException {
        replace(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The same with bytes. */
    public static void replace(Path file, byte[] bytes) throws IOException {
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.write(fresh, bytes);
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
