package fascicle.book.compose;

import fascicle.bath.Magnitude;
import fascicle.book.figures.Figures;
import fascicle.book.page.Fact;
import fascicle.book.words.Words;
import fascicle.measure.Dimension;
import fascicle.notebook.Dye;
import fascicle.workings.EntryWorking;
import fascicle.workings.stock.DyedBundle;
import fascicle.workings.stock.Gap;
import fascicle.workings.stock.Remainder;
import fascicle.workings.stock.Stocktaking;
import fascicle.workings.stock.Supply;
import fascicle.workings.stock.Total;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is left, how long it lasts and what a pot cost, in words; what is not known says which line would tell. */
final class StockWords {

    /** A page does not grow with the notebook: of many lines the first are named. */
    private static final int MOST_LINES = 5;

    private static final double DAYS_IN_A_YEAR = 365.25;

    /** Who knows what will be in ten years. */
    private static final int MOST_YEARS = 10;

    private final Words words;
    private final Figures figures;
    private final Stocktaking stock;
    private final Optional<String> currency;
    private final boolean priced;

    StockWords(Materials materials, Stocktaking stock) {
        this.words = materials.words();
        this.figures = materials.figures();
        this.stock = stock;
        this.currency = materials.workings().notebook().cover().currency();
        this.priced = materials.workings().notebook().dyes().stream()
                .anyMatch(dye -> dye.pack().flatMap(Dye.Pack::price).isPresent());
    }

    /** How much is left. */
    String left(Remainder remainder, Dimension measured) {
        if (remainder.isOverdrawn()) {
            return words.say("shelf.overdrawn", amount(remainder.atMost(), measured));
        }
        if (remainder.left().known()) {
            return amount(remainder.left(), measured);
        }
        return remainder.atMost().known() ? words.say("shelf.at-most", amount(remainder.atMost(), measured))
                : words.say("shelf.unknown");
    }

    /** How much was used in the last days, as far as that is known. */
    String lately(Supply supply) {
        return atLeast(supply.lately(), supply.measured());
    }

    /** A sum, or what it is at least. */
    String atLeast(Total total, Dimension measured) {
        String known = amount(total.known(), measured);
        boolean nothing = total.known().orThrow() == 0;
        return total.gaps().isEmpty() ? known
                : nothing ? words.say("shelf.unknown") : words.say("shelf.at-least", known);
    }

    /** How long what is left lasts. */
    String lasts(Supply supply) {
        if (supply.remainder().isUsedUp()) {
            return words.say("shelf.nothing");
        }
        if (supply.isTooLittle()) {
            return words.say("shelf.too-little");
        }
        Magnitude lasts = supply.lasts();
        if (lasts.known()) {
            return span(lasts.orThrow());
        }
        boolean unused = supply.lately().gaps().isEmpty() && supply.lately().known().orThrow() == 0;
        return words.say(unused ? "shelf.unused" : supply.remainder().left().known() ? "shelf.young" : "shelf.unknown");
    }

    /** A time to come, no finer than an estimate is: in days to a quarter, in months to two years. */
    private String span(double days) {
        int years = (int) StrictMath.round(days / DAYS_IN_A_YEAR);
        if (days >= 2 * DAYS_IN_A_YEAR) {
            return years > MOST_YEARS ? words.say("shelf.more-years", MOST_YEARS)
                    : words.say("shelf.lasts-years", years);
        }
        return days >= 90 ? words.say("shelf.lasts-months", (int) StrictMath.round(days * 12 / DAYS_IN_A_YEAR))
                : words.say("shelf.lasts-days", Math.max(1, (int) StrictMath.round(days)));
    }

    /** That something is about to run out. */
    Optional<String> soon(Supply supply) {
        return supply.isRunningOut() ? Optional.of(words.say("shelf.soon")) : Optional.empty();
    }

    /** Until when a damp bundle keeps. */
    Optional<String> useBy(DyedBundle bundle) {
        return bundle.isDamp() ? Optional.of(bundle.useBy().map(figures::date)
                .map(day -> bundle.useByAbout() ? words.say("about", day) : day)
                .orElseGet(() -> words.say("shelf.unknown")))
                : Optional.empty();
    }

    /** That its day is past. */
    Optional<String> late(DyedBundle bundle) {
        return stock.today().filter(bundle::isLate).map(today -> words.say("shelf.late"));
    }

    /** The lines that would make something known. */
    List<String> why(List<Gap> gaps) {
        List<String> lines = new ArrayList<>();
        gaps.stream().limit(MOST_LINES).forEach(gap -> lines.add(words.say("shelf.line",
                gap.place().file() + ":" + gap.place().line(), words.say("gap." + gap.kind().word(), gap.what()))));
        if (gaps.size() > MOST_LINES) {
            lines.add(words.say("shelf.more-lines", gaps.size() - MOST_LINES));
        }
        return List.copyOf(lines);
    }

    /** Adds what is left of a lot or a dye, and how long it lasts. */
    void supply(Facts facts, String key, Supply supply) {
        facts.known(key, Optional.of(because(left(supply.remainder(), supply.measured()), supply.remainder().gaps())));
        if (supply.lasts().known() || supply.isRunningOut()) {
            facts.known("fact.lasts", Optional.of(soon(supply).map(soon ->
                    words.say("shelf.lasts-soon", lasts(supply), soon)).orElseGet(() -> lasts(supply))));
        }
    }

    /** Adds what an entry cost, where the maker reckons with prices at all. */
    void cost(Facts facts, EntryWorking entry) {
        stock.cost(entry.id()).filter(cost -> priced).ifPresent(cost -> {
            facts.known("fact.cost", Optional.of(cost.total().known() ? money(cost.total())
                    : because(words.say("shelf.unknown"), cost.gaps())));
            if (cost.total().known()) {
                facts.known("fact.cost-per-100g", Optional.of(cost.per100g().known() ? money(cost.per100g())
                        : because(words.say("shelf.unknown"), cost.gaps())));
            }
        });
    }

    /** Adds what is left of a dyed bundle. */
    void kept(Facts facts, EntryWorking entry) {
        stock.bundle(entry.id()).ifPresent(bundle -> {
            facts.known("fact.kept-left", Optional.of(because(left(bundle.remainder(), Dimension.MASS),
                    bundle.remainder().gaps())));
            useBy(bundle).ifPresent(day -> facts.fact(Fact.of(words.say("fact.kept-use-by"), because(late(bundle)
                    .map(late -> words.say("shelf.late-by", day, late)).orElse(day), bundle.undated()))));
        });
    }

    private String because(String said, List<Gap> gaps) {
        return gaps.isEmpty() ? said : words.say("shelf.because", said, String.join(words.say("shelf.and"), why(gaps)));
    }

    private String money(Magnitude sum) {
        return figures.money(sum.orThrow(), currency, sum.about());
    }

    private String amount(Magnitude amount, Dimension measured) {
        return figures.amount(amount.orThrow(), measured == Dimension.MASS ? "g" : "ml", amount.about());
    }
}
