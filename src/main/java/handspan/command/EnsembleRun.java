package handspan.command;

import handspan.live.session.LinkException;
import handspan.profile.ProfileException;
import handspan.wiring.Ensemble;
import handspan.wiring.Member;
import handspan.wiring.Recording;
import handspan.wiring.Rigs;
import handspan.wiring.Seat;
import handspan.wiring.WaysOut;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Several rooms are played at once: each is an instrument of its own. */
final class EnsembleRun {
    private final PlayVerb verb;
    private final Map<Member, Recording> recordings = new LinkedHashMap<>();

    EnsembleRun(PlayVerb verb) {
        this.verb = verb;
    }

    int run(Talk talk) throws UsageException, LinkException, IOException, ProfileException {
        EnsembleSources sources = new EnsembleSources(verb);
        List<Seat> seats = new EnsembleSeats(verb).all(talk);
        List<WaysOut> outs = new ArrayList<>();
        List<Member> members = new ArrayList<>();
        try {
            for (Seat seat : seats) {
                outs.add(verb.outs.open(talk, seat.profile(), files(seat), sources.byTheClock()));
            }
            List<EnsembleSources.Spot> spots = sources.spots(talk, seats);
            for (int i = 0; i < seats.size(); i++) {
                members.add(member(seats.get(i), spots.get(i), outs.get(i)));
            }
        } catch (UsageException | LinkException | IOException | RuntimeException e) {
            members.forEach(Member::close);
            outs.forEach(WaysOut::close);
            throw e;
        }
        return play(talk, Ensemble.of(members, sources.byTheClock()), sources.byTheClock());
    }

    private static SeatFiles files(Seat seat) {
        return new SeatFiles(seat.number(), seat.name());
    }

    private Member member(Seat seat, EnsembleSources.Spot spot, WaysOut out) throws UsageException, IOException {
        Path file = files(seat).in(verb.how.record, "--record", Recording.SUFFIX);
        Recording recording = file == null
                ? null
                : Recording.into(
                        file,
                        Rigs.dateAndTime(),
                        seat.name(),
                        spot.source(),
                        spot.options().baud());
        Member member = new Member(seat, spot.source(), out, recording, spot.opener());
        if (recording != null) {
            recordings.put(member, recording);
        }
        return member;
    }

    private int play(Talk talk, Ensemble all, boolean byTheClock) throws UsageException, LinkException {
        EnsembleStage stage =
                EnsembleStage.of(talk, verb.parent(), all.members().size());
        recordings.values().forEach(recording -> Takes.told(recording, stage.talk()));
        try (Ensemble ensemble = all;
                RemoteTalk orders = verb.remote.open(stage.talk(), byTheClock);
                Keys keys = new Keys(stage.talk(), verb.parent().in());
                AtExit atExit = AtExit.run(ensemble::close)) {
            EnsembleTalk words = new EnsembleTalk(stage, ensemble, recordings, orders);
            words.begin();
            ensemble.start();
            if (ensemble.members().get(0).seat().settings().startMuted()) {
                stage.talk().say("muted: press Enter to let all sound through, q and Enter to quit");
            }
            EnsembleKeys ensembleKeys = new EnsembleKeys(stage, ensemble);
            ensembleKeys.bind(keys);
            keys.listen();
            ensemble.follow(() -> {
                words.look();
                return !verb.how.isOver(ensemble.seconds()) && !ensembleKeys.isQuit();
            });
            ensemble.close();
            stage.end();
            int code = words.conclude(talk);
            talk.say("log: " + talk.log().file());
            return code;
        }
    }
}
