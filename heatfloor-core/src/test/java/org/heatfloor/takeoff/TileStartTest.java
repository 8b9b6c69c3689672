package org.heatfloor.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.heatfloor.area.Room;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Units;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;

class TileStartTest {

    private static final Room ROOM = WorkedChecks.room(3000, 2000, Units.MILLIMETRE);
    private static final TileSpec TILE = WorkedChecks.tile(600, 300, 9, 3, TilePattern.STRAIGHT, 0);

    @Test
    void aNamedAxisIsTheMiddleOfATileOrAJoint() {
        double axis = 1.1;
        TileLayout layout = TileLayout.of(
                ROOM,
                TILE,
                LayoutRule.USUAL.from(TileStart.centredOn("door axis", Schoolhouse.line(axis, 0, axis, 2))));
        boolean tile = layout.pieces().stream()
                .filter(TilePiece::isWhole)
                .anyMatch(p -> Math.abs(p.shape().getEnvelopeInternal().centre().x - axis) < 1e-6);
        boolean joint = layout.pieces().stream()
                .filter(TilePiece::isWhole)
                .anyMatch(p -> Math.abs(p.shape().getEnvelopeInternal().getMinX() - axis - 0.0015) < 1e-6);
        assertThat(tile ^ joint).isTrue();
    }

    @Test
    void wholeTilesLieAlongTheNamedWall() {
        TileLayout layout = TileLayout.of(
                ROOM, TILE, LayoutRule.USUAL.from(TileStart.fromWall("window wall", Schoolhouse.line(0, 2, 3, 2))));
        double top = layout.pieces().stream()
                .mapToDouble(p -> p.shape().getEnvelopeInternal().getMaxY())
                .max()
                .orElseThrow();
        assertThat(top).isCloseTo(1.994, within(1e-6));
        assertThat(layout.pieces().stream()
                        .filter(p -> p.shape().getEnvelopeInternal().getMaxY() > 1.9939)
                        .map(TilePiece::width))
                .allMatch(w -> Math.abs(WorkedChecks.mm(w) - 300) < 1e-3);
    }

    @Test
    void rowsShiftByAThird() {
        TileSpec offset = WorkedChecks.tile(600, 300, 9, 3, TilePattern.THIRD_OFFSET, 0);
        TileLayout layout = TileLayout.of(ROOM, offset, LayoutRule.USUAL.from(TileStart.corner(0, 0)));
        for (TilePiece piece : layout.pieces()) {
            if (piece.isWhole()) {
                double expected = piece.column() * 0.603 + Math.floorMod(piece.row(), 3) * 0.201;
                assertThat(piece.shape().getEnvelopeInternal().getMinX()).isCloseTo(expected, within(2e-6));
            }
        }
    }

    @Test
    void theDiagonalRepeatsEveryRootTwo() {
        TileSpec diagonal = WorkedChecks.tile(300, 300, 9, 3, TilePattern.DIAGONAL, 0);
        TileLayout layout = TileLayout.of(ROOM, diagonal, LayoutRule.USUAL);
        Envelope one = layout.pieces().stream()
                .filter(TilePiece::isWhole)
                .findFirst()
                .orElseThrow()
                .shape()
                .getEnvelopeInternal();
        assertThat(one.getWidth()).isCloseTo(0.3 * Math.sqrt(2), within(5e-6));
        assertThat(layout.wholeTiles()).isPositive();
    }

    @Test
    void aGrainThatMustRunOneWayReusesLess() {
        TileSpec turned = WorkedChecks.tile(600, 300, 9, 3, TilePattern.STRAIGHT, 0);
        TileSpec grained = turned.withSupply(new TileSupply(1, WorkedChecks.percent(0), Amounts.millimetres(3), false));
        Room room = WorkedChecks.room(2000, 1500, Units.MILLIMETRE);
        LayoutRule corner = LayoutRule.USUAL.from(TileStart.fromWall("left", Schoolhouse.line(0, 0, 0, 1.5)));
        assertThat(TileLayout.of(room, turned, corner).tilesNeeded())
                .isLessThan(TileLayout.of(room, grained, corner).tilesNeeded());
    }
}
