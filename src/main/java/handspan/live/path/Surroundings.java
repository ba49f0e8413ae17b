package handspan.live.path;

import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.room.HandSetup;
import org.jspecify.annotations.Nullable;

/**
 * What changes around the hands while an instrument is played: the light over the level hand's sensor, and whatever the
 * pitch sensor sees when no hand plays. Owned by the path thread.
 */
final class Surroundings {
    private static final LightTaken NO_LIGHT = new LightTaken(
            false, Double.NaN, Double.NaN, "open light not taken: the level hand of this room has no light sensor");

    private final @Nullable LevelLight light;
    private final @Nullable RestWatch rest;
    private final int pitchSlot;
    private final Sensor pitchSensor;
    private final HandSetup pitch;
    private boolean pitchHand;
    private boolean asked;

    /**
     * The surroundings.
     *
     * @param light null where the level hand has no light sensor
     * @param rest null where the pitch sensor does not see lengths
     */
    Surroundings(
            @Nullable LevelLight light, @Nullable RestWatch rest, int pitchSlot, Sensor pitchSensor, HandSetup pitch) {
        this.light = light;
        this.rest = rest;
        this.pitchSlot = pitchSlot;
        this.pitchSensor = pitchSensor;
        this.pitch = pitch;
    }

    /** A reading came, and the pitch hand plays or not. */
    void onReading(Reading reading, boolean playing) {
        pitchHand = playing;
        if (light != null) {
            light.onReading(reading, playing);
        }
        if (rest != null && reading.tells(pitchSlot)) {
            rest.onReading(pitchMm(reading), reading.timeNanos(), playing);
        }
    }

    private double pitchMm(Reading reading) {
        boolean sees = reading.has(pitchSlot) && pitchSensor.hasReading(reading.value(pitchSlot));
        return sees ? pitch.response().mm(pitchSensor.physical(reading.value(pitchSlot))) : Double.NaN;
    }

    void onLost() {
        if (light != null) {
            light.onLost();
        }
        if (rest != null) {
            rest.onLost();
        }
    }

    /** Whether sound must be closed. */
    boolean mutes() {
        return light != null && light.guard().mutes();
    }

    /** Whether sound must not grow louder just now. */
    boolean holds() {
        return light != null && light.guard().holds();
    }

    /** Why sound is closed; empty when it is not. */
    String muteReason() {
        return light == null ? "" : light.guard().reason();
    }

    /** To be taken off the level sensor's physical value. */
    double lightShiftLn() {
        return light == null ? 0 : light.shiftLn();
    }

    /** Which end of the level hand's light is the loud one. */
    void loudOpen(boolean open) {
        if (light != null) {
            light.guard().loudOpen(open);
        }
    }

    void retakeLight() {
        asked = light == null;
        if (light != null) {
            light.retake();
        }
    }

    /** What became of the latest {@link #retakeLight}; told once. */
    @Nullable
    LightTaken takeLightTaken() {
        if (asked) {
            asked = false;
            return NO_LIGHT;
        }
        return light == null ? null : light.takeTaken();
    }

    /** What is worth a word between songs; empty while a hand plays. */
    String hint() {
        if (pitchHand) {
            return "";
        }
        String ofLight = light == null ? "" : light.hintText();
        String ofRest = rest == null ? "" : rest.hint();
        return ofLight.isEmpty() || ofRest.isEmpty() ? ofRest + ofLight : ofRest + "; " + ofLight;
    }
}
