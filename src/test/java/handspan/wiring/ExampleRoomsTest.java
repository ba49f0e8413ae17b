package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The rooms that come with the project can be read and played with the simulations named for them. */
class ExampleRoomsTest {
    private final ProfileFolder profiles = new ProfileFolder(Path.of("profiles"));

    @Test
    void thereAreTwo() throws Exception {
        assertEquals(List.of("fennel-attic", "saltmill-hall"), profiles.rooms());
    }

    @ParameterizedTest
    @CsvSource({"saltmill-hall, sim:hall", "fennel-attic, sim:attic"})
    void eachIsPlayableInEveryTuning(String room, String simulation) throws Exception {
        RoomProfile profile = profiles.load(room);
        for (Tuning tuning : profile.tunings()) {
            FrameLog log = new FrameLog();
            try (Rig rig = Rigs.open(
                    Source.parse(simulation),
                    SourceOptions.USUAL.fast(),
                    profile.room().instrument().shape(),
                    List.of(log),
                    null)) {
                rig.submit(new Command.Play(profile, tuning, PathSettings.USUAL.muted(false)));
                rig.follow(snapshot -> snapshot.timeNanos() < 20 * Nanos.PER_SECOND);
            }
            double low = tuning.reference().hz(tuning.lowKey()) * 0.9999;
            double high = tuning.reference().hz(tuning.highKey()) * 1.0001;
            List<SoundFrame> sounding =
                    log.frames().stream().filter(frame -> frame.gain01() > 0).toList();
            assertTrue(sounding.size() > 2000, sounding.size() + " frames with sound in 20 s");
            assertTrue(sounding.stream().allMatch(frame -> frame.pitchHz() > low && frame.pitchHz() < high));
            double ceiling = profile.level().ceilingGain01();
            assertTrue(sounding.stream().allMatch(frame -> frame.gain01() <= ceiling * 1.000001));
        }
    }

    @Test
    void theInstrumentFileIsTheOneInTheRooms() throws Exception {
        assertEquals(
                profiles.load("saltmill-hall").room().instrument(),
                profiles.loadInstrument(Path.of("profiles", "instruments", "Willowreach.json")));
    }
}
