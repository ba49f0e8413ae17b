package handspan.outside.take;

import java.util.ArrayList;
import java.util.List;

/** Reads files to their end for the tests of this package. */
final class Entries {
    private Entries() {}

    static List<TakeEntry> all(TakeFile file) throws TakeException {
        List<TakeEntry> entries = new ArrayList<>();
        for (TakeEntry entry = file.next(); entry != null; entry = file.next()) {
            entries.add(entry);
        }
        return entries;
    }

    /** The texts of all lines, marks left out. */
    static List<String> texts(TakeFile file) throws TakeException {
        List<String> texts = new ArrayList<>();
        for (TakeEntry entry : all(file)) {
            if (entry instanceof TakeEntry.Line line) {
                texts.add(line.text());
            }
        }
        return texts;
    }
}
