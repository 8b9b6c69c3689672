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

    /** The whole budget: a third to part the floor, a third to pack what that gives, a third to close the gap to the bound. */
    static final long STEPS = 600_000_000;

    private static final int MOST_PHASES = 128;
    private static final int MOST_PIECES = 2_000;

    /** Ways to cut one strip. */
    private static final int MOST_WAYS = 400;

    /** No single way to cut all strips takes more than this part of the work a laying has left. */
    private static final int PACKINGS = 20;

    private static final long STEPS_FOR_A_PIECE = 200;

    private static final Comparator<Candidate> BEST = Comparator.<Candidate>comparingInt(c -> c.packing.stocks())
            .thenComparingInt(Candidate::slender)
            .thenComparingInt(c -> c.pieces.size())
            .thenComparingInt(c -> -c.narrowest())
            .thenComparingDouble(c -> c.jointPitches);

    /** Strips along x, their width, where the first joint lies, and the bound of every way to cut them. */
    private record Laying(List<Piece> strips, int turns, int band, int phase, int stockLength, int bound) {}

    /** A direction to lay strips in: the floor turned, the strips' width and the stock's length. */
    private record Direction(List<Polygon> turned, FloorColumns columns, int turns, int band, int stockLength) {}

    private record Candidate(List<Piece> pieces, Packing packing, double jointPitches, Laying laying) {

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
    private int stripBound;
    private boolean everyPhase = true;

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
        return best(floor, stock, lattice, rule, new Work(STEPS));
    }

    static MembraneCut best(List<Polygon> floor, MembraneStock stock, StudLattice lattice, CutRule rule, Work work) {
        CutSearch search = new CutSearch(floor, stock, lattice);
        Candidate best = rule == CutRule.NO_REUSE ? search.withoutReuse() : search.fewest(work);
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

    private Candidate fewest(Work work) {
        if (coveredSquareMetres() / (pitch * pitch * across * along) > MOST_PIECES) {
            throw new IllegalArgumentException("membrane stock: " + stock
                    + " was given; stock that covers the floor in at most " + MOST_PIECES + " pieces is expected");
        }
        List<Laying> layings = layings(work.part(3));
        Work packing = work.part(2);
        for (int i = 0; i < layings.size(); i++) {
            Laying laying = layings.get(i);
            for (boolean carry : new boolean[] {false, true}) {
                if (best.isEmpty() || laying.bound <= best.get().packing.stocks()) {
                    Work part = packing.part(2 * (layings.size() - i) - (carry ? 1 : 0));
                    tryPieces(
                            StripCutter.pieces(laying.strips, laying.band, laying.stockLength, carry),
                            laying,
                            false,
                            part);
                }
            }
        }
        bestOrThrow();
        stripBound = Math.max(
                areaBound(), layings.stream().mapToInt(Laying::bound).min().orElse(0));
        closeGap(layings, work);
        return bestOrThrow();
    }

    private List<Laying> layings(Work work) {
        List<Direction> directions = new ArrayList<>();
        for (int turns = 0; turns < 2; turns++) {
            List<Polygon> turned = turned(turns);
            FloorColumns columns = new FloorColumns(turned);
            directions.add(new Direction(turned, columns, turns, across, along));
            if (stock.kind() == MembraneStock.Kind.SHEET && across != along) {
                directions.add(new Direction(turned, columns, turns, along, across));
            }
        }
        List<Laying> layings = new ArrayList<>();
        for (Direction direction : directions) {
            addLayings(layings, direction, work.part(directions.size()));
        }
        return layings;
    }

    private Candidate bestOrThrow() {
        return best.orElseThrow(() -> new IllegalArgumentException("floor: nothing to cover"));
    }

    /** Strips along x, each {@code band} wide, with the first joint at every place, or at as many as the work allows. */
    private void addLayings(List<Laying> layings, Direction d, Work work) {
        long most =
                Math.max(1, Math.min(MOST_PHASES, work.left() / StripCutter.steps(d.turned, d.band, d.stockLength)));
        int step = (int) ((d.band + most - 1) / most);
        everyPhase &= step == 1;
        for (int phase = 0; phase < d.band; phase += step) {
            List<Piece> strips = StripCutter.strips(d.turned, d.band, phase);
            int bound = step == 1
                    ? d.columns.stripBound(strips, d.band, phase, d.stockLength)
                    : d.columns.cellBound(d.band, d.stockLength);
            layings.add(new Laying(strips, d.turns, d.band, phase, d.stockLength, bound));
        }
    }

    /**
     * While the best takes more than the bound, tries every way to cut every strip of every laying that could take less. Where
     * the work lasts the best is the least, and the bound is raised to it. A laying whose share was too small is tried again
     * with a share of what the others left.
     */
    private void closeGap(List<Laying> layings, Work work) {
        List<Laying> open = layings;
        int before;
        do {
            before = open.size();
            open = stillOpen(open, work);
        } while (!open.isEmpty() && open.size() < before);
        if (everyPhase && open.isEmpty()) {
            stripBound = bestOrThrow().packing.stocks();
        }
    }

    /** The layings that may still take less than the best, each having been tried with a share of the work left. */
    private List<Laying> stillOpen(List<Laying> layings, Work work) {
        List<Laying> open = new ArrayList<>();
        for (int i = 0; i < layings.size(); i++) {
            Laying laying = layings.get(i);
            if (couldTakeLess(laying)) {
                Gap gap = new Gap(laying, work.part(layings.size() - i));
                gap.cut(0, List.of());
                if (!gap.complete) {
                    open.add(laying);
                }
            }
        }
        return open.stream().filter(this::couldTakeLess).toList();
    }

    private boolean couldTakeLess(Laying laying) {
        return Math.max(stripBound, laying.bound) < bestOrThrow().packing.stocks();
    }

    /** Every way to cut the strips of one laying. */
    private final class Gap {

        private final Laying laying;
        private final Work work;
        private final List<StripWays> ways = new ArrayList<>();
        /** The way each strip is cut at present. */
        private final int[] way;

        private boolean complete = true;

        Gap(Laying laying, Work work) {
            this.laying = laying;
            this.work = work;
            for (Piece strip : laying.strips) {
                StripWays of = StripWays.of(strip, laying.stockLength, work.isSpent() ? 1 : MOST_WAYS);
                work.take(50L * of.ways().size() * (1 + strip.length() / laying.stockLength));
                ways.add(of);
                complete &= of.isComplete();
            }
            this.way = new int[ways.size()];
        }

        void cut(int k, List<Piece> before) {
            if (!couldTakeLess(laying)) {
                return;
            }
            if (k == ways.size()) {
                complete &= tryPieces(before, laying, true, work.part(PACKINGS));
                return;
            }
            List<int[]> each = ways.get(k).ways();
            for (way[k] = firstWay(k); way[k] < each.size(); way[k]++) {
                if (work.isSpent()) {
                    complete = false;
                    return;
                }
                List<Piece> pieces = new ArrayList<>(before);
                int at = 0;
                for (int length : each.get(way[k])) {
                    StripCutter.cut(pieces, laying.strips.get(k), at, length);
                    work.take(StripCutter.steps(laying.strips.get(k).shape()));
                    at += length;
                }
                cut(k + 1, pieces);
            }
        }

        /** Of two equal rectangles it makes no difference which is cut which way: the later one takes the later way. */
        private int firstWay(int k) {
            for (int earlier = k - 1; earlier >= 0; earlier--) {
                if (laying.strips.get(earlier).isSameRectangle(laying.strips.get(k))) {
                    return way[earlier];
                }
            }
            return 0;
        }
    }

    /**
     * Packs the pieces, unless even their bound cannot beat the best so far.
     *
     * @param less whether only less stock counts
     * @return whether the least stock for these pieces is known not to beat the best kept
     */
    private boolean tryPieces(List<Piece> pieces, Laying laying, boolean less, Work work) {
        work.take(STEPS_FOR_A_PIECE * (1 + pieces.size()));
        if (pieces.isEmpty()) {
            return true;
        }
        int bound = TurnedPacker.bound(pieces, laying.stockLength, laying.band);
        if (less && bound >= bestOrThrow().packing.stocks()) {
            return true;
        }
        double edges = pieces.stream().mapToDouble(p -> p.shape().getLength()).sum();
        double outline = floor.stream().mapToDouble(Polygon::getLength).sum() / pitch;
        double joints = (edges - outline) / 2;
        Packing hoped = new Packing(bound, List.of(), bound, true);
        if (!isBest(new Candidate(pieces, hoped, joints, laying))) {
            return true;
        }
        Packing packing = TurnedPacker.pack(pieces, laying.stockLength, laying.band, work);
        Candidate found = new Candidate(pieces, packing, joints, laying);
        if (isBest(found)) {
            best = Optional.of(found);
        }
        return packing.proven();
    }

    private boolean isBest(Candidate candidate) {
        return best.isEmpty() || BEST.compare(candidate, best.get()) < 0;
    }

    /** Every field of the fixed grid that holds floor takes stock of its own. */
    private Candidate withoutReuse() {
        List<Piece> pieces = StripCutter.fields(turned(0), across, along);
        LevelPacker.Slot[] slots = new LevelPacker.Slot[pieces.size()];
        int fields = StripCutter.fillSlots(pieces, across, along, slots);
        stripBound = areaBound();
        return new Candidate(
                pieces,
                new Packing(fields, List.of(slots), areaBound(), true),
                0,
                new Laying(pieces, 0, across, 0, along, areaBound()));
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
            toRoom = toCells(best.laying.turns).getInverse();
        } catch (org.locationtech.jts.geom.util.NoninvertibleTransformationException e) {
            throw new IllegalStateException("a turn and a scale always have an inverse", e);
        }
        double angle = Si.in("lattice angle", lattice.angle(), Units.RADIAN) + best.laying.turns * Math.PI / 2;
        List<Integer> order = layingOrder(best.pieces);
        List<MembranePiece> pieces = new ArrayList<>();
        List<Polygon> shapes = new ArrayList<>();
        for (int i : order) {
            Piece piece = best.pieces.get(i);
            LevelPacker.Slot slot = best.packing.slots().get(i);
            pieces.add(onStock(piece, slot, pieces.size() + 1, toRoom, angle));
            shapes.add(piece.shape());
        }
        List<LineString> joints = MembraneCut.joints(shapes).stream()
                .map(j -> (LineString) FloorRegions.onGrid(toRoom.transform(j), FloorRegions.GRID))
                .toList();
        return new MembraneCut(
                stock,
                pieces,
                joints,
                best.packing.stocks(),
                areaBound(),
                stripBound,
                coveredSquareMetres(),
                Si.in("width", stock.width(), Units.METRE) * Si.in("length", stock.length(), Units.METRE),
                angle);
    }

    /** Moves a piece to its place on the stock; a turned one is turned to the left first. */
    private MembranePiece onStock(
            Piece piece, LevelPacker.Slot slot, int number, AffineTransformation toRoom, double angle) {
        AffineTransformation toStock = slot.turned()
                ? new AffineTransformation(
                        0, -1, slot.along() + piece.v() + (double) piece.width(), 1, 0, slot.across() - piece.u())
                : AffineTransformation.translationInstance(slot.along() - piece.u(), slot.across() - piece.v());
        toStock.scale(pitch, pitch);
        int length = slot.turned() ? piece.width() : piece.length();
        int width = slot.turned() ? piece.length() : piece.width();
        return new MembranePiece(
                number,
                slot.stock() + 1,
                (Polygon) FloorRegions.onGrid(toRoom.transform(piece.shape()), FloorRegions.GRID),
                (Polygon) toStock.transform(piece.shape()),
                FloorRegions.rectangle(
                        slot.along() * pitch,
                        slot.across() * pitch,
                        (slot.along() + length) * pitch,
                        (slot.across() + width) * pitch),
                slot.turned() ? angle - Math.PI / 2 : angle);
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
