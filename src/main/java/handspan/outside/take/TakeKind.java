package handspan.outside.take;

/** What kind of file the lines come from. */
public enum TakeKind {
    /** Lines with times and marks, first line {@code # handspan-take/1}. */
    TAKE,
    /** Text without times: each line is a line as received. */
    PLAIN_LOG,
    /** Rows of many numbered columns, each row a stretch of one channel. */
    WIDE_TABLE
}
