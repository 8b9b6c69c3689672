package org.heatfloor.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.heatfloor.takeoff.LevelPacker.Packing;
import org.heatfloor.takeoff.StripCutter.Piece;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.precision.GeometryPrecisionReducer;

/** Looks for the membrane cut that takes the least stock. Works in stud pitches on the lattice, turned so that strips lie along x. */
final class CutSearch {

    private static final int PACKING_NODES = 20_000;
    private static final int MOST_PHASES = 64;
    private static final int MOST_PIECES = 2_000;

    private static final Comparator<Candidate> BEST = Comparator.<Candidate>comparingInt(c -> c.packing.stocks())
            .thenComparingInt(Candidate::slender)
            .thenComparingInt(c -> c.pieces.size())
            .thenComparingInt(c -> -c.narrowest())
            .thenComparingDouble(c -> c.jointPitches);

    private record Candidate(
            List<Piece> pieces, Packing packing, double jointPitches, int turns, int stockLength, int stockWidth) {

        /** The shorter side of the narrowest piece. */
        int narrowest() {
            return pieces.stream()
                    .mapToInt(p -> Math.min(p.length(), p.width()))
                    .min()
                    .orElse(0);
        }

        /** Pieces narrower or shorter than a joint should leave. */
        int slender() {
            return (int) pieces.stream()
                    .filter(p -> Math.min(p.length(), p.width()) < StripCutter.SHORTEST_PIECE)
                    .count();
        }
    }

    private final List<Polygon> floor;
    private final MembraneStock stock;
    private final StudLattice lattice;
    private final double pitch;
    private final int across;
    private final int along;
    private Optional<Candidate> best = Optional.empty();

    private CutSearch(List<Polygon> floor, MembraneStock stock, StudLattice lattice) {
        this.floor = floor;
        this.stock = stock;
        this.lattice = lattice;
        this.pitch = Si.in("stud pitch", lattice.pitch(), Units.METRE);
        this.across = wholePitches("width", Si.in("width", stock.width(), Units.METRE));
        this.along = wholePitches("length", Si.in("length", stock.length(), Units.METRE));
    }

    static MembraneStock stockOf(Membrane membrane) {
        return membrane.stock()
                .orElseThrow(() ->
                        new IllegalArgumentException("membrane stock: none was given; a sheet or a roll is expected"));
    }

    static MembraneCut best(List<Polygon> floor, MembraneStock stock, StudLattice lattice, CutRule rule) {
        CutSearch search = new CutSearch(floor, stock, lattice);
        Candidate best = rule == CutRule.NO_REUSE ? search.withoutReuse() : search.fewest();
        return search.result(best);
    }

    private int wholePitches(String what, double metres) {
        int whole = (int) Math.floor(metres / pitch + 1e-6);
        if (!(whole >= 1)) {
            throw new IllegalArgumentException("membrane stock " + what + ": " + metres
                    + " m was given; at least one stud pitch of " + pitch + " m is expected");
        }
        return whole;
    }

    private double coveredSquareMetres() {
        return floor.stream().mapToDouble(Polygon::getArea).sum();
    }

    /** By the stock's whole area: at a wall a cut may use what it measures beyond whole pitches. */
    private int areaBound() {
        double one = Si.in("width", stock.width(), Units.METRE) * Si.in("length", stock.length(), Units.METRE);
        return (int) Math.max(1, Math.ceil(coveredSquareMetres() / one - 1e-9));
    }

    private Candidate fewest() {
        if (coveredSquareMetres() / (pitch * pitch * across * along) > MOST_PIECES) {
            throw new IllegalArgumentException("membrane stock: " + stock
                    + " was given; stock that covers the floor in at" + " most " + MOST_PIECES + " pieces is expected");
        }
        for (int turns = 0; turns < 2; turns++) {
            List<Polygon> turned = turned(turns);
            tryStrips(turned, turns, across, along);
            if (stock.kind() == MembraneStock.Kind.SHEET && across != along) {
                tryStrips(turned, turns, along, across);
            }
        }
        return best.orElseThrow(() -> new IllegalArgumentException("floor: nothing to cover"));
    }

    /** Tries strips along x, each {@code band} wide, with the first joint at every place. */
    private void tryStrips(List<Polygon> turned, int turns, int band, int stockLength) {
        int step = Math.max(1, (band + MOST_PHASES - 1) / MOST_PHASES);
        for (int phase = 0; phase < band; phase += step) {
            List<Piece> strips = StripCutter.strips(turned, band, phase);
            tryPieces(StripCutter.pieces(strips, band, stockLength, false), turns, band, stockLength);
            if (stock.kind() == MembraneStock.Kind.SHEET || strips.stream().anyMatch(s -> s.length() > stockLength)) {
                tryPieces(StripCutter.pieces(strips, band, stockLength, true), turns, band, stockLength);
            }
        }
    }

