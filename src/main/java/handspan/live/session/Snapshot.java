package handspan.live.session;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Rejection;
import handspan.live.path.Arrivals;
import handspan.live.path.LineNews;
import handspan.live.path.TargetStatus;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A session as it stood at one moment. The only way out for verbs and windows. Immutable.
 *
 * @param timeNanos the moment
 * @param link how the link stands
 * @param linkReason why, in words; may be empty
 * @param shape the line shape; empty while it is being learned
 * @param lines lines seen
 * @param readings readings made of them
 * @param bytes bytes seen
 * @param rejections lines rejected, by reason
 * @param text what lines say
 * @param question what has to be answered before the lines can be read; empty when nothing has
 * @param arrivals how lines arrive
 * @param activity what runs
 * @param targets where frames go
 * @param events the latest events, oldest first
 * @param done whether what was started is finished
 * @param seen the latest lines, and what became of each
 */
public record Snapshot(
        long timeNanos,
        LinkState link,
        String linkReason,
        Optional<LineShape> shape,
        long lines,
        long readings,
        long bytes,
        Map<Rejection, Long> rejections,
        LineNews text,
        String question,
        Arrivals arrivals,
        ActivityView activity,
        List<TargetStatus> targets,
        List<Event> events,
        boolean done,
        Recent<LineSeen> seen) {}
