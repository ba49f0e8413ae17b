package handspan.command;

import handspan.instrument.line.CommaRule;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads what commas stand for from the command line. */
final class CommaWord implements ITypeConverter<CommaRule> {
    @Override
    public CommaRule convert(String word) {
        try {
            return CommaRule.parse(word);
        } catch (IllegalArgumentException e) {
            throw new TypeConversionException(String.valueOf(e.getMessage()));
        }
    }
}
