package handspan.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.HeardWav;
import handspan.SentSound;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.number.units.Nanos;
import handspan.profile.ProfileFolder;
import handspan.profile.RoomProfile;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Whole passages from the simulated board to a WAV file, which is then heard by a stranger. */
class ListenedPassageTest {
    private static final double SECONDS = 20;

    /** How much later all is in the file than it was sent. */
    private static final double LATE_S = 0.005;

    private static final double PITCH_TOLERANCE_CENTS = 1;

    /** Mean pitch of a stretch between two moments, and how much sound tells the phase at each of them. */
    private static final double STRETCH_S = 0.06;

    private static final double WINDOW_S = 0.02;

    /**
     * Where the pitch moves by c Hz/s, a window of rms width s reads the phase off by about pi c s^2, which only goes
     * out where c is the same at both moments: 4000 cents/s of 300 Hz in 3 ms are 0.02 rad, in 60 ms a third of a cent.
     */
    private static final double LEAP_CENTS_PER_S = 4000;

    private static final double LEAP_TOLERANCE_CENTS = 4;
    private static final double LEVEL_TOLERANCE_DB = 0.2;
    private static final double CEILING_DB = -12;
    private static final double CLICK_LIMIT_DB = -88;

    /** Amplitudes of 16 bits are steps; further down these are more than the tolerance. */
    private static final double LEAST_DB = -40;

    /** Rms of full level, as the listening tone promises it: 19.65 dB below full scale. */
    private static final double FULL_RMS_DB = -19.647;

    @TempDir
    Path folder;

    private record Passage(HeardWav heard, SentSound sent) {}

    private Passage play(String sim, String room, long seed, double cutS) throws Exception {
        RoomProfile profile = new ProfileFolder(Path.of("profiles")).load(room);
        Path file = folder.resolve(sim + ".wav");
        FrameLog log = new FrameLog();
        SourceOptions fast = new SourceOptions(115_200, OptionalDouble.empty(), seed, false);
        try (Listening listening = Listening.open(file, false, false);
                Rig rig = Rigs.open(
                        Source.parse("sim:" + sim),
                        fast,
                        profile.room().instrument().shape(),
                        listening.after(List.of(log)),
                        null)) {
            rig.submit(new Command.Play(profile, profile.tunings().get(0), PathSettings.USUAL.muted(false)));
            rig.follow(snapshot -> snapshot.timeNanos() < Nanos.ofSeconds(cutS));
            rig.close();
            listening.close();
            assertEquals(log.frames().size(), listening.status().get(0).sent());
            assertEquals(0, listening.status().get(0).dropped());
        }
        return new Passage(HeardWav.read(file), new SentSound(log.frames()));
    }

    private static double cents(double hz, double ofHz) {
        return 1200 * Math.log(hz / ofHz) / Math.log(2);
    }

    /** How fast what was sent moves about a moment, cents/s. */
    private static double slide(SentSound sent, double atS) {
        return cents(sent.hz(atS + 0.005, atS + 0.015), sent.hz(atS - 0.015, atS - 0.005)) / 0.02;
    }

    @ParameterizedTest
    @CsvSource({"hall, saltmill-hall, 1", "hall, saltmill-hall, 2", "attic, fennel-attic, 3"})
    void pitchAndLevelAreWhatWasSent(String sim, String room, long seed) throws Exception {
        Passage passage = play(sim, room, seed, SECONDS);
        HeardWav heard = passage.heard();
        SentSound sent = passage.sent();
        int measured = 0;
        double worstCents = 0;
        double worstInLeapsCents = 0;
        double worstDb = 0;
        for (double atS = 0.1; atS < sent.seconds() - 0.2; atS += 0.02) {
            double toS = atS + STRETCH_S;
            if (!sent.sounds(atS - 0.04, toS + 0.04, LEAST_DB)) {
                continue;
            }
            double hz = heard.hz(atS + LATE_S, toS + LATE_S, WINDOW_S);
            double offCents = Math.abs(cents(hz, sent.hz(atS, toS)));
            if (Math.abs(slide(sent, toS) - slide(sent, atS)) < LEAP_CENTS_PER_S) {
                worstCents = Math.max(worstCents, offCents);
                measured++;
            } else {
                worstInLeapsCents = Math.max(worstInLeapsCents, offCents);
            }
            double middleS = (atS + toS) / 2;
            double db = heard.rmsDb(middleS + LATE_S, 0.05) - FULL_RMS_DB - sent.levelDb(middleS, 0.05);
            worstDb = Math.max(worstDb, Math.abs(db));
        }
        assertTrue(measured > 200, measured + " stretches");
        assertTrue(worstCents < PITCH_TOLERANCE_CENTS, worstCents + " cents");
        assertTrue(worstInLeapsCents < LEAP_TOLERANCE_CENTS, worstInLeapsCents + " cents");
        assertTrue(worstDb < LEVEL_TOLERANCE_DB, worstDb + " dB");
        assertEquals(sent.seconds(), heard.seconds(), 0.05);
    }

    @Test
    void aPassageNeverClicksNorPassesTheCeiling() throws Exception {
        HeardWav heard = play("hall", "saltmill-hall", 1, SECONDS).heard();
        assertTrue(heard.peakDb() <= CEILING_DB && heard.peakDb() > CEILING_DB - 15, heard.peakDb() + " dBFS");
        assertTrue(heard.clickDb(5000) < CLICK_LIMIT_DB, heard.clickDb(5000) + " dBFS");
        assertEquals(0, heard.at(0));
        assertEquals(0, heard.at(heard.count() - 1));
    }

    /** The rig is closed while a hand plays: it fades, and the file ends in silence. */
    @Test
    void aPassageThatIsCutShortFades() throws Exception {
        HeardWav heard = play("hall", "saltmill-hall", 1, 2.9).heard();
        assertTrue(heard.peakDb() > -30, heard.peakDb() + " dBFS");
        assertTrue(heard.clickDb(5000) < CLICK_LIMIT_DB, heard.clickDb(5000) + " dBFS");
        assertEquals(0, heard.at(heard.count() - 1));
    }
}
