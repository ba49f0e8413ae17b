package handspan.outside.osc.packet;

import com.illposed.osc.OSCMessage;
import com.illposed.osc.OSCParseException;
import com.illposed.osc.OSCParser;
import com.illposed.osc.OSCSerializerAndParserBuilder;
import com.illposed.osc.argument.OSCSymbol;
import com.illposed.osc.argument.OSCTimeTag64;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Reads packets of Open Sound Control 1.0, whatever bytes they are made of: a packet that breaks the rules is a value
 * with a defect, never an exception. Time tags of bundles are not acted upon. Addresses that are patterns count as a
 * defect: nothing here can be addressed. One thread only.
 *
 * <p>Bundles are taken apart here rather than by JavaOSC, because one unknown message must not cost the others of its
 * bundle.
 */
public final class OscPacketReader {
    private static final int MAX_DEPTH = 8;

    private final OSCParser parser;

    /** A reader of its own. */
    public OscPacketReader() {
        OSCSerializerAndParserBuilder builder = new OSCSerializerAndParserBuilder().setUsingDefaultHandlers(false);
        // the builder lets its defaults win over what is registered, so the others are registered one by one
        new OSCSerializerAndParserBuilder()
                .setUsingDefaultHandlers(true)
                .buildParser()
                .getIdentifierToTypeMapping()
                .forEach((tag, handler) -> {
                    if (tag != BlobReader.TAG) {
                        builder.registerArgumentHandler(handler, tag);
                    }
                });
        builder.registerArgumentHandler(new BlobReader(), BlobReader.TAG);
        parser = builder.buildParser();
    }

    /**
     * Reads a packet from its position to its limit; both stay where they are.
     *
     * @param timeNanos when it arrived
     */
    public OscPacket read(ByteBuffer packet, long timeNanos) {
        Contents contents = new Contents(timeNanos);
        try {
            readElement(packet.slice(), 1, contents);
            return contents.packet("");
        } catch (OSCParseException | RuntimeException e) {
            // the library answers broken bytes with whatever comes: underflow, bad index, bad argument
            String words = e.getMessage();
            return contents.packet(words == null ? "it ends too early" : words);
        }
    }

    /** @param element from position 0, since JavaOSC counts its padding from there */
    private void readElement(ByteBuffer element, int depth, Contents contents) throws OSCParseException {
        int bytes = element.remaining();
        if (bytes == 0 || bytes % 4 != 0) {
            throw new OSCParseException("length " + bytes + " bytes (4, 8, 12 ...)", element);
        }
        if (OscBytes.startsAsBundle(element)) {
            readBundle(element, depth, contents);
        } else if (element.get(0) == '#') {
            throw new OSCParseException("it starts with # and is no bundle", element);
        } else {
            contents.add((OSCMessage) parser.convert(element));
        }
    }

    private void readBundle(ByteBuffer bundle, int depth, Contents contents) throws OSCParseException {
        if (depth > MAX_DEPTH) {
            throw new OSCParseException("bundles nested more than " + MAX_DEPTH + " deep", bundle);
        }
        if (bundle.remaining() < OscBytes.BUNDLE_HEAD_BYTES) {
            throw new OSCParseException("bundle without time tag", bundle);
        }
        bundle.position(OscBytes.BUNDLE_HEAD_BYTES);
        while (bundle.hasRemaining()) {
            int bytes = bundle.getInt();
            if (bytes < 0 || bytes > bundle.remaining()) {
                throw new OSCParseException(
                        "bundle element of " + bytes + " bytes (0.." + bundle.remaining() + " are left)", bundle);
            }
            readElement(bundle.slice(bundle.position(), bytes), depth + 1, contents);
            bundle.position(bundle.position() + bytes);
        }
    }

    private static final class Contents {
        private final long timeNanos;
        private final List<ReceivedMessage> messages = new ArrayList<>();
        private int discarded;

        Contents(long timeNanos) {
            this.timeNanos = timeNanos;
        }

        /** @param message null when the library met a type tag it does not know */
        void add(@Nullable OSCMessage message) {
            if (message == null) {
                discarded++;
                return;
            }
            List<@Nullable Object> arguments = new ArrayList<>();
            for (Object argument : message.getArguments()) {
                arguments.add(plain(argument));
            }
            String typeTags = message.getInfo().getArgumentTypeTags().toString();
            messages.add(new ReceivedMessage(timeNanos, message.getAddress(), typeTags, arguments));
        }

        private static @Nullable Object plain(@Nullable Object argument) {
            if (argument instanceof OSCTimeTag64 tag) {
                return tag.getNtpTime();
            }
            return argument instanceof OSCSymbol symbol ? symbol.toString() : argument;
        }

        OscPacket packet(String defect) {
            return new OscPacket(messages, discarded, defect);
        }
    }
}
