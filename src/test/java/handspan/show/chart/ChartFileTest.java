package handspan.show.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.jfree.chart.JFreeChart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartFileTest {
    private final JFreeChart chart = RawReadingsChart.of(Samples.raw(), Theme.LIGHT);

    @TempDir
    Path folder;

    // first eight bytes: PNG specification (ISO/IEC 15948), 5.2
    @Test
    void aPictureNeedsNoScreen() throws IOException {
        assertTrue(GraphicsEnvironment.isHeadless());
        Path png = folder.resolve("raw.png");
        ChartFile.write(chart, png, 1200, 700);
        byte[] start = Arrays.copyOf(Files.readAllBytes(png), 8);
        assertArrayEquals(new byte[] {(byte) 137, 80, 78, 71, 13, 10, 26, 10}, start);
    }

    @Test
    void aPictureTakesThePlaceOfAnOlderOneAndLeavesNothingBeside() throws IOException {
        Path png = folder.resolve("raw.png");
        Files.writeString(png, "an older file");
        ChartFile.write(chart, png, 300, 200);
        assertEquals(300, ImageIO.read(png.toFile()).getWidth());
        assertEquals(200, ImageIO.read(png.toFile()).getHeight());
        try (var files = Files.list(folder)) {
            assertEquals(List.of(png), files.toList());
        }
    }

    @Test
    void aMissingFolderIsReported() {
        Path nowhere = folder.resolve("nowhere").resolve("raw.png");
        assertThrows(NoSuchFileException.class, () -> ChartFile.write(chart, nowhere, 300, 200));
    }

    @Test
    void aFileThatCannotBeReplacedLeavesNothingBeside() throws IOException {
        Path png = Files.createDirectory(folder.resolve("raw.png"));
        Files.createFile(png.resolve("inside"));
        assertThrows(IOException.class, () -> ChartFile.write(chart, png, 300, 200));
        try (var files = Files.list(folder)) {
            assertEquals(List.of(png), files.toList());
        }
    }

    @Test
    void sizesThatAreNoneAreRefused() {
        Path png = folder.resolve("raw.png");
        assertThrows(IllegalArgumentException.class, () -> ChartFile.write(chart, png, 0, 700));
        assertThrows(IllegalArgumentException.class, () -> ChartFile.write(chart, png, 1200, 100_000));
    }
}
