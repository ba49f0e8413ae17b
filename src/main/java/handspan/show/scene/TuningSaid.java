package handspan.show.scene;

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

/** A tuning as it becomes when a player says something of it. */
final class TuningSaid {
    private TuningSaid() {}

    /**
     * The tuning after it.
     *
     * @throws IllegalArgumentException where it can't be so, in words
     */
    static Tuning said(Tuning before, Ask what, String value) {
        PitchRange range = before.range();
        return switch (what) {
            case SCALE -> before.withScale(scale(before, value));
            case KEY -> with(before, before.reference(), before.temperament(), Tonic.parse(value));
            case A4_HZ -> with(before, new ReferencePitch(Numbers.of(value)), before.temperament(), before.tonic());
            case LOW -> before.withRange(NoteName.parse(value), range.highKey());
            case HIGH -> before.withRange(range.lowKey(), NoteName.parse(value));
            case CURVE -> before.withWarp(warp(value));
            case DIRECTION ->
                before.with(new PitchRange(range.lowKey(), range.highKey(), Direction.parse(value), range.warp()));
            case SNAP -> before.withSnap(Snap.parse(value));
            case STRENGTH_PERCENT -> before.with(new Snapping(before.snap(), Numbers.of(value) / 100));
            case TEMPERAMENT -> with(before, before.reference(), Temperament.parse(value), before.tonic());
            case STEPS -> before.withScale(Scale.written("own", List.of(value.split(",", -1))));
            case TRANSPOSE -> before.shifted(Numbers.whole(value), before.trimCents());
            case TRIM_CENTS -> before.shifted(before.transpose(), Numbers.of(value));
            case QUICKNESS -> before.with(new Quickness(Numbers.of(value)));
            default -> throw new IllegalArgumentException(what + " is nothing of a tuning");
        };
    }

    private static Scale scale(Tuning before, String name) {
        return name.equals(before.scale().name()) ? before.scale() : Scales.named(name);
    }

    private static Tuning with(Tuning before, ReferencePitch reference, Temperament temperament, Tonic tonic) {
        return new Tuning(
                before.name(),
                reference,
                temperament,
                before.scale(),
                tonic,
                before.range(),
                before.snapping(),
                before.transpose(),
                before.trimCents(),
                before.quickness());
    }

    private static double warp(String value) {
        int named = NotesFields.CURVES.indexOf(value);
        return named < 0
                ? Numbers.of(value)
                : named == 0 ? 0 : named == 1 ? NotesFields.NAMED_WARP : -NotesFields.NAMED_WARP;
    }
}
