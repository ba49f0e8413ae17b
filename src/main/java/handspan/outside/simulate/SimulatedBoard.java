package handspan.outside.simulate;

import handspan.number.units.Nanos;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;

/**
 * A microcontroller board that measures its channels in turn and prints one line for each round.
 *
 * <p>A loop that runs in virtual time takes {@link #nextLineNanos()} and {@link #nextLine()} by turns; an adapter for
 * real time waits in between. One thread reads a board; the hands it sees may be moved from another.
 */
public final class SimulatedBoard {
    private static final long BANNER_GAP_NANOS = 10 * Nanos.PER_MS;

    private final BoardSettings settings;
    private final List<Channel> channels;
    private final Random random;
    private long firstNanos;
    private long printed;
    private long nextNanos;

    /**
     * A sensor and the hand above it.
     *
     * @param model the sensor
     * @param hand the hand it sees
     */
    public record Channel(SensorModel model, SimulatedHand hand) {}

    /**
     * A board that is powered up at a time.
     *
     * @param channels in the order of the line, one or more
     */
    public SimulatedBoard(BoardSettings settings, List<Channel> channels, long seed, long startNanos) {
        if (channels.isEmpty()) {
            throw new IllegalArgumentException(
                    "Simulated board cannot be built: 0 channels (allowed 1 or more); give it a sensor.");
        }
        this.settings = settings;
        this.channels = List.copyOf(channels);
        random = Seeds.random(seed, "board");
        firstNanos = startNanos + Nanos.ofMs(settings.bootMs());
        nextNanos = dueNanos(0);
    }

    /** Powers the board up again: silence, banner, then readings that have to settle anew. */
    public void restart(long startNanos) {
        firstNanos = startNanos + Nanos.ofMs(settings.bootMs());
        printed = 0;
        nextNanos = dueNanos(0);
    }

    /** When the next line leaves the board. */
    public long nextLineNanos() {
        return nextNanos;
    }

    /** When the next line comes out of the USB serial chip; several may come at one moment. */
    public long nextArrivalNanos() {
        long timer = Nanos.ofMs(settings.timerMs());
        return timer == 0 ? nextNanos : -Math.floorDiv(-nextNanos, timer) * timer;
    }

    /** The next line with its line end; its last measurement ends at {@link #nextLineNanos()}. */
    public byte[] nextLine() {
        int banner = settings.banner().size();
        String text = printed < banner
                ? settings.banner().get((int) printed)
                : reading(printed - banner < settings.settlingReadings());
        printed++;
        nextNanos = dueNanos(printed);
        return (text + LineStyle.LINE_END).getBytes(StandardCharsets.ISO_8859_1);
    }

    /** Measuring time of the first channel, ms; half of it is lag. */
    public double measuringMs() {
        return channels.get(0).model().measuringMs();
    }

    /** How this board runs. */
    public BoardSettings settings() {
        return settings;
    }

    /** Sensors and hands in the order of the line. */
    public List<Channel> channels() {
        return channels;
    }

    private String reading(boolean settling) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < channels.size(); i++) {
            Channel channel = channels.get(i);
            double errorMm = settling ? settings.settlingErrorMm() * Seeds.between(random, 0.9, 1.1) : 0;
            double raw = channel.model().read(channel.hand(), nextNanos, errorMm);
            line.append(i == 0 ? "" : settings.style().separator());
            line.append(settings.style().field(i, raw, channel.model().decimals()));
        }
        return line.toString();
    }

    private long dueNanos(long index) {
        int banner = settings.banner().size();
        if (index < banner) {
            return firstNanos + index * BANNER_GAP_NANOS;
        }
        long dataStart = firstNanos + banner * BANNER_GAP_NANOS;
        double rounds = index - banner + 1;
        double jitterMs = settings.jitterMs() * Seeds.between(random, -1, 1);
        return dataStart + Nanos.ofSeconds(rounds / settings.linesPerSecond()) + Nanos.ofMs(jitterMs);
    }
}
