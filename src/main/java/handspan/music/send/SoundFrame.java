package handspan.music.send;

/**
 * One moment of output, made by the path thread and read by every target.
 *
 * @param timeNanos when it was made, on the session's monotonic clock
 * @param pitchHz frequency; keeps its last value while no hand plays; the low end of the range before the first hand
 * @param key nearest key of twelve-tone equal temperament at the tuning's own A4, 69 = A4
 * @param centsFromKey cents above that key, -50..50
 * @param degree degree of the nearest scale note, 1 = tonic
 * @param octave octave of that scale's tonic, C4 = octave 4
 * @param gain01 amplitude, 0 = silence, never above the level ceiling
 * @param hand whether a hand plays
 * @param pitchPlace01 place of the pitch hand in its zone
 * @param levelPlace01 place of the level hand in its zone
 * @param state what the instrument is doing
 * @param channels what the channels that a plan sends said last
 */
public record SoundFrame(
        long timeNanos,
        double pitchHz,
        int key,
        double centsFromKey,
        int degree,
        int octave,
        double gain01,
        boolean hand,
        double pitchPlace01,
        double levelPlace01,
        PlayState state,
        ChannelValues channels) {
    /** A frame of a plan that names no channel. */
    public SoundFrame(
            long timeNanos,
            double pitchHz,
            int key,
            double centsFromKey,
            int degree,
            int octave,
            double gain01,
            boolean hand,
            double pitchPlace01,
            double levelPlace01,
            PlayState state) {
        this(
                timeNanos,
                pitchHz,
                key,
                centsFromKey,
                degree,
                octave,
                gain01,
                hand,
                pitchPlace01,
                levelPlace01,
                state,
                ChannelValues.NONE);
    }

    /** The same with values of channels. */
    public SoundFrame with(ChannelValues values) {
        return new SoundFrame(
                timeNanos,
                pitchHz,
                key,
                centsFromKey,
                degree,
                octave,
                gain01,
                hand,
                pitchPlace01,
                levelPlace01,
                state,
                values);
    }

    /** Whether it says that nothing sounds. */
    public boolean isSilent() {
        return !hand && gain01 == 0;
    }

    /** The same pitch and places without a hand and without sound. */
    public SoundFrame silent(long atNanos, PlayState because) {
        return new SoundFrame(
                atNanos,
                pitchHz,
                key,
                centsFromKey,
                degree,
                octave,
                0,
                false,
                pitchPlace01,
                levelPlace01,
                because,
                channels);
    }
}
