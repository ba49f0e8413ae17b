package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.HeardWav;
import handspan.Waits;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WavTargetTest {
    @TempDir
    Path folder;

    private static void sound(WavTarget target, int fromMs, int toMs) {
        for (int ms = fromMs; ms < toMs; ms += 5) {
            target.send(Tones.frame(ms * Tones.MS, 440, 0.5), false);
        }
    }

    @Test
    void framesAreInTheFileWhenItIsClosed() throws IOException {
        Path path = folder.resolve("new/of/two.wav");
        WavTarget target = WavTarget.into(path, false);
        sound(target, 0, 2000);
        target.close();
        target.close();
        HeardWav heard = HeardWav.read(path);
        assertEquals(2.025, heard.seconds(), 0.001);
        assertEquals(440, heard.hz(0.5, 1.5, 0.1), 0.01);
        assertEquals(400, target.status().sent());
        assertEquals(0, target.status().dropped());
        assertEquals("", target.status().trouble());
        assertEquals(heard.seconds(), target.seconds(), 1e-9);
        assertEquals("wav:" + path, target.status().target());
    }

    /** Killed at that moment, it would have all of it. */
    @Test
    void aFileThatIsNotClosedIsReadable() throws IOException {
        Path path = folder.resolve("open.wav");
        try (WavTarget target = WavTarget.into(path, false)) {
            sound(target, 0, 700);
            Waits.until(() -> target.seconds() > 0.69);
            assertEquals(0.695, HeardWav.read(path).seconds(), 0.001);
        }
    }

    @Test
    void aFullDiskIsSaidWithWhatIsInTheFileAndFramesGoOnBeingCounted() throws IOException {
        ScarceFile disk = new ScarceFile(WavFile.HEADER_BYTES + 96_000);
        WavTarget target = new WavTarget(new WavFile(disk), "evening.wav", false);
        sound(target, 0, 3000);
        Waits.until(() -> !target.status().trouble().isEmpty());
        sound(target, 3000, 3100);
        target.close();
        assertEquals(
                "the WAV file stopped: no space left on device: 1.00 s are in evening.wav; playing goes on",
                target.status().trouble());
        assertEquals(620, target.status().sent() + target.status().dropped());
        assertTrue(target.status().dropped() >= 20, target.status().toString());
        Path path = folder.resolve("evening.wav");
        Files.write(path, disk.contents());
        assertEquals(1, HeardWav.read(path).seconds(), 1e-9);
    }

    /** A disk that stalls until it is told. */
    private static SeekableByteChannel stalled(SeekableByteChannel disk, CountDownLatch goOn) {
        return (SeekableByteChannel) java.lang.reflect.Proxy.newProxyInstance(
                SeekableByteChannel.class.getClassLoader(),
                new Class<?>[] {SeekableByteChannel.class},
                (self, method, arguments) -> {
                    goOn.await();
                    return switch (method.getName()) {
                        case "write" -> disk.write((ByteBuffer) arguments[0]);
                        case "position" -> disk.position((long) arguments[0]);
                        default -> {
                            disk.close();
                            yield null;
                        }
                    };
                });
    }

    /** Eighty seconds of frames wait for a disk; of a hundred, twenty are lost, and that is known. */
    @Test
    void aDiskThatStallsDelaysNobodyAndWhatIsLostIsCounted() {
        CountDownLatch goOn = new CountDownLatch(1);
        ScarceFile disk = new ScarceFile(12_000_000);
        WavTarget target = new WavTarget(new WavFile(stalled(disk, goOn)), "late.wav", false);
        sound(target, 0, 100_000);
        long dropped = target.status().dropped();
        assertTrue(dropped > 3000 && dropped < 3700, dropped + " dropped");
        goOn.countDown();
        target.close();
        assertEquals(20_000, target.status().sent() + dropped);
    }

    /** Faster than the clock, frames wait for the file instead. */
    @Test
    void withoutAClockNothingIsLost() throws IOException {
        Path path = folder.resolve("fast.wav");
        WavTarget target = WavTarget.into(path, true);
        sound(target, 0, 200_000);
        target.close();
        assertEquals(0, target.status().dropped());
        assertEquals(200.02, HeardWav.read(path).seconds(), 0.01);
    }
}
