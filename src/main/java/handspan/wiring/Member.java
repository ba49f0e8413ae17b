package handspan.wiring;

import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.LinkException;
import handspan.live.session.LinkState;
import handspan.live.session.PlayDesk;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/**
 * One instrument of an {@link Ensemble}: a rig of its own with its own ways out. Whatever becomes of it stays with it.
 * A board that can't be opened is tried again every two seconds, by a thread of its own, until it can.
 */
public final class Member implements AutoCloseable {
    /** Opens the source of a member. */
    public interface Opener {
        /** Opens it, or says why not. */
        OpenSource open() throws LinkException, IOException;
    }

    private static final long LOOK_AGAIN_MS = 2000;
    private static final long LONGEST_END_MS = 500;

    /** A path that plays tells how it stands some sixty times a second, and sends once a second at least. */
    private static final long STUCK_NANOS = 3 * Nanos.PER_SECOND;

    private final Seat seat;
    private final Source source;
    private final WaysOut out;
    private final @Nullable Recording recording;
    private final Opener opener;
    private final Thread opening;
    private final CountDownLatch tried = new CountDownLatch(1);

    /** What was asked for before it was open, the latest of each kind. */
    private final Map<Class<?>, Command> waiting = new LinkedHashMap<>();

    private volatile @Nullable Rig rig;
    private volatile String trouble = "";
    private volatile boolean given;
    private volatile boolean closing;
    private final PlayDesk desk;

    /**
     * A member that is not open yet.
     *
     * @param out closed with this
     * @param recording of what comes, closed with this; null for none
     */
    public Member(Seat seat, Source source, WaysOut out, @Nullable Recording recording, Opener opener) {
        this.seat = seat;
        this.source = source;
        this.out = out;
        this.recording = recording;
        this.opener = opener;
        this.opening = new Thread(this::open, "opening " + seat.name());
        opening.setDaemon(true);
        this.desk = new PlayDesk(seat.tunings(), seat.tuning(), seat.settings().startMuted(), this::submit);
    }

    /** Where it sits. */
    public Seat seat() {
        return seat;
    }

    /** Where its readings come from. */
    public Source source() {
        return source;
    }

    /** Where its sound goes. */
    public WaysOut out() {
        return out;
    }

    /** What can be set by hand while it plays. */
    public PlayDesk desk() {
        return desk;
    }

    /** How it stands; empty as long as its source is not open. */
    public Optional<Snapshot> snapshot() {
        return Optional.ofNullable(rig).map(Rig::snapshot);
    }

    /** Why it is not open, or takes no orders, in words; empty where nothing is wrong so far. */
    public String trouble() {
        return trouble;
    }

    /** Whether its source was ever open. */
    public boolean wasOpen() {
        return rig != null;
    }

    /** Whether no more will come of it: its recording is over, or its source can't be opened for good. */
    public boolean isOver() {
        return given
                || snapshot().filter(seen -> seen.link() == LinkState.ENDED).isPresent();
    }

    /** Whether it has not told for long how it stands, though it plays. */
    public boolean isStuck(long nowNanos) {
        return snapshot()
                .filter(seen -> seen.link() != LinkState.ENDED)
                .filter(seen -> seen.activity() instanceof ActivityView.Playing playing
                        && playing.frame().isPresent())
                .filter(seen -> nowNanos - seen.timeNanos() > STUCK_NANOS)
                .isPresent();
    }

    void start() {
        opening.start();
    }

    void awaitTried() throws InterruptedException {
        tried.await();
    }

    private void open() {
        try {
            while (!closing && !isOpened()) {
                tried.countDown();
                Thread.sleep(LOOK_AGAIN_MS);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } finally {
            tried.countDown();
        }
    }

    /** Tries once; whether there is nothing more to try. */
    private boolean isOpened() {
        Optional<String> refusal = seat.refusal();
        if (refusal.isPresent()) {
            return giveUp(refusal.get());
        }
        try {
            begin(opener.open());
            return true;
        } catch (LinkException e) {
            trouble = String.valueOf(e.getMessage());
            return false;
        } catch (IOException | RuntimeException e) {
            return giveUp(e.getMessage() == null ? e.toString() : e.getMessage());
        }
    }

    private boolean giveUp(String words) {
        trouble = words;
        given = true;
        return true;
    }

    private synchronized void begin(OpenSource open) {
        if (closing) {
            open.rig().close();
            return;
        }
        open.out().to(out.all());
        if (recording != null) {
            open.recordings().plug(recording);
        }
        boolean muted = waiting.remove(Command.Mute.class) instanceof Command.Mute mute
                ? mute.on()
                : seat.settings().startMuted();
        open.rig().submit(seat.play(muted));
        waiting.values().forEach(open.rig()::submit);
        waiting.clear();
        trouble = "";
        rig = open.rig();
    }

    private synchronized void submit(Command command) {
        Rig open = rig;
        if (open == null) {
            waiting.put(command.getClass(), command);
            return;
        }
        try {
            open.submit(command);
        } catch (IllegalStateException e) {
            // its thread has stopped: the others must not hear of it through the keys
            trouble = String.valueOf(e.getMessage());
        }
    }

    /** Takes a look, so that what has happened is written down. */
    void look() {
        follow(snapshot -> false);
    }

    /** Lets it run up to a moment of its own time, where it runs as fast as the machine can. */
    void run(long untilNanos) {
        if (!isOver()) {
            follow(snapshot -> snapshot.timeNanos() < untilNanos);
        }
    }

    private void follow(Predicate<Snapshot> goesOn) {
        Rig open = rig;
        try {
            if (open != null) {
                open.follow(goesOn);
            }
        } catch (RuntimeException e) {
            // whoever follows all of them must not stop for one
            giveUp("a mistake in this program: " + e + ": please report it with what you did");
        }
    }

    /** Fades, says "silence" to its targets, lets go of all. */
    @Override
    public void close() {
        Rig open;
        synchronized (this) {
            closing = true;
            open = rig;
        }
        opening.interrupt();
        try {
            opening.join(LONGEST_END_MS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        try {
            if (open != null) {
                open.close();
            }
        } finally {
            out.close();
            if (recording != null) {
                recording.close();
            }
        }
    }
}
