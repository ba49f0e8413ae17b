package handspan.wiring;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import handspan.TestRooms;
import handspan.live.path.FrameTarget;
import handspan.live.path.PathSettings;
import handspan.live.path.TargetStatus;
import handspan.live.session.Command;
import handspan.music.send.SoundFrame;
import handspan.number.units.Nanos;
import handspan.outside.osc.OscEncoder;
import handspan.profile.RoomProfile;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A take replayed gives the same bytes, message for message, each time and however fast. */
class TakeReplayTest {
    private static final SourceOptions FAST = SourceOptions.USUAL.fast();

    @TempDir
    Path folder;

    private Path take;
    private long received;
    private final RoomProfile room = TestRooms.twoDistances(50);

    /** Keeps the bytes that would have gone out, each bundle with its time. */
    private static final class Bytes implements FrameTarget {
        private final OscEncoder encoder;
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

        Bytes(RoomProfile room) {
            encoder = new OscEncoder(room.send().lines());
        }

        @Override
        public void send(SoundFrame frame, boolean withState) {
            encoder.begin(frame, withState);
            ByteBuffer bundle = requireNonNull(encoder.next());
            byte[] copy = new byte[bundle.remaining()];
            bundle.get(copy);
            bytes.writeBytes(ByteBuffer.allocate(8).putLong(frame.timeNanos()).array());
            bytes.writeBytes(copy);
        }

        @Override
        public TargetStatus status() {
            return new TargetStatus("bytes", 0, 0, 0, "");
        }

        @Override
        public void close() {}
    }

    @BeforeEach
    void aTakeOfSixSecondsOfPlaying() throws Exception {
        take = folder.resolve("playing.take");
        try (Recording tap = Recording.into(take, "2026-01-01", "reed", Source.parse("sim"), 115_200);
                Rig rig = Rigs.open(Source.parse("sim:two-flight"), FAST, null, List.of(), tap)) {
            rig.submit(new Command.Watch());
            received = rig.follow(snapshot -> snapshot.timeNanos() < 7 * Nanos.PER_SECOND)
                    .lines();
        }
    }

    private byte[] replay() throws Exception {
        Bytes bytes = new Bytes(room);
        // the take's lines carry labels, so its shape is learned from its first lines
        try (Rig rig = Rigs.open(Source.parse("take:" + take), FAST, null, List.of(bytes), null)) {
            rig.submit(new Command.Play(room, room.tunings().get(0), PathSettings.USUAL.muted(false)));
            rig.follow(snapshot -> true);
        }
        return bytes.bytes.toByteArray();
    }

    @Test
    void twoReplaysGiveTheSameBytes() throws Exception {
        byte[] first = replay();
        byte[] second = replay();
        assertTrue(first.length > 50_000, first.length + " bytes of about 200 bundles a second");
        assertArrayEquals(first, second);
    }

    @Test
    void anotherTakeGivesOtherBytes() throws Exception {
        byte[] first = replay();
        String text = Files.readString(take);
        Files.writeString(take, text.replace("D:3", "D:2"));
        assertNotEquals(java.util.Arrays.hashCode(first), java.util.Arrays.hashCode(replay()));
    }

    @Test
    void aTakeHoldsEveryLineAsItCame() throws Exception {
        assertTrue(received > 150, received + " lines");
        int lines = 0;
        try (TakeSource source = new TakeSource(take, OptionalDouble.empty(), 0)) {
            while (source.nextNanos() != Long.MAX_VALUE) {
                assertTrue(source.next().length > 0);
                lines++;
            }
        }
        assertEquals(received, lines);
    }
}
