package startwater.cli;

import java.util.List;
import startwater.content.Fault;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.drill.Scenario;
import startwater.text.Texts;

/** The drills a command can find: those that ship by id, others by path. */
final class DrillShelf {
    private DrillShelf() {}

    static List<Scenario> all() {
        return Library.shipped().scenarios();
    }

    /** The drill of this id or path. @throws WrongUseException where there is none or it is broken, with what is wrong */
    static Scenario find(String idOrPath, Texts texts) {
        Library library = Library.shipped();
        if (!library.ids().contains(idOrPath) && !idOrPath.contains("/") && !idOrPath.endsWith(".yaml")) {
            throw new WrongUseException(texts.text("cli.noDrill", idOrPath, String.join(", ", library.ids())));
        }
        Parsed<Scenario> parsed = library.scenario(idOrPath);
        if (!parsed.ok()) {
            throw new WrongUseException(String.join(
                    "\n",
                    parsed.faults().stream()
                            .map((Fault f) -> f.line(texts.language().code()))
                            .toList()));
        }
        return parsed.get();
    }
}
