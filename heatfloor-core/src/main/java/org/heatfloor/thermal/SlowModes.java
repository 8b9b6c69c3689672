package org.heatfloor.thermal;

/**
 * The floor in time as a thermostat meets it: the mean mode and the slowest modes across the cables. The sensor lies midway
 * between two cables in their plane. The modes left out even out within seconds; they alternate in sign, so the last mode
 * kept counts half. The surface law is kept step by step: what its film differs from that at steady full power is heat at
 * the surface of the mean mode.
 */
final class SlowModes {

    private static final int MODES = 4;

    private final ThermalColumn[] columns = new ThermalColumn[MODES + 1];
    private final double[][] on = new double[MODES + 1][];
    private final double[][] off = new double[MODES + 1][];
    private final double[][] decay = new double[MODES + 1][];
    private final double[][] state = new double[MODES + 1][];
    private final double[] surfaceUnit;
    private final FilmExcess excess;
    private final double air;
    private final double stepSeconds;

    SlowModes(
            LayerStack stack,
            EmbeddedCable cable,
            double spacing,
            Climate climate,
            SurfaceLaw law,
            double stepSeconds) {
        this.air = climate.airKelvin();
        this.stepSeconds = stepSeconds;
        double flux = cable.powerSi() / spacing;
        double axis = cable.axisHeightMetres();
        ModeTransfer transfer = new ModeTransfer(stack, axis, climate.filmBelowSi());
        MeanBalance balance = MeanBalance.solve(
                flux, transfer.resistanceAbove(), transfer.admittanceBelow(0), law, air, climate.belowKelvin());
        double film = Math.max(balance.film(), 1e-6);
        this.excess = new FilmExcess(law, air, film, balance.ambientKelvin());
        double ambient = balance.ambientKelvin() - air;
        double below = climate.belowKelvin() - air;
        for (int n = 0; n <= MODES; n++) {
            columns[n] = ThermalColumn.of(stack, axis, film, climate.filmBelowSi(), 2 * Math.PI * n / spacing);
            on[n] = n == 0 ? columns[n].steady(flux, ambient, below) : columns[n].steady(2 * flux, 0, 0);
            off[n] = columns[n].steady(0, n == 0 ? ambient : 0, n == 0 ? below : 0);
            decay[n] = columns[n].decay(stepSeconds);
            state[n] = off[n].clone();
        }
        this.surfaceUnit = columns[0].steadyOfSurface();
    }

    /** Starts from the steady state in which the sensor holds a temperature, as far as power allows. */
    void holdSensorAt(double kelvin) {
        double idle = sensor(off);
        double full = sensor(on);
        double share = Math.max(0, Math.min(1, (kelvin - idle) / (full - idle)));
        for (int n = 0; n <= MODES; n++) {
            for (int e = 0; e < state[n].length; e++) {
                state[n][e] = off[n][e] + share * (on[n][e] - off[n][e]);
            }
        }
    }

    void step(boolean powered) {
        double[] meanGoal =
                ThermalColumn.sum(powered ? on[0] : off[0], excess.at(columns[0].surface(state[0])), surfaceUnit);
        ThermalColumn.approach(state[0], meanGoal, decay[0]);
        for (int n = 1; n <= MODES; n++) {
            ThermalColumn.approach(state[n], powered ? on[n] : off[n], decay[n]);
        }
    }

    double stepSeconds() {
        return stepSeconds;
    }

    double sensor() {
        return sensor(state);
    }

    double surfaceMean() {
        return air + columns[0].surface(state[0]);
    }

    /** Surface above a cable. */
    double surfaceMax() {
        double sum = surfaceMean();
        for (int n = 1; n <= MODES; n++) {
            sum += columns[n].surface(state[n]);
        }
        return sum;
    }

    /** Sensor after some seconds of full power from here. */
    double sensorAfter(double seconds) {
        double[][] later = new double[MODES + 1][];
        double now = excess.at(columns[0].surface(state[0]));
        double[] first = columns[0].after(state[0], ThermalColumn.sum(on[0], now, surfaceUnit), seconds);
        double mean = 0.5 * (now + excess.at(columns[0].surface(first)));
        later[0] = columns[0].after(state[0], ThermalColumn.sum(on[0], mean, surfaceUnit), seconds);
        for (int n = 1; n <= MODES; n++) {
            later[n] = columns[n].after(state[n], on[n], seconds);
        }
        return sensor(later);
    }

    double sensorAtFullPower() {
        return sensor(on);
    }

    private double sensor(double[][] of) {
        double sum = air + columns[0].plane(of[0]);
        for (int n = 1; n <= MODES; n++) {
            double weight = (n == MODES ? 0.5 : 1) * (n % 2 == 0 ? 1 : -1);
            sum += weight * columns[n].plane(of[n]);
        }
        return sum;
    }
}
