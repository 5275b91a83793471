package startwater.classroom;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import startwater.drill.Decision;
import startwater.record.Entry;
import startwater.score.Act;
import startwater.score.Verdict;

/**
 * A first decision that was not sound.
 *
 * @param code kind of act, see {@link Act}
 * @param own one of these decisions
 * @param best what was best there
 * @param count learners who erred so first
 */
public record FirstWrong(String code, Decision own, Decision best, int count) {

    /** What went wrong first in each attempt, the commonest first. */
    static List<FirstWrong> of(List<Attempt> attempts) {
        Map<String, FirstWrong> found = new LinkedHashMap<>();
        for (Attempt a : attempts) {
            a.steps().stream()
                    .filter(s -> {
                        Entry.Marks m = s.counted();
                        return m != null && m.word() != Verdict.Word.SOUND;
                    })
                    .findFirst()
                    .map(FirstWrong::of)
                    .ifPresent(f -> found.merge(
                            f.code(), f, (x, y) -> new FirstWrong(x.code(), x.own(), x.best(), x.count() + 1)));
        }
        return found.values().stream()
                .sorted(Comparator.comparingInt(FirstWrong::count).reversed().thenComparing(FirstWrong::code))
                .toList();
    }

    private static FirstWrong of(Step s) {
        return new FirstWrong(
                Act.of(s.decision()).code(),
                s.decision(),
                Objects.requireNonNull(s.marks()).best(),
                1);
    }
}
