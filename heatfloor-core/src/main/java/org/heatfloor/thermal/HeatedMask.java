package org.heatfloor.thermal;

import java.util.List;

/** Which nodes of the grid lie near a cable. */
final class HeatedMask {

    private HeatedMask() {}

    /** The nodes of the floor within a distance of a cable. */
    static boolean[][] near(FieldGrid grid, boolean[][] floor, List<CableRun> cables, double distance) {
        boolean[][] mask = new boolean[grid.ny() + 1][grid.nx() + 1];
        for (CableRun cable : cables) {
            double[][] path = cable.path();
            for (int s = 0; s + 1 < path.length; s++) {
                segment(grid, mask, path[s], path[s + 1], distance);
            }
        }
        and(mask, floor);
        return mask;
    }

    static void and(boolean[][] mask, boolean[][] other) {
        for (int j = 0; j < mask.length; j++) {
            for (int i = 0; i < mask[j].length; i++) {
                mask[j][i] &= other[j][i];
            }
        }
    }

    private static void segment(FieldGrid grid, boolean[][] mask, double[] a, double[] b, double distance) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double lengthSquared = dx * dx + dy * dy;
        int iFrom = Math.max(0, (int) Math.ceil((Math.min(a[0], b[0]) - distance - grid.x0()) / grid.stepX()));
        int iTo = Math.min(grid.nx(), (int) ((Math.max(a[0], b[0]) + distance - grid.x0()) / grid.stepX()));
        int jFrom = Math.max(0, (int) Math.ceil((Math.min(a[1], b[1]) - distance - grid.y0()) / grid.stepY()));
        int jTo = Math.min(grid.ny(), (int) ((Math.max(a[1], b[1]) + distance - grid.y0()) / grid.stepY()));
        for (int j = jFrom; j <= jTo; j++) {
            double py = grid.y(j) - a[1];
            for (int i = iFrom; i <= iTo; i++) {
                double px = grid.x(i) - a[0];
                double t = lengthSquared > 0 ? Math.max(0, Math.min(1, (px * dx + py * dy) / lengthSquared)) : 0;
                double ex = px - t * dx;
                double ey = py - t * dy;
                mask[j][i] |= ex * ex + ey * ey <= distance * distance;
            }
        }
    }
}
