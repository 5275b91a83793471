package startwater.record;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing that tells what a learner can do: a marked visit of a drill, or an answer in a lesson. */
public sealed interface Observed {
    Instant at();

    /** Ids of the skills that the drill trains or the lesson teaches, the main one first. */
    List<String> skills();

    /**
     * A marked visit.
     *
     * @param scenario id of the drill
     * @param attempt id of the attempt
     * @param mode practice or exam
     * @param visit number among the keeper's visits
     * @param marks the four marks and what they rest on
     * @param came whether the next strip showed what was foretold at this visit, or null where that is not known
     */
    record Visit(
            String scenario,
            String attempt,
            Entry.Mode mode,
            List<String> skills,
            int visit,
            Entry.Marks marks,
            @Nullable Boolean came,
            Instant at)
            implements Observed {
        public Visit {
            skills = List.copyOf(skills);
        }

        Visit with(@Nullable Boolean showed) {
            return new Visit(scenario, attempt, mode, skills, visit, marks, showed, at);
        }
    }

    /** An answer in a lesson. */
    record Answer(Entry.Answered answer) implements Observed {
        @Override
        public Instant at() {
            return answer.at();
        }

        @Override
        public List<String> skills() {
            return answer.skills();
        }
    }
}
