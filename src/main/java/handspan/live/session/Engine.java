package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.live.path.FrameTarget;
import handspan.live.path.Intake;
import handspan.live.path.LineTap;
import handspan.live.path.TargetStatus;
import handspan.number.units.Nanos;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * One instrument without its threads: bytes, time and commands in, frames and snapshots out. A live session and a
 * replay make the same calls, so they give the same result. Pure but for what targets, tap and listener do. Owned by
 * one thread at a time.
 */
public final class Engine {
    /** Silence of an open link that counts as a loss. */
    private static final long SILENCE_NANOS = Nanos.PER_SECOND;

    /** A tick later than its deadline by more than this means that the machine slept: a loss too. */
    private static final long JUMP_NANOS = 2 * Nanos.PER_SECOND;

    /** What is plugged into an engine. */
    public record Plugs(
            @Nullable LineShape knownShape, List<FrameTarget> targets, LineTap tap, Consumer<Event> listener) {
        /** Copies the targets. */
        public Plugs {
            targets = List.copyOf(targets);
        }

        /** No known shape, no target, no tap, no listener. */
        public static Plugs none() {
            return new Plugs(null, List.of(), LineTap.NONE, event -> {});
        }
    }

    private final List<FrameTarget> targets;
    private final EventLog events;
    private final Intake intake;
    private @Nullable Activity activity;
    private @Nullable Command waiting;
    private LinkState link = LinkState.CLOSED;
    private String linkReason = "";
    private long nowNanos;
    private long heardNanos;
    private long readings;
    private boolean reopen;

    /**
     * An engine that does nothing yet.
     *
     * @param plugs what is plugged into it
     * @param startNanos now
     */
    public Engine(Plugs plugs, long startNanos) {
        this.nowNanos = startNanos;
        this.targets = plugs.targets();
        this.events = new EventLog(plugs.listener());
        this.intake = new Intake(plugs.knownShape(), plugs.tap(), this::onReading, this::onLearned);
    }

    /** The link has been opened. */
    public void onLinkUp(long timeNanos) {
        nowNanos = timeNanos;
        heardNanos = timeNanos;
        reopen = false;
        intake.onConnected();
        link(LinkState.WAITING, "");
    }

    /** The link has ended, or could not be opened again. */
    public void onLinkDown(String reason, long timeNanos) {
        nowNanos = timeNanos;
        if (link != LinkState.LOST) {
            lose(reason);
        } else {
            linkReason = reason;
        }
        drainEvents();
    }

    /** Bytes came. */
    public void onBytes(byte[] chunk, int count, long timeNanos) {
        nowNanos = timeNanos;
        heardNanos = timeNanos;
        if (link != LinkState.UP) {
            link(LinkState.UP, "");
        }
        intake.onBytes(chunk, count, timeNanos);
        if (activity != null) {
            activity.onReadingsTaken(timeNanos);
        }
        drainEvents();
    }

    /** Time passes: called at {@link #nextDeadlineNanos} at the latest. */
    public void onTick(long timeNanos) {
        long lateNanos = timeNanos - nextDeadlineNanos();
        nowNanos = timeNanos;
        if (link == LinkState.UP && lateNanos > JUMP_NANOS) {
            lose("the clock jumped by " + Nanos.toMs(lateNanos) / 1000 + " s: the machine slept");
        } else if (link == LinkState.UP && timeNanos - heardNanos >= SILENCE_NANOS) {
            lose("no line for 1 s");
        }
        if (activity != null && timeNanos >= activity.nextDeadlineNanos()) {
            activity.onTick(timeNanos);
        }
        drainEvents();
    }

    /** A command. */
    public void onCommand(Command command, long timeNanos) {
        nowNanos = timeNanos;
        boolean meant = activity != null && activity.onCommand(command);
        if (!meant && command instanceof Command.Stop) {
            activity = null;
            waiting = null;
        } else if (!meant) {
            waiting = command;
            LineShape shape = intake.shape();
            if (shape != null) {
                begin(command, shape);
            }
        }
        drainEvents();
    }

    /** Something that should not happen has happened: what sounds is silenced at once, the activity ends. */
    public void onFault(String reason, long timeNanos) {
        nowNanos = timeNanos;
        if (activity instanceof Playing playing) {
            playing.silence(timeNanos);
        }
        activity = null;
        events.add(new Event.Failed(reason), timeNanos);
    }

    /** No more will come: the end of a recording. */
    public void onEnd(long timeNanos) {
        nowNanos = timeNanos;
        intake.onEnd();
        if (activity != null) {
            activity.onReadingsTaken(timeNanos);
            activity.onEnd();
        }
        link(LinkState.ENDED, "");
        drainEvents();
    }

    private void onLearned(LineShape shape) {
        events.add(new Event.Learned(shape), nowNanos);
        if (waiting != null) {
            begin(waiting, shape);
        }
    }

    private void begin(Command command, LineShape shape) {
        waiting = null;
        try {
            activity = activityFor(command, shape);
        } catch (IllegalArgumentException e) {
            events.add(new Event.Refused(String.valueOf(e.getMessage())), nowNanos);
        }
    }

    private @Nullable Activity activityFor(Command command, LineShape shape) {
        if (command instanceof Command.Watch) {
            return new Watching(shape);
        } else if (command instanceof Command.Survey survey) {
            return new Surveying(shape, survey);
        } else if (command instanceof Command.Calibrate calibrate) {
            return new Calibrating(shape, calibrate);
        } else if (command instanceof Command.Play play) {
            return new Playing(shape, play, targets, nowNanos);
        }
        throw new IllegalArgumentException(
                "nothing runs that could " + command.getClass().getSimpleName());
    }

    private void onReading(Reading reading) {
        readings++;
        if (activity != null) {
            activity.onReading(reading);
        }
    }

    private void lose(String reason) {
        link(LinkState.LOST, reason);
        reopen = true;
        if (activity != null) {
            activity.onLost();
        }
    }

    private void link(LinkState state, String reason) {
        link = state;
        linkReason = reason;
        events.add(new Event.Linked(state, reason), nowNanos);
    }

    private void drainEvents() {
        if (activity != null) {
            for (Event.What what : activity.takeEvents()) {
                events.add(what, nowNanos);
            }
        }
    }

    /** When {@link #onTick} has to be called; {@link Long#MAX_VALUE} for never. */
    public long nextDeadlineNanos() {
        long deadline = activity == null ? Long.MAX_VALUE : activity.nextDeadlineNanos();
        return link == LinkState.UP ? Math.min(deadline, heardNanos + SILENCE_NANOS) : deadline;
    }

    /** Whether the link has to be closed and opened again; asked for once. */
    public boolean takeReopen() {
        boolean wanted = reopen;
        reopen = false;
        return wanted;
    }

    /** Number of the latest event; rises with each. */
    public long eventNumber() {
        return events.number();
    }

    /** The latest time this engine was told. */
    public long timeNanos() {
        return nowNanos;
    }

    /** How all stands. */
    public Snapshot snapshot() {
        List<TargetStatus> statuses = new ArrayList<>();
        targets.forEach(target -> statuses.add(target.status()));
        return new Snapshot(
                nowNanos,
                link,
                linkReason,
                Optional.ofNullable(intake.shape()),
                intake.lineCount(),
                readings,
                intake.byteCount(),
                intake.rejections().byReason(),
                intake.latestLine(),
                intake.arrivals(),
                activity == null ? new ActivityView.Idle() : activity.view(),
                statuses,
                events.latest(),
                activity != null && activity.isDone());
    }
}
