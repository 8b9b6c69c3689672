package org.heatfloor.examples.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.heatfloor.thermal.BuildUp;
import org.heatfloor.thermal.CableRun;
import org.heatfloor.thermal.Climate;
import org.heatfloor.thermal.EmbeddedCable;
import org.heatfloor.thermal.FloorField;
import org.heatfloor.thermal.FloorFieldBuilder;
import org.heatfloor.thermal.FloorShape;
import org.heatfloor.thermal.Layer;

/** A schoolhouse room (invented) with the routes the program planned for it, kept so that timing need not plan anew. */
record PlannedRoom(
        BuildUp buildUp,
        Climate climate,
        FloorShape floor,
        List<CableRun> cables,
        double width,
        double height,
        double sheet,
        double loss) {

    static PlannedRoom read(String name) {
        boolean kitchen = name.equals("kitchen");
        BuildUp buildUp = kitchen
                ? buildUp(layer("limestone", 15, 1.7), 14.1, layer("screed", 65, 1.2), layer("polystyrene", 80, 0.034))
                : buildUp(layer("tile", 9, 1.3), 12.6, layer("plywood", 18, 0.13), layer("mineral wool", 100, 0.037));
        Climate climate = kitchen
                ? Climate.of(Amounts.celsius(20), Amounts.celsius(8))
                : Climate.of(Amounts.celsius(22), Amounts.celsius(12));
        double studHeight = kitchen ? 10 : 9;
        List<CableRun> cables = new ArrayList<>();
        double[][] outline = {};
        List<double[][]> holes = new ArrayList<>();
        try (InputStream in = PlannedRoom.class.getResourceAsStream(name + "-routes.csv")) {
            if (in == null) {
                throw new IllegalStateException(name + "-routes.csv is missing");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            lines.readLine();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(";", -1);
                double[][] points = points(cells[3]);
                if (cells[0].equals("outline")) {
                    outline = points;
                    continue;
                }
                if (cells[0].equals("hole")) {
                    holes.add(points);
                    continue;
                }
                EmbeddedCable cable = EmbeddedCable.flushWithStuds(
                        Amounts.of(Double.parseDouble(cells[1]), Units.WATT_PER_METRE),
                        Amounts.millimetres(Double.parseDouble(cells[2])),
                        Amounts.millimetres(studHeight));
                cables.add(CableRun.of(cable, points, Units.METRE));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        // Conductivity times thickness of what lies above the insulation; film above and resistance below.
        double sheet = kitchen ? 0.015 * 1.7 + 0.0168 + 0.065 * 1.2 : 0.009 * 1.3 + 0.0153 + 0.018 * 0.13;
        double loss = kitchen ? 11 + 0.4 : 11 + 0.34;
        return new PlannedRoom(
                buildUp,
                climate,
                FloorShape.of(outline, holes, Units.METRE),
                List.copyOf(cables),
                kitchen ? 5.2 : 2.41,
                kitchen ? 4.1 : 1.96,
                sheet,
                loss);
    }

    private static double[][] points(String text) {
        String[] numbers = text.split(" ", -1);
        double[][] points = new double[numbers.length / 2][];
        for (int i = 0; i < points.length; i++) {
            points[i] = new double[] {Double.parseDouble(numbers[2 * i]), Double.parseDouble(numbers[2 * i + 1])};
        }
        return points;
    }

    private static BuildUp buildUp(Layer covering, double membrane, Layer deck, Layer insulation) {
        return BuildUp.of(List.of(
                covering,
                Layer.heated(
                        "membrane filled with mortar", Amounts.millimetres(membrane), Amounts.wattsPerMetreKelvin(1.0)),
                layer("mortar", 2.7, 1.0),
                deck,
                insulation));
    }

    private static Layer layer(String name, double millimetres, double conductivity) {
        return Layer.of(name, Amounts.millimetres(millimetres), Amounts.wattsPerMetreKelvin(conductivity));
    }

    /** The room's whole field at 10 mm, ready to be solved. */
    FloorFieldBuilder builder() {
        FloorFieldBuilder builder = FloorField.builder(buildUp, climate, floor);
        for (CableRun cable : cables) {
            builder = builder.cable(cable);
        }
        return builder;
    }

    /** Heat of the cables in each of so many cells, row by row: every millimetre of a route to the cell it lies in. */
    double[] cellWatts(int nx, int ny) {
        double[] watts = new double[nx * ny];
        for (CableRun run : cables) {
            double perMetre =
                    run.cable().power().to(Units.WATT_PER_METRE).getValue().doubleValue();
            double[][] path = run.path(Units.METRE);
            for (int s = 0; s + 1 < path.length; s++) {
                double length = Math.hypot(path[s + 1][0] - path[s][0], path[s + 1][1] - path[s][1]);
                int pieces = Math.max(1, (int) Math.ceil(length / 1e-3));
                for (int p = 0; p < pieces; p++) {
                    double t = (p + 0.5) / pieces;
                    double x = path[s][0] + t * (path[s + 1][0] - path[s][0]);
                    double y = path[s][1] + t * (path[s + 1][1] - path[s][1]);
                    int i = Math.min(nx - 1, (int) (x / width * nx));
                    int j = Math.min(ny - 1, (int) (y / height * ny));
                    watts[j * nx + i] += perMetre * length / pieces;
                }
            }
        }
        return watts;
    }

    /** Steps of the field's grid along x. */
    int stepsX() {
        return Math.toIntExact(Math.round(
                width / builder().solve().stepX().to(Units.METRE).getValue().doubleValue()));
    }

    /** Steps of the field's grid along y. */
    int stepsY() {
        return Math.toIntExact(Math.round(
                height / builder().solve().stepY().to(Units.METRE).getValue().doubleValue()));
    }
}
