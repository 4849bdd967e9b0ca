package fascicle.notebook.read;

import fascicle.notebook.Entry;
import fascicle.notebook.Findings;
import fascicle.notebook.Noted;
import fascicle.notebook.Reading;
import java.util.Set;

/** Checks readings by eye: the tag they name must be on a bag. */
final class EntryTags {

    private EntryTags() {}

    /**
     * Says so where a reading by eye names a tag that is on no bag.
     *
     * @param entry the entry
     * @param tags every tag there is
     * @param complete whether every entry could be read; otherwise the tag may be on one that could not
     * @param findings where to say so
     */
    static void check(Entry entry, Set<String> tags, boolean complete, Findings findings) {
        for (Reading reading : entry.colour()) {
            if (!(reading.colour() instanceof Reading.ByEye byEye)) {
                continue;
            }
            Noted<String> tag = byEye.tag();
            if (entry.tag().filter(own -> own.value().equals(tag.value())).isPresent()) {
                findings.error(tag.place(), "the tag “" + tag.written() + "” is this entry's own, so its colour is "
                        + "like itself; name the tag of another sample");
            } else if (complete && !tags.contains(tag.value())) {
                findings.error(tag.place(), "the tag “" + tag.written() + "” is on no bag; name a tag that an entry "
                        + "has, or read the colour another way");
            }
        }
    }
}
