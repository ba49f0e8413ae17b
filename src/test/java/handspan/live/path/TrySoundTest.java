package handspan.live.path;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.FrameList;
import handspan.music.level.LevelCurve;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.ReferencePitch;
import handspan.number.units.Nanos;
import java.util.List;
import org.junit.jupiter.api.Test;

class TrySoundTest {
    private static final long START = 3 * Nanos.PER_SECOND;
    private static final LevelCurve LEVEL = LevelCurve.USUAL;

    private final FrameList frames = new FrameList();
    private final TrySound sound = new TrySound(LEVEL, new ReferencePitch(442), List.of(frames), START);

    /** Plays until it is over, or for so long. */
    private long play(double mostS, double stopS) {
        long now = START;
        while (!sound.isOver(now) && now - START < Nanos.ofSeconds(mostS)) {
            if (now - START >= Nanos.ofSeconds(stopS)) {
                sound.stop();
            }
            sound.onTick(now);
            now = sound.nextDeadlineNanos();
        }
        return now;
    }

    @Test
    void itIsA4AndStaysUnderTheCeiling() {
        play(20, 20);
        for (SoundFrame frame : frames.frames()) {
            assertEquals(442, frame.pitchHz(), 0);
            assertTrue(frame.gain01() <= LEVEL.ceilingGain01(), () -> "gain " + frame.gain01());
        }
        double loudest =
                frames.frames().stream().mapToDouble(SoundFrame::gain01).max().orElse(0);
        assertEquals(LEVEL.ceilingGain01(), loudest, 1e-12);
    }

    /** 54 dB in 2.5 s are 0.11 dB a frame of 5 ms. */
    @Test
    void levelRisesAndFallsSlowly() {
        play(20, 20);
        double most = Math.pow(10, 0.12 / 20);
        double before = 0;
        for (SoundFrame frame : frames.frames()) {
            double now = frame.gain01();
            if (before > 0 && now > 0) {
                assertTrue(now / before < most, () -> "rises " + now);
            } else if (before == 0) {
                assertTrue(now <= 1.0001 * Math.pow(10, LEVEL.floorDb() / 20), () -> "starts at " + now);
            }
            before = now;
        }
    }

    @Test
    void itEndsWithSilenceSaidFiveTimes() {
        long endNanos = play(20, 20);
        assertTrue(Nanos.toSeconds(endNanos - START) < 8);
        List<SoundFrame> all = frames.frames();
        assertTrue(
                all.subList(all.size() - HandOff.REPEATS, all.size()).stream().allMatch(SoundFrame::isSilent));
        assertTrue(sound.frames() > 1000);
    }

    @Test
    void stoppedInTheMiddleItFadesAndSaysSilence() {
        play(20, 3);
        List<SoundFrame> all = frames.frames();
        double endS = Nanos.toSeconds(frames.last().timeNanos() - START);
        assertTrue(endS < 3.3, "at " + endS);
        assertTrue(
                all.subList(all.size() - HandOff.REPEATS, all.size()).stream().allMatch(SoundFrame::isSilent));
        double longestFall = 0;
        for (int i = 1; i < all.size(); i++) {
            longestFall =
                    Math.max(longestFall, all.get(i - 1).gain01() - all.get(i).gain01());
        }
        assertTrue(longestFall < 0.15, "a fade, no cut: " + longestFall);
    }
}
