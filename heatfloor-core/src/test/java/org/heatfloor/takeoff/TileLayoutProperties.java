package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.heatfloor.area.KeepOut;
import org.heatfloor.area.KeepOutKind;
import org.heatfloor.area.TradeLength;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.UnaryUnionOp;

class TileLayoutProperties {

    private static final double GRID = 1e-6;

    @Provide
    Arbitrary<Polygon> floors() {
        return TakeOffRooms.floors();
    }

    @Provide
    Arbitrary<TileSpec> tiles() {
        return TakeOffRooms.tiles();
    }

    private static TileLayout lay(Geometry floor, TileSpec tile, LayoutRule rule) {
        return LayoutBuilder.lay(floor, List.of(), tile, rule);
    }

    @Property(tries = 40)
    void piecesJointsAndGapsAddUpToTheFloor(@ForAll("floors") Polygon floor, @ForAll("tiles") TileSpec tile) {
        TileLayout layout = lay(floor, tile, LayoutRule.USUAL);
        List<Polygon> shapes = layout.pieces().stream().map(TilePiece::shape).toList();
        double edges = shapes.stream().mapToDouble(Polygon::getLength).sum() + floor.getLength();
        Geometry union = UnaryUnionOp.union(shapes);
        double faces = Si.in("faces", layout.faces(), Units.SQUARE_METRE);
        assertThat(union.getArea()).as("no two pieces overlap").isCloseTo(faces, within(edges * GRID));
        double soft = Si.in("soft", layout.softJoints(), Units.SQUARE_METRE);
        double grout = Si.in("grout", layout.groutJoints(), Units.SQUARE_METRE);
        assertThat(OverlayNGRobust.overlay(floor, union, OverlayNG.DIFFERENCE).getArea())
                .as("what no piece covers is joint or gap")
                .isCloseTo(soft + grout, within(edges * GRID));
        assertThat(faces + grout + soft).isCloseTo(floor.getArea(), within(edges * GRID));
        double joint = tile.jointMetres();
        assertThat(OverlayNGRobust.overlay(layout.field(), union, OverlayNG.DIFFERENCE)
                        .buffer(-0.75 * joint - 100 * GRID)
                        .isEmpty())
                .as("no tile is missing: nowhere is the uncovered field wider than crossing joints")
                .isTrue();
    }

    @Property(tries = 30)
    void piecesKeepTheJointAndTheGap(@ForAll("floors") Polygon floor, @ForAll("tiles") TileSpec tile) {
        TileLayout layout = lay(floor, tile, LayoutRule.USUAL);
        double joint = tile.jointMetres();
        List<TilePiece> pieces = layout.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Polygon a = pieces.get(i).shape();
            assertThat(floor.getBoundary().distance(a)).isGreaterThan(0.006 * 0.998 - 2 * GRID);
            for (int k = i + 1; k < pieces.size(); k++) {
                boolean samePlace = pieces.get(i).row() == pieces.get(k).row()
                        && pieces.get(i).column() == pieces.get(k).column();
                Polygon b = pieces.get(k).shape();
                if (!samePlace && a.getEnvelopeInternal().distance(b.getEnvelopeInternal()) < joint) {
                    assertThat(a.distance(b)).isGreaterThan(joint - 4 * GRID);
                }
            }
        }
    }

    @Property(tries = 40)
    void reuseLiesBetweenItsBoundAndNone(@ForAll("floors") Polygon floor, @ForAll("tiles") TileSpec tile) {
        TileLayout layout = lay(floor, tile, LayoutRule.USUAL);
        assertThat(layout.tilesNeeded()).isBetween(layout.lowerBound(), layout.tilesWithoutReuse());
        double face = tile.lengthMetres() * tile.widthMetres();
        Map<Integer, Double> used = layout.pieces().stream()
                .collect(Collectors.groupingBy(TilePiece::tileNumber, Collectors.summingDouble(p -> p.shape()
                        .getArea())));
        assertThat(used).hasSize(layout.tilesNeeded());
        assertThat(used.values()).allMatch(a -> a <= face + 1e-6);
        assertThat(layout.tilesToBuy()).isGreaterThanOrEqualTo(layout.tilesNeeded());
    }

    @Property(tries = 60)
    void countsNeverFallWhenTheRoomGrows(
            @ForAll("floors") Polygon floor,
            @ForAll("tiles") TileSpec tile,
            @ForAll @IntRange(min = -500, max = 2500) int x,
            @ForAll @IntRange(min = 200, max = 1800) int w,
            @ForAll @IntRange(min = 300, max = 2500) int h) {
        Geometry more = FloorRegions.rectangle(x / 1000.0, 0, (x + w) / 1000.0, h / 1000.0);
        Geometry grown = floor.union(more);
        LayoutRule fixed = LayoutRule.USUAL
                .from(TileStart.corner(0.1, 0.1))
                .along(Amounts.degrees(0))
                .withoutReuse();
        assertThat(lay(grown, tile, fixed).tilesNeeded())
                .isGreaterThanOrEqualTo(lay(floor, tile, fixed).tilesNeeded());
    }

    @Property(tries = 60)
    void countsNeverFallWhenAColumnLeaves(
            @ForAll("floors") Polygon floor,
            @ForAll("tiles") TileSpec tile,
            @ForAll @IntRange(min = 100, max = 700) int x,
            @ForAll @IntRange(min = 100, max = 500) int side) {
        KeepOut column = KeepOut.of(
                "column",
                KeepOutKind.COLUMN,
                FloorRegions.rectangle(x, 600, x + side, 600 + side),
                Units.MILLIMETRE,
                TradeLength.of(Amounts.millimetres(0)));
        LayoutRule fixed = LayoutRule.USUAL
                .from(TileStart.corner(0, 0))
                .along(Amounts.degrees(0))
                .withoutReuse();
        Geometry with = FloorRegions.covered(floor, List.of(column));
        assertThat(lay(floor, tile, fixed).tilesNeeded())
                .isGreaterThanOrEqualTo(lay(with, tile, fixed).tilesNeeded());
    }

    @Property(tries = 60)
    void aRectangleIsBalanced(
            @ForAll @IntRange(min = 1000, max = 4000) int length, @ForAll @IntRange(min = 900, max = 3000) int width) {
        TileSpec tile = WorkedChecks.tile(300, 300, 9, 3, TilePattern.STRAIGHT, 0);
        TileLayout layout = lay(FloorRegions.rectangle(0, 0, length / 1000.0, width / 1000.0), tile, LayoutRule.USUAL);
        assertThat(layout.piecesUnder(Amounts.of(49, Units.PERCENT))).isZero();
        double left = layout.pieces().stream()
                .mapToDouble(p -> p.shape().getEnvelopeInternal().getMinX())
                .min()
                .orElseThrow();
        assertThat(left).as("a gap, or a gap and a joint where whole tiles fit").isBetween(0.006, 0.0091);
        long byColumn =
                layout.pieces().stream().map(TilePiece::column).distinct().count();
        long byRow = layout.pieces().stream().map(TilePiece::row).distinct().count();
        assertThat((long) layout.tilesWithoutReuse()).isEqualTo(byColumn * byRow);
    }
}
