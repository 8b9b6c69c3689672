package org.heatfloor.thermal;

import java.util.List;
import java.util.Optional;

/** The modes of a floor and what they sum to; SI. */
final class FieldSolution {

    private static final int MOST_ROUNDS = 200;
    private static final double OPEN_TOLERANCE = 1e-9;
    /** A floor with covers is solved anew for every film; 0.1 mK moves the film by a millionth. */
    private static final double COVERED_TOLERANCE = 1e-4;

    private final FieldGrid grid;
    private final FieldPlanes planes;
    private final FieldPlanes.Mean mean;
    private final double[][] surfaceModes;
    private final double[][] surfaceKelvin;
    private final Optional<Covered> covered;

    /** What covers change: film a node, the open floor beside them, and the flux they keep back, as modes. */
    private static final class Covered {
        private final double[][] film;
        private final double[][] openModes;
        private final double[][] keptBack;

        Covered(double[][] film, double[][] openModes, double[][] keptBack) {
            this.film = film;
            this.openModes = openModes;
            this.keptBack = keptBack;
        }

        double[][] film() {
            return film;
        }

        double[][] openModes() {
            return openModes;
        }

        double[][] keptBack() {
            return keptBack;
        }
    }

    private FieldSolution(
            FieldGrid grid,
            FieldPlanes planes,
            FieldPlanes.Mean mean,
            double[][] surfaceModes,
            double[][] surfaceKelvin,
            Optional<Covered> covered) {
        this.grid = grid;
        this.planes = planes;
        this.mean = mean;
        this.surfaceModes = surfaceModes;
        this.surfaceKelvin = surfaceKelvin;
        this.covered = covered;
    }

    /** Solves the open floor; the film is that of the heated part's mean. */
    static FieldSolution open(FieldPlanes planes, SurfaceLaw law, double air, double below, boolean[][] heated) {
        FieldGrid grid = planes.grid();
        List<double[]> shares = planes.heatedShares(heated);
        double heatedMean = air + 5;
        DrawIn drawIn = new DrawIn();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            FieldPlanes.Mean mean = planes.mean(law.film(heatedMean, air), below);
            double found = planes.heatedMean(shares, mean);
            if (Math.abs(found - heatedMean) <= OPEN_TOLERANCE) {
                double[][] modes = planes.surfaceModes(mean);
                return new FieldSolution(grid, planes, mean, modes, GridModes.toNodes(grid, modes), Optional.empty());
            }
            heatedMean = drawIn.next(heatedMean, found, round < 8 ? 1 : 0.5);
        }
        throw notFound(law);
    }

    /** Solves the floor with covers, given as resistances over the nodes; the film is that of the heated part's walking surface. */
    static FieldSolution covered(
            FieldPlanes planes, SurfaceLaw law, double air, double below, boolean[][] heated, double[][] resistance) {
        FieldGrid grid = planes.grid();
        CoverSolution covers = new CoverSolution(grid, planes.surfaceAdmittance());
        double heatedMean = air + 5;
        DrawIn drawIn = new DrawIn();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            FieldPlanes.Mean mean = planes.mean(law.film(heatedMean, air), below);
            double[][] film = grid.empty();
            for (int j = 0; j <= grid.ny(); j++) {
                for (int i = 0; i <= grid.nx(); i++) {
                    film[j][i] = mean.film() / (1 + mean.film() * resistance[j][i]);
                }
            }
            double[][] open = planes.surfaceModes(mean);
            double[][] excess = GridModes.toNodes(grid, open);
            for (double[] row : excess) {
                for (int i = 0; i < row.length; i++) {
                    row[i] -= mean.ambient();
                }
            }
            double[][] rise = covers.rise(excess, film, mean.film());
            double[][] modes = sum(open, rise);
            double[][] surface = GridModes.toNodes(grid, modes);
            double found = walkingMean(grid, surface, film, mean, heated);
            if (Math.abs(found - heatedMean) <= COVERED_TOLERANCE) {
                double[][] keptBack = planes.surfaceAdmittance();
                for (int n = 0; n <= grid.ny(); n++) {
                    for (int m = 0; m <= grid.nx(); m++) {
                        keptBack[n][m] = (keptBack[n][m] + mean.film()) * rise[n][m];
                    }
                }
                return new FieldSolution(
                        grid, planes, mean, modes, surface, Optional.of(new Covered(film, open, keptBack)));
            }
            heatedMean = drawIn.next(heatedMean, found, 1);
        }
        throw notFound(law);
    }

    private static IllegalStateException notFound(SurfaceLaw law) {
        return new IllegalStateException(
                "surface law '" + law.name() + "': no balance was found in " + MOST_ROUNDS + " rounds");
    }

    private static double[][] sum(double[][] a, double[][] b) {
        double[][] sum = new double[a.length][];
        for (int n = 0; n < a.length; n++) {
            sum[n] = a[n].clone();
            for (int m = 0; m < sum[n].length; m++) {
                sum[n][m] += b[n][m];
            }
        }
        return sum;
    }

    /** Mean over the heated part of the surface one walks on: on a cover, the cover's own. */
    private static double walkingMean(
            FieldGrid grid, double[][] surface, double[][] film, FieldPlanes.Mean mean, boolean[][] heated) {
        double weights = 0;
        double sum = 0;
        for (int j = 0; j <= grid.ny(); j++) {
            for (int i = 0; i <= grid.nx(); i++) {
                if (heated[j][i]) {
                    double weight = grid.weight(i, j);
                    double share = mean.film() > 0 ? film[j][i] / mean.film() : 1;
                    weights += weight;
                    sum += weight * share * (surface[j][i] - mean.ambient());
                }
            }
        }
        return weights > 0 ? mean.ambient() + sum / weights : mean.surface();
    }

    double film() {
        return mean.film();
    }

    double ambientKelvin() {
        return mean.ambient();
    }

    /** Film between the tile and the room at a node, under a cover with the cover's resistance. */
    double filmAt(int i, int j) {
        return covered.isPresent() ? covered.get().film()[j][i] : mean.film();
    }

    double downwardFlux() {
        return mean.downward()
                + covered.map(c -> c.keptBack()[0][0] * planes.downwardOfSurface(mean.film()))
                        .orElse(0.0);
    }

    double[][] surfaceModes() {
        return surfaceModes;
    }

    double[][] surfaceKelvin() {
        return surfaceKelvin;
    }

    /** Modes of the cables' plane. */
    double[][] planeModes() {
        double[][] modes = planes.planeModes(mean);
        return covered.isPresent() ? sum(modes, planeRiseModes()) : modes;
    }

    /** Modes of what the covers add in the cables' plane; nothing without covers. */
    double[][] planeRiseModes() {
        return covered.map(c -> planes.planeOfSurface(c.keptBack(), mean.film()))
                .orElseGet(grid::empty);
    }

    /** The surface beside the same floor without its covers, at the same film, on the nodes. */
    double[][] openKelvin() {
        return covered.map(c -> GridModes.toNodes(grid, c.openModes())).orElse(surfaceKelvin);
    }
}
