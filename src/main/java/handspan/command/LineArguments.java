package handspan.command;

import handspan.music.send.Scaling;
import handspan.music.send.SendLine;
import handspan.music.send.SendValue;
import handspan.music.send.Sparing;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;

/** What is to become of the lines of a plan. A line is named by its value, {@code raw:2}, or by its address. */
final class LineArguments {
    private static final String NUMBER = "([-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?)";
    private static final Pattern SCALE = Pattern.compile(NUMBER + "\\.\\." + NUMBER + "," + NUMBER + "\\.\\." + NUMBER);

    @Option(
            names = "--address",
            paramLabel = "LINE=ADDRESS",
            description =
                    "another address, for example pitch=/lead/hz; {key}, {degree} or {octave} in it stands for a number:"
                            + " level=/keys/{key}/level")
    List<String> addresses = List.of();

    @Option(
            names = "--types",
            paramLabel = "LINE=TAGS",
            description =
                    "other types, a tag for each number: i f s, or h d T (true or false) that not every receiver knows")
    List<String> types = List.of();

    @Option(
            names = "--scale",
            paramLabel = "LINE=A..B,C..D",
            description = "what is A goes out as C, what is B as D, for example level=0..0.5,0..127")
    List<String> scales = List.of();

    @Option(names = "--clip", paramLabel = "LINE", description = "nothing beyond C and D of its scale")
    List<String> clips = List.of();

    @Option(names = "--no-clip", paramLabel = "LINE", description = "also what lies beyond C and D of its scale")
    List<String> noClips = List.of();

    @Option(
            names = "--often",
            paramLabel = "LINE=HOW",
            description =
                    "every (with every frame), change (only another value, and all once a second), 60 (at most so many a"
                            + " second) or change,60")
    List<String> often = List.of();

    @Option(
            names = "--dead-band",
            paramLabel = "LINE=AMOUNT",
            description = "changes of what is sent up to this are no change")
    List<String> deadBands = List.of();

    @Option(
            names = "--on",
            paramLabel = "LINE",
            description = "send this; a value that is not among the lines is added")
    List<String> on = List.of();

    @Option(names = "--off", paramLabel = "LINE", description = "do not send this")
    List<String> off = List.of();

    @Option(
            names = "--second",
            paramLabel = "VALUE=ADDRESS",
            description = "send a value to a second address too; that line is then named by its address")
    List<String> seconds = List.of();

    @Option(names = "--remove-line", paramLabel = "LINE", description = "forget this line")
    List<String> removed = List.of();

    @Option(names = "--usual", paramLabel = "LINE", description = "back to usual types, no scale, every frame")
    List<String> usual = List.of();

    /**
     * The lines as they are to be.
     *
     * @throws IllegalArgumentException saying what is wrong
     */
    List<SendLine> changed(List<SendLine> before, String instrument) {
        List<SendLine> lines = new ArrayList<>(before);
        for (String which : removed) {
            lines.remove(indexOf(lines, which));
        }
        for (String text : seconds) {
            Pair pair = Pair.parse(text, "level=/second/level");
            lines.add(byDefault(pair.which(), instrument).at(pair.what()));
        }
        usual.forEach(which -> change(
                lines,
                which,
                instrument,
                line -> line.typed(line.value().types()).with(Scaling.NONE).with(Sparing.NONE)));
        on.forEach(which -> change(lines, which, instrument, line -> line.turned(true)));
        change(
                lines,
                addresses,
                "pitch=/lead/hz",
                instrument,
                (line, address) -> line.at(address).turned(true));
        change(lines, types, "level=i", instrument, SendLine::typed);
        change(lines, scales, "level=0..1,0..127", instrument, LineArguments::scaled);
        clips.forEach(which -> change(lines, which, instrument, line -> clipped(line, true)));
        noClips.forEach(which -> change(lines, which, instrument, line -> clipped(line, false)));
        change(lines, often, "level=change", instrument, LineArguments::often);
        change(lines, deadBands, "pitch=0.5", instrument, (line, amount) -> {
            Sparing sparing = line.sparing();
            return line.with(new Sparing(sparing.onChange(), sparing.mostPerS(), number(amount)));
        });
        off.forEach(which -> change(lines, which, instrument, line -> line.turned(false)));
        return lines;
    }

    private record Pair(String which, String what) {
        static Pair parse(String text, String example) {
            int equals = text.indexOf('=');
            if (equals <= 0 || equals == text.length() - 1) {
                throw new IllegalArgumentException("'" + text + "' (LINE=...): write it like " + example);
            }
            return new Pair(text.substring(0, equals), text.substring(equals + 1));
        }
    }

    private static void change(
            List<SendLine> lines,
            List<String> texts,
            String example,
            String instrument,
            BiFunction<SendLine, String, SendLine> how) {
        for (String text : texts) {
            Pair pair = Pair.parse(text, example);
            change(lines, pair.which(), instrument, line -> how.apply(line, pair.what()));
        }
    }

    /** A value that is not there yet is added. */
    private static void change(List<SendLine> lines, String which, String instrument, UnaryOperator<SendLine> how) {
        boolean there = lines.stream().anyMatch(line -> isMeant(line, which));
        if (!there && !which.startsWith("/")) {
            lines.add(byDefault(which, instrument));
        }
        int index = indexOf(lines, which);
        lines.set(index, how.apply(lines.get(index)));
    }

    private static SendLine byDefault(String which, String instrument) {
        int colon = which.indexOf(':');
        SendValue value = SendValue.parse(colon < 0 ? which : which.substring(0, colon));
        return SendLine.byDefault(value, colon < 0 ? "" : which.substring(colon + 1), instrument);
    }

    private static boolean isMeant(SendLine line, String which) {
        return line.name().equals(which) || line.address().equals(which);
    }

    private static int indexOf(List<SendLine> lines, String which) {
        for (int i = 0; i < lines.size(); i++) {
            if (isMeant(lines.get(i), which)) {
                return i;
            }
        }
        throw new IllegalArgumentException("line '" + which + "' is not among those of the room ("
                + lines.stream().map(SendLine::name).collect(Collectors.joining(", ")) + ")");
    }

    private static SendLine scaled(SendLine line, String text) {
        Matcher matcher = SCALE.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("scale '" + text + "' (A..B,C..D): write it like 0..1,0..127");
        }
        return line.with(new Scaling(
                number(matcher.group(1)),
                number(matcher.group(2)),
                number(matcher.group(3)),
                number(matcher.group(4)),
                line.scaling().clip()));
    }

    private static SendLine clipped(SendLine line, boolean clip) {
        Scaling by = line.scaling();
        return line.with(new Scaling(by.fromLow(), by.fromHigh(), by.toLow(), by.toHigh(), clip));
    }

    private static SendLine often(SendLine line, String text) {
        boolean onChange = false;
        double mostPerS = 0;
        for (String word : text.split(",", -1)) {
            if (word.equals("change")) {
                onChange = true;
            } else if (!word.equals("every")) {
                mostPerS = number(word);
            }
        }
        return line.with(
                new Sparing(onChange, mostPerS, onChange ? line.sparing().deadBand() : 0));
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("'" + text + "' is no number", e);
        }
    }
}
