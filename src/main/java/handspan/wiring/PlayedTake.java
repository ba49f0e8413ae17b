package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.line.Rejection;
import handspan.instrument.sensor.Sensor;
import handspan.live.path.PathSettings;
import handspan.live.session.Command;
import handspan.live.session.Event;
import handspan.live.session.LinkException;
import handspan.live.session.Snapshot;
import handspan.music.passage.Moment;
import handspan.music.passage.PassageFigures;
import handspan.music.send.SoundFrame;
import handspan.music.tuning.Tuning;
import handspan.number.units.Nanos;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A recording played through a room, by the same path as on stage and as fast as the machine can, and measured.
 *
 * @param figures how in tune it was
 * @param readings that were made of its lines
 * @param rejections lines that were none, by reason
 * @param missing01 share of the lines that came while a hand played and had no pitch reading; NaN where none came
 * @param remark what the recording says against itself; may be empty
 * @param refused why it could not be played; empty when it could
 */
public record PlayedTake(
        PassageFigures figures,
        long readings,
        Map<Rejection, Long> rejections,
        double missing01,
        String remark,
        String refused) {
    /** Recordings and simulations begin a second into their own time. */
    private static final long BEGIN_NANOS = Nanos.PER_SECOND;

    /**
     * Plays and measures.
     *
     * @param take a recording
     * @param options how it is read
     * @param profile the room
     * @param tuning one of its tunings
     */
    public static PlayedTake of(Source take, SourceOptions options, RoomProfile profile, Tuning tuning)
            throws LinkException, IOException {
        FrameLog log = new FrameLog();
        EventReader events = new EventReader();
        List<String> refusals = new ArrayList<>();
        LineShape shape = profile.room().instrument().shape();
        try (Rig rig = Rigs.open(take, options.fast(), shape, List.of(log), null)) {
            rig.submit(new Command.Play(profile, tuning, PathSettings.USUAL.muted(false)));
            List<String> remarks = new ArrayList<>();
            Snapshot last = rig.follow(snapshot -> {
                for (Event event : events.fresh(snapshot)) {
                    refusal(event).ifPresent(refusals::add);
                    remark(event).ifPresent(remarks::add);
                }
                return refusals.isEmpty();
            });
            if (!rig.remark().isEmpty()) {
                remarks.add(rig.remark());
            }
            List<SoundFrame> frames = log.frames();
            List<Moment> moments =
                    frames.stream().map(frame -> Moment.of(frame, tuning)).toList();
            return new PlayedTake(
                    PassageFigures.of(moments, tuning, profile.level()),
                    last.readings(),
                    last.rejections(),
                    shape == null ? Double.NaN : missing01(take, options, profile, shape, moments),
                    String.join("; ", remarks),
                    refusals.isEmpty() ? "" : refusals.get(0));
        }
    }

    private static Optional<String> refusal(Event event) {
        if (event.what() instanceof Event.Refused because) {
            return Optional.of(because.reason());
        }
        return event.what() instanceof Event.Failed because ? Optional.of(because.reason()) : Optional.empty();
    }

    /** Numbers that the room plays on may be gone from the lines. */
    private static Optional<String> remark(Event event) {
        return event.what() instanceof Event.BoardChanged changed ? Optional.of(changed.words()) : Optional.empty();
    }

    private static double missing01(
            Source take, SourceOptions options, RoomProfile profile, LineShape shape, List<Moment> moments)
            throws IOException {
        HandSetup pitch = profile.room().pitch();
        int slot = shape.indexOf(pitch.channel().channel());
        Sensor sensor = profile.room().sensor(pitch);
        int at = 0;
        long lines = 0;
        long missing = 0;
        for (Reading reading : TakeReadings.of(Path.of(take.name()), options.ratePerS(), shape)) {
            long time = reading.timeNanos() + BEGIN_NANOS;
            while (at + 1 < moments.size() && moments.get(at + 1).timeNanos() <= time) {
                at++;
            }
            if (slot >= 0
                    && reading.tells(slot)
                    && at < moments.size()
                    && moments.get(at).hand()) {
                lines++;
                missing += reading.has(slot) && sensor.hasReading(reading.value(slot)) ? 0 : 1;
            }
        }
        return (double) missing / lines;
    }
}
