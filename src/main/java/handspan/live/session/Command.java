package handspan.live.session;

import handspan.instrument.sensor.ChannelSpec;
import handspan.instrument.sensor.Instrument;
import handspan.instrument.sensor.Sensor;
import handspan.live.path.PathSettings;
import handspan.music.level.LevelCurve;
import handspan.music.practice.Course;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.calibrate.CalibrationPlan;
import handspan.room.calibrate.HoldRules;
import java.util.List;

/** What a session can be told to do. The only way in for verbs and windows. */
public sealed interface Command {
    /** Whether it only changes what runs; where that has yet to begin, it waits with it. */
    default boolean adjusts() {
        return this instanceof Mute || this instanceof Tune || this instanceof Level || this instanceof RetakeLight;
    }

    /** Whether the instrument sounds by it. */
    default boolean plays() {
        return this instanceof Play || this instanceof Practise;
    }

    /** Show what comes. */
    record Watch() implements Command {}

    /** Find out which number follows which hand. */
    record FindHands() implements Command {}

    /**
     * Judge the sensors.
     *
     * @param channels which
     * @param sensors one for each channel
     */
    record Survey(List<ChannelSpec> channels, List<Sensor> sensors) implements Command {
        /** Copies both lists. */
        public Survey {
            channels = List.copyOf(channels);
            sensors = List.copyOf(sensors);
        }
    }

    /**
     * Lead through a calibration.
     *
     * @param instrument what is calibrated
     * @param sensors pitch first, then level where there is one
     * @param plan the steps
     * @param rules when a hold counts
     */
    record Calibrate(Instrument instrument, List<Sensor> sensors, CalibrationPlan plan, HoldRules rules)
            implements Command {
        /** Copies the list. */
        public Calibrate {
            sensors = List.copyOf(sensors);
        }
    }

    /**
     * Play.
     *
     * @param profile the room
     * @param tuning one of its tunings
     * @param settings how the path runs
     */
    record Play(RoomProfile profile, Tuning tuning, PathSettings settings) implements Command {}

    /**
     * Play, and ask for one note after another.
     *
     * @param play what is played on
     * @param course through the notes of its tuning
     * @param noteSeconds after which a note is given up, 2..600
     */
    record Practise(Play play, Course course, double noteSeconds) implements Command {
        /** Checks the time and that the tuning has the notes. */
        public Practise {
            if (!(noteSeconds >= 2 && noteSeconds <= 600)) {
                throw new IllegalArgumentException("time of " + noteSeconds + " s for a note (2..600)");
            }
            int size = play.tuning().ladder().size();
            if (course.notes().stream().anyMatch(note -> note < 0 || note >= size)) {
                throw new IllegalArgumentException(
                        "course through notes " + course.notes() + " (0.." + (size - 1) + " in this tuning)");
            }
        }
    }

    /** Close or open the sound while playing. */
    record Mute(boolean on) implements Command {}

    /** Put another tuning in while playing. */
    record Tune(Tuning tuning) implements Command {}

    /** Put another level curve in while playing. */
    record Level(LevelCurve curve) implements Command {}

    /** Take the open light of the next second without a hand as the open level, for this session. */
    record RetakeLight() implements Command {}

    /** Take the last calibration step again. */
    record Undo() implements Command {}

    /** End the activity: playing fades first. */
    record Stop() implements Command {}
}
