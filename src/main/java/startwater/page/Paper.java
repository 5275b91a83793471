package startwater.page;

/** The paper a page is printed on. */
public enum Paper {
    A4("A4", 210, 297),
    LETTER("letter", 215.9f, 279.4f);

    private final String size;
    private final float widthMm;
    private final float heightMm;

    Paper(String size, float widthMm, float heightMm) {
        this.size = size;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    float widthMm() {
        return widthMm;
    }

    float heightMm() {
        return heightMm;
    }

    /** An empty page for this paper. @param language code of its language, @param title its title */
    public Html page(String language, String title) {
        return untitled(language, title).tag("h1", title);
    }

    /** The same without the title as a heading: for sheets that bear it each. */
    public Html untitled(String language, String title) {
        return new Html(language, title, "@page{size:" + size + ";margin:16mm 16mm 18mm}\n");
    }
}
