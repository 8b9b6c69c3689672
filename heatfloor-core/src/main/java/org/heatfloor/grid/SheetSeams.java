package org.heatfloor.grid;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.heatfloor.area.TradeLength;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/**
 * Sheets or strips of a roll laid so that the studs stay in phase from one to the next: each is used by a whole number of
 * studs, so what is left over at its edge is cut off, and the seams run along channel lines. The first sheet begins one
 * channel line before the grid's first column and row, its width along the rows.
 */
public final class SheetSeams {

    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final String UP_TO = "up to ";
    private static final Source PLAY = Source.derived("pitch less stud less cable diameter");

    private final ChannelGrid grid;
    private final double pitchMetres;
    private final List<Seam> seams;
    private final List<Finding> findings;

    private SheetSeams(ChannelGrid grid, double pitchMetres, List<Seam> seams, List<Finding> findings) {
        this.grid = grid;
        this.pitchMetres = pitchMetres;
        this.seams = List.copyOf(seams);
        this.findings = List.copyOf(findings);
    }

    /**
     * The seams of a grid.
     *
     * @param grid the channels
     * @param stock how the membrane is sold
     * @return seams and findings
     * @throws IllegalArgumentException if a sheet is smaller than a stud pitch
     */
    public static SheetSeams of(ChannelGrid grid, MembraneStock stock) {
        double pitch = Si.positive("stud pitch", grid.lattice().pitch(), Units.METRE);
        List<Finding> findings = new ArrayList<>();
        String kind = stock.kind().name().toLowerCase(Locale.ROOT);
        int across = studs(kind + " width", stock.width(), pitch, findings);
        int along = studs(kind + " length", stock.length(), pitch, findings);
        List<Seam> seams = new ArrayList<>();
        for (int column = across - 1; column < grid.columns(); column += across) {
            int crossing = 0;
            for (int row = 0; row < grid.rows(); row++) {
                crossing += grid.isFreeEast(column - 1, row) && grid.isFreeEast(column, row) ? 1 : 0;
            }
            seams.add(seam(
                    "column " + column, grid.junction(column, 0), grid.junction(column, grid.rows() - 1), crossing));
        }
        for (int row = along - 1; row < grid.rows(); row += along) {
            int crossing = 0;
            for (int column = 0; column < grid.columns(); column++) {
                crossing += grid.isFreeNorth(column, row - 1) && grid.isFreeNorth(column, row) ? 1 : 0;
            }
            seams.add(seam("row " + row, grid.junction(0, row), grid.junction(grid.columns() - 1, row), crossing));
        }
        return new SheetSeams(grid, pitch, seams, findings);
    }

    /**
     * The seams of membrane cut and laid as a plan says.
     *
     * @param grid the channels
     * @param stock how the membrane is sold
     * @param joints where pieces meet, in metres; one off the channel lines, as at a movement joint, is no seam
     * @return seams, those that share a channel line taken together, and findings
     * @throws IllegalArgumentException if a sheet is smaller than a stud pitch
     */
    public static SheetSeams of(ChannelGrid grid, MembraneStock stock, List<LineString> joints) {
        double pitch = Si.positive("stud pitch", grid.lattice().pitch(), Units.METRE);
        List<Finding> findings = new ArrayList<>();
        String kind = stock.kind().name().toLowerCase(Locale.ROOT);
        studs(kind + " width", stock.width(), pitch, findings);
        studs(kind + " length", stock.length(), pitch, findings);
        return new SheetSeams(grid, pitch, new JointSeams(grid).of(joints), findings);
    }

    private static Seam seam(String where, Coordinate from, Coordinate to, int crossing) {
        LineString line = line(from, to);
        return new Seam("seam along " + where, line, crossing, List.of(line));
    }

    static LineString line(Coordinate from, Coordinate to) {
        return FACTORY.createLineString(new Coordinate[] {from, to});
    }

