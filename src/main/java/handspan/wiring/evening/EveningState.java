package handspan.wiring.evening;

import handspan.live.session.Command;
import handspan.profile.RoomProfile;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** How an evening stands, shared by its parts; changed by any of their threads, one change at a time. */
final class EveningState {
    private final Object changing = new Object();
    private volatile EveningView view;
    private volatile @Nullable OpenInstrument open;

    EveningState(EveningView first) {
        this.view = first;
    }

    EveningView view() {
        return view;
    }

    void change(UnaryOperator<EveningView> changed) {
        synchronized (changing) {
            view = changed.apply(view);
        }
    }

    /** The instrument that is open. */
    Optional<OpenInstrument> instrument() {
        return Optional.ofNullable(open);
    }

    void opened(@Nullable OpenInstrument instrument) {
        open = instrument;
    }

    /** The instrument that is open, where there has to be one. */
    OpenInstrument needInstrument() {
        return instrument().orElseThrow(() -> new IllegalArgumentException("no instrument is open: choose one first"));
    }

    /** The room that is worked on, where there has to be one. */
    RoomProfile needProfile() {
        return view.keeping()
                .profile()
                .orElseThrow(() -> new IllegalArgumentException("there is no room yet: make one, or load one"));
    }

    /** Tells the open instrument to do something; nothing where none is open. */
    void order(Command command) {
        OpenInstrument instrument = open;
        if (instrument != null) {
            instrument.submit(command);
        }
    }

    void arrivalTrouble(String words) {
        change(seen -> seen.with(seen.arrival().troubled(words)));
    }

    void keepingTrouble(String words) {
        change(seen -> seen.with(seen.keeping().troubled(words)));
    }

    void soundTrouble(String words) {
        change(seen -> seen.with(seen.sounding().troubled(words)));
    }

    void measuringTrouble(String words) {
        change(seen -> seen.with(new Measuring(
                Optional.empty(), seen.measuring().refusals(), seen.measuring().check(), words)));
    }
}
