package startwater.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** One of the listed names. */
record WordShape(List<String> words) implements Shape {
    WordShape {
        words = List.copyOf(words);
    }

    static WordShape oneOf(String... words) {
        return new WordShape(List.of(words));
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof ScalarNode scalar) || Shape.nothing(node)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_TEXT, "key", key);
        }
        String word = scalar.getValue();
        if (!words.contains(word)) {
            noteUnknown(key, line, word, faults);
            return Cell.broken(line);
        }
        return Cell.ofText(line, word);
    }

    private void noteUnknown(String key, int line, String word, Faults faults) {
        Optional<String> near = Near.to(word, words);
        if (near.isPresent()) {
            faults.add(line, Complaint.UNKNOWN_NAME_NEAR, "key", key, "value", word, "near", near.get());
        } else {
            faults.add(line, Complaint.UNKNOWN_NAME, "key", key, "value", word, "known", Shown.list(words));
        }
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("enum", words);
    }
}
