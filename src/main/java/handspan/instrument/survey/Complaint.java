package handspan.instrument.survey;

/**
 * One thing to say about a channel.
 *
 * @param verdict what it makes of the channel at best; good for a mere remark
 * @param reason what was seen, with figures
 * @param remedy what to do; may be empty
 */
record Complaint(Verdict verdict, String reason, String remedy) {
    static Complaint remark(String reason) {
        return new Complaint(Verdict.GOOD, reason, "");
    }
}
