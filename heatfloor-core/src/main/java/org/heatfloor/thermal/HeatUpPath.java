package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The mean mode of a floor in time at full power, from one state to the steady one; SI, rises over the air. */
final class HeatUpPath {

    private static final double FIRST_STEP = 1;
    private static final double GROWTH = 1.0 / 30;
    private static final double LONGEST_SECONDS = 3.2e9;
    private static final int CORRECTIONS = 4;

    private final ThermalColumn column;
    private final FilmExcess excess;
    private final double[] end;
    private final double[] unit;
    private final List<Step> steps = new ArrayList<>();

    /** A step: when it begins, the state then, and the heat at the surface over it. */
    private static final class Step {
        private final double seconds;
        private final double[] state;
        private final double heat;
        private final double rise;

        Step(double seconds, double[] state, double heat, double rise) {
            this.seconds = seconds;
            this.state = state;
            this.heat = heat;
            this.rise = rise;
        }
    }

    HeatUpPath(ThermalColumn column, FilmExcess excess, double[] start, double[] end) {
        this.column = column;
        this.excess = excess;
        this.end = end;
        this.unit = column.steadyOfSurface();
        double[] state = start;
        double seconds = 0;
        double goal = column.surface(end);
        double rise = column.surface(start);
        // The path is done when what is left of it can no longer be seen.
        while (seconds < LONGEST_SECONDS && (steps.size() < 2 || Math.abs(rise - goal) > 1e-9)) {
            double length = Math.max(FIRST_STEP, seconds * GROWTH);
            double before = excess.at(rise);
            double heat = before;
            double[] later = state;
            for (int c = 0; c < CORRECTIONS; c++) {
                later = after(state, heat, length);
                heat = 0.5 * (before + excess.at(column.surface(later)));
            }
            later = after(state, heat, length);
            steps.add(new Step(seconds, state, heat, rise));
            seconds += length;
            state = later;
            rise = column.surface(state);
        }
        steps.add(new Step(seconds, state, 0, rise));
    }

    private double[] after(double[] state, double heat, double seconds) {
        return column.after(state, ThermalColumn.sum(end, heat, unit), seconds);
    }

    /** The same floor from the steady state in which less power holds the surface at a rise. */
    HeatUpPath heldAt(double rise) {
        double heat = excess.at(rise);
        double[] source = column.steady(1, 0, 0);
        double[] withFilm = ThermalColumn.sum(end, heat, unit);
        double watts = (rise - column.surface(withFilm)) / column.surface(source);
        return new HeatUpPath(column, excess, ThermalColumn.sum(withFilm, watts, source), end);
    }

    double rise(double seconds) {
        int low = 0;
        int high = steps.size();
        while (high - low > 1) {
            int middle = (low + high) / 2;
            if (steps.get(middle).seconds <= seconds) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return within(steps.get(low), seconds);
    }

    private double within(Step step, double seconds) {
        return column.surface(after(step.state, step.heat, seconds - step.seconds));
    }

    double endRise() {
        return column.surface(end);
    }

    double slowestSeconds() {
        return column.slowestSeconds();
    }

    /** Seconds until a rise is reached; empty when it never is. */
    Optional<Double> timeTo(double target) {
        if (steps.get(0).rise >= target) {
            return Optional.of(0.0);
        }
        if (!(endRise() > target)) {
            return Optional.empty();
        }
        int after = 1;
        while (after < steps.size() && steps.get(after).rise < target) {
            after++;
        }
        if (after == steps.size()) {
            return Optional.empty();
        }
        Step step = steps.get(after - 1);
        double low = step.seconds;
        double high = steps.get(after).seconds;
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            if (within(step, middle) < target) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Optional.of(high);
    }
}
