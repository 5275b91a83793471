package startwater.cli;

/** A command was used wrongly. Its message is one sentence in the reader's language: what, where, what to do. */
public final class WrongUseException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public WrongUseException(String sentence) {
        super(sentence);
    }
}
