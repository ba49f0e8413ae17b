package handspan.number.fit;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * How uncertain fitted parameters are, and how they hang together. Kept as a root L with {@code C = L L^T}, so that no
 * variance made of it falls under 0.
 */
public final class Covariance {
    private final RealMatrix root;

    Covariance(RealMatrix root) {
        this.root = root;
    }

    /** How many parameters. */
    public int size() {
        return root.getRowDimension();
    }

    /**
     * Covariance of two parameters; of one with itself its variance.
     *
     * @param i from 0
     * @param j from 0
     */
    public double of(int i, int j) {
        return root.getRowVector(i).dotProduct(root.getRowVector(j));
    }

    /**
     * Standard uncertainty of a parameter.
     *
     * @param i from 0
     */
    public double standardUncertainty(int i) {
        return root.getRowVector(i).getNorm();
    }

    /**
     * Correlation of two parameters.
     *
     * @return -1..1; 0 if one is exactly known
     */
    public double correlation(int i, int j) {
        double below = standardUncertainty(i) * standardUncertainty(j);
        return below == 0 ? 0 : Math.max(-1, Math.min(1, of(i, j) / below));
    }

    /**
     * Standard uncertainty of a quantity made of the parameters: {@code sqrt(g^T C g)}. Source: JCGM 100:2008 (GUM),
     * 5.2.2, equation (13).
     *
     * @param gradient derivative of the quantity by each parameter
     */
    public double standardUncertaintyOf(double[] gradient) {
        return root.transpose().operate(MatrixUtils.createRealVector(gradient)).getNorm();
    }

    /** All standard uncertainties multiplied by a factor. */
    Covariance scaled(double factor) {
        return new Covariance(root.scalarMultiply(factor));
    }

    /** The covariance of {@code M p} for parameters p. */
    Covariance mapped(RealMatrix map) {
        return new Covariance(map.multiply(root));
    }
}
