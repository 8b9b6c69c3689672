package org.heatfloor.thermal;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Temperature;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;

/** Short ways to write floors in tests; lengths in millimetres unless named otherwise. */
final class Floors {

    private Floors() {}

    static Layer layer(double millimetres, double conductivity, boolean heated) {
        return layer(millimetres, conductivity, 1800, 1000, heated);
    }

    static Layer layer(double millimetres, double conductivity, double density, double capacity, boolean heated) {
        Layer plain = heated
                ? Layer.heated("layer", Amounts.millimetres(millimetres), Amounts.wattsPerMetreKelvin(conductivity))
                : Layer.of("layer", Amounts.millimetres(millimetres), Amounts.wattsPerMetreKelvin(conductivity));
        return plain.withStorage(
                Amounts.of(density, Units.KILOGRAM_PER_CUBIC_METRE),
                Amounts.of(capacity, Units.JOULE_PER_KILOGRAM_KELVIN));
    }

    /** Layers written as {@code "10:1.3 12:1.0*"}: millimetres, W/(m·K), the heated one marked. */
    static BuildUp layers(String text) {
        List<Layer> stack = new ArrayList<>();
        for (String part : text.split(" ", -1)) {
            String[] figures = part.replace("*", "").split(":", -1);
            stack.add(layer(Double.parseDouble(figures[0]), Double.parseDouble(figures[1]), part.endsWith("*")));
        }
        return BuildUp.of(stack);
    }

    static BuildUp one(double metres, double conductivity) {
        return BuildUp.of(List.of(layer(1000 * metres, conductivity, true)));
    }

    static Climate climate(double air, double below, double filmBelow) {
        return Climate.of(Amounts.celsius(air), Amounts.celsius(below))
                .withFilmBelow(Amounts.of(filmBelow, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }

    static SurfaceLaw film(double coefficient) {
        return SurfaceLaws.constant(Amounts.of(coefficient, Units.WATT_PER_SQUARE_METRE_KELVIN));
    }

    static EmbeddedCable cable(double wattsPerMetre, double radiusMillimetres, double axisMillimetres) {
        return new EmbeddedCable(
                Amounts.of(wattsPerMetre, Units.WATT_PER_METRE),
                Amounts.millimetres(2 * radiusMillimetres),
                Amounts.millimetres(axisMillimetres));
    }

    static double celsius(Quantity<Temperature> temperature) {
        return temperature.to(Units.CELSIUS).getValue().doubleValue();
    }

    static double value(Quantity<?> quantity) {
        return quantity.getValue().doubleValue();
    }

    /** The schoolhouse washroom's build-up (invented). */
    static BuildUp washroom() {
        List<Layer> layers = new ArrayList<>();
        layers.add(layer(9, 1.3, 2300, 840, false));
        layers.add(layer(12.6, 1.0, 1800, 1000, true));
        layers.add(layer(2.7, 1.0, 1800, 1000, false));
        layers.add(layer(18, 0.13, 500, 1600, false));
        layers.add(layer(100, 0.037, 20, 1030, false));
        return BuildUp.of(layers);
    }

    static FloorShape rectangle(double x0, double y0, double x1, double y1) {
        return FloorShape.rectangle(Amounts.metres(x0), Amounts.metres(y0), Amounts.metres(x1), Amounts.metres(y1));
    }

    static CableRun run(EmbeddedCable cable, double[][] pathMetres) {
        return CableRun.of(cable, pathMetres, Units.METRE);
    }

    static Quantity<Temperature> at(FloorField field, double x, double y) {
        return field.at(Amounts.metres(x), Amounts.metres(y));
    }

    static Quantity<Temperature> inCablePlane(FloorField field, double x, double y) {
        return field.inCablePlane(Amounts.metres(x), Amounts.metres(y));
    }

    static SensorReading sensorAt(FloorField field, double x, double y) {
        return field.sensorAt(Amounts.metres(x), Amounts.metres(y));
    }

    /** Parallel runs along y over a rectangle, joined into one path by straight pieces or not at all. */
    static List<double[][]> parallel(double width, double height, double spacing) {
        List<double[][]> runs = new ArrayList<>();
        int n = (int) Math.round(width / spacing);
        for (int i = 0; i < n; i++) {
            double x = (i + 0.5) * width / n;
            runs.add(new double[][] {{x, 0}, {x, height}});
        }
        return runs;
    }
}
