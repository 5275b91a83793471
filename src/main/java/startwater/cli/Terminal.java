package startwater.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** Asks and tells, line by line. Answers come from the keyboard or from a file of the lines one would type. */
final class Terminal {
    private final BufferedReader in;
    private final PrintWriter out;
    private final boolean echo;

    /** @param echo whether to print each answer, as a keyboard would have shown it */
    Terminal(BufferedReader in, PrintWriter out, boolean echo) {
        this.in = in;
        this.out = out;
        this.echo = echo;
    }

    /** The input ended. Not a fault: whoever plays may leave at any question. */
    static final class EndOfInput extends RuntimeException {
        private static final long serialVersionUID = 1L;

        EndOfInput() {
            super("end of input", null, false, false);
        }
    }

    /** What came of one answer: a value, or the reason it was refused. */
    record Answer<T>(@Nullable T value, @Nullable String refusal) {
        static <T> Answer<T> of(T value) {
            return new Answer<>(value, null);
        }

        static <T> Answer<T> refused(String reason) {
            return new Answer<>(null, reason);
        }
    }

    void say(String line) {
        out.println(line);
    }

    void flush() {
        out.flush();
    }

    void gap() {
        out.println();
    }

    /** Asks until an answer is taken. @throws EndOfInput when there is no more */
    <T> T ask(String question, Function<String, Answer<T>> reader) {
        while (true) {
            Answer<T> answer = reader.apply(line(question));
            if (answer.value() != null) {
                return answer.value();
            }
            out.println("  " + answer.refusal());
        }
    }

    private String line(String question) {
        out.print(question + " > ");
        out.flush();
        String line;
        try {
            line = in.readLine();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (line == null) {
            out.println();
            throw new EndOfInput();
        }
        if (echo) {
            out.println(line);
        }
        return line.strip();
    }
}
