package fascicle.colour;

/** A 3 × 3 matrix, as colour conversions need it: rows of three, immutable. */
public final class Matrix {

    private final double[][] rows;

    private Matrix(double[][] rows) {
        this.rows = rows;
    }

    /** The matrix of these rows of three. */
    public static Matrix ofRows(double[] first, double[] second, double[] third) {
        return new Matrix(new double[][] {first.clone(), second.clone(), third.clone()});
    }

    /** The matrix of these columns of three. */
    public static Matrix ofColumns(double[] first, double[] second, double[] third) {
        double[][] rows = new double[3][];
        for (int i = 0; i < 3; i++) {
            rows[i] = new double[] {first[i], second[i], third[i]};
        }
        return new Matrix(rows);
    }

    static Matrix ofDiagonal(double[] diagonal) {
        return ofRows(
                new double[] {diagonal[0], 0, 0}, new double[] {0, diagonal[1], 0}, new double[] {0, 0, diagonal[2]});
    }

    /** This matrix times a column of three. */
    public double[] times(double... vector) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = rows[i][0] * vector[0] + rows[i][1] * vector[1] + rows[i][2] * vector[2];
        }
        return product;
    }

    /** This matrix times another: what comes of the other first and of this one then. */
    public Matrix times(Matrix other) {
        return ofColumns(times(other.column(0)), times(other.column(1)), times(other.column(2)));
    }

    /**
     * The inverse by cofactors; the matrices of colour science are far from singular. Of a singular one the elements
     * are not finite.
     */
    public Matrix inverse() {
        double[][] cofactors = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double[] below = rows[(i + 1) % 3];
                double[] beneath = rows[(i + 2) % 3];
                int right = (j + 1) % 3;
                int beyond = (j + 2) % 3;
                cofactors[i][j] = below[right] * beneath[beyond] - below[beyond] * beneath[right];
            }
        }
        double determinant = determinant();
        double[][] inverse = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                inverse[i][j] = cofactors[j][i] / determinant;
            }
        }
        return new Matrix(inverse);
    }

    /** The determinant; 0 where the columns do not span space. */
    public double determinant() {
        return rows[0][0] * (rows[1][1] * rows[2][2] - rows[1][2] * rows[2][1])
                - rows[0][1] * (rows[1][0] * rows[2][2] - rows[1][2] * rows[2][0])
                + rows[0][2] * (rows[1][0] * rows[2][1] - rows[1][1] * rows[2][0]);
    }

    private double[] column(int j) {
        return new double[] {rows[0][j], rows[1][j], rows[2][j]};
    }
}
