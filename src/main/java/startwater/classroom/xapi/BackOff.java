package startwater.classroom.xapi;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/**
 * How long to wait before asking again: twice as long each time, or as long as the store says.
 *
 * @param first wait after the first failure
 * @param most longest wait that is sat out; where the store asks for longer, it is for the teacher to come back
 * @param tries how often one batch is tried in all
 */
public record BackOff(Duration first, Duration most, int tries) {
    public static final BackOff USUAL = new BackOff(Duration.ofSeconds(1), Duration.ofMinutes(2), 6);

    /**
     * The wait before the next try.
     *
     * @param failures so far, from 1
     * @param retryAfter header of the answer, in seconds or as a date (RFC 9110, section 10.2.3), or empty
     * @param now for a date
     * @return empty where there is no sense in waiting
     */
    public Optional<Duration> before(int failures, String retryAfter, Instant now) {
        if (failures >= tries) {
            return Optional.empty();
        }
        Duration own = first.multipliedBy(1L << Math.min(failures - 1, 20));
        Duration wait = asked(retryAfter, now).orElse(own.compareTo(most) > 0 ? most : own);
        return wait.compareTo(most) > 0 ? Optional.empty() : Optional.of(wait);
    }

    private static Optional<Duration> asked(String retryAfter, Instant now) {
        String value = retryAfter.strip();
        if (value.matches("\\d{1,9}")) {
            return Optional.of(Duration.ofSeconds(Long.parseLong(value)));
        }
        try {
            Instant then = ZonedDateTime.parse(value, DateTimeFormatter.RFC_1123_DATE_TIME)
                    .toInstant();
            Duration wait = Duration.between(now, then);
            return Optional.of(wait.isNegative() ? Duration.ZERO : wait);
        } catch (DateTimeException neither) {
            return Optional.empty();
        }
    }
}
