package org.heatfloor.area;

import java.util.ArrayList;
import java.util.List;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;

/**
 * Places the corners of a room from walls and diagonals, triangle by triangle, then by least squares where readings are
 * left over. The reading whose standardised residual {@code |v| / (σ √r)} passes 3.29 is named (data snooping after W.
 * Baarda, 1968; 3.29 is the two-sided limit of the normal distribution at 0.1 %; from memory).
 */
final class DiagonalAdjustment {

    static final double CRITICAL = 3.29;

    /** A triangle less high than this part of its longer side is a poor start. */
    private static final double FAT = 0.05;

    /** A reading checked by less than this is not judged. */
    private static final double LEAST_REDUNDANCY = 1e-6;

    private final WallsAndDiagonals survey;
    private final List<WallsAndDiagonals.Reading> readings = new ArrayList<>();
    private final int count;
    private final double[] x;
    private final double[] y;

    DiagonalAdjustment(WallsAndDiagonals survey) {
        this.survey = survey;
        this.readings.addAll(survey.walls);
        this.readings.addAll(survey.diagonals);
        this.count = survey.corners.size();
        this.x = new double[count];
        this.y = new double[count];
    }

    SurveyedRoom placed() {
        triangulate();
        int[] from = readings.stream().mapToInt(WallsAndDiagonals.Reading::from).toArray();
        int[] to = readings.stream().mapToInt(WallsAndDiagonals.Reading::to).toArray();
        double[] metres =
                readings.stream().mapToDouble(WallsAndDiagonals.Reading::metres).toArray();
        LeastSquares fit = new LeastSquares(from, to, metres, x, y);
        Coordinate[] corners = new Coordinate[count];
        for (int i = 0; i < count; i++) {
            corners[i] = new Coordinate(fit.x(i), fit.y(i));
        }
        Outline outline = new Outline(survey.fittings, true);
        for (int i = 0; i < count; i++) {
            outline.straight(i, "wall " + survey.walls.get(i).name(), corners[i], corners[(i + 1) % count]);
        }
        double largest = 0;
        double perimeter = 0;
        List<Measurement> measurements = new ArrayList<>();
        for (int k = 0; k < readings.size(); k++) {
            double residual = fit.residual(k);
            double redundancy = fit.redundancy(k);
            largest = Math.max(largest, Math.abs(residual));
            perimeter += k < count ? readings.get(k).metres() : 0;
            measurements.add(new Measurement(
                    readings.get(k).name(),
                    Amounts.metres(metres[k]),
                    Amounts.metres(metres[k] + residual),
                    Amounts.metres(residual),
                    redundancy < LEAST_REDUNDANCY
                            ? 0
                            : Math.abs(residual) / (survey.deviationMetres * Math.sqrt(redundancy))));
        }
        return new SurveyedRoom(
                outline.room(),
                outline.doors(corners),
                largest,
                perimeter,
                0,
                measurements,
                findings(fit, measurements));
    }

    private void triangulate() {
        boolean[] placed = new boolean[count];
        x[1] = length(0, 1);
        placed[0] = true;
        placed[1] = true;
        for (int done = 2; done < count; done++) {
            int[] next = next(placed);
            place(next[0], next[1], next[2]);
            placed[next[0]] = true;
        }
    }

    /** A corner not placed yet with two placed corners it was measured from, best a fat triangle all measured. */
    private int[] next(boolean[] placed) {
        int[] found = new int[0];
        int foundRank = Integer.MAX_VALUE;
        for (int k = 0; k < count; k++) {
            for (int i = 0; i < count && !placed[k]; i++) {
                for (int j = i + 1; j < count; j++) {
                    if (placed[i] && placed[j] && length(i, k) > 0 && length(j, k) > 0) {
                        int rank = (isFat(k, i, j) ? 0 : 2) + (length(i, j) > 0 ? 0 : 1);
                        if (rank < foundRank) {
                            found = new int[] {k, i, j};
                            foundRank = rank;
                        }
                        if (rank == 0) {
                            return found;
                        }
                    }
                }
            }
        }
        if (found.length > 0) {
            return found;
        }
        StringBuilder missing = new StringBuilder();
        for (int k = 0; k < count; k++) {
            if (!placed[k]) {
                missing.append(missing.length() == 0 ? "corner '" : "', '").append(survey.corners.get(k));
            }
        }
        throw new IllegalArgumentException(missing + "': no two measured lengths from placed corners; at least "
                + (count - 3) + " diagonals that part the room into triangles are expected, "
                + survey.diagonals.size() + " were given");
    }

