package fascicle.colour.table;

import java.util.List;

/**
 * One line of a table.
 *
 * @param line its place in the file, counted from 1
 * @param cells what stands in it, without blanks around
 */
record Row(int line, List<String> cells) {

    Row {
        cells = List.copyOf(cells);
    }

    /** Whether nothing stands in it. */
    boolean blank() {
        return cells.stream().allMatch(String::isEmpty);
    }

    /** The row without the empty cells at its end, as long as it has more than so many. */
    Row without(int empty) {
        int size = cells.size();
        while (size > empty && cells.get(size - 1).isEmpty()) {
            size--;
        }
        return new Row(line, cells.subList(0, size));
    }
}
