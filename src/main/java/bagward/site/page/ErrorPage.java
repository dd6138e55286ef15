package bagward.site.page;

/**
 * A page for what went wrong; silent about the inside.
 *
 * @param status HTTP status
 * @param what happened
 * @param next what to do
 */
public record ErrorPage(int status, String what, String next) {
    /** The page for a status. */
    public static ErrorPage of(int status) {
        return switch (status) {
            case 404 ->
                new ErrorPage(404, "There is no such page", "Look for the tag again, or start from the bench plan.");
            case 403 ->
                new ErrorPage(
                        403,
                        "Not accepted: this did not come from a page of this site",
                        "Open the page again here and enter it once more.");
            case 413 -> new ErrorPage(413, "Too much at once", "Send less text, or split the file.");
            case 400, 405, 415 ->
                new ErrorPage(status, "This request could not be read", "Open the page again and enter it once more.");
            case 503 ->
                new ErrorPage(
                        503,
                        "Nothing was entered: the store does not take it now",
                        "Note it on paper, and enter it again when the start page shows no warning.");
            default ->
                new ErrorPage(
                        status,
                        "This did not work",
                        "Try once more. If it stays so, whoever looks after the program finds the reason in its log.");
        };
    }
}
