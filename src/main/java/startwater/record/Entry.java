package startwater.record;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.drill.Prediction.Sureness;
import startwater.score.Care;
import startwater.score.UnitSlip;
import startwater.score.Verdict;
import startwater.strip.Pad;

/** One line of a learner file. Its form on disk is described in {@code src/docs/learner-file.md}. Immutable. */
public sealed interface Entry {
    /** When it was written. */
    Instant at();

    /** A line of one attempt; its lines are counted, so that a lost one is missed. */
    sealed interface OfAttempt extends Entry {
        /** Id of the attempt. */
        String attempt();

        /** Place among the lines of the attempt, from 0. */
        int n();
    }

    /**
     * Whose file this is. The first line; it may come again, and the last one counts.
     *
     * @param format of the file; this program knows {@link EntryText#FORMAT} and older
     * @param id a UUID, the same as long as the learner exists
     * @param name a name or a number, or empty for one who goes on without
     */
    record Learner(int format, String id, String name, Instant at) implements Entry {}

    /**
     * A drill is begun.
     *
     * @param attempt a UUID
     * @param n always 0
     * @param scenario id of the drill
     * @param skills what the drill trains, by id
     * @param content fingerprint of all that decides how the drill plays, see {@code ContentHash.ofPlay}
     * @param engine which build played it, see {@link EngineVersion}
     * @param variant which hidden tank
     * @param mode practice or exam
     * @param language code of the language it was played in
     * @param handout id of what a teacher handed out, or null
     */
    record Begun(
            String attempt,
            int n,
            String scenario,
            List<String> skills,
            String content,
            String engine,
            long variant,
            Mode mode,
            String language,
            @Nullable String handout,
            Instant at)
            implements OfAttempt {
        public Begun {
            skills = List.copyOf(skills);
        }

        /** How its decisions are judged. */
        public Care care() {
            return mode == Mode.EXAM ? Care.EXAM : Care.LIVE;
        }
    }

    /** When the learner hears of the marks. */
    enum Mode {
        /** After each decision. */
        PRACTICE,
        /** At the end. */
        EXAM
    }

    /**
     * A strip is dipped.
     *
     * @param chloride whether it is one of the chloride strips, which are counted apart
     * @param strip number of the strip in the run, from 0
     * @param dilution how many times the sample was diluted, 1 for none
     */
    record Dipped(String attempt, int n, boolean chloride, int strip, int dilution, Instant at) implements OfAttempt {}

    /**
     * A pad is read and written down; the same pad of the same strip again is a correction.
     *
     * @param stop place on the pad's scale in half blocks, from 0
     */
    record Wrote(String attempt, int n, Pad pad, int stop, int dilution, int strip, Instant at) implements OfAttempt {}

    /** A reading of the open visit is taken back. */
    record Erased(String attempt, int n, Pad pad, int strip, Instant at) implements OfAttempt {}

    /**
     * A sum is worked at the bench.
     *
     * @param skill id of the skill that the sum belongs to
     * @param given the learner's number
     * @param exact the exact one, in the same unit
     * @param mark 0 to 100
     * @param slip the unit slip that explains the difference, or null
     */
    record Worked(
            String attempt,
            int n,
            int visit,
            String skill,
            double given,
            double exact,
            double mark,
            @Nullable UnitSlip slip,
            Instant at)
            implements OfAttempt {}

    /**
     * A decision is done.
     *
     * @param visit number among the keeper's visits, from 0
     * @param decision as it was asked for; the shelf may hold less
     * @param prediction what the next strip was said to show, or null
     * @param seen what was seen at the visit
     * @param log fingerprint of the log up to and with this visit
     * @param tank fingerprint of the hidden tank at the next visit, or at the end
     */
    record Decided(
            String attempt,
            int n,
            int visit,
            Decision decision,
            @Nullable Prediction prediction,
            Sight seen,
            String log,
            String tank,
            Instant at)
            implements OfAttempt {}

    /**
     * The visit in numbers, for tools that do not replay.
     *
     * @param day days since the system was filled
     * @param temperatureC thermometer, °C
     * @param oxygenMgPerL by meter, mg/L, or null without one
     * @param ph by meter, or null without one
     * @param alive fish counted alive
     * @param found dead fish found since the visit before
     */
    record Sight(
            double day,
            double temperatureC,
            @Nullable Double oxygenMgPerL,
            @Nullable Double ph,
            int alive,
            int found) {}

    /** A decision is judged. */
    record Marked(String attempt, int n, int visit, Marks marks, Instant at) implements OfAttempt {}

    /**
     * A drill is over.
     *
     * @param mark mean of the scored visits, 0 to 100, or null when none was scored
     * @param passed whether it is passed
     * @param alive fish alive at the end
     * @param expectedDeaths deaths to be expected of these decisions, fish
     * @param luck expected deaths less those that came, fish
     * @param filterDay day on which the filter first carried the load, or null when it never did
     */
    record Finished(
            String attempt,
            int n,
            @Nullable Double mark,
            boolean passed,
            int alive,
            double expectedDeaths,
            double luck,
            @Nullable Double filterDay,
            Instant at)
            implements OfAttempt {}

    /** An attempt is given up: it cannot go on, or the learner began the drill anew. */
    record Abandoned(String attempt, int n, Instant at) implements OfAttempt {}

    /** What the learner resolved after a drill, in own words. @param skills ids of the skills it bears on */
    record Resolved(@Nullable String attempt, List<String> skills, String text, Instant at) implements Entry {
        public Resolved {
            skills = List.copyOf(skills);
        }
    }

    /**
     * A question of a lesson is answered.
     *
     * @param lesson id of the lesson
     * @param skills ids of the skills that the lesson teaches, the main one first
     * @param block number of the block in the lesson, from 0
     * @param step which answer in the block, from 0
     * @param score how right, 0 to 1
     * @param options how many options there were to pick from, 0 for a number or a reading
     * @param sureness how sure the learner was, or null where nobody asked
     */
    record Answered(
            String lesson,
            List<String> skills,
            int block,
            int step,
            double score,
            int options,
            @Nullable Sureness sureness,
            Instant at)
            implements Entry {
        public Answered {
            skills = List.copyOf(skills);
        }
    }

    /**
     * The four marks of a visit, and what they rest on.
     *
     * @param read readings written
     * @param readRight those within one block of the colour
     * @param working the last sum of the visit, or null without one
     * @param decision 0 to 100
     * @param word sound, costly or dangerous
     * @param regret of the choice, % of the stock
     * @param scored whether the visit counts
     * @param arguable whether another reasonable view accepts the choice
     * @param credited false where the log contradicts the world
     * @param decisive the variable that decided
     * @param own what was done
     * @param best the best option
     * @param foresight the mark of the prediction, or null without one
     * @param came whether what was said at the visit before is what was written at this one, or null where that cannot be told
     */
    record Marks(
            int read,
            int readRight,
            @Nullable Working working,
            double decision,
            Verdict.Word word,
            double regret,
            boolean scored,
            boolean arguable,
            boolean credited,
            Verdict.Variable decisive,
            Decision own,
            Decision best,
            @Nullable Foresight foresight,
            @Nullable Boolean came) {}

    /** The mark of a sum, 0 to 100. @param skill id of its skill @param slip whether a slip of unit explains the difference */
    record Working(String skill, double mark, boolean slip) {}

    /**
     * The mark of a prediction.
     *
     * @param pad which pad was foretold
     * @param sureness how sure the learner was
     * @param mark 0 to 100
     * @param chance the model's own chance of what was said, 0 to 1
     */
    record Foresight(Pad pad, Sureness sureness, double mark, double chance) {}
}
