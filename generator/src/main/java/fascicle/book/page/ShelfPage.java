package fascicle.book.page;

import java.util.List;
import java.util.Optional;

/**
 * What is left of needles, dyes and dyed bundles, and what went into baskets.
 *
 * @param frame what stands round it
 * @param asOf up to which day it tells, and how it was reckoned
 * @param remarks what is not counted
 * @param needles the needle lots, what is about to run out first
 * @param things the dyes and assistants, what is about to run out first
 * @param kept the dyed bundles under headings, the damp ones first
 * @param usedUp how many bundles are used up, in words
 * @param baskets the baskets, by name
 */
public record ShelfPage(Frame frame, String asOf, List<String> remarks, List<Supplied> needles, List<Supplied> things,
        List<KeptBundles> kept, Optional<String> usedUp, List<Basket> baskets) implements Page {

    @Override
    public String template() {
        return "shelf.ftlh";
    }

    /**
     * A needle lot, a dye or an assistant.
     *
     * @param swatch a lot's bare needles, small
     * @param thing the way to it
     * @param soon that it is about to run out, in words
     * @param left how much is left
     * @param used how much was used lately
     * @param lasts how long it lasts
     * @param why what would make known what is not, line by line
     */
    public record Supplied(Optional<Markup> swatch, Link thing, Optional<String> soon, String left, String used,
            String lasts, List<String> why) {}

    /**
     * Dyed bundles under a heading.
     *
     * @param title the heading
     * @param care what is to be minded, in sentences
     * @param bundles the bundles
     */
    public record KeptBundles(String title, Optional<String> care, List<KeptBundle> bundles) {}

    /**
     * A dyed bundle.
     *
     * @param swatch its colour, small
     * @param entry the way to its entry
     * @param tag its tag
     * @param colour its colour's name
     * @param left how much is left
     * @param useBy until when a damp one keeps
     * @param late that this day is past, in words
     * @param why what would make known what is not, line by line
     */
    public record KeptBundle(Markup swatch, Link entry, Optional<String> tag, Optional<String> colour, String left,
            Optional<String> useBy, Optional<String> late, List<String> why) {}

    /**
     * A basket.
     *
     * @param name what its maker calls it
     * @param weight how much dyed needles went into it
     * @param parts the bundles that did
     */
    public record Basket(String name, String weight, List<Woven> parts) {}

    /**
     * A bundle that went into a basket.
     *
     * @param swatch its colour, small
     * @param entry the way to its entry
     * @param tag its tag
     * @param weight how much of it
     */
    public record Woven(Markup swatch, Link entry, Optional<String> tag, String weight) {}
}
