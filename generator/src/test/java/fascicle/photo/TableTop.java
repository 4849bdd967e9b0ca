package fascicle.photo;

/** What a demonstration photograph is laid out on. */
enum TableTop {
    /** Scrubbed boards. */
    WOOD {
        @Override
        double[] at(double x, double y) {
            double board = StrictMath.floor((y + 90) / 290);
            double within = (y + 90) / 290 - board;
            double wave = 26 * GRAIN.deep(x / 420 + 31 * board, y / 300 + 9 * board);
            double rings = GRAIN.at(3.7 * board, (y + wave) / 7 + 100 * board);
            double fibre = GRAIN.deep(x / 160 + 5 * board, y / 3.1);
            double tone = 0.9 + 0.09 * (rings - 0.5) + 0.10 * (fibre - 0.5) + 0.10 * (GRAIN.at(board, 0.5) - 0.5);
            double seam = StrictMath.min(within, 1 - within) * 290;
            double gap = seam < 2.5 ? 0.45 + 0.22 * seam : 1;
            double warm = 0.05 * (rings - 0.5);
            return new double[] {0.56 * tone * gap, (0.425 - 0.4 * warm) * tone * gap, (0.275 - warm) * tone * gap};
        }
    },
    /** A slab of slate. */
    SLATE {
        @Override
        double[] at(double x, double y) {
            double cloud = GRAIN.deep(x / 260 + y / 900, y / 150);
            double grit = GRAIN.at(x / 2.3, y / 2.3);
            double cleft = StrictMath.abs(GRAIN.deep(x / 520, y / 90) - 0.5);
            double tone = 0.075 + 0.05 * (cloud - 0.5) + 0.012 * (grit - 0.5) - (cleft < 0.012 ? 0.012 : 0);
            return new double[] {0.97 * tone, tone, 1.07 * tone};
        }
    },
    /** Undyed linen. */
    LINEN {
        @Override
        double[] at(double x, double y) {
            double warp = StrictMath.sin(x * 2 * StrictMath.PI / 7 + 2 * GRAIN.at(x / 40, y / 400));
            double weft = StrictMath.sin(y * 2 * StrictMath.PI / 7 + 2 * GRAIN.at(x / 400, y / 40));
            double thread = 0.03 * warp * weft + 0.07 * (GRAIN.at(x / 90, y / 5) - 0.5)
                    + 0.07 * (GRAIN.at(x / 5, y / 90) - 0.5);
            double fold = 0.06 * (GRAIN.at(x / 600, y / 500) - 0.5);
            double tone = 0.60 * (1 + thread + fold);
            return new double[] {tone, 0.93 * tone, 0.80 * tone};
        }
    };

    private static final Mottle GRAIN = new Mottle(58);

    /** Linear light of the place, in pixels of a picture 1600 wide. */
    abstract double[] at(double x, double y);

    /** Covers the whole picture. */
    void lay(Canvas canvas) {
        for (int y = 0; y < canvas.height(); y++) {
            for (int x = 0; x < canvas.width(); x++) {
                canvas.cover(x, y, at(x, y), 1);
            }
        }
    }
}
