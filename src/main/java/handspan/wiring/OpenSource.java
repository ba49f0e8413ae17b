package handspan.wiring;

import handspan.instrument.line.LineShape;
import handspan.live.session.LinkException;
import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A source that is open and has yet to be told where its sound goes: so that a board need not start anew between being
 * looked at and playing.
 *
 * @param source what is open
 * @param rig closed by whoever has this
 * @param out plugged into the rig
 * @param recordings plugged into the rig
 */
public record OpenSource(Source source, Rig rig, SwitchedOut out, RecordingSocket recordings) {
    /**
     * Opens one.
     *
     * @param shape how its lines are written, where it is known; null to learn it
     * @param log where what happens to it is written down
     */
    public static OpenSource open(Source source, SourceOptions options, @Nullable LineShape shape, SessionLog log)
            throws LinkException, IOException {
        SwitchedOut out = new SwitchedOut();
        RecordingSocket recordings = new RecordingSocket();
        Rig rig = Rigs.openWith(source, options, shape, List.of(out), recordings);
        return new OpenSource(source, log.following(rig, source.text()), out, recordings);
    }
}
