/**
 * The command line: one class a verb.
 *
 * <p>Start reading at {@code Handspan}, then {@code PlayVerb}.
 */
@NullMarked
package handspan.command;

import org.jspecify.annotations.NullMarked;
