package handspan.command;

import handspan.live.session.LinkException;
import handspan.number.units.Nanos;
import handspan.wiring.Ears;
import handspan.wiring.HeardPacket;
import handspan.wiring.ListenPoint;
import handspan.wiring.Rigs;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what arrives. */
@Command(
        name = "hear",
        description = "prints all Open Sound Control that arrives, and explains what arrives and is none",
        footer = {
            "",
            "Each line: seconds, sender, address, type tags after a comma, values. The parts of a bundle stand below it.",
            "Another program can't listen on the same port meanwhile: send a copy here, as with",
            "'handspan play ... --send udp:127.0.0.1:9000 --send udp:127.0.0.1:9001' and 'handspan hear 9001'."
        })
final class HearVerb extends Verb {
    private static final long LOOK_MS = 50;
    private static final long LAST_WORDS_MS = 500;

    @Parameters(
            arity = "0..1",
            paramLabel = "[PROTOCOL:]PORT",
            defaultValue = "9000",
            description = "where to listen: 9000, udp:9000, tcp:9000 or tcp-slip:9000 (default 9000)")
    String where = "9000";

    @Option(names = "--from-network", description = "hear other machines too (default: this machine only)")
    boolean fromNetwork;

    @Option(
            names = "--at",
            paramLabel = "ADDRESS",
            description = "listen at one address of this machine, or at a network interface by its name")
    @Nullable
    String at;

    @Option(
            names = "--only",
            paramLabel = "PATTERN",
            description = "messages to such addresses alone: /moth/*, /{moth,attic}/pitch, /*/[a-l]*")
    @Nullable
    String only;

    @Option(names = "--seconds", paramLabel = "S", description = "how long (default: until it is stopped)")
    @Nullable
    Double seconds;

    @Option(names = "--count", paramLabel = "N", description = "end after so many messages")
    @Nullable
    Long count;

    @Override
    int run(Talk talk) throws UsageException, LinkException {
        ListenPoint point = UsageException.reading(this::point);
        String pattern = only;
        Predicate<String> wanted = pattern == null ? null : UsageException.reading(() -> Ears.pattern(pattern));
        check();
        CountDownLatch over = new CountDownLatch(1);
        try (Ears ears = open(point);
                AtExit atExit = AtExit.run(() -> end(ears, over))) {
            talk.say("hearing " + ears.point().words());
            talk.event(
                    "listening",
                    Map.of(
                            "protocol", ears.point().protocol().word(),
                            "at", ears.point().address().getHostAddress(),
                            "port", ears.point().port()));
            HearTalk words = new HearTalk(talk, wanted, Rigs.CLOCK.getAsLong());
            hear(ears, words);
            return words.conclude(ears, exit(words));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Exit.NO;
        } finally {
            over.countDown();
        }
    }

    private ListenPoint point() {
        ListenPoint point = ListenPoint.parse(where);
        String place = at;
        if (place != null) {
            return point.at(place);
        }
        return fromNetwork ? point.fromNetwork() : point;
    }

    private void check() throws UsageException {
        if (fromNetwork && at != null) {
            throw new UsageException("--from-network with --at: one of both (--from-network means all addresses)");
        }
        if (seconds != null && !(seconds > 0)) {
            throw new UsageException("--seconds " + seconds + " (above 0 s)");
        }
        if (count != null && count < 1) {
            throw new UsageException("--count " + count + " (1 message or more)");
        }
    }

    private static Ears open(ListenPoint point) throws LinkException {
        try {
            return Ears.open(point);
        } catch (IOException e) {
            throw new LinkException(LinkException.Kind.BUSY, String.valueOf(e.getMessage()));
        }
    }

    /** The program is told to end: what has been heard is still told. */
    private static void end(Ears ears, CountDownLatch over) {
        ears.close();
        try {
            over.await(LAST_WORDS_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void hear(Ears ears, HearTalk words) throws InterruptedException {
        long startNanos = Rigs.CLOCK.getAsLong();
        boolean goesOn = true;
        while (goesOn) {
            Optional<HeardPacket> packet = ears.next(LOOK_MS);
            packet.ifPresent(words::tell);
            words.tellTrouble(ears);
            boolean late = seconds != null && Nanos.toSeconds(Rigs.CLOCK.getAsLong() - startNanos) >= seconds;
            goesOn = !late && !isEnough(words) && !(ears.isClosed() && packet.isEmpty());
        }
    }

    private boolean isEnough(HearTalk words) {
        return count != null && words.shown() >= count;
    }

    /** Nothing heard, or less than was asked for, is a no. */
    private int exit(HearTalk words) {
        boolean heard = words.shown() > 0 || (only == null && words.malformed() > 0);
        return (count == null ? heard : isEnough(words)) ? Exit.DONE : Exit.NO;
    }
}
