package handspan.profile;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;

/**
 * How one kind of file is written and read.
 *
 * @param writer value to tree, keys in their fixed order
 * @param reader fields to value
 * @param merge what a save over an older file keeps of it
 */
record FileForm<T>(Function<T, ObjectNode> writer, Reader<T> reader, TreeMerge merge) {
    /** Fields to value. */
    interface Reader<T> {
        /** Reads; the failure names file and key. */
        T read(JsonFields fields) throws ProfileException;
    }

    /** The value in a file's bytes. */
    T read(byte[] bytes, Path file) throws ProfileException {
        return reader.read(JsonFields.of(bytes, file.toString()));
    }

    /**
     * The bytes of a file.
     *
     * @param older what the file holds so far; must be readable
     * @throws IllegalArgumentException when the value would not come back the same, for example for an infinity
     */
    byte[] bytes(T value, Optional<byte[]> older, Path file) throws ProfileException {
        ObjectNode tree = writer.apply(value);
        if (older.isPresent()) {
            read(older.get(), file);
            tree = merge.over(JsonText.readAsWritten(older.get(), file.toString()), tree);
        }
        byte[] bytes = JsonText.bytes(tree);
        requireSame(value, bytes, file);
        return bytes;
    }

    /** Nothing is written that could not be read again: the file of last month must open tonight. */
    private void requireSame(T value, byte[] bytes, Path file) {
        try {
            if (read(bytes, file).equals(value)) {
                return;
            }
        } catch (ProfileException e) {
            throw new IllegalArgumentException("a value that no file can hold: " + e.getMessage(), e);
        }
        throw new IllegalArgumentException(file + ": a value that would not come back from the file the same");
    }
}