    private static int studs(String what, Quantity<Length> size, double pitch, List<Finding> findings) {
        double metres = Si.positive(what, size, Units.METRE);
        int whole = (int) Math.floor(metres / pitch + 1e-6);
        if (whole < 1) {
            throw new IllegalArgumentException(what + ": " + size + " was given; at least one stud pitch is expected");
        }
        double rest = metres - whole * pitch;
        if (rest > 0.0005) {
            findings.add(Finding.of(
                    Severity.NOTE,
                    what,
                    "It is not a whole number of studs; cut off " + QuantityText.number(rest * 1000, 1) + " mm to keep "
                            + whole + " studs in phase with the next one.",
                    Amounts.metres(rest),
                    Amounts.metres(0.0005),
                    Source.derived("size less whole stud pitches")));
        }
        return whole;
    }

    /**
     * The seams, those along columns first.
     *
     * @return the list
     */
    public List<Seam> seams() {
        return seams;
    }

    /**
     * Whether the stock's sizes keep the studs in phase.
     *
     * @return findings, empty when they are whole numbers of studs
     */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * What it costs when a sheet slips along a seam. Only the part of the slip beyond whole pitches counts,
     * {@code e = |x − p·round(x/p)|}. A straight cable still passes while {@code e ≤ p − D − d} (pitch less stud less cable:
     * the play in the channel); beyond that each run across the seam must zigzag, at least
     * {@code √(p² + e²) − p} longer each. At most one run in every spacing crosses.
     *
     * @param seam a seam of this grid
     * @param slip how far the sheet slipped along the seam
     * @param cableDiameter the cable
     * @param spacing least spacing of runs
     * @return a note when the cable still passes straight, else a warning with the number of runs
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Finding slipped(Seam seam, Quantity<Length> slip, Quantity<Length> cableDiameter, TradeLength spacing) {
        return slipped(seam, slip, cableDiameter, runs(seam, spacing), UP_TO);
    }

    /**
     * What it costs when a sheet slips along a seam that laid cables cross; as {@link #slipped(Seam, Quantity, Quantity,
     * TradeLength)}, with the runs that do cross it.
     *
     * @param seam a seam of this grid
     * @param slip how far the sheet slipped along the seam
     * @param cableDiameter the cable
     * @param cables centre lines as laid, in metres
     * @return a note when the cable still passes straight or none crosses, else a warning with the number of runs
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Finding slipped(Seam seam, Quantity<Length> slip, Quantity<Length> cableDiameter, List<LineString> cables) {
        return slipped(seam, slip, cableDiameter, crossings(seam, cables), "");
    }

    private Finding slipped(Seam seam, Quantity<Length> slip, Quantity<Length> cableDiameter, int runs, String bound) {
        double metres = Si.notNegative("slip", slip, Units.METRE);
        double off = Math.abs(metres - pitchMetres * Math.rint(metres / pitchMetres));
        double play = playMetres(cableDiameter);
        if (off <= play + 1e-12 || runs == 0) {
            String passes = runs == 0 ? "no run crosses it." : "the cable passes straight.";
            return Finding.of(
                    Severity.NOTE,
                    seam.name(),
                    off < 1e-9 ? "The sheets are in phase." : "The sheets are out of phase, but " + passes,
                    Amounts.metres(off),
                    Amounts.metres(play),
                    PLAY);
        }
        return Finding.of(
                Severity.WARNING,
                seam.name(),
                "The sheets are out of phase: " + bound + runs(runs) + " across the seam "
                        + (runs == 1 ? "has" : "have")
                        + " to zigzag and take " + longerMillimetres(runs, off)
                        + " mm more cable; shift the sheet by " + QuantityText.number(off * 1000, 1) + " mm.",
                Amounts.metres(off),
                Amounts.metres(play),
                PLAY);
    }

    /**
     * What it would cost if a sheet came to lie out of phase at its worst: by half a pitch, along the seam that most
     * channels cross.
     *
     * @param cableDiameter the cable
     * @param spacing least spacing of runs
     * @return a note; empty where no channel crosses a seam or where even half a pitch costs nothing
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Optional<Finding> slippedAtWorst(Quantity<Length> cableDiameter, TradeLength spacing) {
        return seams.stream()
                .max(Comparator.comparingInt(Seam::crossingChannels))
                .flatMap(seam -> worst(seam, cableDiameter, runs(seam, spacing), UP_TO));
    }

    /**
     * What it would cost if a sheet came to lie out of phase at its worst: by half a pitch, along the seam that most runs
     * of the laid cables cross.
     *
     * @param cableDiameter the cable
     * @param cables centre lines as laid, in metres
     * @return a note; empty where no run crosses a seam or where even half a pitch costs nothing
     * @throws IllegalArgumentException if a figure is out of range
     */
    public Optional<Finding> slippedAtWorst(Quantity<Length> cableDiameter, List<LineString> cables) {
        return seams.stream()
                .max(Comparator.comparingInt(seam -> crossings(seam, cables)))
                .flatMap(seam -> worst(seam, cableDiameter, crossings(seam, cables), ""));
    }

