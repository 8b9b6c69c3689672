package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;

class MembraneCutProperties {

    private static final double GRID = 1e-6;

    @Provide
    Arbitrary<Polygon> floors() {
        return TakeOffRooms.floors();
    }

    @Provide
    Arbitrary<Membrane> membranes() {
        return TakeOffRooms.membranes();
    }

    private static StudLattice lattice(Membrane membrane, int x, int y, int degrees) {
        return StudLattice.of(membrane, Schoolhouse.point(x, y), Units.MILLIMETRE, Amounts.degrees(degrees));
    }

    private static MembraneCut cut(Geometry floor, Membrane membrane, StudLattice lattice, CutRule rule) {
        return CutSearch.best(FloorRegions.polygons(floor), CutSearch.stockOf(membrane), lattice, rule);
    }

    @Property(tries = 15)
    void piecesTileTheFloorInPhaseAndCanBeCut(
            @ForAll("floors") Polygon floor,
            @ForAll("membranes") Membrane membrane,
            @ForAll @IntRange(max = 40) int x,
            @ForAll @IntRange(max = 40) int y,
            @ForAll("turns") int degrees) {
        StudLattice lattice = lattice(membrane, x, y, degrees);
        MembraneCut cut = cut(floor, membrane, lattice, CutRule.FEWEST);
        tilesTheFloor(floor, cut);
        isInPhase(cut, lattice);
        canBeCut(cut);
        assertThat(cut.stockCount()).isGreaterThanOrEqualTo(cut.stripBound());
        assertThat(cut.stripBound()).isGreaterThanOrEqualTo(cut.lowerBound());
    }

    @Provide
    Arbitrary<Integer> turns() {
        return Arbitraries.of(0, 0, 0, 30, 45);
    }

    private static void tilesTheFloor(Polygon floor, MembraneCut cut) {
        List<Polygon> shapes = cut.pieces().stream().map(MembranePiece::inRoom).toList();
        double edges = shapes.stream().mapToDouble(Polygon::getLength).sum();
        double sum = shapes.stream().mapToDouble(Polygon::getArea).sum();
        assertThat(sum).isCloseTo(floor.getArea(), within(edges * GRID));
        Geometry union = UnaryUnionOp.union(shapes);
        assertThat(union.getArea()).isCloseTo(sum, within(edges * GRID));
        assertThat(OverlayNGRobust.overlay(floor, union, OverlayNG.DIFFERENCE).getArea())
                .isLessThan(edges * GRID);
        double joints = Si.in("joints", cut.jointLength(), Units.METRE);
        assertThat(joints).isCloseTo((edges - floor.getLength()) / 2, within(1e-3));
    }

    /** From stock to room every piece is turned by quarter turns and moved so that stud centres fall on stud centres. */
    private static void isInPhase(MembraneCut cut, StudLattice lattice) {
        double pitch = Si.in("pitch", lattice.pitch(), Units.METRE);
        double angle = Si.in("angle", lattice.angle(), Units.RADIAN);
        for (MembranePiece piece : cut.pieces()) {
            double direction = Si.in("direction", piece.direction(), Units.RADIAN);
            double quarters = (direction - angle) / (Math.PI / 2);
            assertThat(quarters).isCloseTo(Math.rint(quarters), within(1e-9));
            AffineTransformation toStock = AffineTransformation.translationInstance(
                            -lattice.origin().getX(), -lattice.origin().getY())
                    .rotate(-direction)
                    .scale(1 / pitch, 1 / pitch)
                    .translate(0.5, 0.5);
            Coordinate[] room = toStock.transform(piece.inRoom()).getCoordinates();
            Coordinate[] stock = piece.onStock().getCoordinates();
            double moveX = Math.rint(room[0].x - stock[0].x / pitch);
            double moveY = Math.rint(room[0].y - stock[0].y / pitch);
            for (int i = 0; i < room.length; i++) {
                assertThat(room[i].x - stock[i].x / pitch).isCloseTo(moveX, within(1e-4));
                assertThat(room[i].y - stock[i].y / pitch).isCloseTo(moveY, within(1e-4));
            }
        }
    }

    private static void canBeCut(MembraneCut cut) {
        Envelope one = new Envelope(0, Si.in("l", cut.stock().length(), Units.METRE), 0, 0);
        one.expandToInclude(0, Si.in("w", cut.stock().width(), Units.METRE));
        double least = Math.min(one.getWidth(), one.getHeight());
        double most = Math.max(one.getWidth(), one.getHeight());
        for (MembranePiece a : cut.pieces()) {
            Envelope box = a.cutRectangle().getEnvelopeInternal();
            Envelope grown = new Envelope(box);
            grown.expandBy(1e-6);
            assertThat(grown.contains(a.onStock().getEnvelopeInternal())).isTrue();
            assertThat(box.getMinX()).isGreaterThanOrEqualTo(-1e-9);
            assertThat(box.getMinY()).isGreaterThanOrEqualTo(-1e-9);
            boolean lies = box.getMaxX() <= one.getWidth() + 1e-6 && box.getMaxY() <= one.getHeight() + 1e-6;
            boolean stands = box.getMaxX() <= one.getHeight() + 1e-6 && box.getMaxY() <= one.getWidth() + 1e-6;
            assertThat(lies || (stands && cut.stock().kind() == MembraneStock.Kind.SHEET))
                    .as("%s in %s by %s", box, least, most)
                    .isTrue();
            for (MembranePiece b : cut.pieces()) {
                if (a.number() < b.number() && a.stockNumber() == b.stockNumber()) {
                    Envelope shared = box.intersection(b.cutRectangle().getEnvelopeInternal());
                    assertThat(shared.getWidth() * shared.getHeight()).isLessThan(1e-9);
                }
            }
        }
    }

