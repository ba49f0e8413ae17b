package handspan.live.path;

/**
 * How the path runs.
 *
 * @param framesPerS frames a second while sound is on, 20..1000
 * @param glide whether pitch and level run in a straight line between readings; off, a frame goes out with each reading
 * @param startMuted whether the player has to open the sound
 */
public record PathSettings(double framesPerS, boolean glide, boolean startMuted) {
    /** 200 frames a second, glide on, muted at the start. */
    public static final PathSettings USUAL = new PathSettings(200, true, true);

    /** Checks ranges. */
    public PathSettings {
        if (!(framesPerS >= 20 && framesPerS <= 1000)) {
            throw new IllegalArgumentException(framesPerS + " frames a second (20..1000)");
        }
    }

    /** The same with sound open, or closed, at the start. */
    public PathSettings muted(boolean muted) {
        return new PathSettings(framesPerS, glide, muted);
    }

    /** The same with so many frames a second. */
    public PathSettings withFrames(double perS) {
        return new PathSettings(perS, glide, startMuted);
    }

    /** The same with glide on or off. */
    public PathSettings gliding(boolean on) {
        return new PathSettings(framesPerS, on, startMuted);
    }
}
