package startwater.classroom;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Entry;

/**
 * What a teacher hands out: drills and lessons, the same hidden tank for all or one each, practice or exam. Opening it needs
 * nothing but the file: a drill that does not ship travels in it.
 *
 * @param id of the hand-out: letters, digits and hyphens
 * @param title as the teacher wrote it
 * @param mode practice or exam
 * @param deadline in the teacher's words, or empty; the program does not enforce it
 * @param sameTank whether all get the same hidden tank
 * @param seed from which the tanks are drawn
 * @param drills in order
 * @param lessons ids, in order
 */
public record Handout(
        String id,
        String title,
        Entry.Mode mode,
        String deadline,
        boolean sameTank,
        long seed,
        List<Drill> drills,
        List<String> lessons) {
    public Handout {
        drills = List.copyOf(drills);
        lessons = List.copyOf(lessons);
    }

    /**
     * One drill of a hand-out.
     *
     * @param scenario the drill
     * @param source its file, where it does not ship with the program, or null
     */
    public record Drill(Scenario scenario, @Nullable String source) {
        /** Fingerprint of all that decides how it plays. */
        public String content() {
            return ContentHash.ofPlay(scenario);
        }

        /** Whether the program that runs has the drill itself. */
        static boolean ships(Scenario scenario) {
            return Library.shipped().scenarios().stream()
                    .anyMatch(s -> ContentHash.of(s).equals(ContentHash.of(scenario)));
        }
    }

    /** The drill of an id, if it was handed out. */
    public Optional<Scenario> drill(String scenario) {
        return drills.stream()
                .map(Drill::scenario)
                .filter(s -> s.id().equals(scenario))
                .findFirst();
    }

    /**
     * Which hidden tank a learner plays.
     *
     * @param learner id of the learner, a UUID: with one tank each, it decides which
     * @return 0 or more; the seed itself where all get the same
     */
    public long variant(String learner) {
        if (sameTank) {
            return seed;
        }
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] hash = digest.digest((seed + " " + id + " " + learner).getBytes(StandardCharsets.UTF_8));
            // Thirty-one bits: short enough to be read aloud.
            return ByteBuffer.wrap(hash).getInt() & 0x7fff_ffffL;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
