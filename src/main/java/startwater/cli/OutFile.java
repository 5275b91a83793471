package startwater.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import startwater.page.PageFile;
import startwater.page.Paper;
import startwater.text.Texts;

/** A file that a command was asked to write. */
final class OutFile {
    private OutFile() {}

    /** Writes it. @throws WrongUseException where it cannot be written */
    static void write(Path file, String text, Texts texts) {
        try {
            Files.writeString(file, text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file));
        }
    }

    /** Writes a page to print, a PDF where the name ends so. @throws WrongUseException where it cannot be written */
    static void page(Path file, String page, Paper paper, Texts texts) {
        try {
            Files.write(file, PageFile.bytes(file, page, paper));
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file));
        }
    }
}
