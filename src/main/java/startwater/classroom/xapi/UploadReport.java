package startwater.classroom.xapi;

import java.util.List;

/**
 * What came of an upload.
 *
 * @param total statements there are
 * @param before done in an earlier upload
 * @param sent that the store took now
 * @param held that the store already had with other content, and kept as it had them
 * @param refused that the store does not take, with its reason
 * @param waits how often it was waited
 * @param end how it ended
 * @param said what the store or the line said last when it did not end well, for the teacher to pass on; may be empty
 */
public record UploadReport(
        int total, int before, int sent, int held, List<Refused> refused, int waits, End end, String said) {
    public UploadReport {
        refused = List.copyOf(refused);
    }

    /** A statement that was not taken. @param reason as the store gave it, one line */
    public record Refused(String id, int status, String reason) {}

    /** How an upload ends. */
    public enum End {
        /** All statements have been dealt with. */
        DONE,
        /** Stopped on request. */
        STOPPED,
        /** The key is not accepted. */
        KEY_REFUSED,
        /** Something answers there that is no record store. */
        NO_STORE,
        /** The store is busy or at fault, and waiting did not help. */
        BUSY,
        /** The line does not hold. */
        NO_LINE,
        /** The state file cannot be written, so that going on would forget what is done. */
        NO_STATE
    }

    /** What is left to send. */
    public int left() {
        return total - before - sent - held - refused.size();
    }
}
