package fascicle.photo;

import java.util.List;

/** A printed card with round corners: a grey one with a white border and a ruler's marks, or a chart of patches. */
final class Card {

    private static final double[] PAPER = {0.80, 0.79, 0.765};
    private static final double[] INK = {0.03, 0.03, 0.032};

    private Card() {}

    /** A grey card; its grey begins a tenth of its height within. */
    static void grey(Canvas canvas, Area at, double[] grey) {
        sheet(canvas, at, PAPER);
        Box inner = Box.of(canvas, grey(at));
        ruler(canvas, Box.of(canvas, at));
        inner.fill(canvas, INK, 4);
        inner.shrunk(2).fill(canvas, grey, 3);
    }

    /** Where the grey of a card lies. */
    static Area grey(Area card) {
        double borderY = 0.1 * card.height();
        double borderX = 0.1 * card.width();
        return new Area(
                card.x() + borderX, card.y() + borderY, card.width() - 2 * borderX, card.height() - 2 * borderY);
    }

    /** A chart; its patches lie where {@link Scene#patches} says, for the area within its border. */
    static void chart(Canvas canvas, Area at, List<double[]> colours) {
        sheet(canvas, at, Scene.scaled(INK, 0.9));
        List<Area> places = Scene.patches(within(at), colours.size());
        for (int i = 0; i < colours.size(); i++) {
            Box.of(canvas, places.get(i)).fill(canvas, colours.get(i), 3);
        }
    }

    /** What lies within the border of a chart. */
    static Area within(Area chart) {
        return new Area(chart.x() + 0.03 * chart.width(), chart.y() + 0.03 * chart.height(), 0.94 * chart.width(),
                0.94 * chart.height());
    }

    private static void sheet(Canvas canvas, Area at, double[] colour) {
        Box box = Box.of(canvas, at);
        Canvas mask = new Canvas(canvas.width(), canvas.height());
        box.fill(mask, new double[] {1, 1, 1}, 18);
        canvas.shade(mask, 5, 0.6);
        box.fill(canvas, Scene.scaled(colour, 0.86), 18);
        box.shrunk(1.5).fill(canvas, colour, 17);
    }

    private static void ruler(Canvas canvas, Box card) {
        double step = (card.right - card.left) / 48;
        for (int i = 3; i <= 45; i++) {
            double x = card.left + i * step;
            double tall = (i % 5 == 0 ? 0.6 : 0.35) * 0.1 * (card.bottom - card.top);
            new Box(x - 0.7, card.bottom - tall - 3, x + 0.7, card.bottom - 3).fill(canvas, INK, 0);
        }
    }

    private record Box(double left, double top, double right, double bottom) {

        static Box of(Canvas canvas, Area area) {
            double perX = canvas.width() / 100.0;
            double perY = canvas.height() / 100.0;
            return new Box(area.x() * perX, area.y() * perY, (area.x() + area.width()) * perX,
                    (area.y() + area.height()) * perY);
        }

        Box shrunk(double by) {
            return new Box(left + by, top + by, right - by, bottom - by);
        }

        void fill(Canvas canvas, double[] colour, double corner) {
            for (int y = (int) top - 1; y <= bottom + 1; y++) {
                for (int x = (int) left - 1; x <= right + 1; x++) {
                    canvas.cover(x, y, colour, StrictMath.max(0, StrictMath.min(1, 0.5 - outside(x, y, corner))));
                }
            }
        }

        /** How far a place lies outside, below 0 within. */
        private double outside(double x, double y, double corner) {
            double offX = StrictMath.max(left + corner - x, x - right + corner);
            double offY = StrictMath.max(top + corner - y, y - bottom + corner);
            double beyondX = StrictMath.max(0, offX);
            double beyondY = StrictMath.max(0, offY);
            return StrictMath.sqrt(beyondX * beyondX + beyondY * beyondY)
                    + StrictMath.min(0, StrictMath.max(offX, offY)) - corner;
        }
    }
}
