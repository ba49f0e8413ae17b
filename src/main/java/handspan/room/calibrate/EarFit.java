package handspan.room.calibrate;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.PitchCurve;
import handspan.music.tuning.ReferencePitch;
import handspan.number.fit.MonotoneCurve;
import handspan.number.units.Figures;
import handspan.room.FitQuality;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Hold;
import handspan.room.Response;
import handspan.room.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A pitch hand from notes that were held by ear: a straight line, or the pitch curve's own warp, of key number against
 * distance. The warp is taken where there are four holds and more and it foretells left-out holds better by a tenth.
 */
final class EarFit {
    private static final double BETTER = 0.9;
    private static final int FEWEST_FOR_WARP = 4;

    private final List<Hold> holds;
    private final double[] mm;
    private final double[] keys;
    private final double[] uKeys;

    private EarFit(List<Hold> holds, Response response, SensorKind kind) {
        this.holds = holds;
        this.mm =
                holds.stream().mapToDouble(hold -> response.mm(hold.physical())).toArray();
        this.keys = holds.stream().mapToDouble(hold -> hold.key().orElseThrow()).toArray();
        double keysPerMm = Math.abs((keys[keys.length - 1] - keys[0]) / (mm[mm.length - 1] - mm[0]));
        this.uKeys = holds.stream()
                .mapToDouble(hold -> keysPerMm * RulerFit.holdMm(hold, kind, HandFit.slope(response, hold.physical())))
                .toArray();
    }

    /**
     * Fits.
     *
     * @param channel of the pitch hand
     * @param sensor it
     * @param notes holds, each with its note, in the order from near to far
     */
    static HandFit of(ChannelSpec channel, Sensor sensor, List<Hold> notes) {
        int fewest = CalibrationPlan.fewestPlaces(channel);
        if (notes.size() < fewest) {
            return HandFit.no("pitch: only " + notes.size() + " notes were held (at least " + fewest + ")");
        }
        Response response = EndsFit.nominal(channel, sensor, notes.get(0), notes.get(notes.size() - 1));
        Optional<String> wrong = wrongWay(notes, response);
        if (wrong.isPresent()) {
            return HandFit.no("pitch: " + wrong.get());
        }
        EarFit fit = new EarFit(notes, response, channel.kind());
        EarLine line = fit.chosen();
        double fromMm = line.mmOf(fit.keys[0], fit.mm[0]);
        double toMm = line.mmOf(fit.keys[fit.keys.length - 1], fit.mm[fit.mm.length - 1]);
        Optional<String> refusal = HandFit.zoneRefusal(HandRole.PITCH, channel.kind(), fromMm, toMm);
        if (refusal.isPresent()) {
            return HandFit.no(refusal.get());
        }
        FitQuality quality = fit.quality(line, fromMm, toMm);
        Zone zone = new Zone(fromMm, toMm, quality.uncertaintyMm(fromMm), quality.uncertaintyMm(toMm));
        HandSetup setup =
                new HandSetup(channel, response, zone, HandFit.noise(notes, response), !sensor.isLength(), 0, quality);
        return HandFit.of(setup, notes, fit.heard(line, fromMm, toMm));
    }

    /** The two neighbouring notes that were held the wrong way round; empty when none were. */
    private static Optional<String> wrongWay(List<Hold> holds, Response response) {
        for (int i = 1; i < holds.size(); i++) {
            double before = response.mm(holds.get(i - 1).physical());
            double here = response.mm(holds.get(i).physical());
            if (here <= before) {
                return Optional.of(NoteName.of(holds.get(i - 1).key().orElseThrow()) + " was held at "
                        + Figures.text(before, 0) + " mm and "
                        + NoteName.of(holds.get(i).key().orElseThrow()) + " at " + Figures.text(here, 0)
                        + " mm: they run the wrong way; hold them again, from near to far");
            }
        }
        return Optional.empty();
    }

    private EarLine chosen() {
        EarLine straight = EarLine.straight(mm, keys, uKeys);
        if (holds.size() < FEWEST_FOR_WARP) {
            return straight;
        }
        Optional<EarLine> warped = EarLine.warped(mm, keys, uKeys);
        return warped.isPresent() && leftOutKeys(true) < BETTER * leftOutKeys(false) ? warped.get() : straight;
    }

    /** Rms error in keys of foretelling each inner note by the others. */
    private double leftOutKeys(boolean withWarp) {
        double sum = 0;
        for (int i = 1; i < mm.length - 1; i++) {
            Optional<EarLine> line = withWarp
                    ? EarLine.warped(without(mm, i), without(keys, i), without(uKeys, i))
                    : Optional.of(EarLine.straight(without(mm, i), without(keys, i), without(uKeys, i)));
            if (line.isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            sum += Math.pow(line.get().key(mm[i]) - keys[i], 2);
        }
        return Math.sqrt(sum / (mm.length - 2));
    }

    private static double[] without(double[] values, int left) {
        return IntStream.range(0, values.length)
                .filter(i -> i != left)
                .mapToDouble(i -> values[i])
                .toArray();
    }

    private double residualRmsKeys(EarLine line) {
        double sum = 0;
        for (int i = 0; i < mm.length; i++) {
            sum += Math.pow(line.key(mm[i]) - keys[i], 2);
        }
        return Math.sqrt(sum / Math.max(1, mm.length - line.parameters()));
    }

    private FitQuality quality(EarLine line, double fromMm, double toMm) {
        List<MonotoneCurve.Point> residuals = new ArrayList<>();
        for (int i = 0; i < mm.length; i++) {
            double residualMm = (line.key(mm[i]) - keys[i]) / line.keysPerMm(mm[i]);
            residuals.add(new MonotoneCurve.Point(mm[i], residualMm));
        }
        double keysPerMm = Math.abs(line.key(toMm) - line.key(fromMm)) / (toMm - fromMm);
        double leftOut = leftOutKeys(line.warpPerMm() != 0);
        return new FitQuality(
                line.method(),
                line.parameters(),
                residuals,
                residualRmsKeys(line) / keysPerMm,
                Double.isFinite(leftOut) ? leftOut / keysPerMm : 0,
                line.widened(),
                FitQuality.along(fromMm, toMm, at -> line.uncertaintyKeys(at) / line.keysPerMm(at)));
    }

    private Outcome.ByEar heard(EarLine line, double fromMm, double toMm) {
        double first = keys[0];
        double last = keys[keys.length - 1];
        double warp = line.warpPerMm() * (toMm - fromMm);
        return new Outcome.ByEar(
                (int) Math.min(first, last),
                (int) Math.max(first, last),
                first > last,
                Math.max(-PitchCurve.MOST_WARP, Math.min(PitchCurve.MOST_WARP, warp)),
                ReferencePitch.CENTS_PER_KEY * residualRmsKeys(line),
                ReferencePitch.CENTS_PER_KEY * line.uncertaintyKeys((fromMm + toMm) / 2));
    }
}
