package handspan.command;

/** Something to be done when the program is told to end (SIGINT, SIGTERM), for as long as this object is open. */
final class AtExit implements AutoCloseable {
    private final Thread hook;

    private AtExit(Thread hook) {
        this.hook = hook;
    }

    static AtExit run(Runnable last) {
        Thread hook = new Thread(last, "closing");
        Runtime.getRuntime().addShutdownHook(hook);
        return new AtExit(hook);
    }

    @Override
    public void close() {
        try {
            Runtime.getRuntime().removeShutdownHook(hook);
        } catch (IllegalStateException e) {
            // the program is ending: the hook runs already
            return;
        }
    }
}
