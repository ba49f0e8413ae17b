package handspan.show.scene;

import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.number.units.Figures;
import handspan.wiring.evening.EveningView;
import java.util.stream.Collectors;

/** How the link stands, in words. */
final class Links {
    private Links() {}

    static Tone tone(EveningView evening) {
        if (evening.snapshot().isEmpty()) {
            return evening.arrival().trouble().isEmpty() ? Tone.QUIET : Tone.BAD;
        }
        return switch (evening.snapshot().get().link()) {
            case UP -> Tone.GOOD;
            case PAUSED -> Tone.QUIET;
            case WAITING, CLOSED, ENDED -> Tone.LOOK;
            case LOST -> Tone.BAD;
        };
    }

    static String few(EveningView evening) {
        if (evening.snapshot().isEmpty()) {
            return "no instrument";
        }
        return switch (evening.snapshot().get().link()) {
            case UP -> "lines come";
            case PAUSED -> evening.snapshot().get().linkReason();
            case WAITING, CLOSED -> "waiting for the board";
            case ENDED -> "recording is over";
            case LOST -> "link lost";
        };
    }

    static String words(Snapshot snapshot, String source) {
        String reason = snapshot.linkReason().isEmpty() ? "" : ": " + snapshot.linkReason();
        String words = switch (snapshot.link()) {
            case UP -> source + ": lines come" + reason;
            case PAUSED -> source + reason;
            case WAITING, CLOSED -> source + " is open; boards start anew when their port is opened" + reason;
            case ENDED -> source + " is over: open it again to hear it once more";
            case LOST -> source + " is lost" + reason + "; it is looked for, and taken up by itself";
        };
        return snapshot.link() == LinkState.UP ? words + leftOut(snapshot) : words;
    }

    private static String leftOut(Snapshot snapshot) {
        if (snapshot.rejections().isEmpty()) {
            return "; " + Figures.count(snapshot.lines()) + " so far";
        }
        return "; " + Figures.count(snapshot.lines()) + " so far, left out "
                + snapshot.rejections().entrySet().stream()
                        .map(entry -> Figures.count(entry.getValue()) + " "
                                + entry.getKey().words())
                        .collect(Collectors.joining(", "));
    }
}
