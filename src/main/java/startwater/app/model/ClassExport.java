package startwater.app.model;

import java.time.ZoneId;
import java.util.List;
import java.util.function.Supplier;
import startwater.classroom.Attempt;
import startwater.classroom.Roster;
import startwater.classroom.sheet.ResultSheet;
import startwater.classroom.table.Csv;
import startwater.classroom.table.Gradebook;
import startwater.classroom.xapi.ClassStatements;
import startwater.classroom.xapi.Names;
import startwater.classroom.xapi.StatementFile;
import startwater.page.Paper;
import startwater.text.Language;
import startwater.text.Texts;

/** What a teacher can take away of a class: pages to print, tables, statements. */
public enum ClassExport {
    RESULTS("results", true, ""),
    COMPLETIONS("completions", true, ""),
    GRADEBOOK("gradebook", false, ".csv"),
    DECISIONS("each", false, ".csv"),
    STATEMENTS("statements", false, ".jsonl");

    private static final String CLASS = "class";

    private final String key;
    private final boolean page;
    private final String ending;

    ClassExport(String key, boolean page, String ending) {
        this.key = key;
        this.page = page;
        this.ending = ending;
    }

    /** End of its key in the words of the desk, and beginning of the file's name. */
    public String key() {
        return key;
    }

    /** Whether it is a page, to be kept as HTML or PDF. */
    public boolean page() {
        return page;
    }

    /** How the file's name ends where it is no page. */
    public String ending() {
        return ending;
    }

    /**
     * Its text. Names of a roster stand in the gradebook and on paper only; statements and the table of decisions keep
     * pseudonyms.
     */
    public String text(List<Attempt> attempts, Roster roster, Paper paper, Texts texts, ZoneId zone) {
        // Spreadsheets in Spanish split cells at semicolons.
        Supplier<Csv> cells = texts.language() == Language.ES ? Csv::semicolons : Csv::commas;
        ResultSheet sheets = new ResultSheet(texts, paper, roster::shown, zone);
        return switch (this) {
            case RESULTS -> sheets.results(attempts);
            case COMPLETIONS -> sheets.completions(attempts);
            case GRADEBOOK -> Gradebook.marks(attempts, cells, roster::name);
            case DECISIONS -> Gradebook.decisions(attempts, cells);
            case STATEMENTS -> StatementFile.text(ClassStatements.of(attempts, Names.USUAL, CLASS));
        };
    }
}
