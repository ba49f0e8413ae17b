package handspan.profile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Names that may become the base name of a file on every usual system, and that stay in their folder: a profile made on
 * one machine must not break a copy on another.
 */
final class BaseName {
    /** Longest name: file systems allow 255 bytes, and temporary files need room for more. */
    static final int MOST_BYTES = 100;

    /** What files of rooms and players end in. */
    static final String JSON = ".json";

    /** Source: Microsoft Learn, "Naming Files, Paths, and Namespaces", section "Naming Conventions" (from memory). */
    private static final String FORBIDDEN = "/\\:<>\"|?*";

    /** Device names of the same page; they count with anything after a dot, too. */
    private static final Pattern DEVICE =
            Pattern.compile("(con|prn|aux|nul|conin\\$|conout\\$|(com|lpt)[1-9\u00b9\u00b2\u00b3]) *(\\..*)?");

    private BaseName() {}

    /**
     * Refuses a name that is not allowed.
     *
     * @param name without {@code .json}
     * @param what it names, for the message
     */
    static void check(String name, String what) throws ProfileException {
        Optional<String> fault = fault(name);
        if (fault.isPresent()) {
            throw new ProfileException(
                    ProfileException.Kind.BAD_NAME,
                    what + " name '" + name + "' cannot be a file name: " + fault.get() + " (1.." + MOST_BYTES
                            + " bytes, none of / \\ : < > \" | ? *, no blank or dot at either end)",
                    "choose another name",
                    null);
        }
    }

    /**
     * Base names of the JSON files in a folder, sorted; none when there is no folder.
     *
     * @param what the folder is, for the message
     */
    static List<String> in(Path folder, String what) throws ProfileException {
        if (!Files.exists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.endsWith(JSON))
                    .map(name -> normal(name.substring(0, name.length() - JSON.length())))
                    .filter(BaseName::isAllowed)
                    .distinct()
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new ProfileException(
                    ProfileException.Kind.NOT_FOUND,
                    what + " " + folder + " cannot be listed: " + SafeFile.reason(e),
                    "name a folder that can be read",
                    e);
        }
    }

    /**
     * A name in the one form that all ways of writing its accents share: the composed form of Unicode Standard Annex
     * 15. Keyboards, file systems and archives differ in which they use, people see no difference.
     */
    static String normal(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC);
    }

    /** Whether two names are the same file's on systems that take capitals for small letters. */
    static boolean areTwins(String one, String other) {
        return folded(one).equals(folded(other));
    }

    private static String folded(String name) {
        return normal(normal(name).toUpperCase(Locale.ROOT).toLowerCase(Locale.ROOT));
    }

    static boolean isAllowed(String name) {
        return fault(name).isEmpty();
    }

    private static Optional<String> fault(String name) {
        if (name.isEmpty()) {
            return Optional.of("it is empty");
        }
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (FORBIDDEN.indexOf(c) >= 0) {
                return Optional.of("it holds " + c);
            }
            if (Character.isISOControl(c)) {
                return Optional.of("it holds a control character");
            }
        }
        if (isEdge(name.codePointAt(0)) || isEdge(name.codePointBefore(name.length()))) {
            return Optional.of("it starts or ends with a blank or a dot");
        }
        if (!StandardCharsets.UTF_8.newEncoder().canEncode(name)) {
            return Optional.of("it holds half a character");
        }
        int bytes = name.getBytes(StandardCharsets.UTF_8).length;
        if (bytes > MOST_BYTES) {
            return Optional.of("it is " + bytes + " bytes long");
        }
        if (DEVICE.matcher(name.toLowerCase(Locale.ROOT)).matches()) {
            return Optional.of("some systems keep it for a device");
        }
        return Optional.empty();
    }

    private static boolean isEdge(int c) {
        return c == '.' || Character.isWhitespace(c) || Character.isSpaceChar(c);
    }
}
