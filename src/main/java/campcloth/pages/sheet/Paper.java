package campcloth.pages.sheet;

import java.util.Arrays;
import java.util.Optional;

/** Paper that a sheet is set for. */
enum Paper {
    A4("210mm 297mm"),
    /** US Letter, 8.5 by 11 inches. */
    LETTER("215.9mm 279.4mm");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** As style sheets name it. */
    String size() {
        return size;
    }

    static Optional<Paper> of(String name) {
        return Arrays.stream(values())
                .filter(paper -> paper.name().equalsIgnoreCase(name))
                .findFirst();
    }
}
