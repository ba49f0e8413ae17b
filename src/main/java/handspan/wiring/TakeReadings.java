package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.live.path.Intake;
import handspan.live.path.LineTap;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** All readings of a recording, for pictures of it. */
public final class TakeReadings {
    private TakeReadings() {}

    /**
     * Reads them into memory; for recordings of minutes, not of hours.
     *
     * @param path of the recording
     * @param ratePerS lines a second where it has no times
     * @param shape of its lines
     * @throws IOException when it can't be read
     */
    public static List<Reading> of(Path path, OptionalDouble ratePerS, LineShape shape) throws IOException {
        List<Reading> readings = new ArrayList<>();
        Intake intake = new Intake(shape, LineTap.NONE, readings::add, learned -> {});
        try (TakeSource source = new TakeSource(path, ratePerS, 0)) {
            while (source.nextNanos() != Long.MAX_VALUE) {
                long timeNanos = source.nextNanos();
                byte[] line = source.next();
                intake.onBytes(line, line.length, timeNanos);
            }
        }
        return readings;
    }
}
