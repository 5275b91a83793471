package startwater.classroom;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import startwater.record.Entry;

/** Marks that were worked out already, by drill and log: twenty learners with one first visit need one judgement. */
public interface MarkMemo {
    Optional<Entry.Marks> get(String key);

    void put(String key, Entry.Marks marks);

    /** Forgets all. @throws IOException where what is kept cannot be deleted */
    void clear() throws IOException;

    /** One that forgets with the program. */
    static MarkMemo inMemory() {
        Map<String, Entry.Marks> kept = new ConcurrentHashMap<>();
        return new MarkMemo() {
            @Override
            public Optional<Entry.Marks> get(String key) {
                return Optional.ofNullable(kept.get(key));
            }

            @Override
            public void put(String key, Entry.Marks marks) {
                kept.put(key, marks);
            }

            @Override
            public void clear() {
                kept.clear();
            }
        };
    }
}
