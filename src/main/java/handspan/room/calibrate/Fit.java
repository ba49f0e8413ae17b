package handspan.room.calibrate;

import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** From holds to a room: pure, and the same for a live calibration and for one made again from a take. */
public final class Fit {
    /** Shortest zone that two octaves can be played on, mm (this project's own limit). */
    public static final double LEAST_ZONE_MM = 80;

    /**
     * Nearest end of a zone of a length or infrared sensor, mm: closer than this echo sensors read garbage (data sheet:
     * 2 cm; 5 cm is common practice).
     */
    public static final double LEAST_NEAR_MM = 50;

    /** Least factor in resistance between open and covered light. */
    public static final double LEAST_LIGHT_FACTOR = 2;

    /** Travel that stands for a hand over a light sensor where no ruler was used, mm. */
    public static final double SCALED_TRAVEL_MM = 200;

    private final Instrument instrument;
    private final Air air;
    private final List<Hold> holds;

    private Fit(Instrument instrument, Air air, List<Hold> holds) {
        this.instrument = instrument;
        this.air = air;
        this.holds = holds;
    }

    /**
     * Fits.
     *
     * @param name of the room
     * @param calibratedAt ISO 8601 text
     * @param instrument its channels
     * @param air of the evening
     * @param ratePerS readings a second, above 0
     * @param holds captured, in order; where a step was captured twice the later one counts
     */
    public static Outcome fit(
            String name, String calibratedAt, Instrument instrument, Air air, double ratePerS, List<Hold> holds) {
        Fit fit = new Fit(instrument, air, holds);
        HandFit pitch = fit.pitch(instrument.pitch());
        ChannelSpec levelChannel = instrument.level();
        HandFit level = levelChannel == null ? null : fit.level(levelChannel);
        List<String> reasons = new ArrayList<>(pitch.reasons());
        if (level != null) {
            reasons.addAll(level.reasons());
        }
        if (!reasons.isEmpty()) {
            return Outcome.no(reasons);
        }
        Room room = new Room(
                name,
                calibratedAt,
                instrument,
                air,
                ratePerS,
                pitch.setup().orElseThrow(),
                level == null ? null : level.setup().orElseThrow(),
                holds);
        Room aimed = AimFit.of(room).map(AimFit::aim).map(room::with).orElse(room);
        return pitch.byEar().map(heard -> Outcome.of(aimed, heard)).orElseGet(() -> Outcome.of(aimed));
    }

    private HandFit pitch(ChannelSpec channel) {
        Sensor sensor = Sensor.of(channel, air, instrument.referenceVolts());
        List<Hold> ruler = latest(StepKind.RULER);
        if (!ruler.isEmpty()) {
            return RulerFit.of(channel, sensor, ruler);
        }
        List<Hold> notes = latest(StepKind.NOTE);
        return notes.isEmpty() ? ends(channel, sensor, HandRole.PITCH) : EarFit.of(channel, sensor, notes);
    }

    private HandFit level(ChannelSpec channel) {
        Sensor sensor = Sensor.of(channel, air, instrument.referenceVolts());
        if (!(sensor instanceof Photoresistor light)) {
            return ends(channel, sensor, HandRole.LEVEL);
        }
        Hold open = hold(StepKind.OPEN, HandRole.LEVEL);
        Hold mid = hold(StepKind.MID, HandRole.LEVEL);
        Hold covered = hold(StepKind.COVERED, HandRole.LEVEL);
        if (open == null || mid == null || covered == null) {
            return missing(HandRole.LEVEL, StepKind.OPEN, StepKind.MID, StepKind.COVERED);
        }
        return LightFit.of(channel, light, open, mid, covered);
    }

    private HandFit ends(ChannelSpec channel, Sensor sensor, HandRole hand) {
        Hold near = hold(StepKind.NEAR, hand);
        Hold far = hold(StepKind.FAR, hand);
        return near == null || far == null
                ? missing(hand, StepKind.NEAR, StepKind.FAR)
                : EndsFit.of(channel, sensor, hand, near, far);
    }

    /** Holds of a kind; of those for one distance or note the latest. */
    private List<Hold> latest(StepKind kind) {
        Map<String, Hold> byPlace = new LinkedHashMap<>();
        for (Hold hold : holds) {
            if (hold.kind() == kind) {
                byPlace.put(hold.mm() + "/" + hold.key(), hold);
            }
        }
        return List.copyOf(byPlace.values());
    }

    private HandFit missing(HandRole hand, StepKind... kinds) {
        List<String> reasons = new ArrayList<>();
        for (StepKind kind : kinds) {
            if (hold(kind, hand) == null) {
                reasons.add(hand.word() + ": no " + kind.word() + " hold was captured");
            }
        }
        return HandFit.no(reasons);
    }

    private @Nullable Hold hold(StepKind kind, HandRole hand) {
        for (int i = holds.size() - 1; i >= 0; i--) {
            if (holds.get(i).kind() == kind && holds.get(i).hand() == hand) {
                return holds.get(i);
            }
        }
        return null;
    }
}
