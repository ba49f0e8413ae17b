package handspan.live.session;

import handspan.instrument.line.CommaRule;
import handspan.instrument.line.Learning;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.live.path.FrameTarget;
import handspan.live.path.Intake;
import handspan.live.path.LineTap;
import handspan.live.path.TargetStatus;
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
    /** What is plugged into an engine. */
    public record Plugs(
            @Nullable LineShape knownShape,
            CommaRule comma,
            List<FrameTarget> targets,
            LineTap tap,
            Consumer<Event> listener) {
        /** Lines that can be read in two ways are asked about. */
        public Plugs(@Nullable LineShape knownShape, List<FrameTarget> targets, LineTap tap, Consumer<Event> listener) {
            this(knownShape, CommaRule.ASK, targets, tap, listener);
        }

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
    private @Nullable LineShape activityShape;
    private @Nullable SlotMap slots;
    private @Nullable Command waiting;

    /** Changes to what waits, the latest of each kind. */
    private final List<Command> changes = new ArrayList<>();

    private String question = "";
    private final LinkWatch link = new LinkWatch();
    private final LinkDoubts doubts = new LinkDoubts();
    private long nowNanos;
    private long readings;
    private final RecentLog<LineSeen> seen = new RecentLog<>();

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
        this.intake = new Intake(plugs.knownShape(), plugs.comma(), plugs.tap(), this::onReading, shapes());
    }

    /** The link has been opened. */
    public void onLinkUp(long timeNanos) {
        onLinkUp("", timeNanos);
    }

    /**
     * The link has been opened.
     *
     * @param note what a player should know of how; may be empty
     */
    public void onLinkUp(String note, long timeNanos) {
        nowNanos = timeNanos;
        intake.onConnected();
        doubts.onConnected(timeNanos);
        link.onUp(note, timeNanos);
        drainEvents();
    }

    /** The link has ended, or could not be opened again. */
    public void onLinkDown(String reason, long timeNanos) {
        nowNanos = timeNanos;
        link.onDown(reason);
        drainEvents();
    }

    /**
     * Lines stop for now, on purpose: a recording is paused, or goes on elsewhere. What was half heard is forgotten,
     * what sounds fades, and nothing is lost; what comes next has to agree with itself before it sounds.
     *
     * @param words why, in a few
     */
    public void onBreak(String words, long timeNanos) {
        nowNanos = timeNanos;
        intake.onConnected();
        doubts.onConnected(timeNanos);
        link.onBreak(words);
        if (activity != null) {
            activity.onBreak();
        }
        drainEvents();
    }

    /** Bytes came. */
    public void onBytes(byte[] chunk, int count, long timeNanos) {
        nowNanos = timeNanos;
        link.notice(timeNanos);
        drainLink();
        link.onBytes(timeNanos);
        drainLink();
        long rejected = intake.rejections().total();
        intake.onBytes(chunk, count, timeNanos);
        for (; rejected < intake.rejections().total(); rejected++) {
            seen.add(new LineSeen(timeNanos, null, LineSeen.Fate.REJECTED));
        }
        doubts.onBytes(intake.garbled01(), timeNanos);
        if (activity != null) {
            activity.onReadingsTaken(timeNanos);
        }
        drainEvents();
    }

    /** Time passes: called at {@link #nextDeadlineNanos} at the latest. */
    public void onTick(long timeNanos) {
        nowNanos = timeNanos;
        link.onTick(timeNanos);
        drainLink();
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
        } else if (!meant && waiting != null && waiting.plays() && command.adjusts()) {
            changes.removeIf(change -> change.getClass().equals(command.getClass()));
            changes.add(command);
        } else if (!meant) {
            changes.clear();
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
        if (activity != null) {
            activity.silence(timeNanos);
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
        link.onEnd();
        drainEvents();
    }

    private Intake.Shapes shapes() {
        return new Intake.Shapes() {
            @Override
            public void learned(LineShape shape) {
                onLearned(shape);
            }

            @Override
            public void ambiguous(Learning.Ambiguous either) {
                if (question.isEmpty()) {
                    events.add(new Event.Ambiguous(either), nowNanos);
                }
                question = either.question();
            }

            @Override
            public void fits(byte[] line, int length) {
                question = "";
                doubts.onFit(line, length, nowNanos);
            }

            @Override
            public void misfits(byte[] line, int length) {
                doubts.onMisfit(line, length, nowNanos);
            }
        };
    }

    private void onLearned(LineShape shape) {
        question = "";
        LineShape before = activityShape;
        if (activity == null || before == null) {
            events.add(new Event.Learned(shape), nowNanos);
            if (waiting != null) {
                begin(waiting, shape);
            }
            return;
        }
        SlotMap map = new SlotMap(before, shape);
        events.add(new Event.BoardChanged(shape, map.gone()), nowNanos);
        if (activity instanceof Watching) {
            begin(new Command.Watch(), shape);
        } else {
            // what plays fades, and sounds again after two agreeing readings
            slots = map;
            activity.onLost();
        }
    }

    private void begin(Command command, LineShape shape) {
        waiting = null;
        try {
            Activity begun = activityFor(command, shape);
            for (Command change : changes) {
                begun.onCommand(change);
            }
            activity = begun;
            activityShape = shape;
            slots = null;
        } catch (IllegalArgumentException e) {
            events.add(new Event.Refused(String.valueOf(e.getMessage())), nowNanos);
        }
        changes.clear();
    }

    private Activity activityFor(Command command, LineShape shape) {
        if (command instanceof Command.Watch) {
            return new Watching(shape);
        } else if (command instanceof Command.FindHands) {
            return new FindingHands(shape, nowNanos);
        } else if (command instanceof Command.Survey survey) {
            return new Surveying(shape, survey);
        } else if (command instanceof Command.Calibrate calibrate) {
            return new Calibrating(shape, calibrate);
        } else if (command instanceof Command.Play play) {
            return new Playing(shape, play, targets, nowNanos);
        } else if (command instanceof Command.Practise practise) {
            return new Practising(shape, practise, targets, nowNanos);
        }
        throw new IllegalArgumentException(
                "nothing runs that could " + command.getClass().getSimpleName());
    }

    private void onReading(Reading reading) {
        readings++;
        LineSeen.Fate fate = LineSeen.Fate.TAKEN;
        if (activity != null) {
            long heldBack = activity.heldBack();
            activity.onReading(slots == null ? reading : slots.back(reading));
            fate = activity.heldBack() > heldBack ? LineSeen.Fate.HELD_BACK : fate;
        }
        seen.add(new LineSeen(reading.timeNanos(), reading, fate));
    }

    /** Hands on what has become of the link. */
    private void drainLink() {
        if (link.takeLost() && activity != null) {
            activity.onLost();
        }
        if (link.takeNews()) {
            events.add(new Event.Linked(link.state(), link.reason()), nowNanos);
        }
        String doubt = doubts.takeNews();
        if (doubt != null) {
            events.add(new Event.LinkDoubt(doubt), nowNanos);
        }
    }

    private void drainEvents() {
        drainLink();
        if (activity != null) {
            for (Event.What what : activity.takeEvents()) {
                events.add(what, nowNanos);
            }
        }
    }

    /** When {@link #onTick} has to be called; {@link Long#MAX_VALUE} for never. */
    public long nextDeadlineNanos() {
        long deadline = activity == null ? Long.MAX_VALUE : activity.nextDeadlineNanos();
        return Math.min(deadline, link.deadlineNanos());
    }

    /** Whether the link has to be closed and opened again; asked for once. */
    public boolean takeReopen() {
        return link.takeReopen();
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
                link.state(),
                link.reason(),
                Optional.ofNullable(intake.shape()),
                intake.lineCount(),
                readings,
                intake.byteCount(),
                intake.rejections().byReason(),
                intake.news(),
                question,
                intake.arrivals(),
                activity == null ? new ActivityView.Idle() : activity.view(),
                statuses,
                events.latest(),
                activity != null && activity.isDone(),
                seen.recent());
    }
}
