package handspan.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

class HelpOptionTest {
    static Stream<List<String>> verbs() {
        return below(new CommandLine(new Handspan(InputStream.nullInputStream(), System.out, System.err)), List.of());
    }

    private static Stream<List<String>> below(CommandLine line, List<String> words) {
        return line.getSubcommands().entrySet().stream().flatMap(each -> {
            List<String> all = new ArrayList<>(words);
            all.add(each.getKey());
            return Stream.concat(Stream.of(all), below(each.getValue(), all));
        });
    }

    @ParameterizedTest
    @MethodSource("verbs")
    void everyVerbHasHelpOfItsOwn(List<String> verb) {
        List<String> words = new ArrayList<>(verb);
        words.add("--help");
        Cli cli = Cli.run(words.toArray(new String[0]));
        assertEquals(0, cli.exitCode(), cli.err());
        assertTrue(cli.out().contains("Usage: handspan " + String.join(" ", verb)), cli.out());
        assertTrue(cli.out().contains("--help"), cli.out());
    }
}
