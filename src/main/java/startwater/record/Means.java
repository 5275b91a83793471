package startwater.record;

import java.time.Clock;
import java.time.InstantSource;
import java.util.UUID;
import java.util.function.Supplier;

/**
 * What a learner file takes from outside.
 *
 * @param storage the disk
 * @param clock what time it is
 * @param ids new ids, no two alike
 */
public record Means(Storage storage, InstantSource clock, Supplier<String> ids) {
    /** The computer's own. */
    public static final Means USUAL =
            new Means(Storage.DISK, Clock.systemUTC(), () -> UUID.randomUUID().toString());
}
