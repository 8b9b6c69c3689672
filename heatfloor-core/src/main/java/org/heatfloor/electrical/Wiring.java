package org.heatfloor.electrical;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;

/**
 * Conductors in place under one code: current-carrying capacity with its corrections, and voltage drop. The figures come
 * from the tables beside this class, each row with its source.
 */
abstract class Wiring {

    /** Rounding of degrees, so that 86 °F is not above 30 °C. */
    static final double KELVIN_SLACK = 1e-6;

    private static final List<Csv.Row> AMPACITY = Csv.read("ampacity.csv");
    private static final List<Csv.Row> AMBIENT = Csv.read("ambient-factor.csv");
    private static final List<Csv.Row> GROUPING = Csv.read("grouping-factor.csv");

    /** A figure of a table and where it stands. */
    record Figure(double value, Source source) {}

    /** Name of the code's rows in the tables. */
    abstract String table();

    abstract String baseMethod();

    abstract List<String> methods();

    abstract Ampacity ampacity(
            ElectricalCode code, ConductorSize size, String method, double celsius, int groupedCircuits);

    /** Volts lost there and back over the one-way length. */
    abstract double dropVolts(ConductorSize size, double oneWayMetres, double amperes);

    abstract Source dropSource(ElectricalCode code, ConductorSize size);

    final List<ConductorSize> sizes() {
        Set<ConductorSize> sizes = new LinkedHashSet<>();
        for (Csv.Row row : AMPACITY) {
            if (row.text("table").equals(table())) {
                sizes.add(ConductorSize.of(row.text("size")));
            }
        }
        return List.copyOf(sizes);
    }

    final List<String> columns() {
        Set<String> columns = new LinkedHashSet<>();
        for (Csv.Row row : AMPACITY) {
            if (row.text("table").equals(table())) {
                columns.add(row.text("column"));
            }
        }
        return List.copyOf(columns);
    }

    final Figure tabulated(ElectricalCode code, ConductorSize size, String column) {
        for (Csv.Row row : AMPACITY) {
            if (row.text("table").equals(table())
                    && row.text("column").equals(column)
                    && row.text("size").equals(size.toString())) {
                return new Figure(row.number("ampere"), tableSource(code, RuleTopic.AMPACITY_TABLE, row));
            }
        }
        throw new IllegalArgumentException(
                "conductor: " + size + " was given; " + code + " has figures for " + sizes() + " only");
    }

    final Figure ambientFactor(ElectricalCode code, String column, double celsius) {
        double most = Double.NEGATIVE_INFINITY;
        for (Csv.Row row : AMBIENT) {
            if (row.text("table").equals(table()) && row.text("column").equals(column)) {
                most = row.number("upToCelsius");
                if (celsius <= most + KELVIN_SLACK) {
                    return new Figure(row.number("factor"), tableSource(code, RuleTopic.AMBIENT_TABLE, row));
                }
            }
        }
        throw new IllegalArgumentException("ambient: " + celsius + " °C was given; at most " + most
                + " °C is expected, the end of the correction table of " + code);
    }

    final Figure groupingFactor(ElectricalCode code, int count) {
        int most = 0;
        for (Csv.Row row : GROUPING) {
            if (row.text("table").equals(table())) {
                most = (int) row.number("upToCount");
                if (count <= most) {
                    return new Figure(row.number("factor"), tableSource(code, RuleTopic.GROUPING_TABLE, row));
                }
            }
        }
        throw new IllegalArgumentException("grouped circuits: " + count + " was counted; at most " + most
                + " is expected, the end of the grouping table of " + code);
    }

    /** The edition's own name of a table, recalled where either the name or the row was not read. */
    private static Source tableSource(ElectricalCode code, RuleTopic table, Csv.Row row) {
        Source edition = code.source(table);
        return row.text("provenance").equals("M") ? Source.fromMemory(edition.text()) : edition;
    }

    static Ampacity ampacity(
            Figure tabulated,
            Figure ambient,
            Figure grouping,
            OptionalDouble terminalAmperes,
            OptionalDouble greatestDevice,
            List<Source> further) {
        double corrected = tabulated.value() * ambient.value() * grouping.value();
        double terminal = terminalAmperes.orElse(corrected);
        List<Source> sources = new ArrayList<>(List.of(tabulated.source(), ambient.source(), grouping.source()));
        sources.addAll(further);
        return new Ampacity(
                Amounts.amperes(tabulated.value()),
                ambient.value(),
                grouping.value(),
                Amounts.amperes(corrected),
                Amounts.amperes(terminal),
                Amounts.amperes(Math.min(corrected, terminal)),
                greatestDevice.isPresent()
                        ? Optional.of(Amounts.amperes(greatestDevice.getAsDouble()))
                        : Optional.empty(),
                sources);
    }
}
