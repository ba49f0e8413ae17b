package handspan.outside.osc.packet;

import com.illposed.osc.BytesReceiver;
import com.illposed.osc.OSCParseException;
import com.illposed.osc.OSCParser;
import com.illposed.osc.argument.ArgumentHandler;
import java.nio.ByteBuffer;
import java.util.Map;

/**
 * Reads blobs: a length, that many bytes, zero bytes up to a multiple of 4. JavaOSC 0.8 leaves its position in front of
 * the bytes, so that whatever follows a blob is read wrongly; this one goes past them.
 */
final class BlobReader implements ArgumentHandler<byte[]> {
    static final char TAG = 'b';

    @Override
    public char getDefaultIdentifier() {
        return TAG;
    }

    @Override
    public Class<byte[]> getJavaClass() {
        return byte[].class;
    }

    @Override
    public void setProperties(Map<String, Object> properties) {
        // nothing to set
    }

    @Override
    public boolean isMarkerOnly() {
        return false;
    }

    @Override
    @SuppressWarnings("unchecked")
    public ArgumentHandler<byte[]> clone() throws CloneNotSupportedException {
        return (ArgumentHandler<byte[]>) super.clone();
    }

    @Override
    public byte[] parse(ByteBuffer input) throws OSCParseException {
        int bytes = input.getInt();
        if (bytes < 0 || bytes > input.remaining()) {
            throw new OSCParseException("blob of " + bytes + " bytes (0.." + input.remaining() + " are left)", input);
        }
        byte[] blob = new byte[bytes];
        input.get(blob);
        OSCParser.align(input);
        return blob;
    }

    @Override
    public void serialize(BytesReceiver output, byte[] blob) {
        throw new UnsupportedOperationException("blobs are only read");
    }
}
