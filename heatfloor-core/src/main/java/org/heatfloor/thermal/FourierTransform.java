package org.heatfloor.thermal;

import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/**
 * Forward Fourier transform of a length that is a power of two times 1, 3 or 9: the library's transform for the power of two,
 * a threefold split (Cooley and Tukey) for each 3. Holds its working space, so it is for one thread.
 */
final class FourierTransform {

    private final int n;
    private final double[][][] parts;
    private final double[] cosine;
    private final double[] sine;
    private final FourierTransform third;

    private FourierTransform(int n, FourierTransform third) {
        this.n = n;
        this.third = third;
        this.parts = new double[3][2][n / 3];
        this.cosine = new double[2 * n / 3];
        this.sine = new double[2 * n / 3];
        for (int k = 0; k < cosine.length; k++) {
            cosine[k] = Math.cos(2 * Math.PI * k / n);
            sine[k] = -Math.sin(2 * Math.PI * k / n);
        }
    }

    /** Ends the splitting at a power of two. */
    private FourierTransform(int n) {
        this.n = n;
        this.third = this;
        this.parts = new double[0][][];
        this.cosine = new double[0];
        this.sine = new double[0];
    }

    static FourierTransform of(int n) {
        return n % 3 == 0 ? new FourierTransform(n, of(n / 3)) : new FourierTransform(n);
    }

    /** The least length of at least so many steps, and at least 4. */
    static int lengthFor(double steps) {
        int best = 4;
        while (best < steps) {
            best *= 2;
        }
        // A split is worth it only where the power of two left is long.
        for (int threes : new int[] {3, 9}) {
            int length = 32 * threes;
            while (length < steps) {
                length *= 2;
            }
            best = Math.min(best, length);
        }
        return best;
    }

    /** Transforms real and imaginary parts in place. */
    void forward(double[][] data) {
        if (parts.length == 0) {
            FastFourierTransformer.transformInPlace(data, DftNormalization.STANDARD, TransformType.FORWARD);
            return;
        }
        double[] re = data[0];
        double[] im = data[1];
        int m = n / 3;
        for (int r = 0; r < 3; r++) {
            double[] partRe = parts[r][0];
            double[] partIm = parts[r][1];
            for (int j = 0, from = r; j < m; j++, from += 3) {
                partRe[j] = re[from];
                partIm[j] = im[from];
            }
            third.forward(parts[r]);
        }
        double[] aRe = parts[0][0];
        double[] aIm = parts[0][1];
        double[] bRe = parts[1][0];
        double[] bIm = parts[1][1];
        double[] cRe = parts[2][0];
        double[] cIm = parts[2][1];
        double root = Math.sqrt(3) / 2;
        for (int k = 0; k < m; k++) {
            double oneRe = bRe[k] * cosine[k] - bIm[k] * sine[k];
            double oneIm = bRe[k] * sine[k] + bIm[k] * cosine[k];
            double twoRe = cRe[k] * cosine[2 * k] - cIm[k] * sine[2 * k];
            double twoIm = cRe[k] * sine[2 * k] + cIm[k] * cosine[2 * k];
            double sumRe = oneRe + twoRe;
            double sumIm = oneIm + twoIm;
            double turnRe = root * (oneIm - twoIm);
            double turnIm = -root * (oneRe - twoRe);
            re[k] = aRe[k] + sumRe;
            im[k] = aIm[k] + sumIm;
            re[k + m] = aRe[k] - 0.5 * sumRe + turnRe;
            im[k + m] = aIm[k] - 0.5 * sumIm + turnIm;
            re[k + 2 * m] = aRe[k] - 0.5 * sumRe - turnRe;
            im[k + 2 * m] = aIm[k] - 0.5 * sumIm - turnIm;
        }
    }
}
