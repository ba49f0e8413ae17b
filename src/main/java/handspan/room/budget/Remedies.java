package handspan.room.budget;

import handspan.music.tuning.Scale;
import handspan.music.tuning.Scales;
import handspan.music.tuning.Tuning;
import handspan.number.units.Figures;
import handspan.room.Aim;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What would lower the chance that a tuning's worst note is missed: one thing at a time, each computed as the chance
 * itself is.
 *
 * @param reach as it is now
 * @param mostMiss01 largest share of reaches for the worst note that may miss
 */
record Remedies(Reach reach, double mostMiss01) {
    private static final double LONGER = 1.25;

    /** What helps less than this is no help: it would not be seen in per cent. */
    private static final double LEAST_GAIN01 = 0.002;

    private static final List<String> FEW = List.of("minor-pentatonic", "major-pentatonic");

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
        double now = Playable.of(reach, tuning).worst().miss01();
        if (now > mostMiss01) {
            new Adviser(reach, mostMiss01)
                    .widest(tuning.scale(), tuning)
                    .filter(smaller -> smaller.semitones() < tuning.curve().span())
                    .ifPresent(smaller -> help.add(new Advice.Help(
                            "a range from " + smaller.lowName() + " to " + smaller.highName(),
                            smaller.worstName(),
                            smaller.worst().miss01())));
        }
        fewer(tuning.scale())
                .flatMap(few -> Adviser.ranged(few, tuning, tuning.lowKey(), tuning.highKey()))
                .ifPresent(other ->
                        help.add(helping("the fewer notes of " + other.scale().name(), reach, other)));
        return help.stream()
                .filter(each -> each.miss01() < now - LEAST_GAIN01)
                .sorted(Comparator.comparingDouble(Advice.Help::miss01))
                .toList();
    }

    private static Advice.Help helping(String what, Reach reach, Tuning tuning) {
        Playable playable = Playable.of(reach, tuning);
        return new Advice.Help(what, playable.worstName(), playable.worst().miss01());
    }

    /** A scale of some of its notes only; empty where none of the usual ones is. */
    private static Optional<Scale> fewer(Scale scale) {
        List<Double> cents = scale.stepsCents();
        return FEW.stream()
                .map(Scales::named)
                .filter(few -> few.stepsCents().size() < cents.size() && cents.containsAll(few.stepsCents()))
                .findFirst();
    }
}