    private Optional<Finding> worst(Seam seam, Quantity<Length> cableDiameter, int runs, String bound) {
        double play = playMetres(cableDiameter);
        if (runs == 0 || pitchMetres / 2 <= play) {
            return Optional.empty();
        }
        return Optional.of(Finding.of(
                Severity.NOTE,
                seam.name(),
                "Keep the studs in phase across it: out of phase by up to " + QuantityText.number(play * 1000, 1)
                        + " mm costs nothing; half a pitch would make " + bound + runs(runs) + " zigzag and take "
                        + longerMillimetres(runs, pitchMetres / 2) + " mm more cable.",
                Amounts.metres(pitchMetres / 2),
                Amounts.metres(play),
                PLAY));
    }

    /** How often cables pass from one side of the seam to the other; a run along it does not. */
    private int crossings(Seam seam, List<LineString> cables) {
        int count = 0;
        for (LineString piece : seam.pieces()) {
            for (LineString cable : cables) {
                count += crossings(piece.getCoordinateN(0), piece.getCoordinateN(1), cable);
            }
        }
        return count;
    }

    private int crossings(Coordinate from, Coordinate to, LineString cable) {
        int count = 0;
        int before = 0;
        for (Coordinate c : cable.getCoordinates()) {
            int side = side(c, from, to);
            boolean beyond = !isBeside(c, from, to);
            count += !beyond && side * before < 0 ? 1 : 0;
            before = beyond ? 0 : side == 0 ? before : side;
        }
        return count;
    }

    /** 1 to the left, -1 to the right, 0 on the line. */
    private int side(Coordinate place, Coordinate from, Coordinate to) {
        double away = ((to.x - from.x) * (place.y - from.y) - (to.y - from.y) * (place.x - from.x)) / from.distance(to);
        return Math.abs(away) <= JointSeams.ON_LINE * pitchMetres ? 0 : away > 0 ? 1 : -1;
    }

    /** Whether a place lies beside the piece, not beyond its ends; the channel at its end belongs to the next piece. */
    private boolean isBeside(Coordinate place, Coordinate from, Coordinate to) {
        double length = from.distance(to);
        double along = ((place.x - from.x) * (to.x - from.x) + (place.y - from.y) * (to.y - from.y)) / length;
        double slack = JointSeams.ON_LINE * pitchMetres;
        return along >= -slack && along < length - slack;
    }

    private double playMetres(Quantity<Length> cableDiameter) {
        double diameter = Si.positive("cable diameter", cableDiameter, Units.METRE);
        double stud = Si.positive("stud diameter", grid.lattice().studDiameter(), Units.METRE);
        return Math.max(0, pitchMetres - stud - diameter);
    }

    /** At most one run in every spacing crosses a seam. */
    private int runs(Seam seam, TradeLength spacing) {
        double step = Si.positive("spacing", spacing.with(grid.lattice().pitch()), Units.METRE);
        int every = Math.max(1, (int) Math.ceil(step / pitchMetres - 1e-9));
        return (seam.crossingChannels() + every - 1) / every;
    }

    private static String runs(int count) {
        return count == 1 ? "1 run" : count + " runs";
    }

    private String longerMillimetres(int runs, double offMetres) {
        return QuantityText.number(runs * (Math.hypot(pitchMetres, offMetres) - pitchMetres) * 1000, 0);
    }
}
