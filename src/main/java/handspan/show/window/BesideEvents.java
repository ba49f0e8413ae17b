package handspan.show.window;

import handspan.show.chart.Aside;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingWorker;
import org.jspecify.annotations.Nullable;

/**
 * Has things worked out by Swing's own workers, so that the event thread never waits. One at a time; of those that come
 * meanwhile the latest is next, the others are never begun. Used by the event thread.
 */
final class BesideEvents implements Aside {
    private @Nullable Runnable next;
    private boolean busy;

    @Override
    public <T> void workOut(Supplier<T> work, Consumer<T> taken) {
        next = () -> begin(work, taken);
        if (!busy) {
            goOn();
        }
    }

    /** Whether nothing is being worked out. */
    boolean isIdle() {
        return !busy;
    }

    private void goOn() {
        Runnable job = next;
        next = null;
        busy = job != null;
        if (job != null) {
            job.run();
        }
    }

    private <T> void begin(Supplier<T> work, Consumer<T> taken) {
        new SwingWorker<T, Void>() {
            @Override
            protected T doInBackground() {
                return work.get();
            }

            @Override
            protected void done() {
                try {
                    if (next == null) {
                        taken.accept(get());
                    }
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                } catch (ExecutionException e) {
                    throw new IllegalStateException("a chart could not be worked out", e.getCause());
                } finally {
                    goOn();
                }
            }
        }.execute();
    }
}
