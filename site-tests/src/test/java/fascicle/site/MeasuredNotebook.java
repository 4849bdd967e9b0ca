package fascicle.site;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** A notebook in which nothing is measured twice in the same way. */
final class MeasuredNotebook {

    private static final Map<String, String> FILES = Map.ofEntries(
            Map.entry("notebook.yaml", """
                    form: 1
                    title: Every way to measure
                    kitchen: us
                    balance: 0.5 g
                    """),
            Map.entry("vessels.yaml", """
                    pan: {title: Pan, shape: oval, length: 31 cm, width: 19 cm, height: 9 cm, made-of: aluminium}
                    tub: {title: Tub, shape: rectangular, length: 30 cm, width: 17 cm, height: 6 cm, made-of: copper}
                    odd: {title: Odd one, shape: round, height: 20 cm, made-of: glass}
                    low: {title: Low <tray>, shape: round, diameter: 22 cm, height: 3 cm, made-of: plastic}
                    """),
            Map.entry("needles/long.md", "---\ntitle: Long needles\nlength: 33 cm\n---\n"),
            Map.entry("needles/foot.md", "---\ntitle: As long as a foot\nlength: about 13 1/2 in\n---\n"),
            Map.entry("dyes/rust.md", """
                    ---
                    title: Rust & “ochre” <b>
                    kind: dye
                    form: powder
                    level-tsp: {weight: about 2.7 g}
                    pack: {holds: 20 g}
                    ---
                    """),
            Map.entry("dyes/table-salt.md", "---\nkind: salt\nform: crystals\n---\n"),
            Map.entry("dyes/vinegar.md", "---\nkind: acid\nform: liquid\nacidity: 5 %\nacid: acetic\ndensity: 1.006 g/mL\n---\n"),
            Map.entry("dyes/wine.md", "---\nkind: acid\nform: liquid\nacidity: 6 %\nacid: acetic\npack: {holds: 500 mL}\n---\n"),
            Map.entry("dyes/soda.md", "---\nkind: alkali\nform: crystals\n---\n"),
            Map.entry("dyes/husks.md", "---\nkind: dye\nform: plant\n---\n"),
            Map.entry("methods/deep.md", """
                    ---
                    title: Deep
                    for: 30 g
                    needles: {lot: long}
                    presoak: {water: 2 L, with: [{is: vinegar, amount: 1/4 cup}]}
                    before: [{as: mordant, water: 900 mL, with: [{is: table-salt, amount: 3 tsp}]}]
                    bath:
                      vessel: pan
                      depth: 4 cm
                      dye: [{is: rust, amount: 1 1/2 tsp}, {is: rust, amount: 0.7 % owf}, {is: husks, amount: about 80 g}]
                      assistants: [{is: table-salt, amount: 1/4 cup}, {is: vinegar, amount: 2 tbsp}, {is: vinegar, amount: 1 tbsp, at: 30 min}, {is: vinegar, amount: a splash, at: overnight}, {is: wine, amount: 40 g}]
                    after: [{as: mordant, water: 1 L}, {water: 700 mL}, {water: 1.2 L, with: [{is: vinegar, amount: 1 tbsp}]}]
                    finish: [{is: vinegar, amount: 1 tsp}]
                    ---
                    """),
            Map.entry("days/2026-03-01/pots.md", """
                    ---
                    presoak: {water: 5 L, with: [{is: vinegar, amount: 1 cup}]}
                    pots:
                      - name: first
                        needles: {lot: long, weight: about 25 g}
                        bath:
                          vessel: tub
                          water: 1.5 L
                          dye: [{is: rust, amount: 40 mL of 0.5 % stock}, {is: rust, amount: 1/2 packet}]
                          assistants: [{is: table-salt, amount: 12 g/L}, {is: vinegar, amount: 30 mL, by: needles}, {is: table-salt, amount: 5 g, by: batch}]
                        glass: {left: 1.1 L}
                      - name: second
                        needles: {lot: long, weight: 21 g}
                        bath: {reuses: 2026-03-01-first, ratio: 61.7, dye: [{is: rust, amount: 0.3 g}]}
                      - name: third
                        needles: {lot: long, weight: 19 g}
                        bath: {reuses: 2026-03-01-second, vessel: tub, assistants: [{is: wine, amount: 1/2 packet}, {is: wine, amount: 3 % owf}]}
                        glass: {left: about 0.6 L}
                      - name: fourth
                        needles: {lot: long, weight: 19 g}
                        bath: {reuses: 2026-03-01-third, vessel: tub, dye: [{is: rust, amount: 0.2 g}]}
                      - name: drawn
                        needles: {lot: long, weight: 30 g}
                        bath: {vessel: tub, ratio: 40, dye: [{is: husks, amount: 100 % owf}], extract: {of: about 30 g, state: dried, water: 1.2 L}}
                        heat: [{to: simmer, hold: 1 h, on: oven}]
                        before: [{as: scour, water: 900 mL, with: [{is: soda, amount: 5 g}]}]
                      - name: unweighed
                        needles: {lot: long}
                        bath: {vessel: odd, ratio: 40, dye: [{is: rust, amount: 2 % owf}], assistants: [{is: table-salt, amount: a handful}]}
                      - name: weak
                        needles: {lot: long, weight: 20 g}
                        bath: {vessel: tub, ratio: 30, dye: [{is: rust, amount: 500 mL of 1 % stock, by: batch}]}
                        heat: [{to: 70 °C, hold: 1 h}]
                      - name: shallow
                        needles: {lot: long, weight: 20 g}
                        bath: {vessel: low, depth: 2.6 cm, dye: [{is: rust, amount: 0.05 g}]}
                        heat: [{to: 40 °C, hold: 8 h, on: sun}]
                        after: [{as: scour, water: 800 mL, with: [{is: soda, amount: 3 g}]}]
                      - name: odd
                        needles: {lot: long, weight: 20 g}
                        presoak: {water: 2 L, with: [{is: table-salt, amount: 20 kg}], for: 1 h}
                        before: [{as: mordant, with: [{is: vinegar, amount: 40 L}]}]
                        bath: {vessel: low, ratio: 40, dye: [{is: rust, amount: 2 mL of 500 % stock}]}
                        heat: [{to: 400 °F, hold: 400 h}, {to: -300 °C}, {to: 400 °F}]
                        finish: [{is: table-salt, amount: 4 kg}, {is: table-salt, amount: 12 g/L}]
                      - name: roughly
                        needles: {lot: foot, weight: 20 g}
                        presoak: {with: [{is: vinegar, amount: 1 cup}], for: 1 h}
                        before: [{as: mordant, with: [{is: table-salt, amount: 3 tsp}]}, {water: about 2345 mL, with: [{is: husks, amount: about 400 % owf}]}]
                        bath: {vessel: low, depth: about 1 in, dye: [{is: husks, amount: about 600 g}], extract: {of: about 1234.5 g, water: 12345 mL}}
                    ---
                    """));

    private MeasuredNotebook() {}

    static Path write(Path folder) throws IOException {
        for (Map.Entry<String, String> file : FILES.entrySet()) {
            Path target = folder.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.writeString(target, file.getValue());
        }
        return folder;
    }
}
