package handspan;

import java.io.IOException;
import java.nio.file.Path;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioInputStream;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.UnsupportedAudioFileException;

/** A WAV file as a stranger hears it: read by the JDK's reader, measured without any knowledge of how it was made. */
public final class HeardWav {
    public static final int SAMPLES_PER_S = 48_000;

    private static final double FULL = 32_768;

    private final double[] samples;

    private HeardWav(double[] samples) {
        this.samples = samples;
    }

    /** Reads a file; one of another format is an error. */
    public static HeardWav read(Path file) throws IOException {
        try (AudioInputStream in = AudioSystem.getAudioInputStream(file.toFile())) {
            AudioFormat format = in.getFormat();
            boolean ours = format.getSampleRate() == SAMPLES_PER_S
                    && format.getSampleSizeInBits() == 16
                    && format.getChannels() == 1
                    && format.getEncoding().equals(AudioFormat.Encoding.PCM_SIGNED)
                    && !format.isBigEndian();
            if (!ours) {
                throw new IOException("another format: " + format);
            }
            byte[] bytes = in.readAllBytes();
            if (bytes.length != 2 * in.getFrameLength()) {
                throw new IOException(bytes.length + " bytes of " + in.getFrameLength() + " samples");
            }
            short[] values = new short[bytes.length / 2];
            for (int i = 0; i < values.length; i++) {
                values[i] = (short) ((bytes[2 * i] & 0xFF) | (bytes[2 * i + 1] << 8));
            }
            return of(values, values.length);
        } catch (UnsupportedAudioFileException e) {
            throw new IOException("no WAV file: " + file, e);
        }
    }

    /** The same of samples that are in no file. */
    public static HeardWav of(short[] values, int count) {
        double[] samples = new double[count];
        for (int i = 0; i < count; i++) {
            samples[i] = values[i] / FULL;
        }
        return new HeardWav(samples);
    }

    public int count() {
        return samples.length;
    }

    public double seconds() {
        return samples.length / (double) SAMPLES_PER_S;
    }

    /** One sample, full scale 1. */
    public double at(int sample) {
        return samples[sample];
    }

    /** The highest peak, dBFS. */
    public double peakDb() {
        double peak = 0;
        for (double sample : samples) {
            peak = Math.max(peak, Math.abs(sample));
        }
        return 20 * Math.log10(peak);
    }

    /** Rms about a moment, under a window, so that it matters little where in a period it begins; dBFS. */
    public double rmsDb(double atS, double widthS) {
        int count = (int) Math.round(widthS * SAMPLES_PER_S);
        int from = (int) Math.round(atS * SAMPLES_PER_S) - count / 2;
        double power = 0;
        double weights = 0;
        for (int i = 0; i < count; i++) {
            double weight = window(i, count);
            power += weight * samples[from + i] * samples[from + i];
            weights += weight;
        }
        return 10 * Math.log10(power / weights);
    }

    /**
     * Mean frequency between two moments by the slope of the phase: first about, by counting rising zero crossings,
     * then by how far the phase has turned against that, read under a window about each moment. Source: Flanagan and
     * Golden, Phase vocoder, Bell System Technical Journal 45 (1966) 1493.
     *
     * @param windowS width of the window, four periods and more, so that other harmonics are out of it
     */
    public double hz(double fromS, double toS, double windowS) {
        int from = (int) Math.round(fromS * SAMPLES_PER_S);
        int to = (int) Math.round(toS * SAMPLES_PER_S);
        int half = (int) Math.round(windowS * SAMPLES_PER_S / 2);
        double roughHz = hzByCrossings(from, to);
        double turned = phase(to, half, roughHz) - phase(from, half, roughHz);
        double rest = Math.IEEEremainder(turned, 2 * Math.PI);
        return roughHz + rest / (2 * Math.PI) * SAMPLES_PER_S / (to - from);
    }

    private double hzByCrossings(int from, int to) {
        double first = Double.NaN;
        double last = Double.NaN;
        int count = -1;
        for (int i = from + 1; i < to; i++) {
            if (samples[i - 1] < 0 && samples[i] >= 0) {
                last = i - samples[i] / (samples[i] - samples[i - 1]);
                first = Double.isNaN(first) ? last : first;
                count++;
            }
        }
        return count * SAMPLES_PER_S / (last - first);
    }

    private double phase(int centre, int half, double hz) {
        double re = 0;
        double im = 0;
        for (int i = -half; i <= half; i++) {
            double value = window(i + half, 2 * half) * samples[centre + i];
            double angle = 2 * Math.PI * hz * (centre + i) / SAMPLES_PER_S;
            re += value * Math.cos(angle);
            im -= value * Math.sin(angle);
        }
        return Math.atan2(im, re);
    }

    /**
     * Amplitudes of all frequencies under a window, as many as half the samples in it, full scale 1; number k lies at
     * {@code k SAMPLES_PER_S / count}. By halves: Cooley and Tukey, Math. Comput. 19 (1965) 297.
     *
     * @param count a power of two
     */
    public double[] spectrum(int from, int count) {
        double[] re = new double[count];
        double[] im = new double[count];
        double weights = 0;
        for (int i = 0; i < count; i++) {
            int reversed = Integer.reverse(i) >>> (Integer.numberOfLeadingZeros(count) + 1);
            re[reversed] = window(i, count) * samples[from + i];
            weights += window(i, count);
        }
        for (int half = 1; half < count; half *= 2) {
            for (int k = 0; k < half; k++) {
                double cos = Math.cos(Math.PI * k / half);
                double sin = -Math.sin(Math.PI * k / half);
                for (int i = k; i < count; i += 2 * half) {
                    double turnedRe = re[i + half] * cos - im[i + half] * sin;
                    double turnedIm = re[i + half] * sin + im[i + half] * cos;
                    re[i + half] = re[i] - turnedRe;
                    im[i + half] = im[i] - turnedIm;
                    re[i] += turnedRe;
                    im[i] += turnedIm;
                }
            }
        }
        double[] amplitudes = new double[count / 2];
        for (int k = 0; k < amplitudes.length; k++) {
            amplitudes[k] = 2 * Math.hypot(re[k], im[k]) / weights;
        }
        return amplitudes;
    }

    /**
     * The strongest that lies above a frequency in any stretch of 11 ms, dBFS: of a tone that ends below it, a click.
     */
    public double clickDb(double aboveHz) {
        int count = 512;
        double most = 0;
        for (int from = 0; from + count <= samples.length; from += count / 4) {
            double[] amplitudes = spectrum(from, count);
            double power = 0;
            for (int k = (int) Math.ceil(aboveHz * count / SAMPLES_PER_S); k < amplitudes.length; k++) {
                power += amplitudes[k] * amplitudes[k];
            }
            most = Math.max(most, power);
        }
        return 10 * Math.log10(most);
    }

    /**
     * Blackman-Harris window of four terms: all beyond four lines from its middle is 92 dB down. Source: F. J. Harris,
     * On the use of windows for harmonic analysis with the discrete Fourier transform, Proc. IEEE 66 (1978) 51, table
     * 1.
     */
    public static double window(int i, int count) {
        double x = 2 * Math.PI * i / count;
        return 0.35875 - 0.48829 * Math.cos(x) + 0.14128 * Math.cos(2 * x) - 0.01168 * Math.cos(3 * x);
    }
}
