package handspan.live.path;

import handspan.music.send.SoundFrame;
import java.util.ArrayList;
import java.util.List;

/** Hands that stay: whether anything of the leaving is heard where no hand leaves. */
final class PlayedTrial {
    private PlayedTrial() {}

    /**
     * What became of hands that played on.
     *
     * @param leastDb lowest level after the attack, dB under full
     * @param silences runs that were closed at some time
     * @param rmsCents pitch against the true hand, at the lag that fits best
     * @param lagMs that lag
     */
    record Played(double leastDb, int silences, double rmsCents, double lagMs) {}

    /**
     * To and fro from end to end of the zone, minimum jerk, 2 m/s at the peak, a rest of a fifth of a second between.
     */
    static HandTrial.Truth glissandi(double beyondMm) {
        // minimum jerk: x = D (10 s^3 - 15 s^4 + 6 s^5), peak speed 1.875 D / T (Flash, Hogan, J. Neurosci. 5 (1985))
        double moveS = 1.875 * (400 + 2 * beyondMm) / 2000;
        double roundS = moveS + 0.2;
        return seconds -> {
            double played = seconds - HandTrial.STILL_S;
            if (played < 0) {
                return 100 - beyondMm;
            }
            int round = (int) Math.floor(played / roundS);
            double s = Math.min(1, (played - round * roundS) / moveS);
            double way = (400 + 2 * beyondMm) * s * s * s * (10 - 15 * s + 6 * s * s);
            return round % 2 == 0 ? 100 - beyondMm + way : 500 + beyondMm - way;
        };
    }

    static Played glissando(HandTrial.Kind kind, double beyondMm, int seeds) {
        return played(kind, seeds, glissandi(beyondMm));
    }

    static Played still(HandTrial.Kind kind, int seeds) {
        return played(kind, seeds, seconds -> 300);
    }

    private static Played played(HandTrial.Kind kind, int seeds, HandTrial.Truth truth) {
        double least = 1;
        int silences = 0;
        double bestRms = Double.MAX_VALUE;
        double bestLag = 0;
        List<List<SoundFrame>> runs = new ArrayList<>();
        HandTrial any = new HandTrial(kind, 0);
        for (int seed = 0; seed < seeds; seed++) {
            HandTrial trial = new HandTrial(kind, 1000 + seed).play(truth, 8);
            List<SoundFrame> frames = trial.between(HandTrial.STILL_S, 8);
            runs.add(frames);
            double low = frames.stream().mapToDouble(SoundFrame::gain01).min().orElseThrow();
            least = Math.min(least, low);
            silences += low < 0.5 ? 1 : 0;
        }
        for (int lag = 0; lag <= 150; lag++) {
            double sum = 0;
            int count = 0;
            for (List<SoundFrame> frames : runs) {
                for (SoundFrame frame : frames) {
                    double mm = truth.mm(HandTrial.seconds(frame) - lag / 1000.0);
                    double error = any.cents(frame) - 6 * (Math.max(100, Math.min(500, mm)) - 300);
                    sum += error * error;
                    count++;
                }
            }
            double rms = Math.sqrt(sum / count);
            if (rms < bestRms) {
                bestRms = rms;
                bestLag = lag;
            }
        }
        return new Played(20 * Math.log10(least / 0.501187233627), silences, bestRms, bestLag);
    }
}
