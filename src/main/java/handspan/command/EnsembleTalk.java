package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.wiring.EchoWatch;
import handspan.wiring.Ensemble;
import handspan.wiring.Member;
import handspan.wiring.Recording;
import handspan.wiring.RemoteInstrument;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says what happens while several instruments play. Used by the thread that follows them. */
final class EnsembleTalk {
    private final EnsembleStage stage;
    private final Ensemble ensemble;
    private final List<MemberTalk> members;
    private final EchoWatch echoes;
    private final @Nullable RemoteTalk remote;
    private String toldNeighbours = "";

    /**
     * Nothing is said yet.
     *
     * @param recordings of those members that are recorded
     * @param remote orders from outside; null where none are obeyed
     */
    EnsembleTalk(
            EnsembleStage stage, Ensemble ensemble, Map<Member, Recording> recordings, @Nullable RemoteTalk remote) {
        this.stage = stage;
        this.ensemble = ensemble;
        this.members = ensemble.members().stream()
                .map(member -> new MemberTalk(stage.talk(), member, recordings.get(member)))
                .toList();
        this.echoes = new EchoWatch(ensemble);
        this.remote = remote;
    }

    /** Who plays, and what is obeyed from now on. */
    void begin() {
        members.forEach(MemberTalk::begin);
        if (remote != null) {
            remote.obey(ensemble.members().stream().map(EnsembleTalk::obeying).toList());
        }
    }

    private static RemoteInstrument obeying(Member member) {
        String room = member.seat().profile().room().name();
        return RemoteInstrument.of(member.seat().name(), room, member.desk(), member::snapshot);
    }

    /** Says what is new and, where it is time to, how all stand. */
    void look() {
        long nowNanos = ensemble.nowNanos();
        List<EnsembleTable.Row> rows =
                members.stream().map(member -> member.look(nowNanos)).toList();
        tellNeighbours(echoes.look(nowNanos));
        if (remote != null) {
            remote.look();
        }
        stage.show(rows, ensemble.seconds(), nowNanos);
    }

    /** Said when it comes up, not at each change of its figures. */
    private void tellNeighbours(String hint) {
        if (!hint.isEmpty() && toldNeighbours.isEmpty()) {
            stage.talk().say("hint: " + hint);
            stage.talk().event("neighbours", Map.of("hint", hint));
        }
        toldNeighbours = hint;
    }

    /**
     * The end, when all is closed.
     *
     * @param talk to the console
     * @return the highest exit code of any instrument
     */
    int conclude(Talk talk) {
        ObjectNode result = Talk.node();
        result.put("event", "result");
        ArrayNode instruments = result.putArray("instruments");
        int code = Exit.DONE;
        for (MemberTalk member : members) {
            code = Math.max(code, member.conclude(instruments.addObject()));
        }
        if (remote != null) {
            remote.look();
            result.set("remote", remote.counters(talk));
        }
        result.put("exitCode", code);
        talk.object(result);
        return code;
    }
}
