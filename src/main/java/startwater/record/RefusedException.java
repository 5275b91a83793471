package startwater.record;

import java.io.IOException;

/** A learner file cannot be used, for a reason that can be told. */
public final class RefusedException extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Notice notice;

    public RefusedException(Notice notice) {
        super(notice.toString());
        this.notice = notice;
    }

    public Notice notice() {
        return notice;
    }
}
