package handspan.command;

import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.live.session.LinkException;
import handspan.music.passage.Moment;
import handspan.music.passage.PassageFigures;
import handspan.music.passage.Wobble;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.budget.Passage;
import handspan.show.chart.PassageTrace;
import handspan.wiring.FrameLog;
import handspan.wiring.Loopback;
import handspan.wiring.Rig;
import handspan.wiring.Rigs;
import handspan.wiring.Simulation;
import handspan.wiring.Targets;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The demo's music: a passage sent for real and held against the true hand, and a hand held still. */
final class DemoPassage {
    private static final int[] KEYS = {57, 60, 62, 64, 67, 69, 72, 69, 67};
    private static final double HOLD_SECONDS = 0.55;
    private static final double LAST_SECONDS = 1.4;
    private static final double AFTER_SECONDS = 0.8;
    private static final double SAMPLE_MS = 2;
    private static final double STILL_SECONDS = 10;
    private static final double SETTLE_SECONDS = 3;

    /** A held note counts from this long after the hand has arrived. */
    private static final int SETTLED_MS = 300;

    private static final double STILL_MM = 0.05;

    /**
     * What was played.
     *
     * @param trace for the chart
     * @param measured against the true hand
     * @param inTune what came back, against the notes of the scale
     * @param framesSent bundles handed to the network
     * @param packetsReceived bundles that came back
     * @param messagesReceived messages in them
     * @param malformed packets that could not be decoded
     */
    record Played(
            PassageTrace trace,
            Passage measured,
            PassageFigures inTune,
            long framesSent,
            long packetsReceived,
            long messagesReceived,
            long malformed) {}

    /**
     * A hand held still.
     *
     * @param sentCents rms wobble of what was sent
     * @param handCents rms wobble of the true hand
     */
    record Stillness(double sentCents, double handCents) {}

    private final DemoStage stage;
    private final RoomProfile profile;
    private final Tuning tuning;
    private final PitchCurve curve;

    DemoPassage(DemoStage stage, RoomProfile profile) {
        this.stage = stage;
        this.profile = profile;
        this.tuning = profile.tunings().get(0);
        this.curve = tuning.curve();
    }

    /** By the clock, through real datagrams. */
    Played play() throws LinkException, IOException {
        TargetStatus target;
        Simulation simulation;
        long startNanos;
        long endNanos;
        try (Loopback loopback = Loopback.open(profile.send().lines())) {
            RoomProfile here = profile.with(profile.send().to(List.of(loopback.target())));
            try (Targets targets = Targets.open(here.send())) {
                try (Rig rig = Rigs.open(
                        stage.source(),
                        stage.byTheClock(),
                        profile.room().instrument().shape(),
                        targets.all(),
                        null)) {
                    simulation = rig.simulation().orElseThrow();
                    rig.submit(new Command.Play(here, tuning, PathSettings.USUAL.muted(false)));
                    startNanos = Rigs.CLOCK.getAsLong();
                    List<Double> places =
                            Arrays.stream(KEYS).mapToObj(curve::place01).toList();
                    long over = simulation.play(places, HOLD_SECONDS, LAST_SECONDS, startNanos);
                    simulation.leave(over);
                    endNanos = over + Nanos.ofSeconds(AFTER_SECONDS);
                    rig.follow(snapshot -> snapshot.timeNanos() < endNanos);
                }
                target = targets.status().get(0);
            }
            loopback.await(target.sent());
            PassageTrace trace = trace(simulation, loopback, startNanos, endNanos);
            return new Played(
                    trace,
                    measure(simulation, trace, startNanos),
                    PassageFigures.of(moments(trace), tuning, profile.level()),
                    target.sent(),
                    loopback.packets(),
                    loopback.messages(),
                    loopback.malformed());
        }
    }

    /** Key number that the true hand means: its true place between the true places of near and far. */
    private double trueKey(Simulation simulation, double mm) {
        return curve.key(simulation.truePlace(mm)) + tuning.shiftKeys();
    }

