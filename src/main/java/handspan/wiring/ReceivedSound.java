package handspan.wiring;

import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.outside.osc.packet.ReceivedMessage;
import java.util.ArrayList;
import java.util.List;

/** What a receiver has heard of pitch and level, to be read back moment by moment. */
final class ReceivedSound {
    private record Heard(long timeNanos, boolean isPitch, double value) {}

    private final String pitchAddress;
    private final String levelAddress;
    private final List<Heard> heard = new ArrayList<>();
    private int next;
    private double pitchHz;
    private double gain01;

    ReceivedSound(List<SendLine> lines) {
        this.pitchAddress = address(lines, SendValue.PITCH);
        this.levelAddress = address(lines, SendValue.LEVEL);
    }

    private static String address(List<SendLine> lines, SendValue value) {
        return lines.stream()
                .filter(line -> line.value() == value)
                .map(SendLine::address)
                .findFirst()
                .orElseThrow();
    }

    /** Called by the receiver's thread. */
    synchronized void onMessage(ReceivedMessage message) {
        boolean pitch = message.address().equals(pitchAddress);
        if ((pitch || message.address().equals(levelAddress))
                && message.arguments().get(0) instanceof Float value) {
            heard.add(new Heard(message.timeNanos(), pitch, value));
        }
    }

    /** Goes on to a later moment. */
    synchronized void moveTo(long timeNanos) {
        while (next < heard.size() && heard.get(next).timeNanos() <= timeNanos) {
            if (heard.get(next).isPitch()) {
                pitchHz = heard.get(next).value();
            } else {
                gain01 = heard.get(next).value();
            }
            next++;
        }
    }

    /** Frequency heard last; 0 before the first. */
    synchronized double pitchHz() {
        return pitchHz;
    }

    /** Gain heard last. */
    synchronized double gain01() {
        return gain01;
    }
}
