/**
 * Bytes to readings: cutting lines, learning their shape, taking the numbers out.
 *
 * <p>Start reading at {@link handspan.instrument.line.LineShape}, then {@link handspan.instrument.line.LineReader}.
 */
@NullMarked
package handspan.instrument.line;

import org.jspecify.annotations.NullMarked;
