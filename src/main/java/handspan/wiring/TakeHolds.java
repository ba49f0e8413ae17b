package handspan.wiring;

import handspan.instrument.line.LineReader;
import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.line.Rejections;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.survey.Intervals;
import handspan.live.path.Intake;
import handspan.live.path.LineTap;
import handspan.outside.take.TakeEntry;
import handspan.outside.take.TakeFile;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.StepKind;
import handspan.room.calibrate.MarkedHolds;
import handspan.room.calibrate.Step;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * The holds that a recording of a calibration marks, made again from its lines.
 *
 * @param holds in the order of the marks; empty when the recording has none
 * @param ratePerS readings a second
 */
public record TakeHolds(List<Hold> holds, double ratePerS) {
    /** Copies the holds. */
    public TakeHolds {
        holds = List.copyOf(holds);
    }

    /**
     * Reads a recording twice: for its marks, then for its readings.
     *
     * @throws IOException when it can't be read
     */
    public static TakeHolds read(Path path, OptionalDouble ratePerS, Instrument instrument, Air air)
            throws IOException {
        Collecting collecting = new Collecting(marks(path, ratePerS), instrument, air);
        LineShape known = instrument.shape();
        if (known != null) {
            collecting.onShape(known);
        }
        Intake intake = new Intake(known, LineTap.NONE, collecting::onReading, collecting::onShape);
        try (TakeSource source = new TakeSource(path, ratePerS, 0)) {
            while (source.nextNanos() != Long.MAX_VALUE) {
                long timeNanos = source.nextNanos();
                byte[] line = source.next();
                intake.onBytes(line, line.length, timeNanos);
            }
        }
        intake.onEnd();
        return new TakeHolds(collecting.holds(), collecting.intervals.ratePerS());
    }

    /**
     * Holds from a table: each line of a plain log is one hold at one ruler distance.
     *
     * @param rulerMm as many as the log has lines
     * @throws IOException when it can't be read
     * @throws IllegalArgumentException when the counts differ
     */
    public static TakeHolds lineByLine(
            Path path, OptionalDouble ratePerS, Instrument instrument, Air air, List<Double> rulerMm)
            throws IOException {
        LineShape shape = instrument.shape();
        if (shape == null) {
            throw new IllegalArgumentException("the lines of " + path + " have no shape that could be learned");
        }
        int slot = shape.indexOf(instrument.pitch().channel());
        Sensor sensor = instrument.sensors(air).get(0);
        LineReader reader = new LineReader(shape, new Rejections());
        List<Hold> holds = new ArrayList<>();
        int line = 0;
        try (TakeFile file = TakeFile.open(path, ratePerS)) {
            for (TakeEntry entry = file.next(); entry != null; entry = file.next()) {
                if (!(entry instanceof TakeEntry.Line one) || one.bytes().length == 0) {
                    continue;
                }
                Reading reading = reader.read(one.bytes(), one.bytes().length, 0);
                if (reading != null && reading.has(slot) && line < rulerMm.size()) {
                    double raw = reading.value(slot);
                    if (sensor.hasReading(raw)) {
                        holds.add(Hold.of(StepKind.RULER, HandRole.PITCH, sensor.physical(raw), 0, 0, 1)
                                .at(rulerMm.get(line)));
                    }
                }
                line++;
            }
        }
        if (line != rulerMm.size()) {
            throw new IllegalArgumentException(path + " has " + line + " lines and --ruler names " + rulerMm.size()
                    + " distances: name one for each line");
        }
        return new TakeHolds(holds, ratePerS.orElse(1));
    }

    /** Waits for the line shape, then collects. */
    private static final class Collecting {
        private final List<MarkedHolds.Mark> marks;
        private final Instrument instrument;
        private final Air air;
        private final Intervals intervals = new Intervals();
        private @Nullable MarkedHolds collected;

        Collecting(List<MarkedHolds.Mark> marks, Instrument instrument, Air air) {
            this.marks = marks;
            this.instrument = instrument;
            this.air = air;
        }

        void onShape(LineShape shape) {
            List<Sensor> sensors = instrument.sensors(air);
            collected = new MarkedHolds(
                    marks,
                    shape,
                    instrument.pitch(),
                    sensors.get(0),
                    instrument.level(),
                    sensors.size() > 1 ? sensors.get(1) : null);
        }

        void onReading(Reading reading) {
            intervals.onReading(reading.timeNanos());
            if (collected != null) {
                collected.onReading(reading);
            }
        }

        List<Hold> holds() {
            return collected == null ? List.of() : collected.holds();
        }
    }

    private static List<MarkedHolds.Mark> marks(Path path, OptionalDouble ratePerS) throws IOException {
        List<MarkedHolds.Mark> marks = new ArrayList<>();
        try (TakeFile file = TakeFile.open(path, ratePerS)) {
            for (TakeEntry entry = file.next(); entry != null; entry = file.next()) {
                if (entry instanceof TakeEntry.Captured captured) {
                    Step.byId(captured.name())
                            .ifPresent(step -> marks.add(new MarkedHolds.Mark(
                                    step, captured.fromMicros() * 1000, captured.toMicros() * 1000)));
                }
            }
        }
        return marks;
    }
}
