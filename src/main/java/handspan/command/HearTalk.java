package handspan.command;

import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.number.units.Figures;
import handspan.number.units.Nanos;
import handspan.wiring.Ears;
import handspan.wiring.HeardPacket;
import handspan.wiring.HeardPart;
import handspan.wiring.Rigs;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** Says what is heard. */
final class HearTalk {
    private static final String INDENT = "    ";

    private final Talk talk;
    private final @Nullable Predicate<String> wanted;
    private final long startNanos;
    private long packets;
    private long bundles;
    private long messages;
    private long shown;
    private long malformed;
    private String toldTrouble = "";

    /**
     * Nothing heard yet.
     *
     * @param wanted which addresses are of interest, null for all; bundles are then told only where there is something
     *     to tell of them
     */
    HearTalk(Talk talk, @Nullable Predicate<String> wanted, long startNanos) {
        this.talk = talk;
        this.wanted = wanted;
        this.startNanos = startNanos;
    }

    /** Messages that were told. */
    long shown() {
        return shown;
    }

    /** Parts of packets that are no Open Sound Control. */
    long malformed() {
        return malformed;
    }

    /** A packet. */
    void tell(HeardPacket packet) {
        packets++;
        double timeS = Nanos.toSeconds(packet.timeNanos() - startNanos);
        String head = Figures.text(timeS, 3) + "  " + packet.from() + "  ";
        List<HeardPart> heads = new ArrayList<>();
        for (HeardPart part : packet.parts()) {
            heads.removeIf(bundle -> bundle.depth() >= part.depth());
            if (part instanceof HeardPart.Bundle bundle) {
                bundles++;
                if (wanted == null || !bundle.usual()) {
                    heads.add(part);
                }
            } else if (isWanted(part)) {
                // a bundle is told with the first of its parts that is
                heads.forEach(bundle -> say(head, bundle));
                heads.clear();
                say(head, part);
                object(packet, part, timeS);
            }
        }
        if (packet.parts().size() == 1) {
            heads.forEach(empty -> say(head, empty));
        }
    }

    private boolean isWanted(HeardPart part) {
        if (part instanceof HeardPart.Message message) {
            messages++;
            boolean told = wanted == null || wanted.test(message.address());
            shown += told ? 1 : 0;
            return told;
        }
        malformed++;
        return true;
    }

    private void say(String head, HeardPart part) {
        if (!talk.isJson()) {
            talk.say(head + INDENT.repeat(part.depth()) + part.words());
        }
    }

    private void object(HeardPacket packet, HeardPart part, double timeS) {
        Map<String, @Nullable Object> fields = new LinkedHashMap<>();
        fields.put("timeS", timeS);
        fields.put("from", packet.from());
        fields.put("packet", packets);
        fields.put("depth", part.depth());
        if (part instanceof HeardPart.Message message) {
            fields.put("timeTag", message.timeTag().orElse(null));
            fields.put("address", message.address());
            fields.put("typeTags", message.typeTags());
            fields.put("arguments", message.values());
            fields.put("remark", message.remark());
            talk.event("message", fields);
        } else if (part instanceof HeardPart.Malformed broken) {
            fields.put("rule", broken.rule());
            fields.put("atByte", broken.atByte());
            fields.put("bytes", broken.bytes());
            fields.put("hex", broken.hex());
            talk.event("malformed", fields);
        }
    }

    /** Trouble with listening, once. */
    void tellTrouble(Ears ears) {
        if (!ears.trouble().equals(toldTrouble)) {
            toldTrouble = ears.trouble();
            talk.warn(toldTrouble);
        }
    }

    /**
     * The end.
     *
     * @return the exit code
     */
    int conclude(Ears ears, int exitCode) {
        double tookS = Nanos.toSeconds(Rigs.CLOCK.getAsLong() - startNanos);
        ObjectNode result = Talk.node();
        result.put("event", "result");
        result.put("seconds", tookS);
        result.put("packets", ears.packets());
        result.put("bytes", ears.bytes());
        result.put("missed", ears.packets() - packets);
        result.put("bundles", bundles);
        result.put("messages", messages);
        result.put("shown", shown);
        result.put("malformed", malformed);
        result.put("exitCode", exitCode);
        talk.say(ears.packets() == 0 ? nothing(ears, tookS) : heard(ears));
        talk.object(result);
        return exitCode;
    }

    private static String nothing(Ears ears, double tookS) {
        return "nothing came in " + Figures.text(tookS, 1) + " s to "
                + ears.point().words()
                + ": does the sender send there?"
                + (ears.point().isPrivate() ? " What other machines send is heard with --from-network" : "");
    }

    private String heard(Ears ears) {
        long missed = ears.packets() - packets;
        return count(ears.packets(), "packet") + ", " + count(messages, "message") + ", "
                + (shown == messages ? "all shown" : Figures.count(shown) + " of them shown")
                + (malformed == 0 ? "" : ", " + Figures.count(malformed) + " malformed")
                + (missed == 0
                        ? ""
                        : "; " + count(missed, "packet") + " not shown, because they came too fast or after that");
    }

    private static String count(long number, String what) {
        return Figures.count(number) + " " + what + (number == 1 ? "" : "s");
    }
}
