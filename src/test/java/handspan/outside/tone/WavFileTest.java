package handspan.outside.tone;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import handspan.HeardWav;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WavFileTest {
    @TempDir
    Path folder;

    private static short[] ramp(int count) {
        short[] samples = new short[count];
        for (int i = 0; i < count; i++) {
            samples[i] = (short) (i * 7 - 20_000);
        }
        return samples;
    }

    /**
     * Byte for byte as the layout has it. Source: IBM and Microsoft, Multimedia Programming Interface and Data
     * Specifications 1.0, 1991, Waveform Audio File Format: RIFF, length of all after it, WAVE; "fmt ", 16, wFormatTag
     * 1 (PCM), nChannels, nSamplesPerSec, nAvgBytesPerSec, nBlockAlign, wBitsPerSample; "data", length; low bytes first
     * (from memory). 48,000 is BB80 hexadecimal, 96,000 is 17700.
     */
    @Test
    void theHeaderIsAsPublished() throws IOException {
        Path path = folder.resolve("three.wav");
        try (WavFile file = WavFile.into(path)) {
            file.add(new short[] {1, -2, 0x1234}, 3);
        }
        String expected = hex("RIFF") + "2a000000" + hex("WAVE") + hex("fmt ") + "10000000" + "0100" + "0100"
                + "80bb0000" + "00770100" + "0200" + "1000" + hex("data") + "06000000" + "0100" + "feff" + "3412";
        assertEquals(expected, HexFormat.of().formatHex(Files.readAllBytes(path)));
    }

    private static String hex(String text) {
        return HexFormat.of().formatHex(text.getBytes(StandardCharsets.US_ASCII));
    }

    @Test
    void whatIsAddedIsReadBackByTheReaderOfTheJdk() throws IOException {
        Path path = folder.resolve("long.wav");
        short[] samples = ramp(4000);
        try (WavFile file = WavFile.into(path)) {
            for (int i = 0; i < 25; i++) {
                file.add(samples, 3999);
            }
        }
        HeardWav heard = HeardWav.read(path);
        assertEquals(25 * 3999, heard.count());
        for (int i = 0; i < heard.count(); i++) {
            assertEquals(samples[i % 3999] / 32_768.0, heard.at(i), "sample " + i);
        }
    }

    @Test
    void afterAFlushItIsWholeThoughItIsNeverClosed() throws IOException {
        Path path = folder.resolve("open.wav");
        WavFile file = WavFile.into(path);
        file.add(ramp(1000), 1000);
        file.flush();
        assertEquals(1000, HeardWav.read(path).count());
        file.add(ramp(500), 500);
        file.flush();
        assertEquals(1500, HeardWav.read(path).count());
        assertEquals(1500, file.written());
        file.close();
        file.close();
    }

    @Test
    void anOlderFileIsEmptiedFirst() throws IOException {
        Path path = folder.resolve("older.wav");
        Files.write(path, new byte[10_000]);
        try (WavFile file = WavFile.into(path)) {
            file.add(ramp(10), 10);
        }
        assertEquals(10, HeardWav.read(path).count());
        assertEquals(64, Files.size(path));
    }

    /** Room for the header and 20,000.5 samples. */
    @Test
    void aFullDiskKeepsWhatFitsWithItsLengthRight() throws IOException {
        ScarceFile disk = new ScarceFile(WavFile.HEADER_BYTES + 40_001);
        WavFile file = new WavFile(disk);
        IOException full = assertThrows(IOException.class, () -> {
            for (int i = 0; i < 100; i++) {
                file.add(ramp(1000), 1000);
            }
        });
        assertEquals("No space left on device", full.getMessage());
        file.close();
        assertFalse(disk.isOpen());
        assertEquals(20_000, file.written());
        Path path = folder.resolve("full.wav");
        Files.write(path, disk.contents());
        HeardWav heard = HeardWav.read(path);
        assertEquals(20_000, heard.count());
        assertEquals(ramp(1000)[999] / 32_768.0, heard.at(19_999));
    }

    @Test
    void aDiskWithoutRoomForTheHeaderIsClosedToo() {
        ScarceFile disk = new ScarceFile(10);
        WavFile file = new WavFile(disk);
        assertThrows(IOException.class, () -> {
            file.add(ramp(10), 10);
            file.flush();
        });
        assertThrows(IOException.class, file::close);
        assertFalse(disk.isOpen());
        assertArrayEquals("RIFF".getBytes(StandardCharsets.US_ASCII), java.util.Arrays.copyOf(disk.contents(), 4));
    }
}
