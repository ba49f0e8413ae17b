package handspan.number.fit;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;

/**
 * More equations than unknowns, solved with the least sum of squares: {@code A p = b}, each row already divided by the
 * standard uncertainty of its b. Columns are brought to length 1, then decomposed into singular values, which says
 * which unknowns the equations do not settle. Source: G. H. Golub, C. F. Van Loan, Matrix Computations, 3rd ed. 1996,
 * 5.3.3 (column scaling), 5.5.4 (singular values), 3.5.3 (a step of refinement); from memory.
 */
final class LinearSystem {
    /** Smallest singular value against the largest, of columns of length 1, below which an unknown is not settled. */
    private static final double SETTLED = 1e-10;

    private final RealMatrix equations;
    private final double[] columnLengths;
    private final SingularValueDecomposition decomposition;

    /**
     * Decomposes the equations.
     *
     * @param equations as many rows as columns, or more; no column all 0, see {@link #emptyColumn}
     */
    LinearSystem(double[][] equations) {
        this.equations = MatrixUtils.createRealMatrix(equations);
        columnLengths = new double[this.equations.getColumnDimension()];
        RealMatrix scaled = this.equations.copy();
        for (int column = 0; column < columnLengths.length; column++) {
            columnLengths[column] = this.equations.getColumnVector(column).getNorm();
            scaled.setColumnVector(
                    column, this.equations.getColumnVector(column).mapDivide(columnLengths[column]));
        }
        decomposition = new SingularValueDecomposition(scaled);
    }

    /** The first unknown that no equation speaks of, from 0; -1 when there is none. */
    static int emptyColumn(double[][] equations) {
        for (int column = 0; column < equations[0].length; column++) {
            boolean empty = true;
            for (double[] row : equations) {
                empty &= row[column] == 0;
            }
            if (empty) {
                return column;
            }
        }
        return -1;
    }

    /** Whether the equations settle every unknown. */
    boolean isSettled() {
        return decomposition.getInverseConditionNumber() > SETTLED;
    }

    /** The unknown with the largest part in the combination that is settled worst, from 0. */
    int leastSettled() {
        RealVector worst = decomposition.getV().getColumnVector(columnLengths.length - 1);
        return worst.map(Math::abs).getMaxIndex();
    }

    /** The least-squares solution. */
    RealVector solve(RealVector right) {
        RealVector first = solveOnce(right);
        return first.add(solveOnce(right.subtract(equations.operate(first))));
    }

    /** Length of the part of a right side that the equations can reach. */
    double reachable(RealVector right) {
        return equations.operate(solveOnce(right)).getNorm();
    }

    /** Covariance of the solution when each row has standard uncertainty 1: {@code (A^T A)^-1}. */
    Covariance covariance() {
        RealMatrix root = decomposition.getV();
        double[] singular = decomposition.getSingularValues();
        for (int row = 0; row < columnLengths.length; row++) {
            for (int column = 0; column < columnLengths.length; column++) {
                root.multiplyEntry(row, column, 1 / (columnLengths[row] * singular[column]));
            }
        }
        return new Covariance(root);
    }

    private RealVector solveOnce(RealVector right) {
        return decomposition.getSolver().solve(right).ebeDivide(MatrixUtils.createRealVector(columnLengths));
    }
}
