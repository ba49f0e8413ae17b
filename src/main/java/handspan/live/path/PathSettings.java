package handspan.live.path;

/**
 * How the path runs.
 *
 * @param framesPerS frames a second while sound is on, 20..1000
 * @param glide whether pitch and level run in a straight line between readings; off, a frame goes out with each reading
 * @param fadeMs how long sound takes to go, 0..2000
 * @param startMuted whether the player has to open the sound
 */
public record PathSettings(double framesPerS, boolean glide, double fadeMs, boolean startMuted) {
    /** 200 frames a second, glide on, 60 ms of fade, muted at the start. */
    public static final PathSettings USUAL = new PathSettings(200, true, 60, true);

    /** Checks ranges. */
    public PathSettings {
        if (!(framesPerS >= 20 && framesPerS <= 1000)) {
            throw new IllegalArgumentException(framesPerS + " frames a second (20..1000)");
        }
        if (!(fadeMs >= 0 && fadeMs <= 2000)) {
            throw new IllegalArgumentException("fade of " + fadeMs + " ms (0..2000)");
        }
    }

    /** The same with sound open, or closed, at the start. */
    public PathSettings muted(boolean muted) {
        return new PathSettings(framesPerS, glide, fadeMs, muted);
    }

    /** The same with glide on or off. */
    public PathSettings gliding(boolean on) {
        return new PathSettings(framesPerS, on, fadeMs, startMuted);
    }
}
