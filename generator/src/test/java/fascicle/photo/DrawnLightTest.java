package fascicle.photo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fascicle.colour.ColourDifference;
import fascicle.colour.Lab;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_ColorSpace;
import java.awt.color.ICC_Profile;
import org.junit.jupiter.api.Test;

/** What the drawn scenes rest on, against published figures, so that they may judge the program. */
class DrawnLightTest {

    private static final Table PUBLISHED = Table.read("light.csv");

    /** Burns' matrix is built of the same tables: observer and D65 are right, and so is the matrix of sRGB. */
    @Test
    void observerAndDaylightMakeBurnsMatrix() {
        String[] rows = {"T_r", "T_g", "T_b"};
        for (int channel = 0; channel < 3; channel++) {
            double[] row = new double[Spectrum.BANDS];
            double sum = 0;
            for (int band = 0; band < Spectrum.BANDS; band++) {
                double power = Illuminant.D65.power(band);
                row[band] = RgbSpace.SRGB.linear(new double[] {
                    power * PUBLISHED.column("x")[band], power * PUBLISHED.column("y")[band],
                    power * PUBLISHED.column("z")[band]
                })[channel];
                sum += row[band];
            }
            for (int band = 0; band < Spectrum.BANDS; band++) {
                // Burns' matrix from XYZ to sRGB has seven decimals.
                assertEquals(PUBLISHED.column(rows[channel])[band], row[band] / sum, 2e-7);
            }
        }
    }

    /** Chromaticities by CIE 15:2004, table T.3, from memory; the ends of the spectrum that are left out move the fourth decimal. */
    @Test
    void lightsHaveTheirChromaticities() {
        assertChromaticity(0.34567, 0.35850, Illuminant.D50);
        assertChromaticity(0.31272, 0.32903, Illuminant.D65);
        assertChromaticity(0.44758, 0.40745, Illuminant.A);
    }

    /** Relative power at 400, 500, 600 and 700 nm by CIE 15:2004, table T.1, from memory. */
    @Test
    void theLampIsThatOfTheTable() {
        assertEquals(14.7080, Illuminant.A.power(2), 5e-5);
        assertEquals(59.8611, Illuminant.A.power(12), 5e-5);
        assertEquals(129.043, Illuminant.A.power(22), 5e-4);
        assertEquals(198.261, Illuminant.A.power(32), 5e-4);
    }

    /** The reflectances were made so that under D65 they have these sRGB colours. */
    @Test
    void reflectancesHaveTheColoursOfTheirNames() {
        assertEquals(12, Spectrum.names().size());
        for (String name : Spectrum.names()) {
            double[] channels = {0, 0, 0};
            for (int band = 0; band < Spectrum.BANDS; band++) {
                double share = Spectrum.of(name).bands()[band];
                channels[0] += share * PUBLISHED.column("T_r")[band];
                channels[1] += share * PUBLISHED.column("T_g")[band];
                channels[2] += share * PUBLISHED.column("T_b")[band];
            }
            for (int i = 0; i < 3; i++) {
                int written = Integer.parseInt(name.substring(2 * i, 2 * i + 2), 16);
                assertEquals(written, 255 * RgbSpace.encode(channels[i]), 0.01, name);
            }
        }
    }

    @Test
    void aGreyIsTheGreyOfItsReflectance() {
        for (double percent : new double[] {3, 18, 90}) {
            assertEquals(0, ColourDifference.ciede2000(Lab.ofReflectance(percent / 100), Spectrum.grey(percent).lab()),
                    1e-9);
        }
    }

    /** What the chart knows must span what needles have, without any of their spectra. */
    @Test
    void patchesOfTheChartAreNoNeedles() {
        assertEquals(24, Spectrum.chart().size());
        for (Spectrum patch : Spectrum.chart()) {
            for (String name : Spectrum.names()) {
                assertTrue(ColourDifference.ciede2000(patch.lab(), Spectrum.of(name).lab()) > 0.5, name);
            }
        }
    }

    /**
     * The colorants of Display P3 as its published profile of 2015 has them, from memory: 0.51512 0.24120 −0.00105;
     * 0.29198 0.69225 0.04189; 0.15710 0.06657 0.78407. The JDK reads them from both kinds of profile.
     */
    @Test
    void profilesSayWhatDisplayP3Is() {
        float[][] colorants = {
            {0.51512f, 0.24120f, -0.00105f}, {0.29198f, 0.69225f, 0.04189f}, {0.15710f, 0.06657f, 0.78407f}
        };
        for (byte[] bytes : new byte[][] {
            ColourProfile.withFormula(RgbSpace.DISPLAY_P3), ColourProfile.withTable(RgbSpace.DISPLAY_P3)
        }) {
            ICC_Profile profile = ICC_Profile.getInstance(bytes);
            assertEquals(ColorSpace.TYPE_RGB, profile.getColorSpaceType());
            int[] tags = {ICC_Profile.icSigRedColorantTag, ICC_Profile.icSigGreenColorantTag,
                ICC_Profile.icSigBlueColorantTag};
            for (int i = 0; i < 3; i++) {
                for (int j = 0; j < 3; j++) {
                    int fixed = java.nio.ByteBuffer.wrap(profile.getData(tags[i])).getInt(8 + 4 * j);
                    assertEquals(colorants[i][j], fixed / 65536.0, 5e-5);
                }
            }
            float[] grey = new ICC_ColorSpace(profile).toRGB(new float[] {0.5f, 0.5f, 0.5f});
            assertEquals(0.5, grey[0], 0.003);
            assertEquals(0.5, grey[2], 0.003);
        }
    }

    private static void assertChromaticity(double x, double y, Illuminant light) {
        double[] white = light.white();
        double sum = white[0] + white[1] + white[2];
        assertEquals(x, white[0] / sum, 3e-4, light.name());
        assertEquals(y, white[1] / sum, 3e-4, light.name());
    }
}
