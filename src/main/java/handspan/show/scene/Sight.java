package handspan.show.scene;

import handspan.instrument.sensor.Instrument;
import handspan.music.tuning.Tuning;
import handspan.profile.RoomProfile;
import handspan.room.HandRole;
import handspan.room.Room;

/**
 * What a chart that moves with the evening shows. Those of one {@link #key} are one chart, which goes on from page to
 * page.
 */
public sealed interface Sight {
    /** By which its chart is known again when something of it has changed. */
    default Object key() {
        return this;
    }

    /** The last ten seconds of a number of which no more is known than its label or position. */
    record Slot(String channel) implements Sight {}

    /** The last ten seconds of a hand's number, before there is a room. */
    record Hand(Instrument instrument, HandRole role) implements Sight {}

    /** The last ten seconds of a hand's number, with the play zone of a room. */
    record HandInRoom(Room room, HandRole role) implements Sight {}

    /** The noise of the latest hold of a hand. */
    record HoldNoise(Instrument instrument, HandRole role) implements Sight {}

    /** What a hand's sensor says against where the hand is, with the holds and what is left of them. */
    record Response(Room room, HandRole role) implements Sight {}

    /** Where the notes lie, with the hand that plays on them. */
    record Ladder(RoomProfile profile, Tuning tuning) implements Sight {
        @Override
        public Object key() {
            return new Key(Ladder.class, profile.room());
        }
    }

    /** How steady against how quick, with what is chosen. */
    record Feel(RoomProfile profile, Tuning tuning) implements Sight {
        @Override
        public Object key() {
            return new Key(Feel.class, profile.room());
        }
    }

    /** How loud the level hand plays, with the hand. */
    record Level(RoomProfile profile) implements Sight {
        @Override
        public Object key() {
            return new Key(Level.class, profile.room());
        }
    }

    /** The pitch of the last ten seconds. */
    record Sent(Tuning tuning) implements Sight {
        @Override
        public Object key() {
            return Sent.class;
        }
    }

    /** A chart of a kind for a room. */
    record Key(Class<? extends Sight> kind, Room room) {}
}
