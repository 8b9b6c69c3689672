package org.heatfloor.thermal;

import java.util.Arrays;

/**
 * What round studs beside a cable do to the floor, against the homogenised layer: finite volumes in three dimensions over
 * one cell of the pattern, from the cable to midway between two cables and from the middle of a stud to the middle of the gap
 * behind it. The cell is solved twice on one mesh, with the studs as they are and with the parallel mixture in their place,
 * so that most of the mesh's own error drops out of the differences. SI; temperatures are rises over the ambient.
 */
final class StudCell {

    private static final double FINEST = 0.7e-3;
    private static final double GROWTH = 0.18;
    private static final double COARSEST_ACROSS = 2.2e-3;
    private static final int CELLS_ALONG = 10;
    private static final int SAMPLES = 6;
    private static final int MOST_ROUNDS = 2000;

    /** Differences real less homogenised, K, and the cosine modes of both surfaces across the cables. */
    static final class Effect {
        private final double mean;
        private final double max;
        private final double min;
        private final double sheath;
        private final double[] realModes;
        private final double[] plainModes;

        Effect(double mean, double max, double min, double sheath, double[] realModes, double[] plainModes) {
            this.mean = mean;
            this.max = max;
            this.min = min;
            this.sheath = sheath;
            this.realModes = realModes;
            this.plainModes = plainModes;
        }

        double mean() {
            return mean;
        }

        double max() {
            return max;
        }

        double min() {
            return min;
        }

        double sheath() {
            return sheath;
        }

        double[] realModes() {
            return realModes;
        }

        double[] plainModes() {
            return plainModes;
        }
    }

    /** One solution. */
    private static final class Answer {
        private final double mean;
        private final double max;
        private final double min;
        private final double sheath;
        private final double[] modes;

        Answer(double mean, double max, double min, double sheath, double[] modes) {
            this.mean = mean;
            this.max = max;
            this.min = min;
            this.sheath = sheath;
            this.modes = modes;
        }
    }

    private final LayerStack stack;
    private final double axis;
    private final double radius;
    private final double power;
    private final double pitch;
    private final double diameter;
    private final int channels;
    private final double mortar;
    private final double stud;
    private final double film;
    private final double filmBelow;
    private final double belowRise;
    private final double[] x;
    private final double[] z;
    private final double dy;
    private final int studFrom;
    private final int studTo;
    private final int axisRow;

    StudCell(
            LayerStack stack,
            EmbeddedCable cable,
            double pitch,
            double diameter,
            int channels,
            double mortar,
            double stud,
            double film,
            double filmBelow,
            double belowRise) {
        this.stack = stack;
        this.axis = cable.axisHeightMetres();
        this.radius = cable.radiusMetres();
        this.power = cable.powerSi();
        this.pitch = pitch;
        this.diameter = diameter;
        this.channels = channels;
        this.mortar = mortar;
        this.stud = stud;
        this.film = film;
        this.filmBelow = filmBelow;
        this.belowRise = belowRise;
        this.dy = pitch / 2 / CELLS_ALONG;
        Lines across = new Lines(0);
        across.to(channels * pitch / 2, 0, COARSEST_ACROSS);
        this.x = across.done();
        Lines down = new Lines(0);
        double depth = 0;
        double cableDepth = 0;
        for (int i = 0; i <= stack.heated; i++) {
            cableDepth += stack.thicknessMetres[i];
        }
        cableDepth -= axis;
        int from = 0;
        int at = 0;
        int to = 0;
        for (int i = 0; i < stack.size(); i++) {
            if (i == stack.heated) {
                from = down.count();
                down.to(cableDepth, cableDepth, 1);
                at = down.count();
            }
            depth += stack.thicknessMetres[i];
            down.to(depth, cableDepth, 1);
            if (i == stack.heated) {
                to = down.count();
            }
        }
        this.z = down.done();
        this.studFrom = from;
        this.studTo = to;
        this.axisRow = at;
    }

    Effect effect() {
        double area = Math.PI * diameter * diameter / (4 * pitch * pitch);
        double mixture = area * stud + (1 - area) * mortar;
        Answer real = solve(Double.NaN);
        Answer plain = solve(mixture);
        return new Effect(
                real.mean - plain.mean,
                real.max - plain.max,
                real.min - plain.min,
                real.sheath - plain.sheath,
                real.modes,
                plain.modes);
    }

