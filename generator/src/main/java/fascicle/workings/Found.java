package fascicle.workings;

import fascicle.notebook.Finding;
import fascicle.notebook.Missing;
import java.util.List;

/**
 * What only computing reveals: impossible baths, and what a maker may want to know.
 *
 * @param findings all of it, in order of file, line and column
 * @param faulty the entries that errors among it keep out, with those errors
 */
public record Found(List<Finding> findings, List<Missing> faulty) {}
