package handspan.live.path;

import handspan.hand.smooth.Quickness;
import handspan.hand.smooth.SmoothSettings;
import handspan.instrument.line.LineShape;
import handspan.instrument.sensor.Air;
import handspan.instrument.sensor.Photoresistor;
import handspan.instrument.sensor.Sensor;
import handspan.instrument.sensor.SensorKind;
import handspan.music.level.LevelCurve;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.HandSetup;
import handspan.room.Room;
import handspan.room.budget.PitchSmoothing;
import handspan.room.budget.StepsBudget;
import org.jspecify.annotations.Nullable;

/** Builds the parts of a path from a room: the settings of each follow from the room's own noise and rate. */
final class PathParts {
    /** Wanted wobble of level, dB rms (this project's own choice). */
    private static final double TARGET_DB = 0.5;

    private final RoomProfile profile;
    private final Tuning tuning;
    private final LineShape shape;
    private final PathSettings settings;

    PathParts(RoomProfile profile, Tuning tuning, LineShape shape, PathSettings settings) {
        this.profile = profile;
        this.tuning = tuning;
        this.shape = shape;
        this.settings = settings;
    }

    static SmoothSettings levelSmoothing(Room room, HandSetup level, LevelCurve curve) {
        double dbPerMm = (curve.ceilingDb() - curve.floorDb()) / level.zone().lengthMm();
        return SmoothSettings.reaching(level.noise(), room.ratePerS(), TARGET_DB / dbPerMm, Quickness.USUAL);
    }

    HandTracker pitchHand() {
        Room room = profile.room();
        return tracker(room.pitch(), PitchSmoothing.of(room, tuning));
    }

    @Nullable
    HandTracker levelHand() {
        HandSetup level = profile.room().level();
        return level == null ? null : tracker(level, levelSmoothing(profile.room(), level, profile.level()));
    }

    private HandTracker tracker(HandSetup hand, SmoothSettings smoothing) {
        Room room = profile.room();
        String channel = hand.channel().channel();
        int slot = shape.indexOf(channel);
        if (slot < 0) {
            throw new IllegalArgumentException("channel '" + channel + "' is not in the lines (" + shape.words() + ")");
        }
        return new HandTracker(
                slot,
                room.sensor(hand),
                hand,
                smoothing,
                room.ratePerS(),
                Nanos.ofMs(profile.level().leaving().fadeMs()));
    }

    SensorTrouble pitchTrouble() {
        return trouble(HandRole.PITCH, profile.room().pitch());
    }

    @Nullable
    SensorTrouble levelTrouble() {
        HandSetup level = profile.room().level();
        return level == null ? null : trouble(HandRole.LEVEL, level);
    }

    private SensorTrouble trouble(HandRole role, HandSetup hand) {
        Room room = profile.room();
        double quietestMm = Math.min(
                hand.noise().at(hand.zone().nearMm()),
                hand.noise().at(hand.zone().farMm()));
        return new SensorTrouble(
                role,
                shape.indexOf(hand.channel().channel()),
                room.sensor(hand),
                hand.channel().kind() == SensorKind.PHOTORESISTOR,
                new FreezeWatch(room.ratePerS(), quietestMm, hand.stepMm()));
    }

    Surroundings surroundings() {
        Room room = profile.room();
        HandSetup pitch = room.pitch();
        Sensor sensor = room.sensor(pitch);
        return new Surroundings(
                levelLight(room.level()),
                sensor.isLength() ? new RestWatch(scene(room)) : null,
                shape.indexOf(pitch.channel().channel()),
                sensor,
                pitch);
    }

    private @Nullable LevelLight levelLight(@Nullable HandSetup level) {
        if (level == null || !(profile.room().sensor(level) instanceof Photoresistor sensor)) {
            return null;
        }
        return new LevelLight(
                shape.indexOf(level.channel().channel()),
                sensor,
                level.response().physical(level.zone().farMm()),
                level.response().physical(level.zone().nearMm()),
                profile.level().loudFar());
    }

    private RestWatch.Scene scene(Room room) {
        HandSetup pitch = room.pitch();
        boolean echo = pitch.channel().kind() == SensorKind.ECHO;
        return new RestWatch.Scene(
                pitch.zone(),
                pitch.noiseMm(),
                tuning.centsPerMm(pitch.zone().lengthMm()),
                echo ? soundPerC(room.air()) : 0);
    }

    /** Share by which sound runs faster for each degree at a temperature. */
    private static double soundPerC(Air air) {
        Air colder = new Air(Math.max(-20, air.temperatureC() - 1), air.humidity01());
        Air warmer = new Air(Math.min(50, air.temperatureC() + 1), air.humidity01());
        double change = warmer.speedOfSoundMPerS() - colder.speedOfSoundMPerS();
        return change / air.speedOfSoundMPerS() / (warmer.temperatureC() - colder.temperatureC());
    }

    Glide glide() {
        return new Glide(settings.glide());
    }

    Voice voice() {
        Room room = profile.room();
        HandSetup level = room.level();
        return new Voice(
                room.pitch().zone(),
                level == null ? null : level.zone(),
                profile.level(),
                tuning,
                StepsBudget.limits(room, tuning));
    }
}
