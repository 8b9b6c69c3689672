package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.LayoutSearch.Trial;
import org.heatfloor.takeoff.TileGrid.Laid;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/** Makes a layout: the field between the soft gaps, the grid's direction and corner, the pieces and the tiles they take. */
final class LayoutBuilder {

    private static final int MOST_TILES = 100_000;
    private static final double ALIGNED = 1e-6;

    private final TileSpec tile;
    private final LayoutRule rule;
    private final Geometry covered;
    private final Geometry field;
    private final double angle;
    private final TileGrid grid;

    private LayoutBuilder(Geometry covered, List<LineString> movementJoints, TileSpec tile, LayoutRule rule) {
        this.tile = tile;
        this.rule = rule;
        this.covered = covered;
        this.field = field(covered, movementJoints, rule);
        double square = tile.lengthMetres() * tile.widthMetres();
        if (!(field.getArea() / square <= MOST_TILES)) {
            throw new IllegalArgumentException("tile: " + tile.length() + " by " + tile.width()
                    + " was given; a tile of which the floor takes at most " + MOST_TILES + " is expected");
        }
        if (field.isEmpty()) {
            throw new IllegalArgumentException("perimeter gap: " + rule.perimeterGap()
                    + " was given; a gap that leaves some floor to tile is expected");
        }
        this.angle = direction() + (tile.pattern() == TilePattern.DIAGONAL ? Math.PI / 4 : 0);
        Geometry turned = GeometryPrecisionReducer.reduce(turn(-angle).transform(field), FloorRegions.GRID);
        this.grid = new TileGrid(
                FloorRegions.polygons(turned),
                tile.lengthMetres(),
                tile.widthMetres(),
                tile.jointMetres(),
                tile.pattern());
    }

    static TileLayout lay(Geometry covered, List<LineString> movementJoints, TileSpec tile, LayoutRule rule) {
        return new LayoutBuilder(covered, movementJoints, tile, rule).layout();
    }

    private static Geometry field(Geometry covered, List<LineString> movementJoints, LayoutRule rule) {
        double gap = Si.in("perimeter gap", rule.perimeterGap(), Units.METRE);
        double joint = Si.in("movement joint", rule.movementJoint(), Units.METRE);
        Geometry field = grown(covered, -gap);
        for (LineString line : movementJoints) {
            if (joint > 0) {
                field = OverlayNG.overlay(field, grown(line, joint / 2), OverlayNG.DIFFERENCE, FloorRegions.GRID);
            }
        }
        return FloorRegions.FACTORY.buildGeometry(FloorRegions.polygons(field));
    }

