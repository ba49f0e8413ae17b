package handspan.outside.osc;

import handspan.music.send.NetworkTarget;

/** What is said of a target in trouble. */
final class TargetWords {
    private TargetWords() {}

    static String lookingUp(NetworkTarget target) {
        return "looking up " + target.host() + " for " + target.text();
    }

    static String connecting(NetworkTarget target) {
        return "connecting to " + target.text();
    }

    static String unknownHost(NetworkTarget target) {
        return "host '" + target.host()
                + "' is not known: check how it is written and that the network is up, or give its number";
    }

    static String nobodyListens(NetworkTarget target) {
        return "nobody listens at " + target.text() + ": start the sound patch or name its port";
    }

    static String hungUp(NetworkTarget target) {
        return target.text() + " has ended the connection: start the sound patch again; it is connected as soon as it"
                + " listens";
    }

    static String cannotOpen(NetworkTarget target, Exception why) {
        return target.text() + " can't be opened (" + reason(why) + "): check the network";
    }

    static String cannotReach(NetworkTarget target, Exception why) {
        return target.text() + " can't be reached (" + reason(why) + "): check the network";
    }

    static String tooSlow(NetworkTarget target) {
        return "the network is too slow for " + target.text() + ": frames are left out";
    }

    /** Of a trouble that says it all. */
    static String plain(WrongWayException why) {
        return reason(why);
    }

    private static String reason(Exception e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }
}
