package startwater.cli;

import startwater.text.Texts;

/** The columns of {@code run --csv} as a table in Markdown: what {@code --csv-columns} prints and the document holds. */
final class ColumnList {
    private ColumnList() {}

    static String of(Texts texts) {
        StringBuilder list = new StringBuilder(texts.text("csv.heading")).append("\n|---|---|---|\n");
        for (HourColumn column : HourColumn.ALL) {
            list.append("| ")
                    .append(String.join(" | ", column.name(), column.unit(), column.meaning(texts)))
                    .append(" |\n");
        }
        return list.toString();
    }
}
