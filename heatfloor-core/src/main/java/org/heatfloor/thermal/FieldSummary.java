package org.heatfloor.thermal;

import java.util.Optional;
import org.heatfloor.quantity.Amounts;

/** Mean and extremes of the grid over a mask; an extreme between nodes is found by a parabola along each axis. */
final class FieldSummary {

    private FieldSummary() {}

    /** The summary; throws where no node lies in the mask. */
    static SurfaceSummary over(FieldGrid grid, double[][] kelvin, boolean[][] mask, String what) {
        return of(grid, kelvin, mask)
                .orElseThrow(() -> new IllegalArgumentException(
                        what + ": no node of the grid lies in it; a larger part is expected"));
    }

    /** The summary; empty where no node lies in the mask. */
    static Optional<SurfaceSummary> of(FieldGrid grid, double[][] kelvin, boolean[][] mask) {
        double weight = 0;
        double sum = 0;
        int iMax = -1;
        int jMax = -1;
        int iMin = -1;
        int jMin = -1;
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                if (!mask[j][i]) {
                    continue;
                }
                double w = grid.weight(i, j);
                weight += w;
                sum += w * kelvin[j][i];
                if (iMax < 0 || kelvin[j][i] > kelvin[jMax][iMax]) {
                    iMax = i;
                    jMax = j;
                }
                if (iMin < 0 || kelvin[j][i] < kelvin[jMin][iMin]) {
                    iMin = i;
                    jMin = j;
                }
            }
        }
        if (!(weight > 0)) {
            return Optional.empty();
        }
        return Optional.of(new SurfaceSummary(
                Amounts.squareMetres(weight * grid.cellArea()),
                SteadySection.celsius(sum / weight),
                SteadySection.celsius(peak(grid, kelvin, iMax, jMax, 1)),
                SteadySection.celsius(peak(grid, kelvin, iMin, jMin, -1)),
                spot(grid, iMax, jMax),
                spot(grid, iMin, jMin)));
    }

    private static SurfaceSummary.Spot spot(FieldGrid grid, int i, int j) {
        return new SurfaceSummary.Spot(Amounts.metres(grid.x(i)), Amounts.metres(grid.y(j)));
    }

    private static double peak(FieldGrid grid, double[][] t, int i, int j, int sign) {
        double here = t[j][i];
        double left = t[j][i == 0 ? 1 : i - 1];
        double right = t[j][i == grid.nx() ? i - 1 : i + 1];
        double under = t[j == 0 ? 1 : j - 1][i];
        double over = t[j == grid.ny() ? j - 1 : j + 1][i];
        return here
                + sign * (rise(sign * left, sign * here, sign * right) + rise(sign * under, sign * here, sign * over));
    }

    /** How far the parabola through three values rises above the middle one; 0 unless the middle is the highest. */
    private static double rise(double a, double b, double c) {
        double bend = 2 * b - a - c;
        return b >= a && b >= c && bend > 0 ? (a - c) * (a - c) / (8 * bend) : 0;
    }
}
