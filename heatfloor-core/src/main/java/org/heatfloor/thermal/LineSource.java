package org.heatfloor.thermal;

/**
 * Puts the heat of cables onto a grid as cosine modes of the rectangle with insulated edges. Each short piece of cable
 * is spread over the nodes by quintic B-splines; the transform is then divided by the spline's own transform, so that the
 * modes are those of the thin line. A mode at wavenumber {@code β} on nodes {@code h} apart is off by about {@code
 * (βh/(2π − βh))⁶} of itself.
 */
final class LineSource {

    private static final int SUPPORT = 6;
    private static final double[] GAUSS_POINT = {-0.7745966692414834, 0, 0.7745966692414834};
    private static final double[] GAUSS_WEIGHT = {5.0 / 18, 8.0 / 18, 5.0 / 18};

    private final FieldGrid grid;
    private final double[][] nodes;
    private final double[] wx = new double[SUPPORT];
    private final double[] wy = new double[SUPPORT];

    LineSource(FieldGrid grid) {
        this.grid = grid;
        this.nodes = grid.empty();
    }

    /** Adds a cable of so many watts a metre along a path in metres of the rectangle's own frame. */
    void add(double[][] path, double wattsPerMetre) {
        // Three points on 1.6 steps still follow the shortest wave the grid holds to a percent.
        double longest = 1.6 * Math.min(grid.stepX(), grid.stepY());
        for (int i = 0; i + 1 < path.length; i++) {
            double dx = path[i + 1][0] - path[i][0];
            double dy = path[i + 1][1] - path[i][1];
            double length = Math.hypot(dx, dy);
            int pieces = Math.max(1, (int) Math.ceil(length / longest));
            for (int p = 0; p < pieces; p++) {
                for (int g = 0; g < GAUSS_POINT.length; g++) {
                    double t = (p + 0.5 + 0.5 * GAUSS_POINT[g]) / pieces;
                    spread(
                            path[i][0] - grid.x0() + t * dx,
                            path[i][1] - grid.y0() + t * dy,
                            wattsPerMetre * length / pieces * GAUSS_WEIGHT[g]);
                }
            }
        }
    }

    private void spread(double x, double y, double watts) {
        int i0 = weights(x / grid.stepX(), wx);
        int j0 = weights(y / grid.stepY(), wy);
        for (int b = 0; b < SUPPORT; b++) {
            double[] row = nodes[mirror(j0 + b, grid.ny())];
            double rowWatts = watts * wy[b];
            for (int a = 0; a < SUPPORT; a++) {
                row[mirror(i0 + a, grid.nx())] += rowWatts * wx[a];
            }
        }
    }

    private static int mirror(int index, int n) {
        int folded = Math.abs(index);
        return folded > n ? 2 * n - folded : folded;
    }

    /** Values of the six quintic B-splines that cover a place; returns the index of the first. */
    private static int weights(double place, double[] w) {
        int cell = (int) Math.floor(place);
        double u = place - cell;
        w[0] = 1;
        for (int degree = 1; degree < SUPPORT; degree++) {
            double saved = 0;
            for (int r = 0; r < degree; r++) {
                double right = r + 1 - u;
                double left = u + degree - 1 - r;
                double part = w[r] / degree;
                w[r] = saved + right * part;
                saved = left * part;
            }
            w[degree] = saved;
        }
        return cell - 2;
    }

    /**
     * The modes of what was added, W/m²: {@code q(x, y) = Σ Σ c_mn cos(mπx/a) cos(nπy/b)}. To be called once.
     */
    double[][] modes() {
        int nx = grid.nx();
        int ny = grid.ny();
        for (int j = 0; j <= ny; j++) {
            // An edge node holds its own half only; the transform halves it again.
            nodes[j][0] *= 2;
            nodes[j][nx] *= 2;
        }
        for (int i = 0; i <= nx; i++) {
            nodes[0][i] *= 2;
            nodes[ny][i] *= 2;
        }
        CosineTransform.transform(nodes);
        double[] sharpenX = sharpen(nx);
        double[] sharpenY = sharpen(ny);
        double area = grid.width() * grid.height();
        for (int n = 0; n <= ny; n++) {
            double scale = (n == 0 ? 1 : 2) * sharpenY[n] / area;
            for (int m = 0; m <= nx; m++) {
                nodes[n][m] *= (m == 0 ? 1 : 2) * sharpenX[m] * scale;
            }
        }
        return nodes;
    }

    private static double[] sharpen(int n) {
        double[] factor = new double[n + 1];
        factor[0] = 1;
        for (int m = 1; m <= n; m++) {
            double half = Math.PI * m / (2.0 * n);
            factor[m] = Math.pow(half / Math.sin(half), SUPPORT);
        }
        return factor;
    }
}
