package handspan.outside.serial;

import handspan.live.session.LinkException;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the speed of a link by trying: listens at each of the usual speeds and takes the first at which the board's
 * bytes are lines ({@link TextJudge}). The port stays open meanwhile, so that the board starts anew only once.
 */
final class BaudTrial {
    /** Speeds of hobby boards, the commonest first (common practice); 74880 is a boot message's. */
    static final List<Integer> RATES = List.of(115_200, 9600, 57_600, 38_400, 19_200, 250_000, 74_880);

    /** A board that started anew as its port was opened speaks within 3 s (common practice). */
    private static final int BOOT_MS = 3500;

    private static final int LISTEN_MS = 700;
    /** Text with too few lines for a judgement: a slow board. */
    private static final int LISTEN_LONGER_MS = 2500;

    private static final int READ_MS = 100;
    private static final int ENOUGH_BYTES = 400;
    private static final int MOST_BYTES = 4096;

    /** What came of it. */
    record Found(int baud, String words) {}

    private final TunablePort port;
    private final List<String> seen = new ArrayList<>();
    private boolean spoke;

    BaudTrial(TunablePort port) {
        this.port = port;
    }

    /**
     * Tries.
     *
     * @param name of the port, for the words
     * @throws LinkException when no speed gives lines, with what was seen at each
     */
    Found run(String name) throws LinkException {
        // twice round: a board may have been starting, or printing something else, while its own speed was tried
        for (int round = 0; round < 2; round++) {
            seen.clear();
            for (int rate : RATES) {
                TextJudge judge = listen(rate);
                if (judge.isGood()) {
                    return new Found(rate, rate + " baud found by trying: " + judge.words());
                }
                seen.add("at " + rate + ": " + judge.words());
                if (!spoke) {
                    throw new LinkException(
                            LinkException.Kind.REFUSED,
                            "nothing came from '" + name + "' within " + BOOT_MS / 1000.0
                                    + " s, so that no speed could be tried: is the board's program running?");
                }
            }
        }
        throw new LinkException(
                LinkException.Kind.REFUSED,
                "no usual speed gives lines of numbers from '" + name + "' (" + String.join("; ", seen)
                        + "): look for the speed in the board's program and say --baud N");
    }

    private TextJudge listen(int rate) throws LinkException {
        port.baud(rate);
        byte[] all = new byte[MOST_BYTES];
        byte[] some = new byte[MOST_BYTES];
        int count = 0;
        int waitedMs = 0;
        int limitMs = spoke ? LISTEN_MS : BOOT_MS;
        TextJudge judge = TextJudge.of(all, 0);
        while (waitedMs < limitMs && count < ENOUGH_BYTES) {
            int got = port.collect(some, READ_MS);
            if (got < 0) {
                throw new LinkException(
                        LinkException.Kind.MISSING, "the port went away while its speed was looked for: try again");
            }
            waitedMs += READ_MS;
            if (got > 0 && !spoke) {
                spoke = true;
                waitedMs = 0;
                limitMs = LISTEN_MS;
            }
            int taken = Math.min(got, MOST_BYTES - count);
            System.arraycopy(some, 0, all, count, taken);
            count += taken;
            judge = TextJudge.of(all, count);
            if (waitedMs >= limitMs && judge.isUndecided() && limitMs < LISTEN_LONGER_MS) {
                limitMs = LISTEN_LONGER_MS;
            }
            if (judge.isGood() && judge.lines() >= 12) {
                return judge;
            }
        }
        return judge;
    }
}
