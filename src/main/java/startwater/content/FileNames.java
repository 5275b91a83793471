package startwater.content;

import java.nio.file.Path;

/** Names of files without folder and ending. */
final class FileNames {
    private FileNames() {}

    static String base(Path path, String ending) {
        Path last = path.getFileName();
        return base(last == null ? "" : last.toString(), ending);
    }

    static String base(String file, String ending) {
        String name = file.substring(Math.max(file.lastIndexOf('/'), file.lastIndexOf('\\')) + 1);
        return name.endsWith(ending) ? name.substring(0, name.length() - ending.length()) : name;
    }
}
