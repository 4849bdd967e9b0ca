package fascicle.bench;

import java.util.List;

/** The vessels of the seeded notebook, each large enough for any of its baths. */
final class Vessels {

    /** {@code vessels.yaml}. */
    static final String FILE = """
            wide-pan: {title: Wide pan, shape: oval, length: 42 cm, width: 28 cm, height: 14 cm, made-of: enamel, lid: true}
            roaster: {title: Roaster, shape: rectangular, length: 45 cm, width: 32 cm, height: 13 cm, made-of: stainless, lid: true}
            stock-pot: {title: Stock pot, shape: round, diameter: 28 cm, height: 24 cm, made-of: stainless, lid: true}
            iron-pot: {title: Iron pot, shape: round, diameter: 30 cm, height: 18 cm, made-of: iron}
            copper-pan: {title: Copper pan, shape: round, diameter: 32 cm, height: 18 cm, made-of: copper}
            old-canner: {title: Old canner, shape: round, diameter: 34 cm, height: 26 cm, made-of: enamel, lid: true}
            soaking-bin: {title: Soaking bin, shape: rectangular, length: 60 cm, width: 35 cm, height: 30 cm, made-of: stainless}
            """;

    /** The vessels' ids. */
    static final List<String> IDS = FILE.lines().map(line -> line.substring(0, line.indexOf(':'))).toList();

    private Vessels() {
    }
}
