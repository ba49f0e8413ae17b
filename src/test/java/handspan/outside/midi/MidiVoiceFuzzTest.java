package handspan.outside.midi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.MidiEar;
import handspan.music.send.MidiForm;
import handspan.music.send.MidiForm.Loudness;
import handspan.number.units.Cents;
import handspan.number.units.Nanos;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever frames come, get lost or fail to be sent: no note stays on, and never two. */
class MidiVoiceFuzzTest {
    private static final int FRAMES = 80;

    private long sounding;
    private long failures;
    private double worstSteps;

    /** A way that fails now and then: before a message is out, or after. */
    private static final class ShakyWay implements MidiMessages {
        private final MidiEar ear;
        private final Random random;
        private final double chance;

        ShakyWay(MidiEar ear, Random random, double chance) {
            this.ear = ear;
            this.random = random;
            this.chance = chance;
        }

        @Override
        public void send(int status, int first, int second) {
            boolean fails = random.nextDouble() < chance;
            boolean late = fails && random.nextBoolean();
            if (!fails || late) {
                ear.send(status, first, second);
            }
            if (fails) {
                throw new IllegalStateException("gone");
            }
        }
    }

    @Test
    void tenThousandEveningsLeaveNoNoteBehind() {
        evenings(0, 10_000);
    }

    @Test
    @Tag("deep")
    void aHundredThousandEveningsLeaveNoNoteBehind() {
        evenings(10_000, 100_000);
    }

    private void evenings(int from, int count) {
        for (int seed = from; seed < from + count; seed++) {
            try {
                evening(seed);
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed + ": " + e, e);
            }
        }
        // what never sounds proves nothing
        assertTrue(sounding > FRAMES / 4L * count, sounding + " frames sounded");
        assertTrue(failures > count / 4L, failures + " failures");
        assertTrue(worstSteps <= 0.5 + 1e-6, worstSteps + " steps of bend off");
        assertTrue(worstSteps > 0.49, worstSteps + ": the bound has been met nowhere");
    }

    private void evening(int seed) {
        Random random = new Random(seed);
        int[] ranges = {1, 2, 12, 24, 48, 96};
        int range = ranges[random.nextInt(ranges.length)];
        List<Loudness> ways = List.of(Loudness.values());
        Loudness loudness = ways.get(random.nextInt(ways.size()));
        MidiForm form = new MidiForm(1 + random.nextInt(16), range, loudness);
        MidiEar ear = new MidiEar(form.channel(), random.nextBoolean());
        // every second evening nothing fails
        MidiVoice voice = new MidiVoice(form, new ShakyWay(ear, random, seed % 2 == 0 ? 0 : 0.01));
        long now = random.nextLong() >> 8;
        begin(voice, ear, now);
        double key = 20 + random.nextInt(90);
        double gain = 0;
        for (int i = 0; i < FRAMES; i++) {
            key += random.nextGaussian() * (random.nextInt(10) == 0 ? 15 : 0.3);
            gain = random.nextInt(6) == 0 ? 0 : random.nextInt(4) == 0 ? random.nextDouble() : gain;
            double hz = random.nextInt(200) == 0 ? 0 : Sounds.hz(key);
            now += random.nextInt(4) == 0 ? Nanos.PER_MS : Sounds.FRAME + random.nextInt(20_000_000);
            if (random.nextInt(10) == 0) {
                continue;
            }
            try {
                if (voice.nextNanos() < now) {
                    voice.onTick(voice.nextNanos());
                }
                voice.onFrame(Sounds.of(hz, gain, now), now);
            } catch (IllegalStateException e) {
                failures++;
                begin(voice, ear, now);
                continue;
            }
            look(voice, ear, hz, gain, range);
        }
        end(voice, ear, now);
        assertEquals(0, ear.notes(), "notes after the end");
        assertEquals(0, loudness == Loudness.PRESSURE ? ear.pressure() : ear.expression(), "level after the end");
        assertTrue(ear.mostNotes() <= 2, ear.mostNotes() + " notes at once");
    }

    private void look(MidiVoice voice, MidiEar ear, double hz, double gain, int range) {
        boolean sounds = gain > 0 && hz > 0;
        assertTrue(ear.notes() <= 1, ear.notes() + " notes");
        if (!sounds) {
            assertEquals(0, ear.notes(), "a note in silence");
        } else if (voice.nextNanos() == Long.MAX_VALUE) {
            sounding++;
            assertEquals(1, ear.notes(), "a note that sounds");
            double key = 69 + 12 * Math.log(hz / 440) / Math.log(2);
            if (key >= 0 && key <= 127) {
                double offCents = Math.abs(Cents.between(hz, ear.pitchHz()));
                worstSteps = Math.max(worstSteps, offCents / (100.0 * range / 8192));
            }
        }
    }

    /** As a target does: tries until it works. */
    private void begin(MidiVoice voice, MidiEar ear, long now) {
        while (true) {
            try {
                voice.begin(now);
                assertEquals(0, ear.notes(), "notes after a new beginning");
                return;
            } catch (IllegalStateException e) {
                failures++;
            }
        }
    }

    private void end(MidiVoice voice, MidiEar ear, long now) {
        while (true) {
            try {
                voice.end(now);
                return;
            } catch (IllegalStateException e) {
                failures++;
                assertTrue(ear.notes() <= 2);
            }
        }
    }
}
