package startwater.content;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/**
 * Turns YAML into its tree of nodes, each with its place. The stream of events is looked through first, so that nothing
 * deep, endless or self-referring is ever built.
 */
final class YamlTree {
    static final int DEEPEST = 12;
    static final int MOST_PARTS = 20_000;

    private YamlTree() {}

    /** The root node, or null with the faults noted. */
    static @Nullable Node of(String text, Faults faults) {
        LoadSettings settings = LoadSettings.builder()
                .setUseMarks(true)
                // What a plain word means is ours to say: see the shapes.
                .setSchema(new FailsafeSchema())
                .setAllowNonScalarKeys(true)
                .setCodePointLimit(SourceText.MOST_BYTES)
                .build();
        try {
            if (!plain(new Parse(settings).parseString(text), faults)) {
                return null;
            }
            Optional<Node> root = new Compose(settings).composeString(text);
            if (root.isEmpty()) {
                faults.add(0, Complaint.EMPTY_FILE);
            }
            return root.orElse(null);
        } catch (MarkedYamlEngineException e) {
            noteSyntax(e, text, faults);
        } catch (YamlEngineException e) {
            faults.add(1, Complaint.NOT_YAML);
        }
        return null;
    }

    /** Line of a mark, counted from 1. */
    static int line(Optional<Mark> mark) {
        return mark.map(Mark::getLine).orElse(0) + 1;
    }

    private static boolean plain(Iterable<Event> events, Faults faults) {
        int depth = 0;
        int parts = 0;
        int documents = 0;
        for (Event event : events) {
            int line = line(event.getStartMark());
            switch (event.getEventId()) {
                case DocumentStart -> documents++;
                case MappingStart, SequenceStart -> depth++;
                case MappingEnd, SequenceEnd -> depth--;
                default -> {}
            }
            if (documents > 1) {
                faults.add(line, Complaint.MANY_DOCUMENTS);
                return false;
            }
            if (depth > DEEPEST) {
                faults.add(line, Complaint.TOO_DEEP, "limit", DEEPEST);
                return false;
            }
            if (++parts > MOST_PARTS) {
                faults.add(line, Complaint.TOO_MANY_PARTS, "limit", MOST_PARTS);
                return false;
            }
            if (!untagged(event, line, faults)) {
                return false;
            }
        }
        return true;
    }

    private static boolean untagged(Event event, int line, Faults faults) {
        boolean reference = event instanceof AliasEvent
                || (event instanceof NodeEvent node && node.getAnchor().isPresent());
        boolean tag = (event instanceof ScalarEvent scalar && scalar.getTag().isPresent())
                || (event instanceof CollectionStartEvent collection
                        && collection.getTag().isPresent());
        if (reference) {
            faults.add(line, Complaint.ANCHOR_OR_ALIAS);
        } else if (tag) {
            faults.add(line, Complaint.TAG);
        }
        return !reference && !tag;
    }

    /** Says in plain words where the common slips are; what the parser says is for programmers. */
    private static void noteSyntax(MarkedYamlEngineException e, String text, Faults faults) {
        String problem = e.getProblem() == null ? "" : e.getProblem();
        String context = e.getContext() == null ? "" : e.getContext();
        int line = line(e.getProblemMark());
        int start = e.getContextMark().isPresent() ? line(e.getContextMark()) : line;
        if (context.contains("quoted scalar")) {
            faults.add(start, Complaint.UNCLOSED_QUOTE);
        } else if (problem.contains("\\t") || indentedByTab(text, line)) {
            faults.add(line, Complaint.TAB);
        } else if (problem.contains("mapping values are not allowed")) {
            noteColon(e.getProblemMark().map(Mark::getColumn).orElse(0), text, line, faults);
        } else if (problem.contains("could not find expected ':'")) {
            faults.add(start, Complaint.MISSING_COLON);
        } else {
            faults.add(line, Complaint.NOT_YAML);
        }
    }

    /** A second colon on a line stands inside a text; a first one that fits nowhere follows a line without any. */
    private static void noteColon(int column, String text, int line, Faults faults) {
        List<String> lines = text.lines().limit(line).toList();
        String here = lines.get(line - 1);
        if (here.substring(0, Math.min(column, here.length())).contains(": ")) {
            faults.add(line, Complaint.COLON_IN_TEXT);
            return;
        }
        int above = line - 1;
        while (above > 1 && lines.get(above - 1).isBlank()) {
            above--;
        }
        faults.add(Math.max(1, above), Complaint.MISSING_COLON);
    }

    private static boolean indentedByTab(String text, int line) {
        return text.lines().skip(line - 1L).findFirst().orElse("").matches("\\s*\t.*");
    }
}
