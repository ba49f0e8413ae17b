package handspan.wiring;

import handspan.instrument.sensor.Instrument;
import handspan.profile.ProfileException;
import handspan.profile.ProfileFolder;
import handspan.room.Room;
import java.util.Optional;

/**
 * The instruments whose files lie beside the rooms. A room holds a copy of its instrument; where the file has a newer
 * revision, the instrument was rebuilt since, and how its sensors respond must be taken anew.
 */
public final class InstrumentShelf {
    private final ProfileFolder folder;

    /** The shelf of a folder of rooms. */
    public InstrumentShelf(ProfileFolder folder) {
        this.folder = folder;
    }

    /**
     * An instrument with the revision it is known by.
     *
     * @param rebuilt whether it was rebuilt since its file was written: it then gets the next revision
     */
    public Instrument known(Instrument instrument, boolean rebuilt) throws ProfileException {
        Optional<Instrument> kept = folder.instrument(instrument.name());
        int revision =
                Math.max(instrument.revision(), kept.map(Instrument::revision).orElse(1));
        return instrument.atRevision(rebuilt && kept.isPresent() ? revision + 1 : revision);
    }

    /** Keeps the file of an instrument that a room was made with, unless it tells the same already. */
    public void keep(Instrument instrument) throws ProfileException {
        Optional<Instrument> kept = folder.instrument(instrument.name());
        if (kept.isEmpty() || kept.get().revision() < instrument.revision()) {
            folder.saveInstrument(instrument);
        }
    }

    /** That a room's instrument was rebuilt since, and what to do; empty when it was not. */
    public Optional<String> rebuiltSince(Room room) throws ProfileException {
        Instrument then = room.instrument();
        return folder.instrument(then.name())
                .filter(now -> now.revision() > then.revision())
                .map(now -> "room '" + room.name() + "' was made with revision " + then.revision() + " of '"
                        + then.name() + "', which is at revision " + now.revision()
                        + " now: its response must be re-taken with 'handspan calibrate SOURCE --room " + room.name()
                        + " --replace'");
    }
}
