package handspan.wiring;

import handspan.live.session.Link;
import handspan.live.session.LinkOpener;
import handspan.outside.take.TakeEntry;
import handspan.outside.take.TakeIndex;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A recording that runs by the clock, as a board would send it, and can be paused and taken elsewhere. Any thread may
 * say what it wants and ask where it stands; neither ever waits. The file is read by whoever reads the link, and once
 * from end to end by a thread of its own, which finds out how long it is.
 */
public final class Reel implements LinkOpener, AutoCloseable {
    private static final double MICROS_PER_S = 1e6;

    /** How it stands, for those who ask. */
    private record Stand(RunClock clock, boolean running) {}

    private final Source from;
    private final TakeSource source;
    private final LongSupplier clockNanos;
    private final TakeRun run;
    private final Queue<Consumer<TakeRun>> wishes = new ConcurrentLinkedQueue<>();
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition news = lock.newCondition();
    private volatile Stand stand;
    private volatile @Nullable TakeIndex index;
    private volatile String indexTrouble = "";
    private volatile boolean over;
    private volatile boolean closed;

    /**
     * Opens a recording; it runs once its link is read.
     *
     * @param from where it comes from
     * @param options how
     * @param clockNanos the clock
     * @throws IOException when it can't be read
     */
    Reel(Source from, SourceOptions options, LongSupplier clockNanos) throws IOException {
        Path path = Path.of(from.name());
        this.from = from;
        this.clockNanos = clockNanos;
        this.source = new TakeSource(path, options.ratePerS(), 0, options.beginMicros());
        this.run = new TakeRun(source, options.staying(), () -> index);
        this.stand = new Stand(run.clock(), true);
        Thread reading = new Thread(() -> read(path, options.ratePerS()), "length of " + path.getFileName());
        reading.setDaemon(true);
        reading.start();
    }

    private void read(Path path, OptionalDouble ratePerS) {
        try {
            TakeIndex whole = TakeIndex.of(path, ratePerS, () -> !closed);
            if (!closed) {
                index = whole;
            }
        } catch (IOException e) {
            indexTrouble = String.valueOf(e.getMessage());
        }
    }

    // ---- for whoever drives it ----

    /** Stops it where it is, or lets it go on; at its end it begins again. */
    public void turn() {
        wish(now -> now.turn(clockNanos.getAsLong()));
    }

    /**
     * Takes it elsewhere.
     *
     * @param seconds from its start; beyond either end, that end
     */
    public void jump(double seconds) {
        long micros = Math.round(seconds * MICROS_PER_S);
        wish(now -> now.jump(micros));
    }

    private void wish(Consumer<TakeRun> wanted) {
        wishes.add(wanted);
        lock.lock();
        try {
            news.signalAll();
        } finally {
            lock.unlock();
        }
    }

    /** Where it stands. */
    public TakePlace place() {
        Stand seen = stand;
        TakeIndex known = index;
        double placeS = seen.clock().placeMicros(clockNanos.getAsLong()) / MICROS_PER_S;
        if (known == null) {
            return new TakePlace(placeS, OptionalDouble.empty(), seen.running(), List.of(), indexTrouble);
        }
        double lengthS = known.lengthMicros() / MICROS_PER_S;
        List<TakePlace.Mark> marks = new ArrayList<>();
        for (TakeEntry mark : known.marks()) {
            if (mark instanceof TakeEntry.Captured captured) {
                marks.add(new TakePlace.Mark(captured.toMicros() / MICROS_PER_S, "captured " + captured.name()));
            } else if (mark instanceof TakeEntry.Step step) {
                marks.add(new TakePlace.Mark(step.micros() / MICROS_PER_S, "asked for " + step.name()));
            }
        }
        return new TakePlace(
                Math.min(placeS, lengthS), OptionalDouble.of(lengthS), seen.running(), marks, known.remark());
    }

    // ---- as a link ----

    @Override
    public String name() {
        return from.text();
    }

    @Override
    public Link open() {
        wishes.add(TakeRun::begin);
        return new Held();
    }

    /** The link over which it is read. */
    private final class Held implements Link {
        private volatile boolean ended;
        private String breakWords = "";

        @Override
        public int read(byte[] buffer) {
            try {
                while (!ended && !closed) {
                    TakeRun.Turn turn = turn();
                    if (turn instanceof TakeRun.Turn.Chunk chunk) {
                        int count = Math.min(chunk.bytes().length, buffer.length);
                        System.arraycopy(chunk.bytes(), 0, buffer, 0, count);
                        return count;
                    } else if (turn instanceof TakeRun.Turn.Break stop) {
                        breakWords = stop.words();
                        return BREAK;
                    } else if (turn instanceof TakeRun.Turn.Over) {
                        over = true;
                        return -1;
                    } else if (turn instanceof TakeRun.Turn.Wait wait) {
                        await(wait.untilNanos());
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return -1;
        }

        private TakeRun.Turn turn() {
            Consumer<TakeRun> wanted = wishes.poll();
            while (wanted != null) {
                wanted.accept(run);
                wanted = wishes.poll();
            }
            TakeRun.Turn turn = run.next(clockNanos.getAsLong());
            stand = new Stand(run.clock(), run.isRunning() && !run.isEnded());
            return turn;
        }

        private void await(long untilNanos) throws InterruptedException {
            lock.lock();
            try {
                long waitNanos = untilNanos - clockNanos.getAsLong();
                while (waitNanos > 0 && wishes.isEmpty() && !ended && !closed) {
                    waitNanos = news.awaitNanos(waitNanos);
                }
            } finally {
                lock.unlock();
            }
        }

        @Override
        public boolean isOver() {
            return over;
        }

        @Override
        public String breakWords() {
            return breakWords;
        }

        @Override
        public void close() {
            ended = true;
            wish(now -> {});
        }
    }

    /** The link speed that it says it was made at; 0 where it does not. */
    int baud() {
        return source.baud();
    }

    /** What is to be said of it, once it has been read. */
    String remark() {
        TakeIndex known = index;
        return known == null ? source.remark() : known.remark();
    }

    @Override
    public void close() {
        closed = true;
        wish(now -> {});
        source.close();
    }
}
