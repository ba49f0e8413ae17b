package handspan.live.path;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.budget.PitchSmoothing;
import handspan.room.budget.StepsBudget;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The whole instrument.
 *
 * <pre>
 * per reading:  bytes > LineSplitter > LineReader > Sensor > SpikeGate > Smoother > Presence > Hand
 *               '------- Intake -------'  '------------- HandTracker -------------'
 * per tick:     Hand > Glide > Zone > PitchCurve > Snap + LevelCurve > Fade > SoundFrame > targets
 *                              '---------- Voice ---------'
 * </pre>
 *
 * With glide off the second half runs once per reading. Pure but for what the targets do: time comes with the calls,
 * and the same calls give the same frames. Owned by the path thread.
 */
public final class PlayPath {
    /** How long sound takes to go when it is closed, whatever the player chose for a hand that leaves. */
    private static final long SHORT_NANOS = Nanos.ofMs(Leaving.SHORT_MS);

    /** Place of a level hand over a light cell, from covered to open, under which it is certainly there. */
    private static final double LIGHT_TAKEN01 = 0.7;

    private final HandTracker pitchHand;
    private final @Nullable HandTracker levelHand;
    private final Glide pitchGlide;
    private final Glide levelGlide;
    private final Voice voice;
    private final Fade fade;
    private long leavingNanos;
    private final Sustain heldPitch;
    private final Sustain heldLevel;
    private final Surroundings surroundings;
    private final SensorTrouble pitchTrouble;
    private final @Nullable SensorTrouble levelTrouble;
    private final ChannelReadout channels;
    private final Outlet outlet;
    private final PathSettings settings;
    private final Room room;
    private final long frameNanos;

    private boolean muted;
    private boolean lost;
    private boolean paused;
    private boolean stopping;
    private boolean unsounded;
    private long nextFrameNanos;

    /**
     * A path.
     *
     * @param profile the room
     * @param tuning one of its tunings
     * @param shape how the board's lines are written; holds the profile's channels
     * @param settings how the path runs
     * @param targets get every frame
     * @param startNanos now
     */
    public PlayPath(
            RoomProfile profile,
            Tuning tuning,
            LineShape shape,
            PathSettings settings,
            List<FrameTarget> targets,
            long startNanos) {
        PathParts parts = new PathParts(profile, tuning, shape, settings);
        this.pitchHand = parts.pitchHand();
        this.levelHand = parts.levelHand();
        this.pitchGlide = parts.glide();
        this.levelGlide = parts.glide();
        this.voice = parts.voice();
        this.surroundings = parts.surroundings();
        this.pitchTrouble = parts.pitchTrouble();
        this.levelTrouble = parts.levelTrouble();
        this.fade = new Fade(profile.level());
        Leaving leaving = profile.level().leaving();
        this.leavingNanos = Nanos.ofMs(leaving.fadeMs());
        this.heldPitch = new Sustain(leaving.holds());
        this.heldLevel = new Sustain(leaving.holds());
        this.channels = new ChannelReadout(profile, shape);
        this.outlet = new Outlet(targets, startNanos);
        this.settings = settings;
        this.room = profile.room();
        this.frameNanos = Math.round(Nanos.PER_SECOND / settings.framesPerS());
        this.muted = settings.startMuted();
        this.nextFrameNanos = startNanos;
    }

    /** A reading came, and no other with it. */
    public void onReading(Reading reading) {
        take(reading);
        onReadingsTaken(reading.timeNanos());
    }

    /** A reading came: where are the hands, and which note is meant. Others may have come with it. */
    public void take(Reading reading) {
        long timeNanos = reading.timeNanos();
        lost = false;
        paused = false;
        channels.onReading(reading);
        watchSensors(reading);
        boolean wasPlaying = pitchHand.isPlaying();
        Hand pitch = pitchHand.onReading(reading);
        if (pitch != null) {
            if (!wasPlaying) {
                pitchGlide.reset();
                voice.reset();
            }
            pitchGlide.to(pitch.mm(), timeNanos, pitchHand.intervalNanos());
            voice.onPitchHand(pitch.mm(), timeNanos);
        }
        surroundings.onReading(reading, pitchHand.isPlaying());
        onLevelReading(reading);
        followHands(timeNanos);
        unsounded = true;
    }

    /** All readings that came at one moment have been taken: of a burst or a backlog only the newest sounds. */
    public void onReadingsTaken(long timeNanos) {
        if (!settings.glide() && unsounded) {
            sound(timeNanos);
        }
    }

