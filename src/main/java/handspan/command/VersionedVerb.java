package handspan.command;

import picocli.CommandLine.Option;

/**
 * A verb with a {@code --version} of its own: the usual pair of help and version is left out there, so help is asked
 * for here.
 */
abstract class VersionedVerb extends Verb {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help message and exit.")
    void askForHelp(boolean asked) {
        // the library that reads the command line shows it
    }
}
