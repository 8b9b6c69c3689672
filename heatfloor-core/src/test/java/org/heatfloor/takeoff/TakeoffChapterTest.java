package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Mass;
import org.heatfloor.area.Door;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The figures and the code printed in the handbook's chapter on take-off. */
class TakeoffChapterTest {

    private static final Path CHAPTER = Path.of("..", "docs", "takeoff.md");
    private static final Path SOURCE = Path.of("src/test/java/org/heatfloor/takeoff/TakeoffChapterTest.java");

    private static String chapter = "";

    @BeforeAll
    static void read() throws IOException {
        chapter = Files.readString(CHAPTER).replaceAll("\\s+", " ");
    }

    private static <Q extends Quantity<Q>> String text(Quantity<Q> quantity, Unit<Q> unit, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", Math.abs(Si.in("printed", quantity, unit)));
    }

    private static void prints(String text) {
        assertThat(chapter).contains(text);
    }

    private static Trowel square(double millimetres) {
        return Schoolhouse.square(millimetres);
    }

    @Test
    void theWashroomByHand() {
        TakeOff takeOff = Schoolhouse.washroom().build();
        FloorHeight height = takeOff.height().orElseThrow();
        prints("= " + text(square(6).combedThickness(), Units.MILLIMETRE, 3) + " mm; at 95 % contact the bed is "
                + text(height.lowerBed(), Units.MILLIMETRE, 3) + " mm");
        prints("= " + text(square(8).combedThickness(), Units.MILLIMETRE, 3) + " mm, the bed "
                + text(height.upperBed(), Units.MILLIMETRE, 3) + " mm");
        prints("= " + text(takeOff.membraneArea(), Units.SQUARE_METRE, 4) + " m²");
        MortarNeed under = takeOff.mortars().get(0);
        MortarNeed over = takeOff.mortars().get(1);
        prints("Under: " + text(under.inPlace(), Units.LITRE, 3) + " L, " + text(under.dry(), Units.KILOGRAM, 3)
                + " kg dry, " + under.bags() + " bag of 20 kg");
        prints("In and over: " + text(over.inPlace(), Units.LITRE, 3) + " L, " + text(over.dry(), Units.KILOGRAM, 3)
                + " kg dry, " + over.bags() + " bags");
        double open =
                Si.in("open", Studs.of(Schoolhouse.washroomMembrane()).openVolume(), Units.LITRE_PER_SQUARE_METRE);
        prints(String.format(
                Locale.ROOT,
                "= %.4f L/m², less 31.5 m of 5 mm cable, %.4f L",
                open,
                Si.in("cable", Studs.cableVolume(Amounts.metres(31.5), Amounts.millimetres(5)), Units.LITRE)));
        prints("= " + text(height.total(), Units.MILLIMETRE, 3) + " mm");
        prints("a step down of " + text(takeOff.doorSteps().get(0).step(), Units.MILLIMETRE, 3) + " mm");
    }

    @Test
    void theWashroomsPieces() {
        TakeOff takeOff = Schoolhouse.washroom().build();
        MembraneCut cut = takeOff.membraneCut().orElseThrow();
        prints(cut.pieces().size() + " pieces from " + cut.stockCount() + " sheets, and no cut takes fewer");
        assertThat(cut.isProvenLeast()).isTrue();
        double sheet = 1.224 * 0.612;
        prints(String.format(
                Locale.ROOT,
                "4.6276/%.4f = %.2f",
                sheet,
                Si.in("area", takeOff.membraneArea(), Units.SQUARE_METRE) / sheet));
        TileLayout layout = takeOff.layout().orElseThrow();
        prints(layout.wholeTiles() + " whole tiles and " + layout.cutTiles() + " cut ones; with offcuts reused "
                + layout.tilesNeeded() + " tiles, with 10 % for breakage " + layout.tilesToBuy());
        prints("The washroom takes " + text(takeOff.grout().orElseThrow().mass(), Units.KILOGRAM, 3) + " kg");
    }

