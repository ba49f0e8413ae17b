package handspan.live.path;

/**
 * What lines say as text.
 *
 * @param latest the latest line
 * @param remark the latest line without a number since the link was opened, often what a board says as it starts; may
 *     be empty
 * @param garbled01 share of the bytes of the last second that are no text
 * @param sinceLineEnd bytes that came since the last line end
 */
public record LineNews(String latest, String remark, double garbled01, long sinceLineEnd) {}
