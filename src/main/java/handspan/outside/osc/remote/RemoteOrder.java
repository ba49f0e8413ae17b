package handspan.outside.osc.remote;

/** What a message asks for. All are absolute: said twice, or again because one was lost, they do no harm. */
public sealed interface RemoteOrder {
    /** In words. */
    String words();

    /** Close or open the sound. */
    record Mute(boolean on) implements RemoteOrder {
        @Override
        public String words() {
            return on ? "mute" : "open";
        }
    }

    /** The tuning with a name. */
    record TuningByName(String name) implements RemoteOrder {
        @Override
        public String words() {
            return "tuning '" + name + "'";
        }
    }

    /** A tuning by its place in the room, from 1. */
    record TuningByNumber(int number) implements RemoteOrder {
        @Override
        public String words() {
            return "tuning " + number;
        }
    }

    /** So many semitones added to the transposition of the tuning. */
    record Transpose(int semitones) implements RemoteOrder {
        @Override
        public String words() {
            return "transpose by " + semitones;
        }
    }

    /** So many cents added to the trim of the tuning. */
    record Trim(double cents) implements RemoteOrder {
        @Override
        public String words() {
            return "trim by " + cents + " cents";
        }
    }

    /** Take the present light as the open level. */
    record RetakeLight() implements RemoteOrder {
        @Override
        public String words() {
            return "take the light again";
        }
    }

    /** Tell the sender how all stands. */
    record Tell() implements RemoteOrder {
        @Override
        public String words() {
            return "tell the state";
        }
    }
}
