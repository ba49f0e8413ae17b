package handspan.command;

import handspan.wiring.Source;
import java.util.List;
import picocli.CommandLine.Parameters;

/** As many sources as there are rooms. */
final class SeveralSources extends SourceArguments {
    @Parameters(arity = "0..*", paramLabel = "SOURCE", description = SOURCE + "; as many as rooms, in their order")
    List<String> sources = List.of();

    @Override
    String written() {
        return sources.isEmpty() ? "" : sources.get(0);
    }

    /** All, as they are written. */
    List<Source> all() {
        return sources.stream().map(Source::parse).toList();
    }
}
