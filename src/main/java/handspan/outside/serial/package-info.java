/**
 * Serial ports: listing them, opening them, saying why not.
 *
 * <p>Start reading at {@link handspan.outside.serial.SerialOpener}.
 */
@NullMarked
package handspan.outside.serial;

import org.jspecify.annotations.NullMarked;
