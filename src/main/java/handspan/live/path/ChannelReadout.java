package handspan.live.path;

import handspan.instrument.line.LineShape;
import handspan.instrument.line.Reading;
import handspan.instrument.sensor.Sensor;
import handspan.music.send.ChannelValues;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.SoundFrame;
import handspan.profile.RoomProfile;
import handspan.room.HandSetup;
import handspan.room.Room;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the channels that a plan sends said last, raw and physical. Owned by the path thread. */
final class ChannelReadout {
    private final int[] slots;
    private final List<@Nullable Sensor> sensors = new ArrayList<>();
    private final double[] raw;
    private final double[] physical;
    private ChannelValues values = ChannelValues.NONE;

    /**
     * A readout of the channels of a profile's plan.
     *
     * @throws IllegalArgumentException when there is no such channel, or no sensor is known for one whose physical
     *     value is sent
     */
    ChannelReadout(RoomProfile profile, LineShape shape) {
        List<String> channels = profile.send().channels();
        slots = new int[channels.size()];
        raw = new double[channels.size()];
        physical = new double[channels.size()];
        Arrays.fill(raw, Double.NaN);
        Arrays.fill(physical, Double.NaN);
        for (int i = 0; i < slots.length; i++) {
            slots[i] = shape.indexOf(channels.get(i));
            if (slots[i] < 0) {
                throw new IllegalArgumentException(
                        "channel '" + channels.get(i) + "', whose value is to be sent, is not" + " in the lines ("
                                + shape.words() + "): handspan send --remove-line raw:" + channels.get(i));
            }
            sensors.add(sensor(profile.room(), shape, slots[i]));
        }
        for (SendLine line : profile.send().lines()) {
            if (line.on()
                    && line.value() == SendValue.PHYSICAL
                    && sensors.get(channels.indexOf(line.channel())) == null) {
                throw new IllegalArgumentException("channel '" + line.channel()
                        + "': its physical value can't be sent, because neither hand of this room plays on it; send"
                        + " raw:" + line.channel());
            }
        }
    }

    private static @Nullable Sensor sensor(Room room, LineShape shape, int slot) {
        HandSetup level = room.level();
        if (shape.indexOf(room.pitch().channel().channel()) == slot) {
            return room.sensor(room.pitch());
        }
        return level != null && shape.indexOf(level.channel().channel()) == slot ? room.sensor(level) : null;
    }

    void onReading(Reading reading) {
        if (slots.length == 0) {
            return;
        }
        for (int i = 0; i < slots.length; i++) {
            if (reading.tells(slots[i])) {
                read(i, reading.has(slots[i]) ? reading.value(slots[i]) : Double.NaN);
            }
        }
        values = new ChannelValues(raw.clone(), physical.clone());
    }

    private void read(int channel, double number) {
        Sensor sensor = sensors.get(channel);
        raw[channel] = number;
        boolean sees = sensor != null && !Double.isNaN(number) && sensor.hasReading(number);
        physical[channel] = sees ? sensor.physical(number) : Double.NaN;
    }

    /** The frame with what the channels said last. */
    SoundFrame into(SoundFrame frame) {
        return slots.length == 0 ? frame : frame.with(values);
    }
}
