package campcloth.pages;

/** An address to go back to; what would lead to another server becomes the first page. */
public final class LocalPath {

    private static final String HOME = "/";
    private static final int LONGEST = 4000;

    private LocalPath() {}

    public static String of(String asked) {
        boolean ours = asked.startsWith("/") && !asked.startsWith("//") && asked.length() <= LONGEST;
        return ours && asked.chars().allMatch(c -> c > ' ' && c < 127 && "\\{}".indexOf(c) < 0) ? asked : HOME;
    }
}
