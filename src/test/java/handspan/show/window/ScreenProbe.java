package handspan.show.window;

/** Started in a process of its own by {@link ScreenTest}: says twice whether a screen can be opened. */
final class ScreenProbe {
    private ScreenProbe() {}

    public static void main(String[] args) {
        System.out.println(Screens.canBeOpened());
        // a class that failed to load fails in another way the second time
        System.out.println(Screens.canBeOpened());
    }
}
