package handspan.room.budget;

import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.SensorKind;
import handspan.music.level.LevelCurve;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Whether a saved room still fits, from one or two fresh holds and the open light.
 *
 * @param verdict in a word
 * @param pitchCents largest error to expect over the zone, cents
 * @param levelDb largest error to expect of the level, dB; 0 where there is no light
 * @param reasons why, with figures
 * @param remedy what to do; empty when there is nothing to do
 */
public record RoomCheck(Verdict verdict, double pitchCents, double levelDb, List<String> reasons, String remedy) {
    /**
     * An unaided hand finds a place again to about 6 mm rms (assumed); two and a half of that is no sign of a change.
     * By ruler it is within a millimetre, and the sensor's own drift counts.
     */
    private static final double UNAIDED_MM = 15;

    private static final double RULER_MM = 5;

    /** Beyond this no room and no air explains it. */
    private static final double OTHER_INSTRUMENT_MM = 80;

    /** Noise risen by this factor means another sensor, or a broken one. */
    private static final double OTHER_NOISE_TIMES = 4;

    /** A level that is off by more than this is heard as another loudness (common practice: 3 dB). */
    private static final double LEVEL_DB = 3;

    /** What a check can come to. */
    public enum Verdict {
        /** Play. */
        FITS,
        /** The light has changed, the rest fits. */
        LIGHT_ONLY,
        /** The hands' places have changed. */
        CALIBRATE_AGAIN,
        /** This is not the instrument that the room was made with. */
        INSTRUMENT_CHANGED;

        /** The words for people. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Copies the reasons. */
    public RoomCheck {
        reasons = List.copyOf(reasons);
    }

    /**
     * Checks.
     *
     * @param room as it was kept
     * @param level its level curve
     * @param centsPerMm of the tuning
     * @param holds fresh ones: near, far, open as far as they were taken
     * @param byRuler whether the fresh near and far holds were placed by a ruler or a fixed mark
     */
    public static RoomCheck of(Room room, LevelCurve level, double centsPerMm, List<Hold> holds, boolean byRuler) {
        List<String> reasons = new ArrayList<>();
        HandSetup pitch = room.pitch();
        double nearMm = offMm(holds, StepKind.NEAR, pitch, pitch.zone().nearMm(), reasons);
        double farMm = offMm(holds, StepKind.FAR, pitch, pitch.zone().farMm(), reasons);
        double worstMm = Math.max(Math.abs(nearMm), Math.abs(farMm));
        double noiseTimes = noiseTimes(holds, pitch);
        double lightDb = lightDb(room, level, holds, reasons);
        if (!byRuler && worstMm > RULER_MM && worstMm <= UNAIDED_MM) {
            reasons.add("places found by feel: up to " + Figures.text(UNAIDED_MM, 0)
                    + " mm is taken for the hand (--by-mark, with a ruler or fixed marks, is stricter)");
        }
        Verdict verdict = Verdict.FITS;
        String remedy = "";
        if (worstMm > OTHER_INSTRUMENT_MM || noiseTimes > OTHER_NOISE_TIMES) {
            verdict = Verdict.INSTRUMENT_CHANGED;
            remedy =
                    "look whether this is the instrument and the channel of this room; if it was rebuilt, calibrate anew";
            if (noiseTimes > OTHER_NOISE_TIMES) {
                reasons.add("noise is " + Figures.text(noiseTimes, 1) + " times what it was");
            }
        } else if (worstMm > (byRuler ? RULER_MM : UNAIDED_MM)) {
            verdict = Verdict.CALIBRATE_AGAIN;
            remedy = "calibrate --from " + room.name() + " takes the ends again and keeps the response";
        } else if (Math.abs(lightDb) > LEVEL_DB) {
            verdict = Verdict.LIGHT_ONLY;
            remedy = "calibrate --from " + room.name() + " --light-only takes the open light again";
        }
        return new RoomCheck(verdict, worstMm * centsPerMm, Math.abs(lightDb), reasons, remedy);
    }

    /** Of a room whose instrument was rebuilt since: nothing needs to be held. */
    public static RoomCheck rebuilt(String reason) {
        return new RoomCheck(Verdict.INSTRUMENT_CHANGED, 0, 0, List.of(reason), "calibrate anew");
    }

    /** The verdict with its figures. */
    public String words() {
        return verdict.words() + ": pitch up to " + Figures.text(pitchCents, 0) + " cents off, level up to "
                + Figures.text(levelDb, 1) + " dB";
    }

    private static double offMm(
            List<Hold> holds, StepKind kind, HandSetup hand, double expectedMm, List<String> reasons) {
        Optional<Hold> fresh = last(holds, kind, HandRole.PITCH);
        if (fresh.isEmpty()) {
            return 0;
        }
        double off =
                hand.response().mm(fresh.get().physical()) - fresh.get().mm().orElse(expectedMm);
        reasons.add(kind.word() + " end: " + Figures.text(off, 1) + " mm off");
        return off;
    }

    /** Noise of fresh holds over the room's, at the worst place; below half a millimetre counts as that. */
    static double noiseTimes(List<Hold> holds, HandSetup pitch) {
        double step = 1e-4;
        double worst = 0;
        for (Hold hold : holds) {
            if (hold.hand() == HandRole.PITCH && hold.kind() != StepKind.REST) {
                double slope = Math.abs(pitch.response().mm(hold.physical() + step)
                                - pitch.response().mm(hold.physical() - step))
                        / (2 * step);
                worst = Math.max(worst, hold.noise() * slope);
            }
        }
        return worst / Math.max(pitch.noiseMm(), 0.5);
    }

    /** What a change of the open light does to the level at the loud, open end, dB. */
    private static double lightDb(Room room, LevelCurve level, List<Hold> holds, List<String> reasons) {
        HandSetup hand = room.level();
        Optional<Hold> open = last(holds, StepKind.OPEN, HandRole.LEVEL);
        if (hand == null || open.isEmpty() || hand.channel().kind() != SensorKind.PHOTORESISTOR) {
            return 0;
        }
        double place = hand.zone().place(hand.response().mm(open.get().physical()));
        double dbForZone = (level.ceilingDb() - level.floorDb()) / (1 - level.knee01());
        double db = (place - 1) * dbForZone;
        Photoresistor sensor = (Photoresistor) room.sensor(hand);
        double before = hand.response().physical(hand.zone().farMm());
        reasons.add("open light: reads " + Figures.text(sensor.raw(open.get().physical()), 0) + ", was "
                + Figures.text(sensor.raw(before), 0) + " (a factor of "
                + Figures.text(Math.exp(Math.abs(open.get().physical() - before)), 2)
                + " in resistance)");
        return db;
    }

    private static Optional<Hold> last(List<Hold> holds, StepKind kind, HandRole hand) {
        return holds.stream()
                .filter(hold -> hold.kind() == kind && hold.hand() == hand)
                .reduce((a, b) -> b);
    }
}
