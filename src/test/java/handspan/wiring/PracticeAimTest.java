package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.path.PathSettings;
import handspan.live.session.ActivityView;
import handspan.live.session.Command;
import handspan.live.session.Snapshot;
import handspan.music.practice.Attempt;
import handspan.music.practice.Course;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.Room;
import handspan.room.calibrate.AimFit;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A player of a known aim, over sensors without error and with a hand that does not wander: the measured aim is held
 * against the one that the simulation was given. {@code n s^2 / sigma^2} of n = 100 normal errors follows chi square
 * with 100 degrees of freedom, which lies between 67.328 and 140.169 in 99 % (NIST/SEMATECH e-Handbook 1.3.6.7.4, from
 * memory).
 */
class PracticeAimTest {
    private static final int NOTES = 100;

    @ParameterizedTest
    @CsvSource({"2, 1", "4, 2", "8, 3", "12, 4"})
    void theMeasuredAimIsThePlayersOwn(double aimMm, long seed) throws Exception {
        List<Attempt> attempts = attempts(aimMm, seed);
        assertEquals(NOTES, attempts.size());
        AimFit fit = AimFit.of(attempts.stream()
                        .flatMap(attempt -> attempt.stop().stream())
                        .map(stop -> new AimFit.Miss(stop.offMm(), Math.pow(stop.standardUncertaintyMm(), 2)))
                        .toList())
                .orElseThrow();
        int reaches = fit.aim().reaches();
        assertTrue(reaches >= NOTES - 4, reaches + " reaches");
        double chiSquare = reaches * fit.squareMm2() / (aimMm * aimMm);
        assertTrue(chiSquare > 67.328 && chiSquare < 140.169, fit.words() + ": chi square " + chiSquare);
    }

    private static List<Attempt> attempts(double aimMm, long seed) throws Exception {
        RoomProfile profile =
                profile(AimTrial.run("still", AimTrial.Way.ENDS, 0, seed, null).room());
        Tuning tuning = profile.tunings().get(0);
        int notes = tuning.ladder().size();
        Course course = Course.through(tuning.ladder(), NOTES, Collections.nCopies(notes, 1.0), seed);
        SourceOptions options = new SourceOptions(115_200, OptionalDouble.empty(), seed, false);
        try (Rig rig = Rigs.open(
                Source.parse("sim:still"), options, profile.room().instrument().shape(), List.of(), null)) {
            rig.simulation().orElseThrow().aimWithin(aimMm);
            rig.submit(new Command.Practise(new Command.Play(profile, tuning, PathSettings.USUAL), course, 20));
            Snapshot last = rig.follow(snapshot -> snapshot.timeNanos() < 1000 * Nanos.PER_SECOND
                    && !(snapshot.activity() instanceof ActivityView.Practising practising && practising.over()));
            return ((ActivityView.Practising) last.activity()).attempts();
        }
    }

    private static RoomProfile profile(Room room) {
        return new RoomProfile(
                room,
                List.of(Tuning.usual()),
                handspan.music.level.LevelCurve.USUAL,
                handspan.music.send.SendPlan.byDefault("Plumbline", List.of()));
    }
}
