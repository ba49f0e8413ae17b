/**
 * Takes: recorded lines with their times and marks, written and read back; plain logs and wide tables read as if they
 * were takes.
 *
 * <p>Start reading at TakeEntry, then TakeWriter and TakeFile; the rule for what is a log's header is in LogHeader.
 */
@NullMarked
package handspan.outside.take;

import org.jspecify.annotations.NullMarked;
