package handspan.command;

import handspan.instrument.sensor.Instrument;
import handspan.music.tuning.NoteName;
import handspan.room.calibrate.CalibrationPlan;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Where a calibration asks the pitch hand to hold: by feel, at ends known by ruler, along a ruler, or by ear. */
final class PlaceArguments {
    @Option(names = "--near-mm", paramLabel = "MM", description = "true distance of the near end, by ruler")
    @Nullable
    Double nearMm;

    @Option(names = "--far-mm", paramLabel = "MM", description = "true distance of the far end, by ruler")
    @Nullable
    Double farMm;

    @Option(
            names = "--ruler",
            split = ",",
            paramLabel = "MM",
            description = "hold at these true distances (3..9, rising), and fit the sensor to them")
    List<Double> ruler = List.of();

    @Option(
            names = "--by-ear",
            split = ",",
            paramLabel = "NOTE",
            description = "hold where these notes shall be (3..9, from near to far)")
    List<String> notes = List.of();

    @Option(
            names = "--aim",
            description = "then reach ten times, unaided, for places held before: measures how well you aim, for the"
                    + " adviser (without it 6 mm are assumed)")
    boolean aim;

    /**
     * Makes sure that one way is chosen.
     *
     * @param again whether a room is fitted again, a way of its own
     */
    void check(boolean again) throws UsageException {
        if ((nearMm == null) != (farMm == null)) {
            throw new UsageException("--near-mm and --far-mm belong together: give both, or neither");
        }
        int ways = (nearMm == null ? 0 : 1) + (ruler.isEmpty() ? 0 : 1) + (notes.isEmpty() ? 0 : 1) + (again ? 1 : 0);
        if (ways > 1) {
            throw new UsageException("--near-mm with --far-mm, --ruler, --by-ear and --from are four ways: choose one");
        }
    }

    /** The steps. */
    CalibrationPlan plan(Instrument instrument) throws UsageException {
        CalibrationPlan plan = UsageException.reading(() -> {
            if (!ruler.isEmpty()) {
                return CalibrationPlan.byRuler(instrument, ruler);
            }
            if (!notes.isEmpty()) {
                return CalibrationPlan.byEar(
                        instrument, notes.stream().map(NoteName::parse).toList());
            }
            return CalibrationPlan.of(instrument, nearMm(), farMm());
        });
        return reaching(plan);
    }

    /** The same steps, with the reaches if they were asked for. */
    CalibrationPlan reaching(CalibrationPlan plan) throws UsageException {
        return aim ? UsageException.reading(plan::withReaches) : plan;
    }

    /** True distance of the near end, if given. */
    OptionalDouble nearMm() {
        return optional(nearMm);
    }

    /** True distance of the far end, if given. */
    OptionalDouble farMm() {
        return optional(farMm);
    }

    private static OptionalDouble optional(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
