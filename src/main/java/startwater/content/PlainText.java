package startwater.content;

/** What a reader hears of a run of words: the words themselves, a computed number as any number. */
final class PlainText implements Inline.Cases<String> {
    static final PlainText AS_READ = new PlainText();

    private PlainText() {}

    @Override
    public String words(Inline.Words words) {
        return words.text();
    }

    @Override
    public String computed(Inline.Computed number) {
        return number.unit().isEmpty() ? "0" : "0 " + number.unit();
    }
}