    @Property(tries = 40)
    void withoutReuseCountsNeverFallWhenTheRoomGrows(
            @ForAll("floors") Polygon floor,
            @ForAll("membranes") Membrane membrane,
            @ForAll @IntRange(min = -500, max = 2500) int x,
            @ForAll @IntRange(min = 200, max = 1800) int w,
            @ForAll @IntRange(min = 300, max = 2500) int h) {
        Geometry grown = floor.union(FloorRegions.rectangle(x / 1000.0, 0, (x + w) / 1000.0, h / 1000.0));
        StudLattice lattice = lattice(membrane, 0, 0, 0);
        assertThat(cut(grown, membrane, lattice, CutRule.NO_REUSE).stockCount())
                .isGreaterThanOrEqualTo(
                        cut(floor, membrane, lattice, CutRule.NO_REUSE).stockCount());
    }

    @Property(tries = 20)
    void withoutReuseCountsNeverFallWhenAColumnLeaves(
            @ForAll("floors") Polygon floor,
            @ForAll("membranes") Membrane membrane,
            @ForAll @IntRange(min = 100, max = 700) int x,
            @ForAll @IntRange(min = 100, max = 500) int side) {
        KeepOut column = KeepOut.of(
                "column",
                KeepOutKind.COLUMN,
                FloorRegions.rectangle(x, 600, x + side, 600 + side),
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(0)));
        StudLattice lattice = lattice(membrane, 0, 0, 0);
        Geometry with = FloorRegions.covered(floor, List.of(column));
        assertThat(cut(floor, membrane, lattice, CutRule.NO_REUSE).stockCount())
                .isGreaterThanOrEqualTo(
                        cut(with, membrane, lattice, CutRule.NO_REUSE).stockCount());
    }

    /** A rest 9 long and 4 wide fits behind a piece 16 long only a quarter turn round. */
    @Test
    void aNarrowPieceIsTurnedWhereThatSavesStock() {
        LevelPacker.Packing asTheyLie =
                LevelPacker.pack(new int[] {16, 9}, new int[] {10, 4}, 20, 10, new Work(1_000_000_000));
        assertThat(asTheyLie.stocks()).isEqualTo(2);
        List<StripCutter.Piece> pieces = List.of(
                new StripCutter.Piece(FloorRegions.rectangle(0, 0, 16, 10), 0, 0, 16, 10, true),
                new StripCutter.Piece(FloorRegions.rectangle(0, 10, 9, 14), 0, 10, 9, 4, true));
        LevelPacker.Packing turned = TurnedPacker.pack(pieces, 20, 10, new Work(1_000_000));
        assertThat(turned.stocks()).isEqualTo(1);
        assertThat(turned.slots().get(1)).isEqualTo(new LevelPacker.Slot(0, 16, 0, true));
    }

    @Property(tries = 300)
    void searchEqualsTheExhaustiveOptimum(
            @ForAll @Size(min = 1, max = 7) List<@IntRange(min = 1, max = 20) Integer> lengths,
            @ForAll @Size(min = 7, max = 7) List<@IntRange(min = 1, max = 6) Integer> widths) {
        int[] l = lengths.stream().mapToInt(i -> i).toArray();
        int[] w = widths.stream().limit(l.length).mapToInt(i -> i).toArray();
        LevelPacker.Packing packing = LevelPacker.pack(l, w, 20, 6, new Work(1_000_000_000));
        assertThat(packing.stocks()).isEqualTo(CuttingOracles.exhaustive(l, w, 20, 6));
        assertThat(packing.proven()).isTrue();
        assertThat(packing.stocks()).isGreaterThanOrEqualTo(packing.bound());
    }

    @Property(tries = 200)
    void firstFitIsNeverBetterAndTheBoundNeverHigher(
            @ForAll @Size(min = 1, max = 12) List<@IntRange(min = 1, max = 50) Integer> lengths) {
        int[] l = lengths.stream().mapToInt(i -> i).toArray();
        int[] w = new int[l.length];
        java.util.Arrays.fill(w, 1);
        int stocks = LevelPacker.pack(l, w, 50, 1, new Work(1_000_000_000)).stocks();
        int firstFit = CuttingOracles.firstFitDecreasing(l, 50);
        assertThat(stocks).isBetween(LevelPacker.lengthBound(l, 50), firstFit);
        assertThat(9.0 * firstFit).isLessThanOrEqualTo(11.0 * stocks + 6);
    }
}