    /** A pitch sensor that measures again has to agree with itself before it sounds. */
    private void watchSensors(Reading reading) {
        boolean wasFrozen = pitchTrouble.isFrozen();
        pitchTrouble.onReading(reading, levelHandIsThere(reading.timeNanos()));
        if (levelTrouble != null) {
            levelTrouble.onReading(reading, false);
        }
        if (wasFrozen && !pitchTrouble.isFrozen()) {
            pitchHand.onLost();
        }
    }

    /** A light cell reads with and without a hand: there it is only where it takes much of the light. */
    private boolean levelHandIsThere(long timeNanos) {
        if (levelHand == null || !levelHand.isPlaying() || !levelGlide.hasPosition()) {
            return false;
        }
        HandSetup setup = levelHand.setup();
        return !setup.scaledTravel() || setup.zone().place(levelGlide.at(timeNanos)) < LIGHT_TAKEN01;
    }

    private void onLevelReading(Reading reading) {
        if (levelHand == null) {
            return;
        }
        levelHand.shift(surroundings.lightShiftLn());
        Hand level = levelHand.onReading(reading);
        if (level != null) {
            levelGlide.to(level.mm(), reading.timeNanos(), levelHand.intervalNanos());
        }
    }

    /** Time has come for a frame, or for a change that no reading brings. */
    public void onTick(long timeNanos) {
        pitchHand.onTick(timeNanos);
        if (levelHand != null) {
            levelHand.onTick(timeNanos);
        }
        followHands(timeNanos);
        sound(timeNanos);
    }

    /** A hand that has left stays at what sounds: its glide goes no further. */
    private void followHands(long timeNanos) {
        if (isClosed()) {
            heldPitch.end();
            heldLevel.end();
        }
        if (heldPitch.follow(pitchHand.isPlaying())) {
            pitchGlide.stop(timeNanos);
        }
        if (levelHand != null && heldLevel.follow(levelHand.isPlaying())) {
            levelGlide.stop(timeNanos);
        }
    }

    private void sound(long timeNanos) {
        unsounded = false;
        boolean open = isOpen();
        SoundFrame frame = frame(open, timeNanos);
        if (outlet.offer(frame, !open && fade.isSilent())) {
            nextFrameNanos = timeNanos + frameNanos;
        }
    }

    private SoundFrame frame(boolean open, long timeNanos) {
        double pitchMm = pitchGlide.hasPosition() ? pitchGlide.at(timeNanos) : voice.restMm();
        boolean levelThere = levelHand == null || levelHand.isPlaying() || heldLevel.isHeld();
        double levelMm = levelGlide.at(timeNanos);
        double most01 = surroundings.holds() ? fade.gain01() : 1;
        long closingNanos = isClosed() ? SHORT_NANOS : leavingNanos;
        double gain01 = fade.next(Math.min(voice.gain01(levelMm), most01), open && levelThere, closingNanos, timeNanos);
        return channels.into(voice.frame(timeNanos, pitchMm, levelMm, gain01, open || gain01 > 0, state()));
    }

    private boolean isOpen() {
        return !isClosed() && sounds();
    }

    private boolean isClosed() {
        return muted || lost || paused || stopping || surroundings.mutes() || pitchTrouble.isFrozen();
    }

    /** A held note sounds as one that is played does: to whoever listens, a hand plays. */
    private boolean sounds() {
        return pitchHand.isPlaying() || heldPitch.isHeld();
    }

    private PlayState state() {
        if (lost) {
            return PlayState.LOST;
        }
        if (muted || stopping || surroundings.mutes()) {
            return PlayState.MUTED;
        }
        return sounds() && !pitchTrouble.isFrozen() ? PlayState.PLAYING : PlayState.AWAY;
    }

    /** When {@link #onTick} has to be called at the latest. */
    public long nextDeadlineNanos() {
        boolean quiet = !isOpen() && fade.isSilent();
        if (quiet && !outlet.sounded()) {
            return Math.min(outlet.nextNanos(), pitchHand.nextDeadlineNanos());
        }
        boolean readingsLead = isOpen() && !settings.glide();
        return readingsLead ? pitchHand.nextDeadlineNanos() : nextFrameNanos;
    }

    /** Closes or opens the sound. */
    public void mute(boolean on) {
        muted = on;
    }

