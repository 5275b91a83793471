package startwater.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.score.DrillTrial;
import startwater.score.Trial;
import startwater.score.TrialPlan;
import startwater.score.TrialStore;

/**
 * Tries drills one after the other, each on so many threads.
 *
 * @param cache where what is played is kept, or null
 */
record TrialRuns(TrialPlan plan, int threads, @Nullable TrialCache cache) {
    List<DrillTrial> of(List<Scenario> drills, TrialProgress progress) {
        Thread hook = new Thread(() -> progress.stopped(cache == null ? null : cache.file()));
        Runtime.getRuntime().addShutdownHook(hook);
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            List<DrillTrial> results = new ArrayList<>();
            for (int i = 0; i < drills.size(); i++) {
                int number = i;
                Scenario drill = drills.get(i);
                TrialStore store = cache == null ? TrialStore.NONE : cache.of(drill);
                results.add(
                        pool.submit(() -> Trial.of(drill, plan, store, (done, most) -> progress.at(number, done, most)))
                                .get());
                progress.done(i, results.get(i));
            }
            return results;
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("trial");
        } finally {
            pool.shutdownNow();
            progress.end();
            removeHook(hook);
        }
    }

    private static void removeHook(Thread hook) {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException alreadyGoingDown) {
            // The hook is running.
        }
    }
}
