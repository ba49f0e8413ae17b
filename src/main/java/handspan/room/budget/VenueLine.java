package handspan.room.budget;

import handspan.instrument.line.Rejection;
import handspan.number.units.Figures;
import handspan.room.HandRole;
import handspan.room.Hold;
import handspan.room.Room;
import handspan.room.StepKind;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One line of a sound check.
 *
 * @param what was looked at: link, a sensor, room, a target
 * @param grade how it stands
 * @param reason with figures
 * @param remedy what to do; empty when there is nothing to do
 */
public record VenueLine(String what, Grade grade, String reason, String remedy) {
    /**
     * Lines a second that differ by more than this are no longer the room's (common practice; a clock is far better).
     */
    private static final double RATE_PERCENT = 15;

    /** Fewer lines are too few for a rate. */
    private static final long FEWEST_LINES = 20;

    /** So much that is no text means another baud rate. */
    private static final double GARBLED_PERCENT = 30;

    private static final double REJECTED_PERCENT = 5;

    /** Noise that has doubled is worth a look; RoomCheck says from where it is another instrument. */
    private static final double NOISE_TIMES = 2;

    /** Steady beyond what this sensor was: it may print one value for ever. */
    private static final double STUCK_TIMES = 0.1;

    /** How something stands, the best first. */
    public enum Grade {
        /** As it should be. */
        GOOD,
        /** It could not be looked at. */
        NOT_CHECKED,
        /** Worth a look before the set. */
        LOOK,
        /** It will not do. */
        BAD;

        /** The word for people. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    /** Something that could not be looked at. */
    public static VenueLine notChecked(String what, String reason) {
        return new VenueLine(what, Grade.NOT_CHECKED, reason, "");
    }

    /**
     * The link.
     *
     * @param lines seen, whole ones
     * @param rejections lines that did not become a reading
     * @param ratePerS readings a second; 0 while unknown
     * @param roomRatePerS what the room was measured with
     */
    public static VenueLine link(long lines, Map<Rejection, Long> rejections, double ratePerS, double roomRatePerS) {
        long rejected = rejections.entrySet().stream()
                .filter(entry -> entry.getKey() != Rejection.SETTLING)
                .mapToLong(Map.Entry::getValue)
                .sum();
        long garbled = rejections.getOrDefault(Rejection.NOT_TEXT, 0L);
        String seen =
                Figures.count(lines) + " lines, " + Figures.text(ratePerS, 1) + " readings a second (the room has "
                        + Figures.text(roomRatePerS, 1) + "), " + Figures.count(rejected) + " rejected, "
                        + Figures.count(garbled)
                        + " of them no text";
        if (lines == 0) {
            return new VenueLine(
                    "link", Grade.BAD, "no line came", "look whether the board's program runs, and at its baud rate");
        }
        if (100.0 * garbled > GARBLED_PERCENT * lines) {
            return new VenueLine("link", Grade.BAD, seen, "this looks like another baud rate: try --baud");
        }
        if (100.0 * rejected > REJECTED_PERCENT * lines) {
            return new VenueLine(
                    "link",
                    Grade.LOOK,
                    seen,
                    "look at the cable, and whether another program reads the port; 'handspan watch' names the reasons");
        }
        if (lines >= FEWEST_LINES && Math.abs(ratePerS / roomRatePerS - 1) * 100 > RATE_PERCENT) {
            return new VenueLine(
                    "link",
                    Grade.LOOK,
                    seen,
                    "the board prints at another pace than when the room was calibrated: if its program was changed,"
                            + " calibrate anew");
        }
        return new VenueLine("link", Grade.GOOD, seen, "");
    }

    /**
     * The sensor of a hand, as far as fresh holds tell.
     *
     * @param room as it was kept
     * @param hand which; must be in the room
     * @param holds fresh ones
     */
    public static VenueLine sensor(Room room, HandRole hand, List<Hold> holds) {
        String what = "sensor of the " + hand.name().toLowerCase(Locale.ROOT) + " hand";
        List<Hold> own = holds.stream()
                .filter(hold -> hold.hand() == hand && hold.kind() != StepKind.REST)
                .toList();
        if (own.isEmpty()) {
            return notChecked(what, "nothing was held before it");
        }
        if (hand == HandRole.LEVEL) {
            return new VenueLine(
                    what, Grade.GOOD, "reads, " + own.get(own.size() - 1).count() + " measurements", "");
        }
        double times = RoomCheck.noiseTimes(own, room.pitch());
        String reason = "reads; noise "
                + Figures.text(times * Math.max(room.pitch().noiseMm(), 0.5), 2) + " mm at most (the room has "
                + Figures.text(room.pitch().noiseMm(), 2) + " mm)";
        if (times > NOISE_TIMES) {
            return new VenueLine(
                    what, Grade.LOOK, reason, "look at supply, sleeve and lamps; 'handspan survey' finds out more");
        }
        if (times < STUCK_TIMES) {
            return new VenueLine(
                    what,
                    Grade.LOOK,
                    reason,
                    "does the value move with the hand? If not, switch the sensor off and on");
        }
        return new VenueLine(what, Grade.GOOD, reason, "");
    }

    /** The room itself. */
    public static VenueLine room(RoomCheck check) {
        Grade grade = switch (check.verdict()) {
            case FITS -> Grade.GOOD;
            case LIGHT_ONLY -> Grade.LOOK;
            case CALIBRATE_AGAIN, INSTRUMENT_CHANGED -> Grade.BAD;
        };
        return new VenueLine("room", grade, check.words(), check.remedy());
    }

    /**
     * A target.
     *
     * @param target its written form
     * @param sent messages that went out
     * @param refused those that met "nobody listens there"
     * @param trouble in words; empty when there is none
     */
    public static VenueLine target(String target, long sent, long refused, String trouble) {
        String what = "target " + target;
        if (sent == 0 && refused == 0) {
            return new VenueLine(
                    what, Grade.BAD, "nothing could be sent", trouble.isEmpty() ? "look at the network" : trouble);
        }
        if (refused > 0 || !trouble.isEmpty()) {
            return new VenueLine(
                    what,
                    Grade.LOOK,
                    Figures.count(sent) + " silent messages sent, " + Figures.count(refused) + " refused",
                    trouble);
        }
        String limit = target.startsWith("udp") ? " (UDP tells no more)" : "";
        return new VenueLine(what, Grade.GOOD, Figures.count(sent) + " silent messages sent, none refused" + limit, "");
    }

    /** The worst of several; good when there are none. */
    public static Grade worst(List<VenueLine> lines) {
        return lines.stream().map(VenueLine::grade).max(Grade::compareTo).orElse(Grade.GOOD);
    }
}
