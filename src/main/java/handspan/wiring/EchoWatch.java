package handspan.wiring;

import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.instrument.survey.EchoNeighbours;
import handspan.live.session.LineSeen;
import handspan.live.session.Recent;
import handspan.live.session.Snapshot;
import handspan.number.units.Nanos;
import handspan.room.HandSetup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Hands the readings of an ensemble's echo instruments on to {@link EchoNeighbours}. Used by the thread that follows.
 */
public final class EchoWatch {
    private final List<Ear> ears = new ArrayList<>();
    private final EchoNeighbours neighbours;
    private long askedNanos;
    private String latest = "";

    /** One of them. */
    private static final class Ear {
        private final Member member;
        private final String channel;
        private final Sensor sensor;
        private long seen;

        Ear(Member member, HandSetup pitch) {
            this.member = member;
            this.channel = pitch.channel().channel();
            this.sensor = member.seat().profile().room().sensor(pitch);
        }
    }

    /** A watch over those whose pitch hand is heard by echo. */
    public EchoWatch(Ensemble ensemble) {
        for (Member member : ensemble.members()) {
            HandSetup pitch = member.seat().profile().room().pitch();
            if (pitch.channel().kind() == SensorKind.ECHO) {
                ears.add(new Ear(member, pitch));
            }
        }
        neighbours = new EchoNeighbours(
                ears.stream().map(ear -> ear.member.seat().name()).toList());
        askedNanos = ensemble.nowNanos();
    }

    /** Who hears whom, and what to do; empty where nobody does. */
    public String look(long nowNanos) {
        if (ears.size() < 2) {
            return "";
        }
        for (int i = 0; i < ears.size(); i++) {
            hear(i, ears.get(i));
        }
        if (nowNanos - askedNanos >= Nanos.PER_SECOND) {
            askedNanos = nowNanos;
            latest = neighbours.hint(nowNanos).orElse("");
        }
        return latest;
    }

    private void hear(int number, Ear ear) {
        Optional<Snapshot> snapshot = ear.member.snapshot();
        int slot = snapshot.flatMap(Snapshot::shape)
                .map(shape -> shape.indexOf(ear.channel))
                .orElse(-1);
        if (snapshot.isEmpty() || slot < 0) {
            return;
        }
        Recent<LineSeen> lines = snapshot.get().seen();
        for (long line = Math.max(ear.seen, lines.first()); line < lines.next(); line++) {
            Reading reading = lines.at(line).reading();
            if (reading != null && reading.tells(slot)) {
                boolean there = reading.has(slot) && ear.sensor.hasReading(reading.value(slot));
                double mm = there ? ear.sensor.physical(reading.value(slot)) : Double.NaN;
                neighbours.onReading(number, mm, reading.timeNanos());
            }
        }
        ear.seen = lines.next();
    }
}
