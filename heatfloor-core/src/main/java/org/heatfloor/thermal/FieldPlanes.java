package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The cables of a floor by the height they lie at: their heat as modes and the layers seen from there; SI. */
final class FieldPlanes {

    /** The mean mode for one film. */
    record Mean(double film, double ambient, double surface, double downward, double plane) {}

    /** The cables at one height. */
    private static final class Plane {
        private final ModeTransfer transfer;
        private final TransferTable table;
        private final double[][] modes;

        Plane(ModeTransfer transfer, TransferTable table, double[][] modes) {
            this.transfer = transfer;
            this.table = table;
            this.modes = modes;
        }
    }

    /** Any film of a floor will do to tell which modes never reach its surface, W/(m²·K). */
    private static final double USUAL_FILM = 10;

    private final FieldGrid grid;
    private final List<Plane> planes = new ArrayList<>();
    private final double[] betaX;
    private final double[] betaY;

    FieldPlanes(FieldGrid grid, LayerStack stack, Climate climate, List<CableRun> cables, StudFactor studs) {
        this.grid = grid;
        this.betaX = wavenumbers(grid.nx(), grid.width());
        this.betaY = wavenumbers(grid.ny(), grid.height());
        Map<Double, LineSource> byHeight = new TreeMap<>();
        for (CableRun run : cables) {
            byHeight.computeIfAbsent(run.cable().axisHeightMetres(), height -> new LineSource(grid))
                    .add(run.path(), run.cable().powerSi());
        }
        double greatest = Math.hypot(Math.PI / grid.stepX(), Math.PI / grid.stepY());
        byHeight.forEach((height, source) -> {
            ModeTransfer transfer = new ModeTransfer(stack, height, climate.filmBelowSi());
            planes.add(new Plane(transfer, new TransferTable(transfer, greatest, studs), source.modes()));
        });
    }

    private static double[] wavenumbers(int n, double length) {
        double[] beta = new double[n + 1];
        for (int m = 0; m <= n; m++) {
            beta[m] = Math.PI * m / length;
        }
        return beta;
    }

    FieldGrid grid() {
        return grid;
    }

    Mean mean(SurfaceLaw.Film film, double below) {
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

    /**
     * The mean surface temperature over the heated nodes is a weighted sum of the layers' response at the table's steps;
     * these are the weights, without the mean mode.
     */
    List<double[]> heatedShares(boolean[][] heated) {
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
        List<double[]> shares = new ArrayList<>();
        for (Plane plane : planes) {
            shares.add(new double[plane.table.size()]);
        }
        if (weight == 0) {
            return shares;
        }
        CosineTransform.transform(shape);
        for (int p = 0; p < planes.size(); p++) {
            TransferTable table = planes.get(p).table;
            double[] bins = shares.get(p);
            double faint = table.faintBeyond(USUAL_FILM);
            for (int n = 0; n <= grid.ny() && betaY[n] <= faint; n++) {
                double[] source = planes.get(p).modes[n];
                double[] row = shape[n];
                double squareY = betaY[n] * betaY[n];
                double lastX = Math.sqrt(faint * faint - squareY);
                for (int m = n == 0 ? 1 : 0; m <= grid.nx() && betaX[m] <= lastX; m++) {
                    table.gather(bins, Math.sqrt(betaX[m] * betaX[m] + squareY), source[m] * row[m] / weight);
                }
            }
        }
        return shares;
    }

    /** Mean surface temperature over the heated nodes for one film. */
    double heatedMean(List<double[]> shares, Mean mean) {
        double found = mean.surface;
        for (int p = 0; p < planes.size(); p++) {
            double[] response = planes.get(p).table.surface(mean.film);
            double[] own = shares.get(p);
            for (int i = 0; i < own.length; i++) {
                found += own[i] * response[i];
            }
        }
        return found;
    }

    /** Modes of the open floor's surface. */
    double[][] surfaceModes(Mean mean) {
        double[][] modes = grid.empty();
        for (Plane plane : planes) {
            double[] response = plane.table.surface(mean.film);
            for (int n = 0; n <= grid.ny(); n++) {
                double[] row = modes[n];
                double[] source = plane.modes[n];
                double squareY = betaY[n] * betaY[n];
                for (int m = 0; m <= grid.nx(); m++) {
                    row[m] += source[m] * plane.table.value(response, Math.sqrt(betaX[m] * betaX[m] + squareY));
                }
            }
        }
        modes[0][0] = mean.surface;
        return modes;
    }

    /**
     * Modes of the cables' plane. They fall off only as 1/β, so the last of them are faded out ({@code e^(−8 (β/β_max)⁴)})
     * lest the cut rings between the cables.
     */
    double[][] planeModes(Mean mean) {
        double cut = Math.min(betaX[grid.nx()], betaY[grid.ny()]);
        double[][] modes = grid.empty();
        for (Plane plane : planes) {
            double[] response = plane.table.plane(mean.film);
            for (int n = 0; n <= grid.ny(); n++) {
                for (int m = 0; m <= grid.nx(); m++) {
                    double beta = Math.hypot(betaX[m], betaY[n]);
                    double square = beta / cut * (beta / cut);
                    modes[n][m] +=
                            plane.modes[n][m] * plane.table.value(response, beta) * Math.exp(-8 * square * square);
                }
            }
        }
        modes[0][0] = mean.plane;
        return modes;
    }

    /** Flux the layers take from the surface a kelvin of its temperature, a mode each, W/(m²·K). */
    double[][] surfaceAdmittance() {
        return ofBeta(planes.get(0).table, planes.get(0).table.admittance());
    }

    /** Modes of the cables' plane (the lowest, where there are several) for heat at the surface. */
    double[][] planeOfSurface(double[][] heatModes, double film) {
        TransferTable table = planes.get(0).table;
        double[][] modes = ofBeta(table, table.planeOfSurface(film));
        for (int n = 0; n <= grid.ny(); n++) {
            for (int m = 0; m <= grid.nx(); m++) {
                modes[n][m] *= heatModes[n][m];
            }
        }
        return modes;
    }

    /** Flux downwards a unit of mean heat at the surface. */
    double downwardOfSurface(double film) {
        ModeTransfer first = planes.get(0).transfer;
        return first.at(0).surface(film) * first.admittanceBelow(0);
    }

    private double[][] ofBeta(TransferTable table, double[] values) {
        double[][] modes = grid.empty();
        for (int n = 0; n <= grid.ny(); n++) {
            double squareY = betaY[n] * betaY[n];
            for (int m = 0; m <= grid.nx(); m++) {
                modes[n][m] = table.value(values, Math.sqrt(betaX[m] * betaX[m] + squareY));
            }
        }
        return modes;
    }
}
