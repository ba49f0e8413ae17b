package handspan.command;

import handspan.wiring.Ensemble;
import handspan.wiring.Member;

/**
 * Which keys do what while several instruments play: alone they are for all, after the number of an instrument they are
 * those of that one.
 */
final class EnsembleKeys {
    private final EnsembleStage stage;
    private final Ensemble ensemble;
    private volatile boolean quit;

    EnsembleKeys(EnsembleStage stage, Ensemble ensemble) {
        this.stage = stage;
        this.ensemble = ensemble;
    }

    void bind(Keys keys) {
        keys.on("", ensemble::turnMute);
        keys.on("m", ensemble::turnMute);
        keys.on("mute", () -> ensemble.mute(true));
        keys.on("open", () -> ensemble.mute(false));
        keys.on("q", () -> quit = true);
        for (Member member : ensemble.members()) {
            int number = member.seat().number();
            PlayKeys own = new PlayKeys(stage.talk().about(member.seat().name()), member.desk());
            own.bind(keys, number + " ");
            own.bind(keys, Integer.toString(number));
        }
        keys.afterEach(stage::typed);
    }

    boolean isQuit() {
        return quit;
    }
}
