package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.path.TargetStatus;
import handspan.live.session.ActivityView;
import handspan.live.session.Event;
import handspan.live.session.LinkState;
import handspan.live.session.Snapshot;
import handspan.music.send.PlayState;
import handspan.music.send.SoundFrame;
import handspan.number.units.Decibels;
import handspan.number.units.Figures;
import handspan.wiring.EventReader;
import handspan.wiring.Member;
import handspan.wiring.Recording;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Says what happens to one instrument of an ensemble, and how it stands. */
final class MemberTalk {
    private final Member member;
    private final Talk talk;
    private final PlayTalk words;
    private final RecordingTalk taken;
    private final @Nullable Recording recording;
    private final EventReader events = new EventReader();
    private String told = "";
    private String end = "";
    private int exit = Exit.DONE;

    /**
     * Nothing is said yet.
     *
     * @param recording of what comes; null for none
     */
    MemberTalk(Talk talk, Member member, @Nullable Recording recording) {
        this.member = member;
        this.talk = talk.about(member.seat().name());
        this.words = new PlayTalk(this.talk, member.source(), member.out().tone());
        this.taken = new RecordingTalk(this.talk, recording, "playing");
        this.recording = recording;
    }

    /** Which it is. */
    void begin() {
        ObjectNode node = Talk.node();
        node.put("event", "seat");
        node.put("number", member.seat().number());
        node.put("room", member.seat().room());
        node.put("source", member.source().text());
        talk.object(node);
    }

    /** Says what is new, and the row of the table. */
    EnsembleTable.Row look(long nowNanos) {
        Optional<Snapshot> seen = member.snapshot();
        seen.ifPresent(this::hear);
        taken.look();
        String trouble = member.trouble();
        if (!trouble.isEmpty() && !trouble.equals(told)) {
            talk.warn(trouble + (member.isOver() ? "" : "; looking for it"));
            ObjectNode node = Talk.node();
            node.put("event", "trouble");
            node.put("trouble", trouble);
            talk.object(node);
        }
        told = trouble;
        return seen.map(snapshot -> row(snapshot, nowNanos))
                .orElseGet(() -> row("", member.isOver() ? "sits out" : "missing", "", "", "", trouble));
    }

    private void hear(Snapshot snapshot) {
        for (Event event : events.fresh(snapshot)) {
            int code = words.hear(event, snapshot, member.desk());
            exit = Math.max(exit, code);
            end = code == Exit.DONE ? end : end(event);
        }
        words.show(snapshot, member.out().status(), false);
    }

    private static String end(Event event) {
        if (event.what() instanceof Event.Refused refused) {
            return refused.reason();
        } else if (event.what() instanceof Event.Ambiguous ambiguous) {
            return ambiguous.either().question();
        } else if (event.what() instanceof Event.Failed failed) {
            return failed.reason();
        }
        return "";
    }

    private EnsembleTable.Row row(Snapshot snapshot, long nowNanos) {
        String link = snapshot.link().word();
        String wrong = wrong(snapshot, nowNanos);
        if (!(snapshot.activity() instanceof ActivityView.Playing playing)) {
            return row(link, end.isEmpty() ? "waiting" : "stopped", "", "", "", wrong);
        }
        boolean sounds = playing.state() == PlayState.PLAYING && playing.frame().isPresent();
        if (!sounds) {
            return row(link, playing.state().word(), "", "", "", wrong);
        }
        SoundFrame frame = playing.frame().get();
        return row(
                link,
                playing.state().word(),
                playing.tuning().spelling().name(frame.key()),
                String.format(Locale.ROOT, "%+d", Math.round(frame.centsFromKey())),
                frame.gain01() > 0 ? Figures.text(Decibels.of(frame.gain01()), 1) : "silent",
                wrong);
    }

    private EnsembleTable.Row row(String link, String state, String note, String cents, String level, String wrong) {
        return new EnsembleTable.Row(
                member.seat().number(),
                member.seat().name(),
                member.seat().room(),
                link,
                state,
                note,
                cents,
                level,
                wrong);
    }

    /** The one thing that is most wrong. */
    private String wrong(Snapshot snapshot, long nowNanos) {
        if (!member.trouble().isEmpty()) {
            return member.trouble();
        } else if (member.isStuck(nowNanos)) {
            return "does not answer any more: quit and start again";
        } else if (!end.isEmpty() && !(snapshot.activity() instanceof ActivityView.Playing)) {
            return end;
        } else if (snapshot.link() == LinkState.LOST || snapshot.link() == LinkState.WAITING) {
            return snapshot.linkReason();
        } else if (!snapshot.question().isEmpty()) {
            return snapshot.question();
        }
        String ofPlaying = snapshot.activity() instanceof ActivityView.Playing playing ? ofPlaying(playing) : "";
        return ofPlaying.isEmpty() ? ofWaysOut() : ofPlaying;
    }

    private static String ofPlaying(ActivityView.Playing playing) {
        return !playing.sensorTrouble().isEmpty()
                ? playing.sensorTrouble()
                : !playing.lightMute().isEmpty() ? playing.lightMute() : playing.hint();
    }

    private String ofWaysOut() {
        if (recording != null && !recording.trouble().isEmpty()) {
            return recording.trouble();
        }
        return member.out().status().stream()
                .map(TargetStatus::trouble)
                .filter(trouble -> !trouble.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** The end: sums up, when all is closed; the exit code. */
    int conclude(ObjectNode result) {
        member.snapshot().ifPresent(this::hear);
        taken.close();
        result.put("number", member.seat().number());
        result.put("instrument", member.seat().name());
        result.put("room", member.seat().room());
        result.put("trouble", member.trouble().isEmpty() ? end : member.trouble());
        int code = exit;
        Optional<Snapshot> last = member.snapshot();
        if (last.isPresent()) {
            code = words.sum(result, last.get(), member.out().status(), exit);
        } else {
            code = member.seat().refusal().isPresent() ? Exit.USAGE : Exit.INSTRUMENT;
            result.put("exitCode", code);
        }
        String midi = member.out().midiFileTrouble();
        if (!midi.isEmpty()) {
            talk.warn(midi);
            code = Math.max(code, Exit.FILE);
            result.put("exitCode", code);
        }
        return code;
    }
}
