package handspan.live.session;

import handspan.TestRooms;
import handspan.hand.smooth.Quickness;
import handspan.live.path.LineTap;
import handspan.live.path.PathSettings;
import handspan.music.level.Leaving;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** An evening on which everything happens at once, by chance: readings, commands, losses, a clock that is late. */
final class Havoc {
    /** How readings of one hand run on for a while. */
    private enum Mode {
        STILL,
        SLIDE,
        UNIFORM,
        EXTREME,
        ABSENT,
        HUGE,
        STEPS
    }

    /** Playing is as likely as all the rest, so that there is something to break. */
    private static final List<Mode> MODES = List.of(
            Mode.STILL,
            Mode.STILL,
            Mode.SLIDE,
            Mode.SLIDE,
            Mode.STEPS,
            Mode.UNIFORM,
            Mode.EXTREME,
            Mode.ABSENT,
            Mode.HUGE);

    private static final List<Snap> SNAPS = List.of(Snap.values());
    private static final List<String> NO_READING = List.of("-1", "0", "8190", "65535", "", "NaN", "none");
    private static final double TICK_LATE_MS = 4;

    private final Random random;
    private final RoomProfile room;
    private final double[] most;
    private final LevelLaws laws;
    private final Engine engine;
    private final List<Tuning> tunings = new ArrayList<>();
    private final Mode[] modes = {Mode.STILL, Mode.STILL};
    private final double[] values = {300, 300};
    private long now = Nanos.PER_SECOND;
    private boolean muted;
    private boolean linked = true;
    private boolean stopped;
    private int starts;

    /**
     * An evening in a room.
     *
     * @param base room whose level curve is replaced by one made by chance
     * @param mostLevel usual numbers of the level hand go from 0 to this
     */
    Havoc(long seed, RoomProfile base, double mostLevel) {
        this.random = new Random(seed);
        this.room = base.with(curve());
        this.most = new double[] {600, mostLevel};
        this.laws = new LevelLaws(room.level());
        this.engine = new Engine(
                new Engine.Plugs(room.room().instrument().shape(), List.of(laws), LineTap.NONE, event -> {}), now);
        for (int i = 0; i < 4; i++) {
            tunings.add(tuning("t" + i));
        }
    }

    private LevelCurve curve() {
        double floorDb = -20 - random.nextInt(70);
        double ceilingDb = Math.min(0, floorDb + 1 + random.nextInt(60));
        double rise = Math.pow(10, -2 + 4 * random.nextDouble());
        Leaving leaving = new Leaving(random.nextInt(3) == 0, 5 + random.nextInt(random.nextBoolean() ? 100 : 1990));
        return new LevelCurve(floorDb, ceilingDb, random.nextDouble() / 2, random.nextBoolean(), rise, leaving);
    }

    private Tuning tuning(String name) {
        int low = 40 + random.nextInt(30);
        return Tuning.usual()
                .named(name)
                .withRange(low, low + 12 + random.nextInt(24))
                .withScale(one(Scales.all()))
                .withSnap(one(SNAPS))
                .shifted(random.nextInt(25) - 12, random.nextInt(101) - 50)
                .with(new Quickness(random.nextInt(5) - 2));
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    LevelLaws laws() {
        return laws;
    }

    int starts() {
        return starts;
    }

    /** Runs it. */
    void run(double seconds) {
        engine.onLinkUp(now);
        play();
        long end = now + Nanos.ofMs(seconds * 1000);
        long nextCommand = now;
        long period = Nanos.ofMs(5 + random.nextInt(40));
        while (now < end) {
            tickOn(now + period + (random.nextInt(200) == 0 ? Nanos.ofMs(random.nextInt(3000)) : 0));
            if (linked) {
                readings(random.nextInt(30) == 0 ? 1 + random.nextInt(20) : 1);
            }
            if (now >= nextCommand) {
                command();
                nextCommand = now + Nanos.ofMs(random.nextInt(random.nextBoolean() ? 80 : 1200));
            }
        }
    }

    /** Ticks as a session makes them: by the clock, at or after each deadline. */
    private void tickOn(long until) {
        long deadline = Math.max(now, engine.nextDeadlineNanos());
        while (deadline <= until) {
            now = Math.min(until, deadline + Nanos.ofMs(random.nextDouble() * TICK_LATE_MS));
            engine.onTick(now);
            noteLoss();
            deadline = Math.max(now + 1, engine.nextDeadlineNanos());
        }
        now = until;
    }

    /** A silence of a second, or a late clock, is a loss; the session then opens the link again. */
    private void noteLoss() {
        if (engine.takeReopen()) {
            laws.shut();
            engine.onLinkUp(now);
        }
    }

    private void readings(int count) {
        if (random.nextInt(40) == 0) {
            modes[random.nextInt(2)] = one(MODES);
        }
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < count; i++) {
            lines.append(number(0)).append(',').append(number(1)).append('\n');
        }
        byte[] bytes = lines.toString().getBytes(StandardCharsets.US_ASCII);
        if (!muted && !stopped) {
            // whether this opens the sound is the path's affair; the other laws hold on
            laws.open();
        }
        engine.onBytes(bytes, bytes.length, now);
        noteLoss();
    }

