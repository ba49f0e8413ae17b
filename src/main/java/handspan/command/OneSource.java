package handspan.command;

import picocli.CommandLine.Parameters;

/** A single source. */
final class OneSource extends SourceArguments {
    @Parameters(paramLabel = "SOURCE", description = SOURCE)
    String source = "";

    @Override
    String written() {
        return source;
    }
}
