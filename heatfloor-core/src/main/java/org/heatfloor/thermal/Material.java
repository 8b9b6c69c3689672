package org.heatfloor.thermal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Density;
import org.heatfloor.quantity.SpecificHeatCapacity;
import org.heatfloor.quantity.ThermalConductivity;
import org.heatfloor.quantity.Units;

/**
 * A row of the material table: design values for building materials.
 *
 * @param name the material's name in the table
 * @param conductivity design thermal conductivity
 * @param density density
 * @param heatCapacity specific heat capacity
 * @param source where the row comes from
 */
public record Material(
        String name,
        Quantity<ThermalConductivity> conductivity,
        Quantity<Density> density,
        Quantity<SpecificHeatCapacity> heatCapacity,
        Source source) {

    /** What an unknown name is reckoned as: a dense mineral layer, ρc = 1.8 MJ/(m³·K), the value of cement mortar. */
    static final Material UNKNOWN =
            row("cement mortar", 1.0, 1800, 1000, Source.commonPractice("an unknown layer taken as cement mortar"));

    private static final List<Entry> TABLE = read();

    private record Entry(List<String> words, Material material) {}

    /**
     * The first row of the table whose words all begin some word of a layer's name.
     *
     * @param layerName a layer's name, for example {@code "porcelain tile"}
     * @return the row, empty when nothing matches
     */
    public static Optional<Material> named(String layerName) {
        List<String> said = List.of(layerName.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}-]+", -1));
        return TABLE.stream()
                .filter(entry -> entry.words().stream()
                        .allMatch(word -> said.stream().anyMatch(spoken -> spoken.startsWith(word))))
                .findFirst()
                .map(Entry::material);
    }

    /**
     * All rows.
     *
     * @return the table
     */
    public static List<Material> all() {
        return TABLE.stream().map(Entry::material).toList();
    }

    private static Material row(String name, double conductivity, double density, double capacity, Source source) {
        return new Material(
                name,
                Amounts.wattsPerMetreKelvin(conductivity),
                Amounts.of(density, Units.KILOGRAM_PER_CUBIC_METRE),
                Amounts.of(capacity, Units.JOULE_PER_KILOGRAM_KELVIN),
                source);
    }

    private static List<Entry> read() {
        List<Entry> entries = new ArrayList<>();
        try (InputStream in = Material.class.getResourceAsStream("materials.csv")) {
            if (in == null) {
                throw new IllegalStateException("materials.csv is missing from the library");
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            lines.readLine();
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(";", -1);
                Source source = cells[5].startsWith("from memory: ")
                        ? Source.fromMemory(cells[5].substring("from memory: ".length()))
                        : new Source(Source.Kind.DOCUMENT, cells[5]);
                Material material = row(
                        cells[1],
                        Double.parseDouble(cells[2]),
                        Double.parseDouble(cells[3]),
                        Double.parseDouble(cells[4]),
                        source);
                entries.add(new Entry(List.of(cells[0].split(" ", -1)), material));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(entries);
    }
}
