package handspan.outside.serial;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A wire as a receiver sees it that may sample at another rate than the board sends: idle high, a start bit (low),
 * eight data bits with the lowest first, a stop bit (high). The receiver begins at a falling edge, looks at the middle
 * of each of its bits, gives the byte even when the stop bit is missing, as serial chips do, and then waits for the
 * wire to be high before it looks for the next edge. This is how asynchronous serial receivers work by their data
 * sheets (from memory; one sample a bit instead of a vote of three).
 */
final class Uart implements TunablePort {
    private static final int BITS = 10;

    private final double[] edgeS;
    private int edge;
    private double nowS;
    private double freeS;
    private int baud = 9600;

    /**
     * A board that prints.
     *
     * @param rate of its wire; a real one may be off by some percent
     * @param startS when it begins, for it starts anew as its port is opened
     * @param lines what it prints, over and over
     * @param everyS a line so often, or as fast as the wire can
     * @param forS for how long
     */
    Uart(double rate, double startS, List<String> lines, double everyS, double forS) {
        List<Double> edges = new ArrayList<>();
        double wireS = startS;
        boolean high = true;
        for (int i = 0; startS + i * everyS < forS && wireS < forS; i++) {
            wireS = Math.max(wireS, startS + i * everyS);
            for (byte b : lines.get(i % lines.size()).getBytes(StandardCharsets.ISO_8859_1)) {
                int bits = (b & 0xff) << 1 | 1 << (BITS - 1);
                for (int bit = 0; bit < BITS; bit++) {
                    boolean next = (bits >> bit & 1) == 1;
                    if (next != high) {
                        edges.add(wireS + bit / rate);
                        high = next;
                    }
                }
                wireS += BITS / rate;
            }
        }
        edgeS = edges.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Even edges fall, odd ones rise. */
    private boolean isHigh(double timeS) {
        while (edge < edgeS.length && edgeS[edge] <= timeS) {
            edge++;
        }
        return edge % 2 == 0;
    }

    @Override
    public void baud(int other) {
        baud = other;
        freeS = nowS;
    }

    @Override
    public int collect(byte[] buffer, int forMs) {
        double untilS = nowS + forMs / 1000.0;
        int count = 0;
        while (count < buffer.length) {
            boolean high = isHigh(freeS);
            // an odd edge ahead rises: the wire is low now, and has to be high first
            int falling = high ? edge : edge + 1;
            if (falling >= edgeS.length || edgeS[falling] + BITS / (double) baud > untilS) {
                break;
            }
            double startS = edgeS[falling];
            int value = 0;
            for (int bit = 0; bit < 8; bit++) {
                value |= isHigh(startS + (bit + 1.5) / baud) ? 1 << bit : 0;
            }
            freeS = startS + 9.5 / baud;
            buffer[count++] = (byte) value;
        }
        nowS = untilS;
        return count;
    }
}
