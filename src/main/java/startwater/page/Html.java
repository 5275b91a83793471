package startwater.page;

/**
 * Writes one page of HTML that needs nothing else: no script, no picture file, no font from elsewhere. It is well-formed XML
 * too, so that {@link Pdf} can be made of it.
 */
public final class Html {
    private static final String STYLE = """
            body{font:15px/1.5 "Source Sans 3","Segoe UI",Helvetica,Arial,sans-serif;color:#18252C;background:#fff;\
            max-width:44em;margin:2em auto;padding:0 1.2em}
            h1{font-size:24px}h2{font-size:18px;margin-top:1.6em}h3{font-size:15px}
            table{border-collapse:collapse;width:100%}td,th{text-align:left;vertical-align:top;padding:4px 10px 4px 0;\
            border-bottom:1px solid #D8DDD9}
            thead{display:table-header-group}tr{break-inside:avoid;page-break-inside:avoid}
            h1,h2,h3{break-after:avoid;page-break-after:avoid}
            p{margin:.8em 0}.card p,.card h3{margin:.45em 0}
            .card{border:1px solid #7C8B93;border-radius:4px;padding:.5em 1em;margin:.9em 0;\
            break-inside:avoid;page-break-inside:avoid}
            .quiet{color:#5A6B74}.blank{display:inline-block;min-width:9em;border-bottom:1px solid #18252C}
            .answers{break-before:page;page-break-before:always}svg{max-width:100%;height:auto}
            .sheet{break-after:page;page-break-after:always}
            .sheet:last-child{break-after:auto;page-break-after:auto}
            table.grid td,table.grid th{border:1px solid #7C8B93;padding:2px 5px;font-size:12px;white-space:nowrap}
            td.write{width:7em}
            .words{font-size:17px;letter-spacing:.04em}
            @page{margin:18mm;@bottom-right{content:counter(page) " / " counter(pages);\
            font:12px "Source Sans 3",Helvetica,Arial,sans-serif;color:#5A6B74}}
            @media print{body{margin:0;padding:0;max-width:none}table{-fs-table-paginate:paginate}}
            """;

    private final StringBuilder out = new StringBuilder();

    /** A page under its title. @param language code of its language, @param title its title */
    public Html(String language, String title) {
        this(language, title, "");
        tag("h1", title);
    }

    /** A page with rules of style of its own, and no heading yet. @param moreStyle CSS, put behind the usual */
    Html(String language, String title, String moreStyle) {
        out.append("<!DOCTYPE html>\n<html lang=\"")
                .append(text(language))
                .append("\">\n<head>\n<meta charset=\"utf-8\"/>\n<title>")
                .append(text(title))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append(moreStyle)
                .append("</style>\n</head>\n<body>\n");
    }

    /** Words as they stand, safe within a page. */
    public static String text(String words) {
        return words.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    /** An element of words. */
    public Html tag(String name, String words) {
        return raw("<" + name + ">" + text(words) + "</" + name + ">");
    }

    /** An element of words with a class. */
    public Html tag(String name, String styled, String words) {
        return raw("<" + name + " class=\"" + styled + "\">" + text(words) + "</" + name + ">");
    }

    /** A line that is HTML already. */
    public Html raw(String html) {
        out.append(html).append('\n');
        return this;
    }

    /** A row of a table; one of {@code th} is its head, which stands again at the top of every page the table goes on to. */
    public Html row(String cell, String... cells) {
        boolean head = cell.equals("th");
        StringBuilder row = new StringBuilder(head ? "<thead><tr>" : "<tr>");
        for (String each : cells) {
            row.append('<')
                    .append(cell)
                    .append('>')
                    .append(text(each))
                    .append("</")
                    .append(cell)
                    .append('>');
        }
        return raw(row.append(head ? "</tr></thead>" : "</tr>").toString());
    }

    /** The whole page. */
    public String page() {
        return out + "</body>\n</html>\n";
    }
}
