package handspan.room.budget;

import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.Aim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What would lower the chance that a tuning's worst note is missed: one thing at a time, each computed as the chance
 * itself is.
 *
 * @param reach as it is now
 */
record Remedies(Reach reach) {
    private static final double LONGER = 1.25;

    /** What would help, the best first; only what lowers the worst note's chance. */
    List<Advice.Help> of(Tuning tuning) {
        List<Advice.Help> help = new ArrayList<>();
        double halfMm = reach.aim().mm() / 2;
        help.add(helping(
                "practice that halves the aim to " + Figures.text(halfMm, 1) + " mm",
                reach.by(new Aim(halfMm, reach.aim().reaches())),
                tuning));
        help.add(helping(
                "a zone 25 % longer, "
                        + Figures.text(LONGER * reach.hand().zone().lengthMm(), 0) + " mm",
                reach.withZoneTimes(LONGER),
                tuning));
        if (!reach.isByRuler()) {
            help.add(helping(
                    "five holds by ruler (assumed good for " + Figures.text(PitchBudget.HAND_BY_RULER_MM, 2)
                            + " mm each)",
                    reach.byFiveRulerHolds(),
                    tuning));
        }
        help.add(helping(
                "half the noise: a quieter sensor, or the zone nearer to it", reach.withNoiseTimes(0.5), tuning));
        int low = Adviser.tonicNear(tuning);
        if (tuning.highKey() - tuning.lowKey() > Adviser.OCTAVE_KEYS) {
            Adviser.ranged(tuning.scale(), tuning, low, low + Adviser.OCTAVE_KEYS)
                    .ifPresent(smaller -> help.add(helping("a range of one octave", reach, smaller)));
        }
        Adviser.ranged(fewer(tuning.scale()), tuning, tuning.lowKey(), tuning.highKey())
                .filter(other -> other.ladder().size() < tuning.ladder().size())
                .ifPresent(other ->
                        help.add(helping("the fewer notes of " + other.scale().name(), reach, other)));
        double now = Playable.of(reach, tuning).worst().miss01();
        return help.stream()
                .filter(each -> each.miss01() < now)
                .sorted(Comparator.comparingDouble(Advice.Help::miss01))
                .toList();
    }

    private static Advice.Help helping(String what, Reach reach, Tuning tuning) {
        Playable playable = Playable.of(reach, tuning);
        return new Advice.Help(what, playable.worstName(), playable.worst().miss01());
    }

    /** The pentatonic scale that is nearest in kind: major where a scale has a major third and no minor one. */
    private static Scale fewer(Scale scale) {
        List<Double> cents = scale.stepsCents();
        boolean minor = cents.contains(300.0) || !cents.contains(400.0);
        return Scales.named(minor ? Adviser.FEW_NOTES : "major-pentatonic");
    }
}
