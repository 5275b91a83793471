package startwater.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import startwater.cli.Startwater;

/** Starts the tutor: a command, or the window. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        System.exit(Startwater.run(args, printer(System.out, "stdout"), printer(System.err, "stderr"), wishes -> 0));
    }

    /** A console gets its own character set; a pipe, and a console that claims to know ASCII only, get UTF-8. */
    private static PrintWriter printer(PrintStream stream, String name) {
        String said = System.getProperty(name + ".encoding", System.getProperty("sun." + name + ".encoding"));
        Charset charset = said != null && Charset.isSupported(said) ? Charset.forName(said) : StandardCharsets.UTF_8;
        return new PrintWriter(
                stream, true, charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset);
    }
}
