package handspan.command;

import handspan.live.session.LinkException;
import handspan.live.session.PortInfo;
import handspan.wiring.OpenSource;
import handspan.wiring.Rigs;
import handspan.wiring.Roll;
import handspan.wiring.Seat;
import handspan.wiring.Source;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Says whom the roll calls, and what came of it. */
final class RollTalk implements Roll.Caller {
    private final Talk talk;

    RollTalk(Talk talk) {
        this.talk = talk;
    }

    /** All serial ports of this machine, which may be free. */
    static List<Source> ports() {
        return Rigs.ports(false).stream()
                .filter(PortInfo::canBeOpened)
                .map(port -> new Source(Source.Kind.PORT, port.name()))
                .toList();
    }

    /** Opens one source after another. */
    interface Opener {
        OpenSource open(Source source) throws LinkException, IOException;
    }

    /**
     * Opens what can be opened; what can't is said.
     *
     * @throws LinkException where none can
     */
    List<OpenSource> open(List<Source> sources, Opener opener) throws LinkException, IOException {
        List<OpenSource> open = new ArrayList<>();
        for (Source source : sources) {
            try {
                open.add(opener.open(source));
            } catch (LinkException e) {
                talk.warn(String.valueOf(e.getMessage()));
            }
        }
        if (open.isEmpty()) {
            throw new LinkException(
                    LinkException.Kind.MISSING,
                    "no board to be claimed: 'handspan ports' lists what is there; plug the boards in, or name their"
                            + " ports");
        }
        return open;
    }

    @Override
    public void away() {
        talk.say("all hands away from all instruments, for some seconds");
        talk.event("away", Map.of());
    }

    @Override
    public void calls(Seat seat) {
        Talk own = talk.about(seat.name());
        own.say("wave your hand over your instrument (room " + seat.room() + "), all others away");
        own.event("called", Map.of("room", seat.room()));
    }

    @Override
    public void again(Seat seat, String why) {
        Talk own = talk.about(seat.name());
        own.say("once more: " + why);
        own.event("calledAgain", Map.of("reason", why));
    }

    @Override
    public void has(Seat seat, Source source, boolean byWave) {
        Talk own = talk.about(seat.name());
        own.say("is at " + source.text() + (byWave ? "" : ", known by its USB identity"));
        own.event("claimed", Map.of("source", source.text(), "byWave", byWave));
    }

    @Override
    public void hasNone(Seat seat, String why) {
        Talk own = talk.about(seat.name());
        own.warn("has no board: " + why);
        own.event("unclaimed", Map.of("reason", why));
    }
}