    private String number(int hand) {
        switch (modes[hand]) {
            case STILL -> values[hand] += random.nextGaussian();
            case SLIDE -> values[hand] = most[hand] * (0.5 + 0.3 * Math.sin(now / 3e8));
            case UNIFORM -> values[hand] = most[hand] * random.nextDouble();
            case EXTREME -> values[hand] = random.nextBoolean() ? 0 : most[hand];
            case STEPS -> values[hand] = random.nextInt(20) == 0 ? most[hand] * random.nextDouble() : values[hand];
            case HUGE -> {
                return random.nextBoolean() ? "1e300" : "-99999999999";
            }
            case ABSENT -> {
                return one(NO_READING);
            }
        }
        values[hand] = Math.max(1, Math.min(most[hand], values[hand]));
        return String.format(Locale.ROOT, "%.1f", values[hand]);
    }

    private void command() {
        if (stopped || !linked || muted) {
            // nothing to hear for long proves nothing
            if (stopped) {
                play();
            } else if (!linked) {
                link();
            } else {
                mute(false);
            }
            return;
        }
        switch (random.nextInt(10)) {
            case 0, 1 -> mute(true);
            case 2, 3 -> tune();
            case 4 -> engine.onCommand(new Command.RetakeLight(), now);
            case 5 -> link();
            case 6 -> stop();
            case 7 -> play();
            case 8 -> level();
            default -> modes[random.nextInt(2)] = one(MODES);
        }
    }

    private void mute(boolean on) {
        muted = on;
        engine.onCommand(new Command.Mute(on), now);
        if (on) {
            laws.shut();
        } else if (linked && !stopped) {
            laws.open();
        }
    }

    private void tune() {
        Tuning chosen = one(tunings);
        laws.allow(chosen);
        engine.onCommand(new Command.Tune(chosen), now);
    }

    private void level() {
        LevelCurve chosen = curve();
        laws.follow(chosen, now);
        engine.onCommand(new Command.Level(chosen), now);
    }

    private void link() {
        linked = !linked;
        if (linked) {
            engine.onLinkUp(now);
        } else {
            engine.onLinkDown("pulled", now);
            engine.takeReopen();
            laws.shut();
        }
    }

    private void stop() {
        stopped = true;
        engine.onCommand(new Command.Stop(), now);
        laws.shut();
    }

    /** Also while another still sounds: the new one begins in silence all the same. */
    private void play() {
        Tuning first = one(tunings);
        laws.allow(first);
        muted = random.nextInt(4) == 0;
        stopped = false;
        starts++;
        PathSettings settings =
                PathSettings.USUAL.muted(muted).gliding(random.nextInt(3) > 0).withFrames(50 + random.nextInt(400));
        engine.onCommand(new Command.Play(room, first, settings), now);
        laws.start();
        laws.follow(room.level(), now);
        if (muted) {
            laws.shut();
        }
    }

    /** A room with two distances, of which both go from 0 to 600 mm. */
    static Havoc withTwoDistances(long seed) {
        return new Havoc(seed, TestRooms.twoDistances(50), 600);
    }
}
