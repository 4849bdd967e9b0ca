package fascicle.notebook;

import java.util.List;

/**
 * Something that had to be left out because of errors.
 *
 * @param what its id, or its file where it has none
 * @param place where it stands
 * @param share who may know of it
 * @param entry whether it is an entry, and so missing from the book's pages
 * @param why the findings, in order; what it leans on where it has none of its own
 */
public record Missing(String what, Place place, Edition share, boolean entry, List<String> why) {}
