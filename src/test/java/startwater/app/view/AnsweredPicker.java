package startwater.app.view;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Answers when files are asked for, in the order given; an empty answer is a chooser that was closed. */
final class AnsweredPicker implements Picker {
    private final Deque<Optional<Path>> answers = new ArrayDeque<>();
    /** What was asked: the title, and the name it began with where there was one. */
    final List<String> asked = new ArrayList<>();

    AnsweredPicker then(@Nullable Path answer) {
        answers.add(Optional.ofNullable(answer));
        return this;
    }

    private @Nullable Path answer(String question) {
        asked.add(question);
        return answers.remove().orElse(null);
    }

    @Override
    public @Nullable Path save(String title, String name, List<Kind> kinds) {
        return answer(title + ": " + name);
    }

    @Override
    public @Nullable Path open(String title, List<Kind> kinds) {
        return answer(title);
    }

    @Override
    public @Nullable Path folder(String title) {
        return answer(title);
    }
}
