package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The modes of a floor and what they sum to; SI. */
final class FieldSolution {

    private static final int MOST_ROUNDS = 200;

    private final double film;
    private final double ambientKelvin;
    private final double downwardFlux;
    private final double[][] surfaceModes;
    private final double[][] surfaceKelvin;
    private final FieldGrid grid;
    private final List<Plane> planes;
    private final double planeMean;

    /** The cables at one height: their modes and the layers seen from there. */
    private static final class Plane {
        final ModeTransfer transfer;
        final TransferTable table;
        final double[][] modes;

        Plane(ModeTransfer transfer, TransferTable table, double[][] modes) {
            this.transfer = transfer;
            this.table = table;
            this.modes = modes;
        }
    }

    private FieldSolution(
            FieldGrid grid, List<Plane> planes, Mean mean, double[][] surfaceModes, double[][] surfaceKelvin) {
        this.grid = grid;
        this.planes = planes;
        this.film = mean.film;
        this.ambientKelvin = mean.ambient;
        this.downwardFlux = mean.downward;
        this.planeMean = mean.plane;
        this.surfaceModes = surfaceModes;
        this.surfaceKelvin = surfaceKelvin;
    }

    /** The mean mode for one film. */
    private record Mean(double film, double ambient, double surface, double downward, double plane) {}

    static FieldSolution solve(
            FieldGrid grid,
            LayerStack stack,
            Climate climate,
            SurfaceLaw law,
            List<CableRun> cables,
            boolean[][] heated) {
        List<Plane> planes = planes(grid, stack, climate, cables);
        double[] betaX = wavenumbers(grid.nx(), grid.width());
        double[] betaY = wavenumbers(grid.ny(), grid.height());
        List<double[]> bins = heatedShares(grid, planes, heated, betaX, betaY);
        double air = climate.airKelvin();
        double below = climate.belowKelvin();

        double heatedMean = air + 5;
        Mean mean = mean(planes, law.film(heatedMean, air), below);
        for (int round = 0; round < MOST_ROUNDS; round++) {
            mean = mean(planes, law.film(heatedMean, air), below);
            double found = mean.surface;
            for (int p = 0; p < planes.size(); p++) {
                double[] response = planes.get(p).table.surface(mean.film);
                double[] shares = bins.get(p);
                for (int i = 0; i < shares.length; i++) {
                    found += shares[i] * response[i];
                }
            }
            double change = found - heatedMean;
            if (Math.abs(change) <= 1e-9) {
                break;
            }
            heatedMean += round < 8 ? change : 0.5 * change;
        }

        double[][] modes = grid.empty();
        for (Plane plane : planes) {
            double[] response = plane.table.surface(mean.film);
            for (int n = 0; n <= grid.ny(); n++) {
                double[] row = modes[n];
                double[] source = plane.modes[n];
                double squareY = betaY[n] * betaY[n];
                for (int m = 0; m <= grid.nx(); m++) {
                    double beta = Math.sqrt(betaX[m] * betaX[m] + squareY);
                    row[m] += source[m] * plane.table.value(response, beta);
                }
            }
        }
        modes[0][0] = mean.surface;
        return new FieldSolution(grid, planes, mean, modes, evaluate(grid, modes));
    }

    private static List<Plane> planes(FieldGrid grid, LayerStack stack, Climate climate, List<CableRun> cables) {
        Map<Double, LineSource> byHeight = new TreeMap<>();
        for (CableRun run : cables) {
            byHeight.computeIfAbsent(run.cable().axisHeightMetres(), height -> new LineSource(grid))
                    .add(run.path(), run.cable().powerSi());
        }
        double greatest = Math.hypot(Math.PI / grid.stepX(), Math.PI / grid.stepY());
        List<Plane> planes = new ArrayList<>();
        byHeight.forEach((height, source) -> {
            ModeTransfer transfer = new ModeTransfer(stack, height, climate.filmBelowSi());
            planes.add(new Plane(transfer, new TransferTable(transfer, greatest), source.modes()));
        });
        return planes;
    }

