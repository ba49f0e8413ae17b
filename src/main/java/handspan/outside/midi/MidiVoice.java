package handspan.outside.midi;

import handspan.music.send.MidiForm;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.ReferencePitch;
import org.jspecify.annotations.Nullable;

/**
 * One voice on one channel: frames in, messages out.
 *
 * <ul>
 *   <li>A note begins when a frame has a gain and ends when one has none, whatever the reason. Its key is the one
 *       nearest to the frame's frequency, A4 = 440 Hz as receivers have it: another reference pitch is in the bend.
 *   <li>The bend follows the pitch to half a step of it. Where the pitch leaves the bend's range, the nearest key takes
 *       over: bend, new note, and then the end of the old one, so that a receiver of one voice goes on without a new
 *       attack. The new note's bend is at most half a semitone, so a hand has to go back by the range less that before
 *       the note changes again.
 *   <li>The level goes before the note that it is meant for; see {@link MidiLevel}. All notes have one velocity.
 *   <li>Nothing is said twice, and no more than a {@link Cable} carries: then the newest frame waits for
 *       {@link #nextNanos}. The end of a note never waits.
 * </ul>
 *
 * <p>Pure: time comes with the calls. Owned by one thread. Where sending throws, nothing is forgotten: {@link #begin}
 * and {@link #end} end what may be sounding.
 */
public final class MidiVoice {
    /** What an instrument that knows no velocity says (MIDI 1.0 Detailed Specification, Note On; from memory). */
    static final int VELOCITY = 64;

    private static final int NOTE_OFF = 0x80;
    private static final int NOTE_ON = 0x90;
    private static final int CONTROL = 0xB0;
    private static final int PRESSURE = 0xD0;
    private static final int BEND = 0xE0;

    private static final int DATA_ENTRY = 6;
    private static final int EXPRESSION = 11;
    private static final int LOWER_BITS = 32;
    private static final int PARAMETER_LOW = 100;
    private static final int PARAMETER_HIGH = 101;
    private static final int ALL_NOTES_OFF = 123;
    private static final int NO_PARAMETER = 127;

    private static final int HIGHEST_KEY = 127;
    private static final int NONE = -1;

    private final MidiForm form;
    private final PitchBend bend;
    private final MidiMessages out;
    private final Cable cable = new Cable();
    private int bytes;
    private int key = NONE;
    private int oldKey = NONE;
    private int bent = NONE;
    private int level = NONE;
    private @Nullable SoundFrame waiting;

    /**
     * A voice that has said nothing yet.
     *
     * @param form channel, range and what carries the level
     * @param out takes the messages
     */
    public MidiVoice(MidiForm form, MidiMessages out) {
        this.form = form;
        this.bend = new PitchBend(form.bendSemitones());
        this.out = out;
    }

    /** Tells a receiver of the bend's range, after the end of all that may be sounding there. */
    public void begin(long timeNanos) {
        release();
        bent = NONE;
        level = NONE;
        waiting = null;
        control(ALL_NOTES_OFF, 0);
        control(PARAMETER_HIGH, 0);
        control(PARAMETER_LOW, 0);
        control(DATA_ENTRY, form.bendSemitones());
        control(DATA_ENTRY + LOWER_BITS, 0);
        // so that no later data entry, by whomever, is taken for the range
        control(PARAMETER_HIGH, NO_PARAMETER);
        control(PARAMETER_LOW, NO_PARAMETER);
        level(0);
        carried(timeNanos);
    }

    /** Follows a frame, or silences at once. */
    public void onFrame(SoundFrame frame, long timeNanos) {
        if (!(frame.gain01() > 0 && frame.pitchHz() > 0)) {
            waiting = null;
            release();
            level(0);
            carried(timeNanos);
        } else if (cable.isFree(timeNanos)) {
            waiting = null;
            follow(frame);
            carried(timeNanos);
        } else {
            waiting = frame;
        }
    }

    /** When {@link #onTick} has something to do; the end of time where it has not. */
    public long nextNanos() {
        return waiting == null ? Long.MAX_VALUE : cable.freeNanos();
    }

    /** Follows the frame that has waited, where its time has come. */
    public void onTick(long timeNanos) {
        SoundFrame frame = waiting;
        if (frame != null) {
            onFrame(frame, timeNanos);
        }
    }

    /** Silence, said in every way there is. */
    public void end(long timeNanos) {
        waiting = null;
        release();
        level(0);
        control(ALL_NOTES_OFF, 0);
        carried(timeNanos);
    }

    /** Whether a note may be sounding at the receiver. */
    boolean isOn() {
        return key != NONE || oldKey != NONE;
    }

    private void follow(SoundFrame frame) {
        double pitch = ReferencePitch.A440.key(frame.pitchHz());
        boolean stays = key != NONE && bend.reaches(pitch - key);
        int wanted = stays ? key : (int) Math.max(0, Math.min(HIGHEST_KEY, Math.round(pitch)));
        level(frame.gain01());
        bend(bend.value(pitch - wanted));
        if (wanted != key) {
            // remembered before it is said: if saying it fails, it may be sounding all the same
            oldKey = key;
            key = wanted;
            say(NOTE_ON, key, VELOCITY, 3);
            releaseOld();
        }
    }

    private void release() {
        releaseOld();
        if (key != NONE) {
            say(NOTE_OFF, key, VELOCITY, 3);
            key = NONE;
        }
    }

    private void releaseOld() {
        if (oldKey != NONE) {
            say(NOTE_OFF, oldKey, VELOCITY, 3);
            oldKey = NONE;
        }
    }

    private void bend(int value) {
        if (value != bent) {
            say(BEND, value & 0x7F, value >> 7, 3);
            bent = value;
        }
    }

    private void level(double gain01) {
        boolean fine = form.loudness() == MidiForm.Loudness.FINE_EXPRESSION;
        int value = MidiLevel.value(gain01, fine ? MidiLevel.FINE : MidiLevel.COARSE);
        if (value == level) {
            return;
        }
        int before = level;
        level = NONE;
        if (form.loudness() == MidiForm.Loudness.PRESSURE) {
            say(PRESSURE, value, 0, 2);
        } else if (!fine) {
            control(EXPRESSION, value);
        } else {
            // a receiver takes the lower bits for 0 when it hears the upper ones
            if (before == NONE || value >> 7 != before >> 7) {
                control(EXPRESSION, value >> 7);
            }
            control(EXPRESSION + LOWER_BITS, value & 0x7F);
        }
        level = value;
    }

    private void control(int number, int value) {
        say(CONTROL, number, value, 3);
    }

    private void say(int status, int first, int second, int length) {
        bytes += length;
        out.send(status | (form.channel() - 1), first, second);
    }

    private void carried(long timeNanos) {
        if (bytes > 0) {
            cable.carry(bytes, timeNanos);
            bytes = 0;
        }
    }
}