    private boolean isFat(int k, int i, int j) {
        double longer = Math.max(length(i, k), length(j, k));
        return heightSquared(k, i, j) > FAT * FAT * longer * longer;
    }

    /** Square of corner k's height over the base from i to j; negative where the three lengths make no triangle. */
    private double heightSquared(int k, int i, int j) {
        double along = along(k, i, j);
        return length(i, k) * length(i, k) - along * along;
    }

    private double along(int k, int i, int j) {
        double base = Math.hypot(x[j] - x[i], y[j] - y[i]);
        double a = length(i, k);
        double b = length(j, k);
        return (a * a - b * b + base * base) / (2 * base);
    }

    /** With the room at the left hand, corners in the order of the walk make a triangle that turns left. */
    private void place(int k, int i, int j) {
        double base = Math.hypot(x[j] - x[i], y[j] - y[i]);
        double a = length(i, k);
        double b = length(j, k);
        double along = along(k, i, j);
        double square = heightSquared(k, i, j);
        if (!(square > 0)) {
            throw new IllegalArgumentException("corner '" + survey.corners.get(k) + "': "
                    + QuantityText.number(a, 3) + " m from '" + survey.corners.get(i) + "' and "
                    + QuantityText.number(b, 3) + " m from '" + survey.corners.get(j)
                    + "', which lie " + QuantityText.number(base, 3)
                    + " m apart, make no triangle; measure these three lengths again");
        }
        double turn = k > i && k < j ? -1 : 1;
        double ux = (x[j] - x[i]) / base;
        double uy = (y[j] - y[i]) / base;
        double across = turn * Math.sqrt(square);
        x[k] = x[i] + along * ux - across * uy;
        y[k] = y[i] + along * uy + across * ux;
    }

    private double length(int a, int b) {
        for (WallsAndDiagonals.Reading r : readings) {
            if ((r.from() == a && r.to() == b) || (r.from() == b && r.to() == a)) {
                return r.metres();
            }
        }
        return 0;
    }

    private List<Finding> findings(LeastSquares fit, List<Measurement> measurements) {
        int checks = readings.size() - (2 * count - 3);
        if (checks == 0) {
            return List.of(Finding.of(
                    Severity.NOTE,
                    "walls and diagonals",
                    "Nothing checks these readings; one more diagonal would.",
                    Source.derived("as many readings as unknown coordinates")));
        }
        int worst = 0;
        double second = 0;
        for (int k = 1; k < measurements.size(); k++) {
            double own = measurements.get(k).standardised();
            if (own > measurements.get(worst).standardised()) {
                second = measurements.get(worst).standardised();
                worst = k;
            } else {
                second = Math.max(second, own);
            }
        }
        Measurement suspect = measurements.get(worst);
        if (!(suspect.standardised() > CRITICAL)) {
            return List.of();
        }
        boolean told = suspect.standardised() > second * 1.000001;
        double error = -fit.residual(worst) / fit.redundancy(worst);
        String message = told
                ? "This reading does not fit the others: it seems "
                        + QuantityText.number(Math.abs(error) * 1000, 0) + " mm too "
                        + (error > 0 ? "long" : "short") + "; measure it again."
                : "The readings do not fit each other, and with " + checks
                        + " check(s) it cannot be told which is wrong; measure again or add a diagonal.";
        return List.of(Finding.of(
                Severity.WARNING,
                told ? suspect.name() : "walls and diagonals",
                message,
                Amounts.of(suspect.standardised(), Units.ONE),
                Amounts.of(CRITICAL, Units.ONE),
                Source.fromMemory("W. Baarda, A testing procedure for use in geodetic networks, 1968; normal"
                        + " distribution at 0.1 %")));
    }
}
