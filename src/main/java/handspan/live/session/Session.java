package handspan.live.session;

import handspan.number.units.Nanos;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;

/**
 * One live instrument: a reader thread that stamps bytes, and a path thread that alone owns the {@link Engine}.
 * Commands go in through a bounded queue, an immutable snapshot comes out. Nothing is static: as many sessions as there
 * are instruments live in one process.
 */
public final class Session implements AutoCloseable {
    private static final long LONGEST_WAIT_NANOS = Nanos.PER_SECOND;
    private static final long PUBLISH_NANOS = 15 * Nanos.PER_MS;
    private static final long RETRY_MS = 300;
    private static final long FADE_OUT_MS = 2500;

    private final Engine engine;
    private final LinkOpener opener;
    private final LongSupplier clockNanos;
    private final Inbox inbox = new Inbox();
    private final Thread reader;
    private final Thread path;
    private volatile @Nullable Link link;
    private volatile LinkFacts facts;
    private volatile Snapshot published;
    private volatile boolean closing;
    private long publishedNanos;
    private long publishedEvent;

    private Session(Engine engine, LinkOpener opener, Link first, LongSupplier clockNanos) {
        this.engine = engine;
        this.opener = opener;
        this.clockNanos = clockNanos;
        this.link = first;
        this.facts = first.facts();
        this.published = engine.snapshot();
        this.reader = new Thread(this::readOn, "reader " + opener.name());
        this.path = new Thread(this::runPath, "path " + opener.name());
        reader.setDaemon(true);
        path.setDaemon(true);
    }

    /**
     * Opens the link and starts both threads.
     *
     * @param engine owned by this session from now on
     * @param opener opens the link, now and after each loss
     * @param clockNanos monotonic clock
     * @throws LinkException when the link can't be opened now
     */
    public static Session start(Engine engine, LinkOpener opener, LongSupplier clockNanos) throws LinkException {
        Session session = new Session(engine, opener, opener.open(), clockNanos);
        session.path.start();
        session.reader.start();
        return session;
    }

    /** Gives a command; it is carried out by the path thread in its turn. */
    public void submit(Command command) {
        if (!inbox.offer(new Inbox.News.Order(command))) {
            throw new IllegalStateException("session " + opener.name() + " has stopped taking commands");
        }
    }

    /** How all stands, at most a few hundredths of a second old. */
    public Snapshot snapshot() {
        return published;
    }

    /** What is known of the link that is open, or of the last one that was. */
    public LinkFacts facts() {
        return facts;
    }

    /** Chunks of bytes that found the path thread's queue full. */
    public long overruns() {
        return inbox.overruns();
    }

    // ---- reader thread ----

    private void readOn() {
        Link open = link;
        while (!closing) {
            if (open == null) {
                open = openAgain();
            } else {
                inbox.offer(new Inbox.News.Up(open.facts().note(), clockNanos.getAsLong()));
                read(open);
                open.close();
                link = null;
                if (open.isOver()) {
                    inbox.offer(new Inbox.News.Over(clockNanos.getAsLong()));
                    return;
                }
                open = null;
                inbox.offer(new Inbox.News.Down(LinkWatch.ENDED, clockNanos.getAsLong()));
            }
        }
    }

    private void read(Link open) {
        byte[] buffer = new byte[4096];
        int count = open.read(buffer);
        while (count >= 0 && !closing) {
            long nowNanos = clockNanos.getAsLong();
            inbox.offer(
                    count == Link.BREAK
                            ? new Inbox.News.Break(open.breakWords(), nowNanos)
                            : new Inbox.News.Bytes(java.util.Arrays.copyOf(buffer, count), nowNanos));
            count = open.read(buffer);
        }
    }

    private @Nullable Link openAgain() {
        try {
            Thread.sleep(RETRY_MS);
            Link open = opener.open();
            facts = open.facts();
            link = open;
            if (closing) {
                open.close();
            }
            return open;
        } catch (LinkException | RuntimeException e) {
            // whatever the system answers: say it, and try again
            inbox.offer(new Inbox.News.Down(String.valueOf(e.getMessage()), clockNanos.getAsLong()));
            return null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return null;
        }
    }

    // ---- path thread ----

    private void runPath() {
        try {
            boolean on = true;
            while (on) {
                on = step();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** One turn of the path thread. A mistake in this program must not leave a note hanging: it ends in silence. */
    private boolean step() throws InterruptedException {
        long waitNanos = engine.nextDeadlineNanos() - clockNanos.getAsLong();
        // behind time, news is still taken: ticks must not starve readings
        Inbox.News news = inbox.poll(Math.max(0, Math.min(waitNanos, LONGEST_WAIT_NANOS)));
        long nowNanos = clockNanos.getAsLong();
        boolean on = true;
        try {
            on = news == null || take(news, nowNanos);
            if (nowNanos >= engine.nextDeadlineNanos()) {
                engine.onTick(nowNanos);
            }
        } catch (RuntimeException | Error e) {
            engine.onFault("a mistake in this program: " + e, nowNanos);
        }
        Link open = link;
        if (engine.takeReopen() && open != null) {
            open.close();
        }
        publish(nowNanos);
        return on;
    }

    private boolean take(Inbox.News news, long nowNanos) {
        if (news instanceof Inbox.News.Bytes bytes) {
            engine.onBytes(bytes.chunk(), bytes.chunk().length, bytes.timeNanos());
        } else if (news instanceof Inbox.News.Up up) {
            engine.onLinkUp(up.note(), up.timeNanos());
        } else if (news instanceof Inbox.News.Down down) {
            engine.onLinkDown(down.reason(), down.timeNanos());
        } else if (news instanceof Inbox.News.Break stop) {
            engine.onBreak(stop.words(), stop.timeNanos());
        } else if (news instanceof Inbox.News.Over over) {
            engine.onEnd(over.timeNanos());
        } else if (news instanceof Inbox.News.Order order) {
            engine.onCommand(order.command(), nowNanos);
        } else {
            return false;
        }
        return true;
    }

    private void publish(long nowNanos) {
        boolean news = engine.eventNumber() != publishedEvent;
        if (news || nowNanos - publishedNanos >= PUBLISH_NANOS) {
            publishedNanos = nowNanos;
            publishedEvent = engine.eventNumber();
            published = engine.snapshot();
        }
    }

    /** Fades, says "silence" to every target, then ends both threads and the link. */
    @Override
    public void close() {
        if (closing) {
            return;
        }
        boolean playing = snapshot().activity().played().isPresent();
        if (playing) {
            inbox.offer(new Inbox.News.Order(new Command.Stop()));
            waitUntilDone();
        }
        closing = true;
        inbox.offer(new Inbox.News.End());
        Link open = link;
        if (open != null) {
            open.close();
        }
        reader.interrupt();
        join(path);
        join(reader);
    }

    private void waitUntilDone() {
        long waited = 0;
        try {
            while (!snapshot().done() && waited < FADE_OUT_MS && path.isAlive()) {
                Thread.sleep(5);
                waited += 5;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private static void join(Thread thread) {
        try {
            thread.join(FADE_OUT_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
