package handspan.wiring.evening;

import handspan.live.session.LinkException;
import handspan.profile.ProfileException;
import java.io.IOException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/** Does what takes time, one thing after the other, by a thread of its own, and tells in words what went wrong. */
final class Turns {
    private static final long END_S = 8;

    /** Something that may take its time. */
    interface Job {
        void run() throws LinkException, IOException, ProfileException;
    }

    private final EveningState state;
    private final ExecutorService worker;

    Turns(EveningState state) {
        this.state = state;
        this.worker = Executors.newSingleThreadExecutor(job -> {
            Thread thread = new Thread(job, "evening");
            thread.setDaemon(true);
            return thread;
        });
    }

    /**
     * Has something done when its turn comes; returns at once.
     *
     * @param words shown meanwhile
     * @param trouble told what went wrong
     */
    void add(String words, Consumer<String> trouble, Job job) {
        try {
            worker.execute(() -> run(words, trouble, job));
        } catch (RejectedExecutionException e) {
            trouble.accept("the evening is over");
        }
    }

    private void run(String words, Consumer<String> trouble, Job job) {
        state.change(seen -> seen.doing(words));
        try {
            job.run();
        } catch (LinkException | IOException | ProfileException | IllegalArgumentException e) {
            trouble.accept(e.getMessage() == null ? e.toString() : e.getMessage());
        } catch (RuntimeException e) {
            trouble.accept("a mistake in this program: " + e + "; please report it with what you did");
        } finally {
            state.change(seen -> seen.doing(""));
        }
    }

    /** Takes no more; what was added is still done. */
    void end() {
        worker.shutdown();
    }

    boolean isEnding() {
        return worker.isShutdown();
    }

    /** Waits until all is done, but not for ever. */
    void await() {
        try {
            if (!worker.awaitTermination(END_S, TimeUnit.SECONDS)) {
                worker.shutdownNow();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
