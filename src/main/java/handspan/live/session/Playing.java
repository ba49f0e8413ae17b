package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.survey.Intervals;
import handspan.live.path.FrameTarget;
import handspan.live.path.LightTaken;
import handspan.live.path.PlayPath;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plays. */
final class Playing implements Activity {
    private final PlayPath path;
    private final Intervals intervals = new Intervals();
    private final List<Event.What> changes = new ArrayList<>();
    private Tuning tuning;
    private PlayState told = PlayState.AWAY;
    private boolean anyTold;
    private String toldLightMute = "";
    private String toldHint = "";
    private boolean toldTrouble;
    private final RecentLog<SoundFrame> sent = new RecentLog<>();
    private long sentCount;
    private long nowNanos;

    Playing(LineShape shape, Command.Play command, List<FrameTarget> targets, long startNanos) {
        this.path = new PlayPath(command.profile(), command.tuning(), shape, command.settings(), targets, startNanos);
        this.tuning = command.tuning();
        this.nowNanos = startNanos;
    }

    @Override
    public void onReading(Reading reading) {
        intervals.onReading(reading.timeNanos());
        nowNanos = reading.timeNanos();
        path.take(reading);
    }

    @Override
    public void onReadingsTaken(long timeNanos) {
        path.onReadingsTaken(timeNanos);
        keepSent();
    }

    @Override
    public void onTick(long timeNanos) {
        nowNanos = timeNanos;
        path.onTick(timeNanos);
        keepSent();
    }

    /** At most one frame goes out in a call. */
    private void keepSent() {
        SoundFrame frame = path.latest();
        if (frame != null && path.frames() != sentCount) {
            sentCount = path.frames();
            sent.add(frame);
        }
    }

    @Override
    public long heldBack() {
        return path.spikes();
    }

    @Override
    public void onLost() {
        path.onLost();
    }

    @Override
    public void onBreak() {
        path.onBreak();
    }

    @Override
    public boolean onCommand(Command command) {
        if (command instanceof Command.Mute mute) {
            path.mute(mute.on());
        } else if (command instanceof Command.Tune tune) {
            tune(tune.tuning());
        } else if (command instanceof Command.Level level) {
            path.level(level.curve());
        } else if (command instanceof Command.RetakeLight) {
            path.retakeLight();
        } else if (command instanceof Command.Stop) {
            path.stop();
        } else {
            return false;
        }
        return true;
    }

    private void tune(Tuning chosen) {
        Optional<String> refusal = path.tune(chosen);
        if (refusal.isPresent()) {
            changes.add(new Event.TuningRefused(chosen.name(), refusal.get()));
        } else {
            tuning = chosen;
            changes.add(new Event.Tuned(chosen));
        }
    }

    /** The tuning that plays, with what keys added to it. */
    Tuning tuning() {
        return tuning;
    }

    @Override
    public void silence(long timeNanos) {
        path.silence(timeNanos);
    }

    @Override
    public long nextDeadlineNanos() {
        return path.nextDeadlineNanos();
    }

    @Override
    public List<Event.What> takeEvents() {
        SoundFrame frame = path.latest();
        LightTaken taken = path.takeLightTaken();
        boolean stateNews = frame != null && !(anyTold && frame.state() == told);
        boolean lightNews = !path.lightMute().equals(toldLightMute);
        boolean hintNews = !path.hint().isEmpty() && !path.hint().equals(toldHint);
        boolean troubleNews = toldTrouble == path.sensorTrouble().isEmpty();
        if (taken == null && !stateNews && !lightNews && !hintNews && !troubleNews && changes.isEmpty()) {
            return List.of();
        }
        List<Event.What> events = new ArrayList<>(changes);
        changes.clear();
        if (taken != null) {
            events.add(new Event.OpenTaken(taken));
        }
        if (lightNews) {
            toldLightMute = path.lightMute();
            events.add(new Event.LightMute(!toldLightMute.isEmpty(), toldLightMute));
        }
        if (frame != null && stateNews) {
            anyTold = true;
            told = frame.state();
            events.add(new Event.Playing(told));
        }
        if (troubleNews) {
            toldTrouble = !toldTrouble;
            events.add(new Event.Sensor(path.sensorTrouble()));
        }
        if (hintNews) {
            toldHint = path.hint();
            events.add(new Event.Hint(toldHint));
        }
        return events;
    }

    @Override
    public boolean isDone() {
        return path.isStopped();
    }

    @Override
    public ActivityView.Playing view() {
        SoundFrame frame = path.latest();
        return new ActivityView.Playing(
                frame == null ? PlayState.AWAY : frame.state(),
                tuning,
                Optional.ofNullable(frame),
                path.frames(),
                path.spikes(),
                intervals.ratePerS(),
                path.lightMute(),
                path.hint(),
                path.sensorTrouble(),
                path.isStopped(),
                path.hands(nowNanos),
                sent.recent());
    }
}