    /**
     * The mean surface temperature over the heated nodes is a weighted sum of the layers' response at the table's steps;
     * these are the weights, without the mean mode.
     */
    private static List<double[]> heatedShares(
            FieldGrid grid, List<Plane> planes, boolean[][] heated, double[] betaX, double[] betaY) {
        double[][] shape = grid.empty();
        double weight = 0;
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                if (heated[j][i]) {
                    shape[j][i] = 1;
                    weight += grid.weight(i, j);
                }
            }
        }
        List<double[]> bins = new ArrayList<>();
        for (Plane plane : planes) {
            bins.add(new double[plane.table.size()]);
        }
        if (weight == 0) {
            return bins;
        }
        CosineTransform.transform(shape);
        for (int p = 0; p < planes.size(); p++) {
            TransferTable table = planes.get(p).table;
            double[] bin = bins.get(p);
            for (int n = 0; n <= grid.ny(); n++) {
                double[] source = planes.get(p).modes[n];
                double[] row = shape[n];
                double squareY = betaY[n] * betaY[n];
                for (int m = n == 0 ? 1 : 0; m <= grid.nx(); m++) {
                    table.gather(bin, Math.sqrt(betaX[m] * betaX[m] + squareY), source[m] * row[m] / weight);
                }
            }
        }
        return bins;
    }

    private static Mean mean(List<Plane> planes, SurfaceLaw.Film film, double below) {
        double h = film.coefficient();
        double ambient = film.ambientKelvin();
        ModeTransfer first = planes.get(0).transfer;
        MeanBalance idle = MeanBalance.with(0, first.resistanceAbove(), first.admittanceBelow(0), h, ambient, below);
        double surface = idle.surfaceKelvin();
        double downward = idle.downward();
        double planeMean = idle.planeKelvin();
        for (Plane plane : planes) {
            ModeTransfer.Mode mode = plane.transfer.at(0);
            double source = plane.modes[0][0];
            surface += source * mode.surface(h);
            downward += source * mode.plane(h) * plane.transfer.admittanceBelow(0);
            planeMean += source * mode.plane(h);
        }
        return new Mean(h, ambient, surface, downward, planeMean);
    }

    private static double[] wavenumbers(int n, double length) {
        double[] beta = new double[n + 1];
        for (int m = 0; m <= n; m++) {
            beta[m] = Math.PI * m / length;
        }
        return beta;
    }

    /** Sums the modes on the grid. */
    private static double[][] evaluate(FieldGrid grid, double[][] modes) {
        double[][] values = grid.empty();
        for (int n = 0; n <= grid.ny(); n++) {
            double edge = n == 0 || n == grid.ny() ? 2 : 1;
            for (int m = 0; m <= grid.nx(); m++) {
                values[n][m] = modes[n][m] * edge * (m == 0 || m == grid.nx() ? 2 : 1);
            }
        }
        CosineTransform.transform(values);
        return values;
    }

    double film() {
        return film;
    }

    double ambientKelvin() {
        return ambientKelvin;
    }

    double downwardFlux() {
        return downwardFlux;
    }

    double[][] surfaceModes() {
        return surfaceModes;
    }

    double[][] surfaceKelvin() {
        return surfaceKelvin;
    }

    /**
     * Modes of the cables' plane. They fall off only as 1/β, so the last of them are faded out ({@code e^(−8 (β/β_max)⁴)})
     * lest the cut rings between the cables.
     */
    double[][] planeModes() {
        double[] betaX = wavenumbers(grid.nx(), grid.width());
        double[] betaY = wavenumbers(grid.ny(), grid.height());
        double cut = Math.min(betaX[grid.nx()], betaY[grid.ny()]);
        double[][] modes = grid.empty();
        for (Plane plane : planes) {
            double[] response = plane.table.plane(film);
            for (int n = 0; n <= grid.ny(); n++) {
                for (int m = 0; m <= grid.nx(); m++) {
                    double beta = Math.hypot(betaX[m], betaY[n]);
                    double square = beta / cut * (beta / cut);
                    modes[n][m] +=
                            plane.modes[n][m] * plane.table.value(response, beta) * Math.exp(-8 * square * square);
                }
            }
        }
        modes[0][0] = planeMean;
        return modes;
    }
}
