package handspan.command;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import handspan.live.session.PortInfo;
import handspan.wiring.MidiOutput;
import handspan.wiring.Rigs;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists serial ports and MIDI outputs. */
@Command(name = "ports", description = "lists serial ports with description, identity, and whether each can be opened")
final class PortsVerb extends Verb {
    @Option(
            names = "--try",
            description = "open each port for a moment to see whether it can be opened (boards start anew by that)")
    boolean tryOpening;

    @Option(names = "--midi", description = "list MIDI outputs instead")
    boolean midi;

    @Override
    int run(Talk talk) {
        return midi ? outputs(talk) : ports(talk);
    }

    private static int outputs(Talk talk) {
        List<MidiOutput> outputs = Rigs.midiOutputs();
        ObjectNode result = Talk.node();
        ArrayNode array = result.putArray("midiOutputs");
        if (outputs.isEmpty()) {
            talk.say("no MIDI output found: plug one in, or start the sound patch's own");
        }
        for (MidiOutput output : outputs) {
            ObjectNode node = array.addObject();
            node.put("name", output.name());
            node.put("description", output.description());
            node.put("vendor", output.vendor());
            talk.say("midi:" + output.name() + "  " + output.description());
        }
        talk.object(result);
        return Exit.DONE;
    }

    private int ports(Talk talk) {
        List<PortInfo> ports = Rigs.ports(tryOpening);
        ObjectNode result = Talk.node();
        ArrayNode array = result.putArray("ports");
        if (ports.isEmpty()) {
            talk.say(
                    "no serial port found: plug the board in, with a cable that carries data; without a board, try one of");
            Rigs.simulations().forEach(line -> talk.say("  " + line));
        }
        for (PortInfo port : ports) {
            ObjectNode node = array.addObject();
            node.put("name", port.name());
            node.put("description", port.description());
            node.put("vendorId", port.vendorId());
            node.put("productId", port.productId());
            node.put("serialNumber", port.serialNumber());
            node.put("location", port.location());
            node.put("canBeOpened", port.canBeOpened());
            node.put("remedy", port.remedy());
            talk.say(port.name() + "  " + port.description() + identity(port)
                    + (port.canBeOpened() ? "" : "  - " + port.remedy()));
        }
        talk.object(result);
        return Exit.DONE;
    }

    private static String identity(PortInfo port) {
        if (port.vendorId() < 0) {
            return "";
        }
        String usb = String.format(Locale.ROOT, "  [USB %04x:%04x", port.vendorId(), port.productId());
        return usb + (port.serialNumber().isEmpty() ? "" : " " + port.serialNumber())
                + (port.location().isEmpty() ? "" : " at " + port.location()) + "]";
    }
}