    @Test
    void theOtherFigures() {
        int[] lengths = {50, 46, 32, 29, 22, 20};
        prints("take " + CuttingOracles.firstFitDecreasing(lengths, 100) + " rolls that way and "
                + LevelPacker.pack(lengths, new int[] {1, 1, 1, 1, 1, 1}, 100, 1, new Work(1_000_000))
                        .stocks() + " in truth");
        prints("one budget of " + CutSearch.STEPS / 1_000_000 + " million counted steps");
        prints("with more than " + OffcutPool.MOST_SEARCHED + " cut places sharing is first fit");
        prints("takes " + (int) WorkedChecks.value("layout tiles", "4300 3600 600 300 3 6")
                + " as laid, while 15.48 m² and a flat 10 % give "
                + (int) WorkedChecks.value("tiles by area", "15.48 600 300 10") + ", one short");
        prints(String.format(
                Locale.ROOT,
                "%.4f against %.4f kg/m² for 300 mm tiles with 3 mm joints, %.4f against %.4f for 50 mm tiles",
                WorkedChecks.value("grout first order", "300 300 8 3 1.6"),
                WorkedChecks.value("grout exact", "300 300 8 3 1.6"),
                WorkedChecks.value("grout first order", "50 50 5 3 1.6"),
                WorkedChecks.value("grout exact", "50 50 5 3 1.6")));
        prints(String.format(
                Locale.ROOT,
                "8.6 mm takes a bevel of %.1f mm, or of %.1f mm",
                WorkedChecks.value("bevel run mm", "8.6"),
                WorkedChecks.value("shortest bevel run mm", "8.6")));
    }

    @Test
    void theMortarFigures() {
        prints(String.format(
                Locale.ROOT,
                "leave %.4f L/m² open, and with a 6 mm cable every 84 mm %.4f L/m²",
                WorkedChecks.value("open depth cut-back triangular mm", "7 28 14 18"),
                WorkedChecks.value("fill depth cut-back triangular mm", "7 28 14 18 6 84")));
        prints(String.format(
                Locale.ROOT,
                "25 kg at 1.6 kg/L and 0.25 of water make %.2f L",
                WorkedChecks.value("yield litres", "25 kg 1.6 0.25")));
        prints(String.format(
                Locale.ROOT,
                "at 3 m² an hour, 3 mm of bed, 20 min and 2 h a spread is %.0f m² and a batch %.2f kg dry",
                WorkedChecks.value("spread m2", "3 20 2"),
                WorkedChecks.value("batch kg", "3 20 2 1.6 0.25 3")));
        prints("at " + text(LevellerSpec.USUAL.dry(), Units.KILOGRAM_PER_LITRE, 1) + " kg/L (from memory), by mass");
        Bedding usual = Schoolhouse.washroomBedding();
        assertThat(usual.mortarUnder().kind()).isEqualTo(MortarKind.MODIFIED);
        assertThat(usual.mortarOver().kind()).isEqualTo(MortarKind.UNMODIFIED);
        prints("Contact of " + text(usual.contact(), Units.PERCENT, 0) + " %");
    }

    @Test
    void thePracticesAndPacks() {
        prints("holds heated bays to " + text(Practice.NORTH_AMERICA.jointRule().longestSide(), Units.FOOT, 0) + " ft");
        for (Practice practice : List.of(Practice.UNITED_KINGDOM, Practice.EUROPE)) {
            prints("to " + text(practice.jointRule().longestSide(), Units.METRE, 0) + " m and "
                    + text(practice.jointRule().largestArea().orElseThrow(), Units.SQUARE_METRE, 0) + " m²");
        }
        PurchaseUnits metric = PurchaseUnits.METRIC;
        PurchaseUnits us = PurchaseUnits.US_CUSTOMARY;
        prints("grout comes in " + metric.massText(metric.groutBag()) + " or " + us.massText(us.groutBag())
                + ", leveller in " + metric.massText(metric.levellerBag()) + " or " + us.massText(us.levellerBag())
                + ", sealant in cartridges of 310 ml or 10.1 fl oz");
        assertThat(metric.cartridge()).endsWith("310 ml");
        assertThat(us.cartridgeLitres()).isCloseTo(0.2987, within(5e-5));
        TileSpec large = WorkedChecks.tile(600, 300, 9, 3, TilePattern.STRAIGHT, 0);
        TileSpec small = WorkedChecks.tile(300, 300, 9, 3, TilePattern.STRAIGHT, 0);
        assertThat(flatness(large)).containsExactly(0.125, 10.0, 0.0625, 2.0);
        assertThat(flatness(small)).containsExactly(0.25, 10.0, 0.0625, 1.0);
        prints("1/8 in in 10 ft and 1/16 in in 24 in for edges of 15 in and more");
        prints("else 1/4 in in 10 ft and 1/16 in in 12 in");
    }

