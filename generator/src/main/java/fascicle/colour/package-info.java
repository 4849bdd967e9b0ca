/**
 * Colour as it is measured: CIE Lab, sRGB and linear light, reflectance spectra, colour differences, the unlevelness of
 * a batch, grades of the grey scales, the tone of a shift, and the standard's names for colours.
 *
 * <p>Plain colour science from published formulas, each with its source. Colours read off photographs live in the
 * room for photographs; what a colour means for an entry is worked out further up. This room knows no notebook and no
 * finding.
 */
@NullMarked
package fascicle.colour;

import org.jspecify.annotations.NullMarked;
