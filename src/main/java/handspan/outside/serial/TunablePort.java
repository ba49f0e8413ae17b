package handspan.outside.serial;

/** An open port whose speed can be changed while it stays open, so that the board does not start anew. */
interface TunablePort {
    /** Changes the speed and forgets what came before. */
    void baud(int baud);

    /**
     * Collects bytes for a while.
     *
     * @param buffer takes them
     * @param forMs how long; the call lasts as long
     * @return how many came, as far as there was room; -1 when the port has gone
     */
    int collect(byte[] buffer, int forMs);
}
