package handspan.command;

import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.wiring.EventReader;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.util.Map;

/** Says how the link to a board stands: the same for all verbs that follow a rig. */
final class LinkTalk {
    private final Talk talk;
    private final boolean port;
    private final EventReader events = new EventReader();

    LinkTalk(Talk talk, Source source) {
        this.talk = talk;
        this.port = source.kind() == Source.Kind.PORT;
    }

    /** Says beforehand what takes some seconds: a link speed is looked for while the port is opened. */
    static void announce(Talk talk, SourceArguments source) {
        if (source.source().kind() == Source.Kind.PORT && source.baud() == SourceOptions.AUTO) {
            talk.say("looking for the board's link speed: this takes up to ten seconds");
        }
    }

    /** Says what a snapshot has news of, for a verb that is not interested in anything else yet. */
    void hear(Snapshot snapshot) {
        if (port) {
            events.fresh(snapshot).forEach(this::tell);
        }
    }

    /** Says it, where it is about the link. */
    void tell(Event event) {
        if (event.what() instanceof Event.Linked linked) {
            String words = words(linked);
            if (!words.isEmpty()) {
                talk.say(words);
            }
            talk.event("link", Map.of("state", linked.state().word(), "reason", linked.reason()));
        } else {
            tellTrouble(talk, event);
        }
    }

    private String words(Event.Linked linked) {
        return switch (linked.state()) {
            case WAITING ->
                port || !linked.reason().isEmpty()
                        ? "link open, waiting for the board" + (linked.reason().isEmpty() ? "" : ": " + linked.reason())
                        : "";
            case UP -> port ? "lines come" : "";
            case LOST -> "link lost: " + linked.reason() + "; looking for it";
            case PAUSED -> linked.reason();
            case ENDED -> "";
            case CLOSED -> "link closed";
        };
    }

    /** Says it where the link is in trouble, for a verb that says nothing of a link that is well. */
    static void tellTrouble(Talk talk, Event event) {
        if (event.what() instanceof Event.Linked linked && linked.state() == LinkState.LOST) {
            talk.say("link lost: " + linked.reason() + "; looking for it");
            talk.event("link", Map.of("state", linked.state().word(), "reason", linked.reason()));
        } else if (event.what() instanceof Event.Linked linked
                && linked.state() == LinkState.WAITING
                && !linked.reason().isEmpty()) {
            talk.say("waiting for the board: " + linked.reason());
            talk.event("link", Map.of("state", linked.state().word(), "reason", linked.reason()));
        } else if (event.what() instanceof Event.LinkDoubt doubt) {
            talk.warn(doubt.words());
            talk.event("linkDoubt", Map.of("doubt", doubt.words()));
        }
    }
}
