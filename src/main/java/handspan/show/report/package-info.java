/**
 * What is printed: drawings on pages of a PDF, true to size and as vectors.
 *
 * <p>Start reading at {@link handspan.show.report.VectorPdf}, the one way onto paper; then
 * {@link handspan.show.report.NoteStrip}, what a note strip says, and {@link handspan.show.report.StripPdf}, which
 * prints it.
 */
@NullMarked
package handspan.show.report;

import org.jspecify.annotations.NullMarked;
