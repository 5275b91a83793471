package startwater.classroom.sheet;

import startwater.page.Html;

/** The paper a sheet is printed on. */
public enum Paper {
    A4("A4"),
    LETTER("letter");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** Style of a sheet: size of the paper, a page for each learner, room to write. */
    private String style() {
        return "@page{size:" + size + ";margin:16mm}\n"
                + ".sheet{break-after:page}.sheet:last-child{break-after:auto}\n"
                + "table.grid td,table.grid th{border:1px solid #7C8B93;padding:3px 6px}\n"
                + "tr{break-inside:avoid}td.write{height:2.2em}.words{font-size:17px;letter-spacing:.04em}\n";
    }

    /** An empty page for this paper. */
    public Html page(String language, String title) {
        return new Html(language, title, style());
    }
}
