package handspan.show.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EmblemTest {
    private static final int SIDE_PX = 256;

    private static int[] pixels(BufferedImage picture) {
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }

    /** Left in target/pictures: copy it from there when the sign is changed. */
    @Test
    void thePackedApplicationHasTheSameSign() throws IOException {
        BufferedImage drawn = Emblem.picture(SIDE_PX);
        Path left = Path.of("target", "pictures", "handspan.png");
        Files.createDirectories(left.getParent());
        ImageIO.write(drawn, "png", left.toFile());
        BufferedImage kept = ImageIO.read(Path.of("src/main/dist/handspan.png").toFile());
        assertEquals(SIDE_PX, kept.getWidth());
        int[] is = pixels(kept);
        int[] due = pixels(drawn);
        long far = java.util.stream.IntStream.range(0, due.length)
                .filter(i -> Math.abs((is[i] & 0xFF) - (due[i] & 0xFF)) > 40)
                .count();
        // edges may be drawn a little otherwise by another version of Java
        assertTrue(far < due.length / 200, far + " pixels differ");
    }

    @ParameterizedTest
    @ValueSource(ints = {16, 32, 48, 128, 256})
    void fingersAndSpanStandOutAtEachSize(int sidePx) {
        int[] pixels = pixels(Emblem.picture(sidePx));
        long blue = Arrays.stream(pixels).filter(p -> (p & 0xFF) > 150).count();
        long orange = Arrays.stream(pixels)
                .filter(p -> (p >> 16 & 0xFF) > 150 && (p & 0xFF) < 80)
                .count();
        assertTrue(blue > 0.05 * pixels.length, blue + " pixels of fingers");
        assertTrue(orange > 0.02 * pixels.length, orange + " pixels of the span");
    }
}
