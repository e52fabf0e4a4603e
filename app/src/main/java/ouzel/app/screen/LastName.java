package ouzel.app.screen;

/**
 * The name that was entered last, shared by the lanes so that it is typed once.
 *
 * <p>Thread: EDT.
 */
final class LastName {
    private String name = "";

    String name() {
        return name;
    }

    void remember(String next) {
        name = next;
    }
}
