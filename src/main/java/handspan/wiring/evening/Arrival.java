package handspan.wiring.evening;

import handspan.instrument.sensor.Instrument;
import handspan.live.session.PortInfo;
import handspan.wiring.Source;
import handspan.wiring.SourceOptions;
import java.util.List;
import java.util.Optional;

/**
 * The instrument and how it is connected.
 *
 * @param ports of this machine
 * @param looked whether they were looked for at all
 * @param source that is open, or is being opened
 * @param options how
 * @param instrument which number is which hand; empty until it is known
 * @param sure whether that is sure enough to go on without a look
 * @param remarks why it is taken so, in words
 * @param trouble what went wrong, in words with what to do; empty when nothing did
 */
public record Arrival(
        List<PortInfo> ports,
        boolean looked,
        Optional<Source> source,
        SourceOptions options,
        Optional<Instrument> instrument,
        boolean sure,
        List<String> remarks,
        String trouble) {
    /** Copies the lists. */
    public Arrival {
        ports = List.copyOf(ports);
        remarks = List.copyOf(remarks);
    }

    Arrival with(List<PortInfo> found) {
        return new Arrival(found, true, source, options, instrument, sure, remarks, trouble);
    }

    Arrival opening(Source chosen, SourceOptions how) {
        return new Arrival(ports, looked, Optional.of(chosen), how, Optional.empty(), false, List.of(), "");
    }

    Arrival at(SourceOptions how) {
        return new Arrival(ports, looked, source, how, instrument, sure, remarks, trouble);
    }

    Arrival closed() {
        return new Arrival(ports, looked, Optional.empty(), options, Optional.empty(), false, List.of(), trouble);
    }

    Arrival knowing(Instrument known, boolean certain, List<String> why) {
        return new Arrival(ports, looked, source, options, Optional.of(known), certain, why, trouble);
    }

    Arrival troubled(String words) {
        return new Arrival(ports, looked, source, options, instrument, sure, remarks, words);
    }
}