    /** Gap in inches and straightedge in feet, by turns. */
    private static List<Double> flatness(TileSpec tile) {
        return TileStandard.ANSI_A108.flatness(tile).stream()
                .flatMap(f -> Stream.of(
                        Si.in("gap", f.limit().value(), Units.INCH), Si.in("edge", f.straightedge(), Units.FOOT)))
                .map(d -> Math.rint(d * 1e9) / 1e9)
                .toList();
    }

    @Test
    void theStepLimits() {
        StepRule rule = StepRule.ADA_2010;
        assertThat(Si.in("upright", rule.upright(), Units.INCH)).isCloseTo(0.25, within(1e-9));
        assertThat(Si.in("bevelled", rule.bevelled(), Units.INCH)).isCloseTo(0.5, within(1e-9));
        assertThat(Si.in("ramped", rule.ramped(), Units.INCH)).isCloseTo(1.5, within(1e-9));
        prints("up to 1/4 in may stand upright (303.2), up to 1/2 in bevelled at most 1 : " + (int) rule.bevelRun()
                + " (303.3), above that a ramp of 1 : " + (int) rule.rampRun());
        assertThat(DoorSteps.LEAST_BED_METRES).isCloseTo(0.0254 * 3 / 32, within(1e-9));
        assertThat(DoorSteps.THICKEST_BED_METRES).isCloseTo(0.0254 / 2, within(1e-9));
        prints("at least 3/32 in (ANSI A108.5, 2.2.2) and at most 1/2 in");
        prints("All geometry lies on a grid of one micrometre");
        assertThat(FloorRegions.GRID.gridSize()).isCloseTo(1e-6, within(1e-15));
        assertThat(StripCutter.SHORTEST_PIECE).isEqualTo(3);
        prints("no piece under three");
        assertThat(TileLayout.SLIVER_SHARE).isEqualTo(0.25);
        prints("slivers (under a quarter of a tile");
    }

    @Test
    void theCode() throws IOException {
        Room room = Schoolhouse.washroomRoom();
        Membrane membrane = Schoolhouse.washroomMembrane();
        StudLattice lattice = StudLattice.of(membrane, Schoolhouse.point(17, 17), Units.MILLIMETRE, Amounts.degrees(0));
        TileSpec tile = Schoolhouse.washroomTile();
        Door hall = Door.of("to the hall", Schoolhouse.line(1000, 0, 1800, 0), Units.MILLIMETRE)
                .withAdjacentFloorHeight(Amounts.millimetres(26));
        Quantity<Mass> bag = Amounts.kilograms(20);
        // sample
        TakeOff takeOff = TakeOff.of(room, membrane, lattice)
                .cable(Amounts.metres(31.5), Amounts.millimetres(5))
                .tile(tile)
                .bedding(Bedding.of(
                        square(6), Mortar.usual(MortarKind.MODIFIED, bag),
                        square(8), Mortar.usual(MortarKind.UNMODIFIED, bag)))
                .doors(List.of(hall))
                .build();
        int sheets = takeOff.membraneCut().orElseThrow().stockCount();
        int tiles = takeOff.layout().orElseThrow().tilesToBuy();
        ShoppingList list = takeOff.shoppingList(PurchaseUnits.METRIC, Optional.empty());
        // end
        assertThat(sheets).isEqualTo(7);
        assertThat(tiles).isEqualTo(31);
        assertThat(list.lines()).hasSize(7);
        String source = Files.readString(SOURCE);
        String sample = source.substring(source.indexOf("// sample\n") + 10, source.indexOf("// end\n"));
        prints(sample.lines()
                .map(String::strip)
                .collect(Collectors.joining(" "))
                .strip());
    }
}
