package handspan.command;

import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.live.session.LinkException;
import handspan.music.send.SendTarget;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Tuning;
import handspan.number.units.Decibels;
import handspan.number.units.Nanos;
import handspan.outside.osc.OscReceiver;
import handspan.outside.osc.ReceiverStatus;
import handspan.outside.simulate.Cue;
import handspan.outside.simulate.PassageNote;
import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedHand;
import handspan.outside.simulate.Stage;
import handspan.outside.take.TakeException;
import handspan.profile.RoomProfile;
import handspan.room.budget.Passage;
import handspan.show.chart.PassageTrace;
import handspan.wiring.FrameLog;
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
     * @param framesSent bundles handed to the network
     * @param packetsReceived bundles that came back
     * @param messagesReceived messages in them
     * @param malformed packets that could not be decoded
     */
    record Played(
            PassageTrace trace,
            Passage measured,
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
    Played play() throws LinkException, TakeException, IOException {
        ReceivedSound received = new ReceivedSound(profile.send().lines());
        TargetStatus target;
        Simulation simulation;
        long startNanos;
        long endNanos;
        ReceiverStatus receiver;
        try (OscReceiver loopback = OscReceiver.open(0, Rigs.CLOCK, received::onMessage)) {
            SendTarget to = SendTarget.parse("udp:127.0.0.1:" + loopback.port());
            RoomProfile here = profile.with(profile.send().to(List.of(to)));
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
                    long over = simulation.play(notes(simulation), startNanos);
                    simulation.instrument().player().react(Cue.of(Cue.Kind.REST, PlayerHand.PITCH), over);
                    endNanos = over + Nanos.ofSeconds(AFTER_SECONDS);
                    rig.follow(snapshot -> snapshot.timeNanos() < endNanos);
                }
                target = targets.status().get(0);
            }
            receiver = settled(loopback, target.sent());
        }
        PassageTrace trace = trace(simulation, received, startNanos, endNanos);
        return new Played(
                trace,
                measure(simulation, trace, startNanos),
                target.sent(),
                receiver.packets(),
                receiver.messages(),
                receiver.malformed());
    }

    /** Waits a little for datagrams still under way. */
    private static ReceiverStatus settled(OscReceiver loopback, long expected) {
        try {
            for (int waited = 0; waited < 200 && loopback.status().packets() < expected; waited++) {
                Thread.sleep(5);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return loopback.status();
    }

    private List<PassageNote> notes(Simulation simulation) {
        Stage places = simulation.instrument().player().stage(PlayerHand.PITCH);
        List<PassageNote> notes = new ArrayList<>();
        for (int i = 0; i < KEYS.length; i++) {
            double mm = places.nearMm() + curve.place01(KEYS[i]) * (places.farMm() - places.nearMm());
            notes.add(new PassageNote(mm, i == KEYS.length - 1 ? LAST_SECONDS : HOLD_SECONDS));
        }
        return notes;
    }

    /** Key number that the true hand means: its true place between the true places of near and far. */
    private double trueKey(Simulation simulation, double mm) {
        Stage places = simulation.instrument().player().stage(PlayerHand.PITCH);
        double place = (mm - places.nearMm()) / (places.farMm() - places.nearMm());
        return curve.key(place) + tuning.shiftKeys();
    }

    private PassageTrace trace(Simulation simulation, ReceivedSound received, long startNanos, long endNanos) {
        SimulatedHand hand = simulation.instrument().player().hand(PlayerHand.PITCH);
        int count = (int) (Nanos.toMs(endNanos - startNanos) / SAMPLE_MS);
        double[] timesS = new double[count];
        double[] trueKeys = new double[count];
        double[] sentKeys = new double[count];
        double[] levelDb = new double[count];
        boolean[] sounding = new boolean[count];
        for (int i = 0; i < count; i++) {
            long time = startNanos + Nanos.ofMs(i * SAMPLE_MS);
            timesS[i] = i * SAMPLE_MS / 1000;
            double mm = hand.trueMm(time);
            boolean within = profile.room().pitch().zone().holds(mm);
            trueKeys[i] = hand.presentAt(time) && within ? trueKey(simulation, mm) : Double.NaN;
            received.moveTo(time);
            sounding[i] = received.gain01() > 0;
            sentKeys[i] = received.pitchHz() > 0 ? tuning.reference().key(received.pitchHz()) : 0;
            levelDb[i] = received.gain01() > 0 ? Decibels.of(received.gain01()) : Double.NEGATIVE_INFINITY;
        }
        return new PassageTrace(timesS, trueKeys, sentKeys, levelDb, sounding);
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
        SimulatedHand hand = simulation.instrument().player().hand(PlayerHand.PITCH);
        for (int i = 0; i < still.length; i++) {
            still[i] = stillFor(hand, startNanos + Nanos.ofMs((from + i) * SAMPLE_MS));
        }
        return Passage.of(meant, sent, still, SAMPLE_MS);
    }

    private static boolean both(PassageTrace trace, int i) {
        return trace.sounding()[i] && !Double.isNaN(trace.trueKeys()[i]);
    }

    private static boolean stillFor(SimulatedHand hand, long time) {
        double here = hand.intendedMm(time);
        for (int agoMs = 0; agoMs <= SETTLED_MS; agoMs += 10) {
            if (Math.abs(hand.intendedMm(time - Nanos.ofMs(agoMs)) - here) > STILL_MM) {
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
    Stillness holdStill() throws LinkException, TakeException {
        FrameLog log = new FrameLog();
        try (Rig rig = Rigs.open(
                stage.source(), stage.fast(), profile.room().instrument().shape(), List.of(log), null)) {
            Simulation simulation = rig.simulation().orElseThrow();
            rig.submit(new Command.Play(profile, tuning, PathSettings.USUAL.muted(false)));
            long startNanos = rig.snapshot().timeNanos();
            Stage places = simulation.instrument().player().stage(PlayerHand.PITCH);
            double middle = (places.nearMm() + places.farMm()) / 2;
            simulation.instrument().player().react(Cue.at(Cue.Kind.PLACE, PlayerHand.PITCH, middle), startNanos);
            simulation.instrument().player().react(Cue.of(Cue.Kind.OPEN, PlayerHand.LEVEL), startNanos);
            double wantedS = SETTLE_SECONDS + STILL_SECONDS;
            rig.follow(snapshot -> Nanos.toSeconds(snapshot.timeNanos() - startNanos) < wantedS);
            SimulatedHand hand = simulation.instrument().player().hand(PlayerHand.PITCH);
            long fromNanos = startNanos + Nanos.ofSeconds(SETTLE_SECONDS);
            List<SoundFrame> frames = log.frames().stream()
                    .filter(frame -> frame.timeNanos() >= fromNanos && frame.hand())
                    .toList();
            double[] sent = frames.stream()
                    .mapToDouble(frame -> tuning.reference().key(frame.pitchHz()))
                    .toArray();
            double[] meant = frames.stream()
                    .mapToDouble(frame -> trueKey(simulation, hand.trueMm(frame.timeNanos())))
                    .toArray();
            return new Stillness(rms(cents(sent)), rms(cents(meant)));
        }
    }

    private static double rms(double[] values) {
        double mean = Arrays.stream(values).average().orElse(0);
        return Math.sqrt(Arrays.stream(values)
                .map(value -> (value - mean) * (value - mean))
                .average()
                .orElse(0));
    }
}
