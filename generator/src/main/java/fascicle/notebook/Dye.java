package fascicle.notebook;

import fascicle.measure.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A dye, or an assistant that helps it.
 *
 * @param id its file's name
 * @param place where its file begins
 * @param title its title; nothing where the id must do
 * @param share who may see more than the plain facts
 * @param kind what it is for
 * @param type a dye's class
 * @param form how it comes
 * @param acidity strength of an acid, g per 100 mL
 * @param acid which acid
 * @param metal which metal a mordant brings; nothing where its name must tell
 * @param levelTeaspoon a level teaspoon as this maker weighed it
 * @param density g/mL
 * @param pack what is bought
 * @param bought when and how much
 * @param label what the pack warns of
 * @param cautions the maker's own cautions
 * @param notes the maker's words
 */
public record Dye(String id, Place place, Optional<Noted<String>> title, Edition share, Optional<Noted<Kind>> kind,
        Optional<Noted<Type>> type, Optional<Noted<Form>> form, Optional<Noted<Double>> acidity,
        Optional<Noted<Acid>> acid, Optional<Noted<Metal>> metal, Optional<LevelTeaspoon> levelTeaspoon,
        Optional<Noted<Double>> density, Optional<Pack> pack, List<Purchase> bought, Optional<Label> label,
        List<Noted<String>> cautions, List<Note> notes) {

    /**
     * A thing of which a recipe tells the name and no file tells more.
     *
     * @param id the name
     * @param place where its file would begin
     * @return a dye that says nothing
     */
    public static Dye unsaid(String id, Place place) {
        return new Dye(id, place, Optional.empty(), Edition.STUDIO, Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), Optional.empty(), List.of(), List.of());
    }

    /**
     * Whether nothing tells what it is, as where its file has errors and only its id is left.
     *
     * @return true where its file says neither what it is called, what it is for, how it comes nor what it warns of
     */
    public boolean saysNothing() {
        return cautions.isEmpty() && Stream.of(title, kind, type, form, acidity, acid, metal, label)
                .allMatch(Optional::isEmpty);
    }

    /**
     * Whether its file says that it is of a kind.
     *
     * @param asked the kind
     * @return false too where its file does not say
     */
    public boolean is(Kind asked) {
        return kind.filter(said -> said.value() == asked).isPresent();
    }

    /**
     * What it is called.
     *
     * @return its title, or its id where it has none
     */
    public String called() {
        return title.map(Noted::value).orElse(id);
    }

    /**
     * The plain facts of a dye that is not shared itself: what it is, what figures of entries rest on, and every
     * caution.
     *
     * @return a copy without price, purchases and words
     */
    public Dye plainFacts() {
        return new Dye(id, place, title, share, kind, type, form, acidity, acid, metal, levelTeaspoon, density,
                pack.map(bought -> new Pack(bought.holds(), Optional.empty())), List.of(), label, cautions, List.of());
    }

    /**
     * The same dye with other words.
     *
     * @param changed its notes
     * @return a copy
     */
    public Dye withNotes(List<Note> changed) {
        return new Dye(id, place, title, share, kind, type, form, acidity, acid, metal, levelTeaspoon, density, pack,
                bought, label, cautions, changed);
    }

    /**
     * The same dye without what is the studio's own: prices and purchases.
     *
     * @return a copy
     */
    public Dye withoutPurchases() {
        return new Dye(id, place, title, share, kind, type, form, acidity, acid, metal, levelTeaspoon, density,
                pack.map(bought -> new Pack(bought.holds(), Optional.empty())), List.of(), label, cautions, notes);
    }

    /** What a dye or assistant is for. */
    public enum Kind implements Word {
        /** It colours. */
        DYE,
        /** It evens and drives the dye. */
        SALT,
        /** It sours the bath. */
        ACID,
        /** It sweetens the bath. */
        ALKALI,
        /** It binds dye to needle. */
        MORDANT,
        /** It lets water in. */
        WETTING,
        /** Anything else. */
        OTHER
    }

    /** A dye's class. */
    public enum Type implements Word {
        /** Acid dye. */
        ACID,
        /** Basic dye. */
        BASIC,
        /** Direct dye. */
        DIRECT,
        /** Disperse dye. */
        DISPERSE,
        /** Reactive dye. */
        REACTIVE,
        /** A mixture sold for any fibre. */
        UNION,
        /** Vat dye. */
        VAT,
        /** From a plant or an insect. */
        NATURAL,
        /** Not known. */
        UNKNOWN
    }

    /** How a thing comes. */
    public enum Form implements Word {
        /** A powder. */
        POWDER,
        /** A liquid. */
        LIQUID,
        /** Crystals. */
        CRYSTALS,
        /** A plant. */
        PLANT
    }

    /** Which acid an acid is. */
    public enum Acid implements Word {
        /** Acetic acid, as in vinegar. */
        ACETIC,
        /** Citric acid. */
        CITRIC
    }

    /** Which metal a mordant brings. */
    public enum Metal implements Word {
        /** Aluminium, as in alum. */
        ALUMINIUM,
        /** Iron, which saddens. */
        IRON,
        /** Copper. */
        COPPER,
        /** Chrome, as in a dichromate. */
        CHROME,
        /** Tin. */
        TIN
    }

    /**
     * A level teaspoon, weighed.
     *
     * @param weight of one
     * @param weighed how many were weighed to learn it
     */
    public record LevelTeaspoon(Noted<Quantity> weight, Optional<Noted<Double>> weighed) {}

    /**
     * What is bought.
     *
     * @param holds how much is in a pack
     * @param price of a pack, in the notebook's currency
     */
    public record Pack(Optional<Noted<Quantity>> holds, Optional<Noted<Double>> price) {}

    /**
     * A purchase.
     *
     * @param on when
     * @param packs how many
     */
    public record Purchase(Optional<Noted<LocalDate>> on, Optional<Noted<Double>> packs) {}

    /**
     * The pack's own warning in the words of the Globally Harmonized System.
     *
     * @param signal {@code danger} or {@code warning}
     * @param says hazard statements such as {@code H318}
     */
    public record Label(Optional<Noted<String>> signal, List<Noted<String>> says) {}
}