    /** Packs the pieces, unless even their bound cannot beat the best so far. */
    private void tryPieces(List<Piece> pieces, int turns, int band, int stockLength) {
        if (pieces.isEmpty()) {
            return;
        }
        int[] lengths = pieces.stream().mapToInt(Piece::length).toArray();
        int[] widths = pieces.stream().mapToInt(Piece::width).toArray();
        double edges = pieces.stream().mapToDouble(p -> p.shape().getLength()).sum();
        double outline = floor.stream().mapToDouble(Polygon::getLength).sum() / pitch;
        double joints = (edges - outline) / 2;
        int bound = LevelPacker.bound(lengths, widths, stockLength, band);
        Packing hoped = new Packing(bound, List.of(), bound, true);
        if (isBest(new Candidate(pieces, hoped, joints, turns, stockLength, band))) {
            Packing packing = LevelPacker.pack(lengths, widths, stockLength, band, PACKING_NODES);
            Candidate found = new Candidate(pieces, packing, joints, turns, stockLength, band);
            if (isBest(found)) {
                best = Optional.of(found);
            }
        }
    }

    private boolean isBest(Candidate candidate) {
        return best.isEmpty() || BEST.compare(candidate, best.get()) < 0;
    }

    /** Every field of the fixed grid that holds floor takes stock of its own. */
    private Candidate withoutReuse() {
        List<Piece> pieces = StripCutter.fields(turned(0), across, along);
        LevelPacker.Slot[] slots = new LevelPacker.Slot[pieces.size()];
        int fields = StripCutter.fillSlots(pieces, across, along, slots);
        return new Candidate(pieces, new Packing(fields, List.of(slots), areaBound(), true), 0, 0, along, across);
    }

    /** The floor in pitches on the lattice, turned back by quarter turns so that strips lie along x. */
    private List<Polygon> turned(int turns) {
        AffineTransformation toCells = toCells(turns);
        List<Polygon> turned = new ArrayList<>();
        for (Polygon region : floor) {
            turned.addAll(FloorRegions.polygons(
                    GeometryPrecisionReducer.reduce(toCells.transform(region), StripCutter.GRID)));
        }
        return turned;
    }

    private AffineTransformation toCells(int turns) {
        double angle = Si.in("lattice angle", lattice.angle(), Units.RADIAN);
        AffineTransformation toCells = AffineTransformation.translationInstance(
                        -lattice.origin().getX(), -lattice.origin().getY())
                .rotate(-angle)
                .scale(1 / pitch, 1 / pitch)
                .translate(0.5, 0.5);
        return turns == 0 ? toCells : toCells.rotate(-1, 0);
    }

    private MembraneCut result(Candidate best) {
        AffineTransformation toRoom;
        try {
            toRoom = toCells(best.turns).getInverse();
        } catch (org.locationtech.jts.geom.util.NoninvertibleTransformationException e) {
            throw new IllegalStateException("a turn and a scale always have an inverse", e);
        }
        List<Integer> order = layingOrder(best.pieces);
        List<MembranePiece> pieces = new ArrayList<>();
        List<Polygon> shapes = new ArrayList<>();
        for (int i : order) {
            Piece piece = best.pieces.get(i);
            LevelPacker.Slot slot = best.packing.slots().get(i);
            AffineTransformation toStock = AffineTransformation.translationInstance(
                            slot.along() - piece.u(), slot.across() - piece.v())
                    .scale(pitch, pitch);
            Polygon rectangle = FloorRegions.rectangle(
                    slot.along() * pitch,
                    slot.across() * pitch,
                    (slot.along() + piece.length()) * pitch,
                    (slot.across() + piece.width()) * pitch);
            pieces.add(new MembranePiece(
                    pieces.size() + 1,
                    slot.stock() + 1,
                    (Polygon) FloorRegions.onGrid(toRoom.transform(piece.shape()), FloorRegions.GRID),
                    (Polygon) toStock.transform(piece.shape()),
                    rectangle));
            shapes.add(piece.shape());
        }
        List<LineString> joints = MembraneCut.joints(shapes).stream()
                .map(j -> (LineString) FloorRegions.onGrid(toRoom.transform(j), FloorRegions.GRID))
                .toList();
        double angle = Si.in("lattice angle", lattice.angle(), Units.RADIAN) + best.turns * Math.PI / 2;
        return new MembraneCut(
                stock,
                pieces,
                joints,
                best.packing.stocks(),
                areaBound(),
                best.packing.proven(),
                coveredSquareMetres(),
                Si.in("width", stock.width(), Units.METRE) * Si.in("length", stock.length(), Units.METRE),
                angle);
    }

    private static List<Integer> layingOrder(List<Piece> pieces) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.<Integer>comparingInt(i -> pieces.get(i).v())
                .thenComparingInt(i -> pieces.get(i).u()));
        return order;
    }
}
