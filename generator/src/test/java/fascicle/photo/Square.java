package fascicle.photo;

/** The few things that scenes do with three rows of three; their own, so that they check what the program does. */
final class Square {

    /** Cone responses of the Bradford transform (K. M. Lam, 1985; ICC.1:2022, annex E). */
    private static final double[][] BRADFORD = {
        {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
    };

    private Square() {}

    /** Turns colours under one white into the like under another: linear Bradford. */
    static double[][] adaptation(double[] from, double[] to) {
        double[] before = times(BRADFORD, from);
        double[] after = times(BRADFORD, to);
        double[][] gains = {
            {after[0] / before[0], 0, 0}, {0, after[1] / before[1], 0}, {0, 0, after[2] / before[2]}
        };
        return times(inverse(BRADFORD), times(gains, BRADFORD));
    }

    static double[] times(double[][] rows, double[] vector) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = rows[i][0] * vector[0] + rows[i][1] * vector[1] + rows[i][2] * vector[2];
        }
        return product;
    }

    static double[][] times(double[][] left, double[][] right) {
        double[][] product = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                product[i][j] = left[i][0] * right[0][j] + left[i][1] * right[1][j] + left[i][2] * right[2][j];
            }
        }
        return product;
    }

    /** Gauss and Jordan, without pivoting: what is turned round here has large diagonals. */
    static double[][] inverse(double[][] rows) {
        double[][] wide = new double[3][6];
        for (int i = 0; i < 3; i++) {
            System.arraycopy(rows[i], 0, wide[i], 0, 3);
            wide[i][3 + i] = 1;
        }
        for (int i = 0; i < 3; i++) {
            double pivot = wide[i][i];
            for (int j = 0; j < 6; j++) {
                wide[i][j] /= pivot;
            }
            for (int k = 0; k < 3; k++) {
                double factor = wide[k][i];
                for (int j = 0; j < 6 && k != i; j++) {
                    wide[k][j] -= factor * wide[i][j];
                }
            }
        }
        double[][] inverse = new double[3][3];
        for (int i = 0; i < 3; i++) {
            System.arraycopy(wide[i], 3, inverse[i], 0, 3);
        }
        return inverse;
    }
}
