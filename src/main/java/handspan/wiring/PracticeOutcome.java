package handspan.wiring;

import handspan.music.practice.Attempt;
import handspan.music.practice.CourseWish;
import handspan.music.practice.PracticeRun;
import handspan.music.practice.Tally;
import handspan.room.Aim;
import handspan.room.calibrate.AimFit;
import handspan.room.calibrate.CalibrationPlan;
import java.util.List;
import java.util.Optional;

/**
 * What a run of practice was worth.
 *
 * @param wish what was wanted
 * @param tally of its notes
 * @param aim with which they were reached; empty where fewer than {@value AimFit#FEWEST} were
 */
public record PracticeOutcome(CourseWish wish, Tally tally, Optional<AimFit> aim) {
    /** Of what became of each note. */
    public static PracticeOutcome of(CourseWish wish, List<Attempt> attempts) {
        List<AimFit.Miss> misses = attempts.stream()
                .flatMap(attempt -> attempt.stop().stream())
                .map(stop -> new AimFit.Miss(stop.offMm(), stop.standardUncertaintyMm() * stop.standardUncertaintyMm()))
                .toList();
        return new PracticeOutcome(wish, Tally.of(attempts), AimFit.of(misses));
    }

    /**
     * The aim that a room may keep: only unaided reaches tell one.
     *
     * @param wanted whether few reaches will do, else {@value CalibrationPlan#REACHES} are needed
     */
    public Optional<Aim> keptAim(boolean wanted) {
        return aim.map(AimFit::aim)
                .filter(found -> !wish.helps() && (wanted || found.reaches() >= CalibrationPlan.REACHES));
    }

    /** The run as it is kept under a player's name. */
    public PracticeRun run(String at, String room, String tuning) {
        return new PracticeRun(at, room, tuning, wish.asking(), wish.helps(), tally);
    }
}