    /** Solves the cell for rises over the ambient; a mixture that is no number leaves the studs as they are. */
    private Answer solve(double mixture) {
        int nx = x.length - 1;
        int nz = z.length - 1;
        double[] studded = Double.isNaN(mixture) ? studShares(nx) : new double[0];
        double[] k = new double[nx * CELLS_ALONG * nz];
        int layer = 0;
        double bottom = stack.thicknessMetres[0];
        double[] contactBelow = new double[nz];
        for (int l = 0; l < nz; l++) {
            while ((z[l] + z[l + 1]) / 2 > bottom) {
                contactBelow[l - 1] = stack.contact[layer];
                bottom += stack.thicknessMetres[++layer];
            }
            boolean inStuds = l >= studFrom && l < studTo;
            for (int c = 0; c < nx * CELLS_ALONG; c++) {
                double own = stack.conductivity[layer];
                if (inStuds) {
                    own = studded.length == 0 ? mixture : studded[c] * stud + (1 - studded[c]) * mortar;
                }
                k[c * nz + l] = own;
            }
        }
        ColumnConjugateGradients system = new ColumnConjugateGradients(nx, CELLS_ALONG, nz);
        double[] heat = heat(nx, nz);
        for (int i = 0; i < nx; i++) {
            double dx = x[i + 1] - x[i];
            for (int j = 0; j < CELLS_ALONG; j++) {
                for (int l = 0; l < nz; l++) {
                    int c = (i * CELLS_ALONG + j) * nz + l;
                    double dz = z[l + 1] - z[l];
                    if (i + 1 < nx) {
                        double other = k[c + CELLS_ALONG * nz];
                        system.linkX(c, dy * dz / (dx / 2 / k[c] + (x[i + 2] - x[i + 1]) / 2 / other));
                    }
                    if (j + 1 < CELLS_ALONG) {
                        system.linkY(c, dx * dz / (dy / 2 / k[c] + dy / 2 / k[c + nz]));
                    }
                    if (l + 1 < nz) {
                        double over = (z[l + 2] - z[l + 1]) / 2 / k[c + 1];
                        system.linkZ(c, dx * dy / (dz / 2 / k[c] + contactBelow[l] + over));
                    }
                }
                int top = (i * CELLS_ALONG + j) * nz;
                system.lose(top, dx * dy / ((z[1] - z[0]) / 2 / k[top] + 1 / film));
                if (filmBelow > 0) {
                    int last = top + nz - 1;
                    double down = dx * dy / ((z[nz] - z[nz - 1]) / 2 / k[last] + 1 / filmBelow);
                    system.lose(last, down);
                    heat[last] += down * belowRise;
                }
            }
        }
        double[] t = system.solve(heat, MOST_ROUNDS);
        return read(t, k, nx, nz);
    }

