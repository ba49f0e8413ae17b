package handspan.outside.midi;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.sound.midi.MidiDevice;
import javax.sound.midi.MidiMessage;
import javax.sound.midi.MidiSystem;
import javax.sound.midi.MidiUnavailableException;
import javax.sound.midi.Receiver;
import javax.sound.midi.Sequencer;

/** The MIDI outputs of this machine. Not for the path thread: looking for them takes a while. */
public final class MidiOutputs {
    /**
     * One of them.
     *
     * @param name by which it is opened
     * @param description in its maker's words
     * @param vendor who made it, or its driver
     */
    public record Output(String name, String description, String vendor) {}

    private MidiOutputs() {}

    /** All there are now. */
    public static List<Output> list() {
        return devices().stream()
                .map(MidiDevice::getDeviceInfo)
                .map(info -> new Output(info.getName(), info.getDescription(), info.getVendor()))
                .toList();
    }

    private static List<MidiDevice> devices() {
        return Arrays.stream(MidiSystem.getMidiDeviceInfo())
                .map(MidiOutputs::device)
                .flatMap(Optional::stream)
                // a sequencer takes messages to record them; 0 receivers make an input
                .filter(device -> !(device instanceof Sequencer) && device.getMaxReceivers() != 0)
                .toList();
    }

    private static Optional<MidiDevice> device(MidiDevice.Info info) {
        try {
            return Optional.of(MidiSystem.getMidiDevice(info));
        } catch (MidiUnavailableException | IllegalArgumentException e) {
            // gone since it was listed: no output of this machine any more
            return Optional.empty();
        }
    }

    static Receiver open(String wanted) throws MidiUnavailableException {
        List<MidiDevice> devices = devices();
        List<String> names =
                devices.stream().map(device -> device.getDeviceInfo().getName()).toList();
        int found = find(wanted, names);
        MidiDevice device = devices.get(found);
        try {
            device.open();
            return new Opened(device, device.getReceiver());
        } catch (MidiUnavailableException | RuntimeException e) {
            device.close();
            throw unavailable("MIDI output '" + names.get(found) + "' can't be opened (" + e.getMessage()
                    + "): close the program that has it, or name another: " + listed(names));
        }
    }

    /**
     * Which of some devices is meant: the one of that name, or the only one that has it as a part, capitals or not.
     *
     * @throws MidiUnavailableException where none is, or two are
     */
    static int find(String wanted, List<String> names) throws MidiUnavailableException {
        String low = wanted.strip().toLowerCase(Locale.ROOT);
        List<Integer> same = new ArrayList<>();
        List<Integer> holding = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i).toLowerCase(Locale.ROOT);
            if (name.strip().equals(low)) {
                same.add(i);
            }
            if (name.contains(low)) {
                holding.add(i);
            }
        }
        List<Integer> fitting = same.isEmpty() ? holding : same;
        if (fitting.size() == 1) {
            return fitting.get(0);
        }
        if (fitting.isEmpty()) {
            throw unavailable("no MIDI output has '" + wanted + "' in its name: plug it in"
                    + (names.isEmpty() ? "; there is none now" : ", or name one of " + listed(names)));
        }
        throw unavailable("MIDI output '" + wanted + "' could be "
                + listed(fitting.stream().map(names::get).toList()) + ": name more of it");
    }

    private static String listed(List<String> names) {
        return names.stream().map(name -> "'" + name + "'").collect(Collectors.joining(", "));
    }

    private static MidiUnavailableException unavailable(String words) {
        return new MidiUnavailableException(words);
    }

    /** A device and the one receiver of it that is used. */
    private record Opened(MidiDevice device, Receiver receiver) implements Receiver {
        @Override
        public void send(MidiMessage message, long atOnce) {
            receiver.send(message, atOnce);
        }

        @Override
        public void close() {
            receiver.close();
            device.close();
        }
    }
}
