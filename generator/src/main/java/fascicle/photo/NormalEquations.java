package fascicle.photo;

import java.util.Optional;

/**
 * Linear least squares by the normal equations, solved by Cholesky's decomposition (G. H. Golub and C. F. Van Loan,
 * "Matrix Computations", sections 4.2 and 5.3).
 */
final class NormalEquations {

    /** A pivot this small beside its diagonal element leaves too few digits: the unknown is not fixed. */
    private static final double SINGULAR = 1e-9;

    private final int unknowns;
    private final double[][] products;
    private final double[] wanted;

    NormalEquations(int unknowns) {
        this.unknowns = unknowns;
        products = new double[unknowns][unknowns];
        wanted = new double[unknowns];
    }

    /** Asks that the sum of the unknowns times their factors be near a figure. */
    void add(double[] factors, double sum) {
        for (int i = 0; i < unknowns; i++) {
            for (int j = 0; j < unknowns; j++) {
                products[i][j] += factors[i] * factors[j];
            }
            wanted[i] += factors[i] * sum;
        }
    }

    /** The unknowns; nothing where the equations do not fix them all. */
    Optional<double[]> solution() {
        double[][] root = new double[unknowns][unknowns];
        for (int i = 0; i < unknowns; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = products[i][j];
                for (int k = 0; k < j; k++) {
                    rest -= root[i][k] * root[j][k];
                }
                if (i == j) {
                    if (!(rest > SINGULAR * products[i][i])) {
                        return Optional.empty();
                    }
                    root[i][i] = StrictMath.sqrt(rest);
                } else {
                    root[i][j] = rest / root[j][j];
                }
            }
        }
        return Optional.of(backwards(root, forwards(root)));
    }

    private double[] forwards(double[][] root) {
        double[] halfway = new double[unknowns];
        for (int i = 0; i < unknowns; i++) {
            double rest = wanted[i];
            for (int k = 0; k < i; k++) {
                rest -= root[i][k] * halfway[k];
            }
            halfway[i] = rest / root[i][i];
        }
        return halfway;
    }

    private double[] backwards(double[][] root, double[] halfway) {
        double[] solution = new double[unknowns];
        for (int i = unknowns - 1; i >= 0; i--) {
            double rest = halfway[i];
            for (int k = i + 1; k < unknowns; k++) {
                rest -= root[k][i] * solution[k];
            }
            solution[i] = rest / root[i][i];
        }
        return solution;
    }
}
