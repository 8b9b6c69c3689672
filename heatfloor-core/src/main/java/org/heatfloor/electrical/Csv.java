package org.heatfloor.electrical;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Reads the tables that lie beside this class: a header line, fields parted by semicolons, no quoting. */
final class Csv {

    private Csv() {}

    /** One row by column name. */
    record Row(Map<String, String> fields) {

        String text(String column) {
            String value = fields.get(column);
            if (value == null) {
                throw new IllegalStateException("table column " + column + " is missing in " + fields);
            }
            return value;
        }

        double number(String column) {
            return Double.parseDouble(text(column));
        }
    }

    static List<Row> read(String name) {
        try (InputStream in = Csv.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("table " + name + " is missing from the library's jar");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            String first = lines.readLine();
            if (first == null) {
                throw new IllegalStateException("table " + name + " is empty");
            }
            String[] header = first.split(";", -1);
            List<Row> rows = new ArrayList<>();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(";", -1);
                if (cells.length != header.length) {
                    throw new IllegalStateException("table " + name + ": " + cells.length + " cells in '" + line + "'; "
                            + header.length + " are expected");
                }
                Map<String, String> fields = new HashMap<>();
                for (int i = 0; i < header.length; i++) {
                    fields.put(header[i], cells[i]);
                }
                rows.add(new Row(Map.copyOf(fields)));
            }
            return List.copyOf(rows);
        } catch (IOException e) {
            throw new IllegalStateException("table " + name + " cannot be read", e);
        }
    }
}
