package startwater.score;

import org.jspecify.annotations.Nullable;

/** Where a trial keeps what it has played, so that it need not be played again. Called from many threads at once. */
public interface TrialStore {
    /** What was kept under this key, or null. */
    @Nullable
    String find(String key);

    void keep(String key, String play);

    /** Keeps nothing. */
    TrialStore NONE = new TrialStore() {
        @Override
        public @Nullable String find(String key) {
            return null;
        }

        @Override
        public void keep(String key, String play) {}
    };
}
