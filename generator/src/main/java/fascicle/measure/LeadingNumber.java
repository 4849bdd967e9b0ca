package fascicle.measure;

import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A text cut after the number it begins with, for those who read amounts whose units are none of this room's
 * ({@code 1.5 % owf}, {@code 2 packets}).
 *
 * @param about whether {@code about} or {@code ~} stood before the number
 * @param number the number, exactly
 * @param rest what follows it, without the spaces around it, with plain spaces and strokes for their look-alikes
 */
public record LeadingNumber(boolean about, BigFraction number, String rest) {

    /**
     * Cuts a text.
     *
     * @param expected what should stand there, for the complaint: {@code "an amount, such as 45 g"}
     * @throws UnreadableQuantity if the text begins with no number, or with one that cannot be read
     */
    public static LeadingNumber read(String text, String expected) throws UnreadableQuantity {
        Cursor cursor = new Cursor(text, expected);
        boolean about = cursor.about();
        BigFraction number = cursor.number();
        return new LeadingNumber(about, number, cursor.rest());
    }
}
