package handspan;

import handspan.music.send.SoundFrame;
import java.util.List;

/** What frames say of each moment: between two of them in line, amplitude as it is, pitch by its logarithm. */
public final class SentSound {
    /** Frames of a sound come closer together than this, s. */
    private static final double SPARSE_S = 0.02;

    private final List<SoundFrame> frames;
    private int at;

    /**
     * Of frames in the order of their times.
     *
     * @param frames two and more
     */
    public SentSound(List<SoundFrame> frames) {
        this.frames = List.copyOf(frames);
    }

    /** How long they are, s. */
    public double seconds() {
        return seconds(frames.get(frames.size() - 1));
    }

    private double seconds(SoundFrame frame) {
        return (frame.timeNanos() - frames.get(0).timeNanos()) / 1e9;
    }

    private double between(double atS, java.util.function.ToDoubleFunction<SoundFrame> what) {
        at = at < frames.size() && seconds(frames.get(at)) <= atS ? at : 0;
        while (at + 2 < frames.size() && seconds(frames.get(at + 1)) <= atS) {
            at++;
        }
        SoundFrame before = frames.get(at);
        SoundFrame after = frames.get(at + 1);
        double gapS = seconds(after) - seconds(before);
        double share01 = gapS <= 0 ? 1 : Math.max(0, Math.min(1, (atS - seconds(before)) / gapS));
        return what.applyAsDouble(before) + share01 * (what.applyAsDouble(after) - what.applyAsDouble(before));
    }

    /** Mean frequency between two moments. */
    public double hz(double fromS, double toS) {
        int steps = 200;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            sum += Math.exp(between(fromS + (toS - fromS) * (i + 0.5) / steps, frame -> Math.log(frame.pitchHz())));
        }
        return sum / steps;
    }

    /** Rms amplitude about a moment, under the window of {@link HeardWav}; dB below full. */
    public double levelDb(double atS, double widthS) {
        int steps = 200;
        double power = 0;
        double weights = 0;
        for (int i = 0; i < steps; i++) {
            double weight = HeardWav.window(i, steps);
            double gain01 = between(atS + widthS * (i / (double) steps - 0.5), SoundFrame::gain01);
            power += weight * gain01 * gain01;
            weights += weight;
        }
        return 10 * Math.log10(power / weights);
    }

    /**
     * Whether it sounds, and at least as loud as that, through a whole stretch: frames that come once a second say that
     * nothing sounds, and between two of them there are none.
     */
    public boolean sounds(double fromS, double toS, double leastDb) {
        List<SoundFrame> within = frames.stream()
                .filter(frame -> seconds(frame) >= fromS && seconds(frame) <= toS)
                .toList();
        return within.size() * SPARSE_S >= toS - fromS
                && within.stream().allMatch(frame -> frame.gain01() > Math.pow(10, leastDb / 20));
    }
}
