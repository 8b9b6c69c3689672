package org.heatfloor.grid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.heatfloor.area.Room;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Every number printed in the chapter on the grid. */
class GridChapterTest {

    private static final Path CHAPTER = Path.of("..", "docs", "grid.md");
    private static final TradeLength CLEARANCE = TradeLength.of(Amounts.millimetres(60));
    private static final Membrane MEMBRANE =
            new Membrane(Amounts.millimetres(34), Amounts.millimetres(22), Amounts.millimetres(9), Optional.empty());

    @Test
    void the_rectangle() throws IOException {
        Room room = Room.ofWkt("POLYGON ((0 0, 1000 0, 1000 700, 0 700, 0 0))", Units.MILLIMETRE);
        StudLattice lattice = LatticeChoice.choose(MEMBRANE, room, CLEARANCE, List.of());
        ChannelGrid grid = ChannelGrid.of(lattice, room, CLEARANCE, List.of());

        printed("26 columns and ⌊580/34⌋ + 1 = 18 rows, " + grid.freeJunctions() + " junctions, 25·18 + 26·17 = "
                + grid.freeChannels() + " channels");
        int sweep = LatticeChoice.COARSE_PHASES * LatticeChoice.COARSE_PHASES
                + LatticeChoice.SWEEPS * (LatticeChoice.FINE_PHASES - 1 + LatticeChoice.EDGE_PHASES);
        printed("At most "
                + (LatticeChoice.MOST_ANGLES * LatticeChoice.MOST_PHASES * LatticeChoice.MOST_PHASES + sweep)
                + " lattices");
        assertThat(LatticeChoice.SWEEPS).isEqualTo(4);
        printed(LatticeChoice.COARSE_PHASES + " by " + LatticeChoice.COARSE_PHASES
                + ", and after that along each axis in turn, twice, " + LatticeChoice.FINE_PHASES + " and up to "
                + LatticeChoice.EDGE_PHASES + " more");
        assertThat(LatticeChoice.WORTH_LEAVING_THE_WALLS).isEqualTo(0.001);
        printed("on " + LatticeChoiceProperties.TRIES + " random rooms a run");
        printed("steps of 1/" + LatticeChoiceProperties.PHASES + " of the pitch");
        printed("at most " + ChannelGrid.MOST_JUNCTIONS / 1_000_000 + " million junctions");
    }

    @Test
    void the_seam() throws IOException {
        Room room = Room.ofWkt("POLYGON ((0 0, 2448 0, 2448 1224, 0 1224, 0 0))", Units.MILLIMETRE);
        StudLattice lattice = StudLattice.of(
                MEMBRANE,
                new GeometryFactory().createPoint(new Coordinate(-17, -17)),
                Units.MILLIMETRE,
                Amounts.degrees(0));
        ChannelGrid grid = ChannelGrid.of(lattice, room, CLEARANCE, List.of());
        MembraneStock stock =
                new MembraneStock(MembraneStock.Kind.SHEET, Amounts.millimetres(1250), Amounts.millimetres(612));
        SheetSeams seams = SheetSeams.of(grid, stock);
        Seam seam = seams.seams().get(0);
        Finding finding = seams.slipped(seam, Amounts.millimetres(44), Amounts.millimetres(5), TradeLength.studs(3));

        assertThat(seams.findings().get(0).message()).contains("cut off 26 mm").contains("36 studs");
        printed("A sheet of 1250 mm at a pitch of 34 mm holds\n36 studs; 26 mm are cut off");
        double play = finding.limit().orElseThrow().getValue().doubleValue() * 1000;
        printed("play " + QuantityText.number(play, 0) + " mm");
        printed("With " + seam.crossingChannels() + " free channels");
        assertThat(finding.message()).contains("up to 11 runs").contains("take 16 mm more cable");
        printed("up to 11 runs zigzag; each takes √(34² + 10²) − 34 = "
                + QuantityText.number(Math.hypot(34, 10) - 34, 2) + " mm more, 16 mm in all");
    }

    /** Times measured by a command, kept in a file; the chapter prints them and the ratios between them. */
    @Test
    void the_speed() throws IOException {
        Map<String, Double> milliseconds = new LinkedHashMap<>();
        try (InputStream in = GridChapterTest.class.getResourceAsStream("/org/heatfloor/grid/lattice-bench.csv")) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .toList()) {
                String[] field = line.split(",", 4);
                double measured = Double.parseDouble(field[1]);
                assertThat(Double.parseDouble(field[2])).isCloseTo(measured, within(measured * 0.01));
                assertThat(field[3]).contains("LatticeBench.");
                printed("| " + field[0] + " | " + field[2] + " |");
                milliseconds.put(field[0], measured);
            }
        }
        double grid = milliseconds.get("free junctions and channels by the grid");
        printed("1/" + Math.round(milliseconds.get("free junctions by covers of a plain region") / grid / 1000) * 1000);
        printed("1/" + Math.round(milliseconds.get("the same with making and preparing the region") / grid));

        Room room = Room.ofWkt("POLYGON ((0 0, 4000 0, 4000 3000, 0 3000, 0 0))", Units.MILLIMETRE);
        Membrane coarse = new Membrane(
                Amounts.millimetres(50), Amounts.millimetres(32), Amounts.millimetres(9), Optional.empty());
        StudLattice lattice = StudLattice.of(
                coarse, new GeometryFactory().createPoint(new Coordinate(0, 0)), Units.MILLIMETRE, Amounts.degrees(0));
        ChannelGrid plain = ChannelGrid.of(lattice, room, CLEARANCE, List.of());
        assertThat(plain.columns() * plain.rows()).isEqualTo(4800);
        printed("4,800 junctions (pitch 50 mm)");
    }

    private static void printed(String text) throws IOException {
        assertThat(Files.readString(CHAPTER)).contains(text);
    }
}
