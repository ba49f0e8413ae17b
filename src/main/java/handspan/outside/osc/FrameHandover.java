package handspan.outside.osc;

import handspan.music.send.SoundFrame;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import org.jspecify.annotations.Nullable;

/**
 * Where the path thread leaves frames for the thread of a target. Neither ever waits for what the other does with them:
 * the lock is held for as long as it takes to put a frame or to take one.
 */
final class FrameHandover {
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition closed = lock.newCondition();
    private final NewestFrames frames = new NewestFrames();
    private @Nullable StreamConnection connection;
    private boolean closing;

    /**
     * The path thread leaves a frame.
     *
     * @return how many frames are left out because of it
     */
    int put(SoundFrame frame, boolean withState) {
        StreamConnection open;
        int left;
        lock.lock();
        try {
            open = connection;
            left = open == null ? frames.keepOnly(frame) : frames.offer(frame, withState);
        } finally {
            lock.unlock();
        }
        if (open != null) {
            open.wake();
        }
        return left;
    }

    /**
     * A connection is there: the newest frame is next, and frames wake it from now on.
     *
     * @return how many frames are left out
     */
    int begin(StreamConnection opened) {
        lock.lock();
        try {
            connection = opened;
            return frames.beginAnew();
        } finally {
            lock.unlock();
        }
    }

    /** The connection is there no more. */
    void end() {
        lock.lock();
        try {
            connection = null;
        } finally {
            lock.unlock();
        }
    }

    /** Takes the frame that is next. */
    NewestFrames.@Nullable Waiting take() {
        lock.lock();
        try {
            return frames.poll();
        } finally {
            lock.unlock();
        }
    }

    /**
     * What waits is to be written, and that is all.
     *
     * @return the connection, woken, or null if there is none
     */
    @Nullable
    StreamConnection close() {
        StreamConnection open;
        lock.lock();
        try {
            closing = true;
            closed.signalAll();
            open = connection;
        } finally {
            lock.unlock();
        }
        if (open != null) {
            open.wake();
        }
        return open;
    }

    /** Leaves out all that waits still. */
    int clear() {
        lock.lock();
        try {
            return frames.clear();
        } finally {
            lock.unlock();
        }
    }

    /** Waits; not longer than until {@link #close}. */
    void pause(long nanos) {
        lock.lock();
        try {
            long left = nanos;
            while (!closing && left > 0) {
                left = closed.awaitNanos(left);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            lock.unlock();
        }
    }

    boolean isClosing() {
        lock.lock();
        try {
            return closing;
        } finally {
            lock.unlock();
        }
    }

    boolean isConnected() {
        lock.lock();
        try {
            return connection != null;
        } finally {
            lock.unlock();
        }
    }
}
