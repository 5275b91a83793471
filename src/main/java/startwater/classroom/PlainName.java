package startwater.classroom;

/** Words from somebody else's file, made fit to be shown: no control characters, no change of direction, not too long. */
final class PlainName {
    private static final int LONGEST = 200;

    private PlainName() {}

    static String of(String words) {
        StringBuilder out = new StringBuilder();
        words.codePoints().filter(PlainName::plain).limit(LONGEST).forEach(out::appendCodePoint);
        return out.toString().strip();
    }

    /** Control and format characters could move the cursor or turn the line round; lone surrogates are no text. */
    private static boolean plain(int c) {
        int type = Character.getType(c);
        return type != Character.CONTROL
                && type != Character.FORMAT
                && type != Character.SURROGATE
                && type != Character.LINE_SEPARATOR
                && type != Character.PARAGRAPH_SEPARATOR
                && type != Character.UNASSIGNED;
    }
}
