package startwater.classroom;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.record.AttemptCheck;

/**
 * One attempt as it came back, or a file in which there is none.
 *
 * @param file name of the file
 * @param learner name of the learner, or the file's where nobody is named
 * @param attempt what can be made of it, or null where nothing can
 * @param check the attempt played again, or null where it cannot be
 * @param findings what is to be known of it
 * @param checked whether its marks were worked out again
 */
public record HandedIn(
        String file,
        String learner,
        @Nullable Attempt attempt,
        @Nullable AttemptCheck check,
        List<Finding> findings,
        boolean checked) {
    public HandedIn {
        findings = List.copyOf(findings);
    }

    /** The gravest of what was found. */
    public Finding.Status status() {
        return findings.stream()
                .map(f -> f.kind().status())
                .max(Comparator.naturalOrder())
                .orElse(Finding.Status.SOUND);
    }

    /** Whether something is odd, so that the marks are to be worked out again. */
    public boolean suspect() {
        return findings.stream().anyMatch(f -> f.kind() != Finding.Kind.OPEN && f.kind() != Finding.Kind.TWICE);
    }

    HandedIn with(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new HandedIn(file, learner, attempt, check, all, checked);
    }

    HandedIn checked(Attempt marked, List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new HandedIn(file, learner, marked, check, all, true);
    }
}