    private PassageTrace trace(Simulation simulation, Loopback received, long startNanos, long endNanos) {
        int count = (int) (Nanos.toMs(endNanos - startNanos) / SAMPLE_MS);
        double[] timesS = new double[count];
        double[] trueKeys = new double[count];
        double[] sentKeys = new double[count];
        double[] levelDb = new double[count];
        boolean[] sounding = new boolean[count];
        for (int i = 0; i < count; i++) {
            long time = startNanos + Nanos.ofMs(i * SAMPLE_MS);
            timesS[i] = i * SAMPLE_MS / 1000;
            double mm = simulation.trueMm(time);
            boolean within = profile.room().pitch().zone().holds(mm);
            trueKeys[i] = simulation.isHandThere(time) && within ? trueKey(simulation, mm) : Double.NaN;
            received.moveTo(time);
            sounding[i] = received.gain01() > 0;
            sentKeys[i] = received.pitchHz() > 0 ? tuning.reference().key(received.pitchHz()) : 0;
            levelDb[i] = received.gain01() > 0 ? Decibels.of(received.gain01()) : Double.NEGATIVE_INFINITY;
        }
        return new PassageTrace(timesS, trueKeys, sentKeys, levelDb, sounding);
    }

    /** Where the true hand is not there, what it would have made is what came. */
    private static List<Moment> moments(PassageTrace trace) {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < trace.timesS().length; i++) {
            double meant = trace.trueKeys()[i];
            double sent = trace.sentKeys()[i];
            boolean sounds = trace.sounding()[i];
            moments.add(new Moment(
                    Nanos.ofSeconds(trace.timesS()[i]),
                    sent,
                    Double.isNaN(meant) ? sent : meant,
                    sounds ? Decibels.gain(trace.levelDb()[i]) : 0,
                    sounds,
                    false));
        }
        return moments;
    }

    /** From the first moment at which hand and sound are both there, for as long as they are. */
    private Passage measure(Simulation simulation, PassageTrace trace, long startNanos) {
        int from = 0;
        while (from < trace.timesS().length && !both(trace, from)) {
            from++;
        }
        int to = from;
        while (to < trace.timesS().length && both(trace, to)) {
            to++;
        }
        double[] meant = cents(Arrays.copyOfRange(trace.trueKeys(), from, to));
        double[] sent = cents(Arrays.copyOfRange(trace.sentKeys(), from, to));
        boolean[] still = new boolean[to - from];
        for (int i = 0; i < still.length; i++) {
            still[i] = stillFor(simulation, startNanos + Nanos.ofMs((from + i) * SAMPLE_MS));
        }
        return Passage.of(meant, sent, still, SAMPLE_MS);
    }

    private static boolean both(PassageTrace trace, int i) {
        return trace.sounding()[i] && !Double.isNaN(trace.trueKeys()[i]);
    }

    private static boolean stillFor(Simulation hand, long time) {
        double here = hand.meantMm(time);
        for (int agoMs = 0; agoMs <= SETTLED_MS; agoMs += 10) {
            if (Math.abs(hand.meantMm(time - Nanos.ofMs(agoMs)) - here) > STILL_MM) {
                return false;
            }
        }
        return true;
    }

    private static double[] cents(double[] keys) {
        return Arrays.stream(keys)
                .map(key -> key * ReferencePitch.CENTS_PER_KEY)
                .toArray();
    }

    /** As fast as the machine can: ten seconds of a hand held still in the middle of the zone. */
    Stillness holdStill() throws LinkException, IOException {
        FrameLog log = new FrameLog();
        try (Rig rig = Rigs.open(
                stage.source(), stage.fast(), profile.room().instrument().shape(), List.of(log), null)) {
            Simulation simulation = rig.simulation().orElseThrow();
            rig.submit(new Command.Play(profile, tuning, PathSettings.USUAL.muted(false)));
            long startNanos = rig.snapshot().timeNanos();
            simulation.holdStill(0.5, startNanos);
            double wantedS = SETTLE_SECONDS + STILL_SECONDS;
            rig.follow(snapshot -> Nanos.toSeconds(snapshot.timeNanos() - startNanos) < wantedS);
            long fromNanos = startNanos + Nanos.ofSeconds(SETTLE_SECONDS);
            List<SoundFrame> frames = log.frames().stream()
                    .filter(frame -> frame.timeNanos() >= fromNanos && frame.hand())
                    .toList();
            double[] sent = frames.stream()
                    .mapToDouble(frame -> tuning.reference().key(frame.pitchHz()))
                    .toArray();
            double[] meant = frames.stream()
                    .mapToDouble(frame -> trueKey(simulation, simulation.trueMm(frame.timeNanos())))
                    .toArray();
            return new Stillness(
                    Wobble.of(cents(sent)).rmsCents(), Wobble.of(cents(meant)).rmsCents());
        }
    }
}