    private static Geometry grown(Geometry geometry, double metres) {
        if (metres == 0) {
            return geometry;
        }
        BufferParameters mitred = new BufferParameters(24, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
        mitred.setSimplifyFactor(0);
        return GeometryPrecisionReducer.reduce(BufferOp.bufferOp(geometry, metres, mitred), FloorRegions.GRID);
    }

    private double direction() {
        if (rule.direction().isPresent()) {
            return Si.in("tile direction", rule.direction().get(), Units.RADIAN);
        }
        double longest = longestWall(covered);
        double line;
        if (rule.start() instanceof TileStart.CentredOn on) {
            line = angleOf(on.axis());
        } else if (rule.start() instanceof TileStart.FromWall from) {
            line = angleOf(from.wall());
        } else {
            return longest;
        }
        double quarters = Math.rint((longest - line) / (Math.PI / 2));
        return halfTurn(line + quarters * Math.PI / 2);
    }

    /** Direction of the longest edge of the outline, in radians. */
    static double longestWall(Geometry covered) {
        double longest = 0;
        double along = 0;
        for (Polygon part : FloorRegions.polygons(covered)) {
            Coordinate[] ring = part.getExteriorRing().getCoordinates();
            for (int i = 1; i < ring.length; i++) {
                double length = ring[i].distance(ring[i - 1]);
                if (length > longest + 1e-6) {
                    longest = length;
                    along = Math.atan2(ring[i].y - ring[i - 1].y, ring[i].x - ring[i - 1].x);
                }
            }
        }
        return halfTurn(along);
    }

    /** The same line's direction in (-90°, 90°]. */
    private static double halfTurn(double radians) {
        double turned = Math.IEEEremainder(radians, Math.PI);
        return turned <= -Math.PI / 2 + 1e-12 ? turned + Math.PI : turned;
    }

    private static double angleOf(LineString line) {
        Coordinate a = line.getCoordinateN(0);
        Coordinate b = line.getCoordinateN(line.getNumPoints() - 1);
        return Math.atan2(b.y - a.y, b.x - a.x);
    }

    private static AffineTransformation turn(double radians) {
        return radians == 0 ? new AffineTransformation() : AffineTransformation.rotationInstance(radians);
    }

    private Trial trial() {
        if (rule.start() instanceof TileStart.CentredOn on) {
            return onLine(on.axis(), false);
        }
        if (rule.start() instanceof TileStart.FromWall from) {
            return onLine(from.wall(), true);
        }
        if (rule.start() instanceof TileStart.Corner corner) {
            Coordinate at = inFrame(new Coordinate(corner.x(), corner.y()));
            return LayoutSearch.best(grid, List.of(at.x), List.of(at.y));
        }
        if (tile.pattern() == TilePattern.DIAGONAL) {
            Envelope e = turn(-angle + Math.PI / 4).transform(field).getEnvelopeInternal();
            Coordinate centre = new Coordinate();
            turn(-Math.PI / 4).transform(e.centre(), centre);
            return LayoutSearch.best(grid, middleX(centre), middleY(centre));
        }
        return LayoutSearch.balanced(grid);
    }

    private Trial onLine(LineString line, boolean wall) {
        Coordinate a = inFrame(line.getCoordinateN(0));
        Coordinate b = inFrame(line.getCoordinateN(line.getNumPoints() - 1));
        Coordinate middle = new Coordinate((a.x + b.x) / 2, (a.y + b.y) / 2);
        Envelope extent = new Envelope();
        grid.field().forEach(p -> extent.expandToInclude(p.getEnvelopeInternal()));
        double gap = Si.in("perimeter gap", rule.perimeterGap(), Units.METRE);
        double slope = ALIGNED * a.distance(b);
        if (Math.abs(a.x - b.x) <= slope) {
            double x = middle.x < extent.centre().x ? middle.x + gap : middle.x - gap - grid.length();
            return LayoutSearch.best(grid, wall ? List.of(x) : middleX(middle), LayoutSearch.rows(grid));
        }
        if (Math.abs(a.y - b.y) <= slope) {
            double y = middle.y < extent.centre().y ? middle.y + gap : middle.y - gap - grid.width();
            return LayoutSearch.best(grid, LayoutSearch.columns(grid), wall ? List.of(y) : middleY(middle));
        }
        return LayoutSearch.best(grid, middleX(middle), middleY(middle));
    }

    private List<Double> middleX(Coordinate middle) {
        return LayoutSearch.around(middle.x, grid.length(), grid.columnStep());
    }

    private List<Double> middleY(Coordinate middle) {
        return LayoutSearch.around(middle.y, grid.width(), grid.rowStep());
    }

    private Coordinate inFrame(Coordinate room) {
        Coordinate turned = new Coordinate();
        return turn(-angle).transform(room, turned);
    }

    private TileLayout layout() {
        List<Laid> laid = new ArrayList<>(trial().laid());
        laid.sort(Comparator.comparingInt(Laid::row).thenComparingInt(Laid::column));
        Map<List<Integer>, List<Laid>> cutPositions = new LinkedHashMap<>();
        Map<List<Integer>, Integer> numberOf = new HashMap<>();
        for (Laid piece : laid) {
            List<Integer> position = List.of(piece.row(), piece.column());
            if (piece.whole()) {
                numberOf.put(position, numberOf.size() + 1);
            } else {
                cutPositions.computeIfAbsent(position, p -> new ArrayList<>()).add(piece);
            }
        }
        int whole = numberOf.size();
        List<OffcutPool.Need> needs = cutPositions.values().stream()
                .map(pieces -> new OffcutPool.Need(
                        pieces.stream().map(TileLayout::local).toList()))
                .toList();
        OffcutPool.Sharing shared = shared(needs);
        int i = 0;
        for (List<Integer> position : cutPositions.keySet()) {
            numberOf.put(position, whole + 1 + shared.tileOf().get(i++));
        }
        return new TileLayout(
                tile,
                laid.stream().map(p -> piece(p, numberOf)).toList(),
                whole + needs.size(),
                needs.size(),
                whole + shared.tiles(),
                whole + shared.bound(),
                field,
                covered.getArea(),
                angle);
    }

    private OffcutPool.Sharing shared(List<OffcutPool.Need> needs) {
        if (!rule.reuseOffcuts()) {
            return new OffcutPool.Sharing(
                    IntStream.range(0, needs.size()).boxed().toList(), needs.size(), needs.size());
        }
        return OffcutPool.share(
                needs,
                tile.lengthMetres(),
                tile.widthMetres(),
                Si.in("kerf", tile.supply().kerf(), Units.METRE),
                tile.supply().turnable());
    }

    private TilePiece piece(Laid laid, Map<List<Integer>, Integer> numberOf) {
        Envelope e = laid.shape().getEnvelopeInternal();
        int number = numberOf.getOrDefault(List.of(laid.row(), laid.column()), 0);
        return new TilePiece(
                laid.row(),
                laid.column(),
                laid.whole(),
                number,
                (Polygon) turn(angle).transform(laid.shape()),
                e.getWidth(),
                e.getHeight());
    }
}
