package handspan.command;

import handspan.hand.smooth.Quickness;
import handspan.music.tuning.Direction;
import handspan.music.tuning.NoteName;
import handspan.music.tuning.PitchRange;
import handspan.music.tuning.ReferencePitch;
import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Snap;
import handspan.music.tuning.Snapping;
import handspan.music.tuning.Temperament;
import handspan.music.tuning.Tonic;
import handspan.music.tuning.Tuning;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** What can be said of a tuning on the command line; what is not said stays. */
final class TuningArguments {
    /** One end then carries e, 2.7 times, the cents of the other in a millimetre. */
    private static final double USUAL_WARP = 1;

    @Option(names = "--scale", paramLabel = "SCALE", description = "one of 'handspan scales'")
    @Nullable
    String scale;

    @Option(
            names = "--steps",
            split = ",",
            paramLabel = "STEP",
            description = "a scale of your own, in cents or ratios from 0 up: 0,204,386.3 or 1/1,9/8,5/4;"
                    + " --scale then gives its name")
    List<String> steps = List.of();

    @Option(names = "--temperament", paramLabel = "HOW", description = "5-equal..53-equal (usual: 12-equal) or just")
    @Nullable
    String temperament;

    @Option(names = "--key", paramLabel = "NOTE", description = "tonic of the scale, for example D or Bb")
    @Nullable
    String key;

    @Option(names = "--low", paramLabel = "NOTE", description = "lowest note, for example A3")
    @Nullable
    String low;

    @Option(names = "--high", paramLabel = "NOTE", description = "highest note, for example A5")
    @Nullable
    String high;

    @Option(names = "--snap", paramLabel = "HOW", description = "free, pull, steps or onset")
    @Nullable
    String snap;

    @Option(names = "--strength", paramLabel = "SHARE", description = "how strongly pull draws, 0..1")
    @Nullable
    Double strength01;

    @Option(names = "--direction", paramLabel = "WAY", description = "high-far or high-near")
    @Nullable
    String direction;

    @Option(names = "--transpose", paramLabel = "SEMITONES", description = "-48..48")
    @Nullable
    Integer transpose;

    @Option(names = "--trim", paramLabel = "CENTS", description = "-100..100")
    @Nullable
    Double trimCents;

    @Option(
            names = "--curve",
            paramLabel = "HOW",
            description = "even, finer-near, finer-far, or a number from -3 (finer far) to 3 (finer near)")
    @Nullable
    String curve;

    @Option(
            names = "--quickness",
            paramLabel = "STEPS",
            description =
                    "-2 (steadier) to 2 (quicker); each step doubles wobble and halves lag; 0 = as the room's noise"
                            + " suggests")
    @Nullable
    Double quickness;

    @Option(names = "--a4", paramLabel = "HZ", description = "reference pitch, 415..466")
    @Nullable
    Double a4Hz;

    /**
     * A tuning with what was said.
     *
     * @throws IllegalArgumentException when that is no tuning
     */
    Tuning changed(Tuning before, String wanted) {
        Snapping snapping = snap == null ? before.snapping() : Snapping.of(Snap.parse(snap));
        return new Tuning(
                wanted,
                a4Hz == null ? before.reference() : new ReferencePitch(a4Hz),
                temperament == null ? before.temperament() : Temperament.parse(temperament),
                scale(before),
                key == null ? before.tonic() : Tonic.parse(key),
                new PitchRange(
                        low == null ? before.lowKey() : NoteName.parse(low),
                        high == null ? before.highKey() : NoteName.parse(high),
                        direction == null ? before.direction() : Direction.parse(direction),
                        curve == null ? before.range().warp() : warp(curve)),
                strength01 == null ? snapping : new Snapping(snapping.snap(), strength01),
                transpose == null ? before.transpose() : transpose,
                trimCents == null ? before.trimCents() : trimCents,
                quickness == null ? before.quickness() : new Quickness(quickness));
    }

    private Scale scale(Tuning before) {
        if (!steps.isEmpty()) {
            return Scale.written(scale == null ? "own" : scale, steps);
        }
        return scale == null ? before.scale() : Scales.named(scale);
    }

    private static double warp(String text) {
        return switch (text) {
            case "even" -> 0;
            case "finer-near" -> USUAL_WARP;
            case "finer-far" -> -USUAL_WARP;
            default -> {
                try {
                    yield Double.parseDouble(text);
                } catch (NumberFormatException e) {
                    throw new IllegalArgumentException(
                            "curve '" + text + "' (even, finer-near, finer-far, or -3..3)", e);
                }
            }
        };
    }
}