    /** The link is gone: fade, and wait for two agreeing readings. */
    public void onLost() {
        lost = true;
        paused = false;
        forgetHands();
    }

    /** Readings stop for now, on purpose: the same, but nothing is lost. */
    public void onBreak() {
        lost = false;
        paused = true;
        forgetHands();
    }

    private void forgetHands() {
        heldPitch.end();
        heldLevel.end();
        surroundings.onLost();
        pitchTrouble.onLost();
        if (levelTrouble != null) {
            levelTrouble.onLost();
        }
        pitchHand.onLost();
        if (levelHand != null) {
            levelHand.onLost();
        }
    }

    /** Fades and stays silent. */
    public void stop() {
        stopping = true;
    }

    /**
     * Says "silence" to every target, as often as at any end of sound but at once: for when nothing else can be relied
     * on.
     */
    public void silence(long timeNanos) {
        outlet.silence(timeNanos);
    }

    /** Whether, after {@link #stop}, sound has gone and the receiver has been told often enough. */
    public boolean isStopped() {
        return stopping && outlet.isOver();
    }

    /** What was sent last; null before the first frame. */
    public @Nullable SoundFrame latest() {
        return outlet.latest();
    }

    /** Where the hands are at a moment, whether they sound or not. */
    public HandsNow hands(long timeNanos) {
        double pitchMm = pitchGlide.hasPosition() ? pitchGlide.at(timeNanos) : Double.NaN;
        double levelMm = levelHand != null && levelGlide.hasPosition() ? levelGlide.at(timeNanos) : Double.NaN;
        return new HandsNow(
                pitchHand.isPlaying(),
                pitchMm,
                pitchHand.setup().zone().place01(pitchMm),
                levelHand != null && levelHand.isPlaying(),
                levelMm,
                levelHand == null ? Double.NaN : levelHand.setup().zone().place01(levelMm));
    }

    /** Frames sent. */
    public long frames() {
        return outlet.frames();
    }

    /** Readings of the pitch hand held back as spikes. */
    public long spikes() {
        return pitchHand.spikes();
    }

    /** Whether the player has closed the sound. */
    public boolean isMuted() {
        return muted;
    }

    /** Takes the open light of the next second without a hand as the open level, for as long as this path runs. */
    public void retakeLight() {
        surroundings.retakeLight();
    }

    /** What became of the latest {@link #retakeLight}; null while it goes on, and once it has been told. */
    public @Nullable LightTaken takeLightTaken() {
        return surroundings.takeLightTaken();
    }

    /** Why light closes the sound, in words; empty when it does not. */
    public String lightMute() {
        return surroundings.muteReason();
    }

    /** What is wrong with a hand's sensor while lines still come; empty when nothing is. */
    public String sensorTrouble() {
        String pitch = pitchTrouble.words();
        String level = levelTrouble == null ? "" : levelTrouble.words();
        return pitch.isEmpty() ? level : level.isEmpty() ? pitch : pitch + "; " + level;
    }

    /** What is worth a word between songs; empty while a hand plays, and when nothing is. */
    public String hint() {
        return surroundings.hint();
    }

    /**
     * Puts another tuning in; hands and sound go on, and pitch passes over into it without a step.
     *
     * @return why not, where this room is too unsteady for it; then all stays as it was
     */
    public Optional<String> tune(Tuning tuning) {
        Optional<String> refusal = StepsBudget.refusal(room, tuning);
        if (refusal.isEmpty()) {
            pitchHand.smoothBy(PitchSmoothing.of(room, tuning));
            voice.tune(tuning, StepsBudget.limits(room, tuning), outlet.sounded());
        }
        return refusal;
    }

    /**
     * Puts another level curve in; hands and sound go on, and level passes over into it as {@link Fade} says, without a
     * leap. What becomes of a hand that leaves is as chosen there from now on.
     */
    public void level(LevelCurve curve) {
        voice.level(curve);
        fade.use(curve);
        Leaving leaving = curve.leaving();
        leavingNanos = Nanos.ofMs(leaving.fadeMs());
        heldPitch.holding(leaving.holds());
        heldLevel.holding(leaving.holds());
        pitchHand.fadingFor(leavingNanos);
        surroundings.loudOpen(curve.loudFar());
        if (levelHand != null) {
            levelHand.fadingFor(leavingNanos);
            levelHand.smoothBy(PathParts.levelSmoothing(room, levelHand.setup(), curve));
        }
    }
}