    /** Share of each column of cells that lies in a stud. */
    private double[] studShares(int nx) {
        double[] share = new double[nx * CELLS_ALONG];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < CELLS_ALONG; j++) {
                int inside = 0;
                for (int a = 0; a < SAMPLES; a++) {
                    for (int b = 0; b < SAMPLES; b++) {
                        double px = x[i] + (a + 0.5) / SAMPLES * (x[i + 1] - x[i]);
                        double fromStud = px - (Math.floor(px / pitch) + 0.5) * pitch;
                        double py = (j + (b + 0.5) / SAMPLES) * dy;
                        inside += Math.hypot(fromStud, py) < diameter / 2 ? 1 : 0;
                    }
                }
                share[i * CELLS_ALONG + j] = (double) inside / (SAMPLES * SAMPLES);
            }
        }
        return share;
    }

    /** Half the cable's heat, spread over its disc. */
    private double[] heat(int nx, int nz) {
        double[] share = new double[nx * nz];
        double sum = 0;
        for (int i = 0; i < nx; i++) {
            for (int l = studFrom; l < studTo; l++) {
                int inside = 0;
                for (int a = 0; a < 2 * SAMPLES; a++) {
                    for (int b = 0; b < 2 * SAMPLES; b++) {
                        double px = x[i] + (a + 0.5) / (2 * SAMPLES) * (x[i + 1] - x[i]);
                        double pz = z[l] + (b + 0.5) / (2 * SAMPLES) * (z[l + 1] - z[l]) - z[axisRow];
                        inside += Math.hypot(px, pz) < radius ? 1 : 0;
                    }
                }
                share[i * nz + l] = inside * (x[i + 1] - x[i]) * (z[l + 1] - z[l]);
                sum += share[i * nz + l];
            }
        }
        double[] watts = new double[nx * CELLS_ALONG * nz];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < CELLS_ALONG; j++) {
                for (int l = 0; l < nz; l++) {
                    watts[(i * CELLS_ALONG + j) * nz + l] = power / 2 * share[i * nz + l] / sum * dy;
                }
            }
        }
        return watts;
    }

    private Answer read(double[] t, double[] k, int nx, int nz) {
        double[] along = new double[nx];
        double max = Double.NEGATIVE_INFINITY;
        double min = Double.POSITIVE_INFINITY;
        double mean = 0;
        double width = x[nx];
        for (int i = 0; i < nx; i++) {
            for (int j = 0; j < CELLS_ALONG; j++) {
                int c = (i * CELLS_ALONG + j) * nz;
                double surface = t[c] / (1 + film * (z[1] - z[0]) / 2 / k[c]);
                max = Math.max(max, surface);
                min = Math.min(min, surface);
                along[i] += surface / CELLS_ALONG;
            }
            mean += along[i] * (x[i + 1] - x[i]) / width;
        }
        double[] modes = new double[channels * 4 + 1];
        for (int n = 0; n < modes.length; n++) {
            double beta = n * Math.PI / width;
            for (int i = 0; i < nx; i++) {
                double piece = n == 0 ? x[i + 1] - x[i] : (Math.sin(beta * x[i + 1]) - Math.sin(beta * x[i])) / beta;
                modes[n] += (n == 0 ? 1 : 2) * along[i] * piece / width;
            }
        }
        return new Answer(mean, max, min, sheath(t, nx, nz), modes);
    }

    /** Mean over the cable's circle, all along the cell. */
    private double sheath(double[] t, int nx, int nz) {
        int points = 90;
        double sum = 0;
        for (int p = 0; p < points; p++) {
            double angle = Math.PI * ((p + 0.5) / points - 0.5);
            double px = radius * Math.cos(angle);
            double pz = z[axisRow] + radius * Math.sin(angle);
            int i = cell(x, px, nx);
            int l = cell(z, pz, nz);
            double u = Math.max(0, (px - middle(x, i)) / (middle(x, i + 1) - middle(x, i)));
            double v = (pz - middle(z, l)) / (middle(z, l + 1) - middle(z, l));
            for (int j = 0; j < CELLS_ALONG; j++) {
                int near = (i * CELLS_ALONG + j) * nz + l;
                int far = near + CELLS_ALONG * nz;
                sum += (1 - u) * ((1 - v) * t[near] + v * t[near + 1]) + u * ((1 - v) * t[far] + v * t[far + 1]);
            }
        }
        return sum / points / CELLS_ALONG;
    }

    private static int cell(double[] lines, double place, int cells) {
        int i = 0;
        while (i < cells - 2 && middle(lines, i + 1) < place) {
            i++;
        }
        return i;
    }

    private static double middle(double[] lines, int i) {
        return (lines[i] + lines[i + 1]) / 2;
    }

    /** Lines so close as {@code FINEST + GROWTH·distance} from a centre asks for. */
    private static final class Lines {
        private double[] lines = new double[64];
        private int size = 1;

        Lines(double start) {
            lines[0] = start;
        }

        /** Number of cells so far. */
        int count() {
            return size - 1;
        }

        void to(double end, double centre, double longest) {
            double start = lines[size - 1];
            if (!(end - start > 1e-9)) {
                return;
            }
            double place = start;
            double cells = 0;
            // Counts cells at the local size first, then spaces them evenly in that count.
            int fine = 2000;
            double[] count = new double[fine + 1];
            for (int s = 0; s < fine; s++) {
                place = start + (s + 0.5) / fine * (end - start);
                cells += (end - start) / fine / Math.min(longest, FINEST + GROWTH * Math.abs(place - centre));
                count[s + 1] = cells;
            }
            int wanted = Math.max(2, (int) Math.ceil(cells));
            int s = 0;
            for (int c = 1; c <= wanted; c++) {
                double goal = cells * c / wanted;
                while (s < fine - 1 && count[s + 1] < goal) {
                    s++;
                }
                double within = Math.min(1, (goal - count[s]) / (count[s + 1] - count[s]));
                add(c == wanted ? end : start + (s + within) / fine * (end - start));
            }
        }

        private void add(double line) {
            if (size == lines.length) {
                lines = Arrays.copyOf(lines, 2 * size);
            }
            lines[size++] = line;
        }

        double[] done() {
            return Arrays.copyOf(lines, size);
        }
    }
}
