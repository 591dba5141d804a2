package campcloth.supply;

import java.util.List;
import java.util.Optional;

/**
 * What the head of a list was understood as.
 *
 * @param delimiter the sign between cells
 * @param columns the columns that are read
 * @param ignored the columns that are not
 */
public record ListHead(char delimiter, List<Recognised> columns, List<Ignored> ignored) {

    public ListHead {
        columns = List.copyOf(columns);
        ignored = List.copyOf(ignored);
    }

    /**
     * A column that is read.
     *
     * @param header as the list writes it
     * @param column what it holds
     * @param unit the unit that the head names, for cells that name none
     */
    public record Recognised(String header, Column column, Optional<String> unit) {}

    /**
     * A column that is not read.
     *
     * @param header as the list writes it, shortened
     * @param because why not
     */
    public record Ignored(String header, String because) {}
}
