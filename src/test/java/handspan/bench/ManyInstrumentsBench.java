package handspan.bench;

import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.outside.simulate.PlayerHand;
import handspan.outside.simulate.SimulatedBoard;
import handspan.outside.simulate.SimulatedInstrument;
import handspan.outside.simulate.SimulatedInstruments;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.StandardSocketOptions;
import java.nio.ByteBuffer;
import java.nio.channels.DatagramChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sixty-four instruments at once in one process of their own. */
@Tag("bench")
class ManyInstrumentsBench {
    private static final int INSTRUMENTS = 64;
    private static final double LINES_PER_S = 100;
    private static final double FRAMES_PER_S = 200;
    private static final int WARM_UP_S = 30;
    private static final int MEASURED_S = 20;
    private static final int LINES = 4000;
    private static final double LEAST_SHARE = 0.9;
    private static final double MOST_CORES = 0.5;

    @Test
    void sixtyFourInstruments(@TempDir Path folder) throws Exception {
        Path recording = Files.write(folder.resolve("lines.txt"), lines());
        AtomicLong received = new AtomicLong();
        BenchTable table = new BenchTable(
                "4-many-instruments",
                "(4) 64 instruments in one process, 100 lines/s and 200 frames/s each, recorded lines by the clock, UDP,"
                        + " 20 s after 30 s",
                "",
                "measured");
        try (DatagramChannel channel = DatagramChannel.open()) {
            channel.setOption(StandardSocketOptions.SO_RCVBUF, 1 << 20);
            channel.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
            Thread counter = new Thread(() -> count(channel, received), "counter");
            counter.start();
            int port = ((InetSocketAddress) channel.getLocalAddress()).getPort();
            Properties told = play(recording, port);
            channel.close();
            counter.join();
            double frames = number(told, "framesPerS");
            double readings = number(told, "readingsPerS");
            assertTrue(frames > LEAST_SHARE * INSTRUMENTS * FRAMES_PER_S, frames + " frames a second");
            assertTrue(readings > LEAST_SHARE * INSTRUMENTS * LINES_PER_S, readings + " readings a second");
            assertTrue(received.get() > LEAST_SHARE * frames * MEASURED_S, received + " datagrams received");
            double cores = number(told, "cpu01");
            table.row("processor, cores", BenchTable.figure(cores, 2))
                    .row("readings a second", BenchTable.figure(readings, 0))
                    .row("frames a second", BenchTable.figure(frames, 0))
                    .row("processor a frame, microseconds", BenchTable.figure(cores / frames * 1e6, 1))
                    .row("threads", BenchTable.figure(number(told, "threads"), 0))
                    .row("heap in use after collection, MB", BenchTable.figure(number(told, "usedMb"), 0))
                    .row("heap taken from the system, MB", BenchTable.figure(number(told, "heapMb"), 0))
                    .figure("under half a core", BenchTable.figure(cores, 2), cores < MOST_CORES)
                    .publish();
        }
    }

    private static Properties play(Path recording, int port) throws Exception {
        try (Child child = Child.of(
                ManyInstruments.class,
                Integer.toString(INSTRUMENTS),
                recording.toString(),
                Double.toString(LINES_PER_S),
                Integer.toString(port),
                Integer.toString(WARM_UP_S),
                Integer.toString(MEASURED_S))) {
            for (int i = 0; i < 10 * 2 * (WARM_UP_S + MEASURED_S) && child.isAlive(); i++) {
                Thread.sleep(100);
            }
            Properties told = new Properties();
            told.load(new StringReader(child.words()));
            return told;
        }
    }

    private static double number(Properties told, String key) {
        String text = told.getProperty(key);
        if (text == null) {
            throw new IllegalStateException("no " + key + " in " + told);
        }
        return Double.parseDouble(text);
    }

    private static void count(DatagramChannel channel, AtomicLong received) {
        ByteBuffer buffer = ByteBuffer.allocateDirect(2048);
        try {
            while (channel.isOpen()) {
                channel.receive(buffer.clear());
                received.incrementAndGet();
            }
        } catch (IOException e) {
            // closed: the end
        }
    }

    /** What the simulated instrument of the hall prints while its player improvises: here at twice its rate. */
    private static byte[] lines() {
        SimulatedInstrument instrument = SimulatedInstruments.create("hall", 1);
        instrument.player().playPassage(instrument.player().improvise(LINES), 0);
        SimulatedBoard board = instrument.board();
        ByteArrayOutputStream lines = new ByteArrayOutputStream();
        for (int i = 0; i < LINES; ) {
            boolean there = instrument.player().hand(PlayerHand.PITCH).presentAt(board.nextLineNanos());
            byte[] line = board.nextLine();
            if (there) {
                lines.writeBytes(line);
                i++;
            }
        }
        return lines.toByteArray();
    }
}
