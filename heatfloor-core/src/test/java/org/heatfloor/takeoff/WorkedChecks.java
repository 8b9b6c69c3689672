package org.heatfloor.takeoff;

import java.util.Arrays;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.Unit;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Volume;
import org.heatfloor.area.JointRule;
import org.heatfloor.area.Room;
import org.heatfloor.grid.Membrane;
import org.heatfloor.grid.MembraneStock;
import org.heatfloor.grid.StudLattice;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Evaluates the quantities named in the table of worked checks. */
final class WorkedChecks {

    private static final double CUBIC_FOOT = 0.028316846592;

    private WorkedChecks() {}

    static double value(String quantity, String inputs) {
        String[] text = inputs.split(" (?![^(]*\\))", -1);
        double[] x = Arrays.stream(text).mapToDouble(WorkedChecks::number).toArray();
        return switch (quantity) {
            case "combed thickness mm" -> mm(trowel(text, x).combedThickness());
            case "embedded bed mm" ->
                mm(Schoolhouse.square(6).withAngle(Amounts.degrees(90)).bedThickness(percent(x[0])));
            case "dry mass per m2 and mm" ->
                Si.in("dry", mortar(x[0], x[1], 25).dry(Amounts.of(1, Units.LITRE)), Units.KILOGRAM);
            case "yield litres" -> Si.in("yield", bag(text, x).bagYield(), Units.LITRE);
            case "yield cubic feet" -> Si.in("yield", bag(text, x).bagYield(), Units.CUBIC_FOOT);
            case "tiles per m2" ->
                tile(x[0], x[1], 9, x[2], TilePattern.STRAIGHT, 0).perSquareMetre();
            case "tiles by area" ->
                tile(x[1], x[2], 9, 0, TilePattern.STRAIGHT, x[3]).countByArea(Amounts.squareMetres(x[0]));
            case "tiles by area ft" ->
                tile(x[1] * 304.8, x[2] * 304.8, 9, 0, TilePattern.STRAIGHT, x[3])
                        .countByArea(Amounts.of(x[0], Units.SQUARE_FOOT));
            case "area with waste m2" ->
                Si.in(
                        "area",
                        tile(300, 300, 9, 3, TilePattern.STRAIGHT, x[1]).withWaste(Amounts.squareMetres(x[0])),
                        Units.SQUARE_METRE);
            case "area with waste ft2" ->
                Si.in(
                        "area",
                        tile(300, 300, 9, 3, TilePattern.STRAIGHT, x[1]).withWaste(Amounts.of(x[0], Units.SQUARE_FOOT)),
                        Units.SQUARE_FOOT);
            case "tiles unrounded" ->
                x[0] * tile(x[1], x[2], 9, 0, TilePattern.STRAIGHT, 0).perSquareMetre();
            case "boxes" -> boxes((int) x[0], (int) x[1]);
            case "step verdict" ->
                StepRule.ADA_2010.verdict(Amounts.millimetres(x[0])) == StepVerdict.valueOf(text[1]) ? 1 : 0;
            case "bevel run mm" -> mm(StepRule.ADA_2010.run(Amounts.millimetres(x[0])));
            case "shortest bevel run mm" -> mm(StepRule.ADA_2010.shortestBevelRun(Amounts.millimetres(x[0])));
            case "deflection in" -> Si.in("deflection", TileStandard.deflection(Amounts.feet(x[0]), false), Units.INCH);
            case "least joint in" -> leastJoint(x[0]);
            case "whole bags" -> MortarNeed.wholeBags(x[0], x[1]);
            case "spread m2" -> Si.in("spread", timed(x).largestSpread(Amounts.squareMetres(x[0])), Units.SQUARE_METRE);
            case "batch kg" -> batch(x);
            case "bags in batch" -> Math.floor(batch(x) / x[6]);
            default -> moreValues(quantity, text, x);
        };
    }

    private static double moreValues(String quantity, String[] text, double[] x) {
        if (quantity.startsWith("grout")) {
            return grout(quantity, x);
        }
        if (quantity.startsWith("site")) {
            return site(quantity, x);
        }
        if (quantity.startsWith("membrane")) {
            MembraneCut cut = membrane(text);
            return switch (quantity) {
                case "membrane rolls" -> cut.stockCount();
                case "membrane bound" -> cut.lowerBound();
                default -> WorkedStrips.laid(quantity, Room.ofWkt(text[0], Units.METRE), x);
            };
        }
        if (quantity.startsWith("strips") || quantity.startsWith("rolls")) {
            return WorkedStrips.value(
                    quantity, Arrays.stream(x).mapToInt(d -> (int) d).toArray());
        }
        if (quantity.startsWith("bay")) {
            return bays(quantity, x);
        }
        if (quantity.contains("movement") || quantity.startsWith("exterior")) {
            return movement(quantity, x);
        }
        if (quantity.contains("mortar") || quantity.startsWith("water") || quantity.startsWith("rise")) {
            return WorkedMortar.value(quantity, x);
        }
        if (quantity.contains("depth") || quantity.contains("stud") || quantity.contains("cell")) {
            return cavity(quantity, x);
        }
        return layout(quantity, x);
    }

    private static double cavity(String quantity, double[] x) {
        return switch (quantity) {
            case "round stud share" ->
                squareMillimetres(studs(StudPlan.ROUND, StudGrid.SQUARE, 5, x[0], x[1], x[1])
                                .meanPlanArea())
                        / (x[0] * x[0]);
            case "open depth round square-grid mm" ->
                litres(studs(StudPlan.ROUND, StudGrid.SQUARE, x[0], x[1], x[2], x[2])
                        .openVolume());
            case "open depth square square-grid mm" ->
                litres(studs(StudPlan.SQUARE, StudGrid.SQUARE, x[0], x[1], x[2], x[2])
                        .openVolume());
            case "fill depth square square-grid mm" ->
                litres(studs(StudPlan.SQUARE, StudGrid.SQUARE, x[0], x[1], x[2], x[2])
                        .fillVolume(Amounts.millimetres(x[3]), Amounts.millimetres(x[4])));
            case "triangular cell mm2" ->
                squareMillimetres(studs(StudPlan.ROUND, StudGrid.TRIANGULAR, 5, x[0], 5, 5)
                        .cell());
            case "round stud mm2" ->
                squareMillimetres(studs(StudPlan.ROUND, StudGrid.TRIANGULAR, 5, 28, x[0], x[1])
                        .meanPlanArea());
            case "open depth cut-back triangular mm" ->
                litres(studs(StudPlan.ROUND, StudGrid.TRIANGULAR, x[0], x[1], x[2], x[3])
                        .openVolume());
            case "fill depth cut-back triangular mm" ->
                litres(studs(StudPlan.ROUND, StudGrid.TRIANGULAR, x[0], x[1], x[2], x[3])
                        .fillVolume(Amounts.millimetres(x[4]), Amounts.millimetres(x[5])));
            case "cable depth mm" ->
                Si.in("cable", Studs.cableVolume(Amounts.metres(1000 / x[1]), Amounts.millimetres(x[0])), Units.LITRE);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static Studs studs(StudPlan plan, StudGrid grid, double height, double pitch, double foot, double head) {
        return Studs.straight(
                        grid, Amounts.millimetres(pitch), plan, Amounts.millimetres(foot), Amounts.millimetres(height))
                .withHead(Amounts.millimetres(head));
    }

    private static double litres(Quantity<org.heatfloor.quantity.VolumePerArea> volume) {
        return Si.in("volume", volume, Units.LITRE_PER_SQUARE_METRE);
    }

    private static double squareMillimetres(Quantity<javax.measure.quantity.Area> area) {
        return Si.in("area", area, Units.SQUARE_MILLIMETRE);
    }

    private static double layout(String quantity, double[] x) {
        return switch (quantity) {
            case "end cut mm" -> shortest(run(x, Units.MILLIMETRE), Units.MILLIMETRE);
            case "end cut in" -> shortest(run(x, Units.INCH), Units.INCH);
            case "whole tiles in run" -> run(x, Units.INCH).wholeTiles();
            case "layout columns" ->
                rectangle(x).pieces().stream().map(TilePiece::column).distinct().count();
            case "layout rows" ->
                rectangle(x).pieces().stream().map(TilePiece::row).distinct().count();
            case "layout whole tiles" -> rectangle(x).wholeTiles();
            case "layout bought m2" -> rectangle(x).tilesNeeded() * x[2] * x[3] / 1e6;
            case "layout overage %" ->
                100 * (layout("layout bought m2", x) / rectangle(x).field().getArea() - 1);
            case "columns" -> run(x, Units.MILLIMETRE).pieces().size();
            case "layout tiles" -> rectangle(x).tilesNeeded();
            case "layout end cut mm" -> shortest(rectangle(x), Units.MILLIMETRE);
            case "layout end cut across mm" ->
                rectangle(x).pieces().stream()
                        .mapToDouble(p -> mm(p.width()))
                        .min()
                        .orElseThrow();
            case "field m2" -> rectangle(x).field().getArea();
            case "layout tiles no joint" -> unjointed(x).tilesNeeded();
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    /** One row of tiles in a run: length, tile, joint, gap. */
    private static TileLayout run(double[] x, Unit<Length> unit) {
        double high = x[1] + 2 * x[3];
        TileSpec tile = TileSpec.of(
                Amounts.of(x[1], unit),
                Amounts.of(x[1], unit),
                Amounts.millimetres(9),
                Amounts.of(x[2], unit),
                TilePattern.STRAIGHT,
                percent(0));
        return TileLayout.of(
                room(x[0], high, unit),
                tile,
                LayoutRule.USUAL.along(Amounts.degrees(0)).withGaps(Amounts.of(x[3], unit), Amounts.millimetres(0)));
    }

    private static TileLayout rectangle(double[] x) {
        return TileLayout.of(
                room(x[0], x[1], Units.MILLIMETRE),
                tile(x[2], x[3], 9, x[4], TilePattern.STRAIGHT, 0),
                LayoutRule.USUAL.withGaps(Amounts.millimetres(x[5]), Amounts.millimetres(6)));
    }

    private static TileLayout unjointed(double[] x) {
        TileSpec tile = tile(x[2], x[2], 9, 0, TilePattern.STRAIGHT, 0)
                .withSupply(new TileSupply(1, percent(0), Amounts.millimetres(0), true));
        return TileLayout.of(
                room(x[0], x[1], Units.MILLIMETRE),
                tile,
                LayoutRule.USUAL.from(TileStart.corner(0, 0)).withGaps(Amounts.millimetres(0), Amounts.millimetres(0)));
    }

    private static double shortest(TileLayout layout, Unit<Length> unit) {
        return layout.pieces().stream()
                .mapToDouble(p -> Si.in("length", p.length(), unit))
                .min()
                .orElseThrow();
    }

    private static int boxes(int tiles, int perBox) {
        TileSpec tile = tile(100, 100, 9, 0, TilePattern.STRAIGHT, 0)
                .withSupply(new TileSupply(perBox, percent(0), Amounts.millimetres(3), true));
        return TileLayout.of(
                        room(100.0 * tiles, 100, Units.MILLIMETRE),
                        tile,
                        LayoutRule.USUAL
                                .from(TileStart.corner(0, 0))
                                .withGaps(Amounts.millimetres(0), Amounts.millimetres(0)))
                .boxes();
    }

    private static double grout(String quantity, double[] x) {
        return switch (quantity) {
            case "grout first order" ->
                areal(GroutNeed.firstOrder(tile(x[0], x[1], x[2], x[3], TilePattern.STRAIGHT, 0), grout(x[4])));
            case "grout exact" ->
                areal(GroutNeed.exact(tile(x[0], x[1], x[2], x[3], TilePattern.STRAIGHT, 0), grout(x[4])));
            case "grout overstated %" -> 100 * (grout("grout first order", x) / grout("grout exact", x) - 1);
            case "grout kg per 100 ft2" -> 9.290304 * grout("grout first order", x);
            case "grout ratio" ->
                areal(GroutNeed.firstOrder(tile(x[0], x[0], x[2], x[3], TilePattern.STRAIGHT, 0), grout(1.6)))
                        / areal(GroutNeed.firstOrder(
                                tile(x[1], x[1], x[2], x[3], TilePattern.STRAIGHT, 0), grout(1.6)));
            case "grout kg" ->
                x[0]
                        * areal(GroutNeed.firstOrder(
                                tile(x[1], x[2], x[3], x[4], TilePattern.STRAIGHT, 0), grout(x[5])))
                        * (1 + x[6] / 100);
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static double areal(Quantity<org.heatfloor.quantity.ArealDensity> mass) {
        return Si.in("mass", mass, Units.KILOGRAM_PER_SQUARE_METRE);
    }

    private static GroutSpec grout(double density) {
        return new GroutSpec(Amounts.of(density, Units.KILOGRAM_PER_LITRE), percent(0), Optional.empty());
    }

    private static double site(String quantity, double[] x) {
        SiteMortar mix = x.length > 3 ? new SiteMortar(x[1], x[2], x[3]) : new SiteMortar(1, 4, 1.33);
        Quantity<Volume> inPlace = Amounts.of(x[0], Units.CUBIC_METRE);
        return switch (quantity) {
            case "site bed ft3" ->
                Si.in("bed", Amounts.of(x[0] * 0.09290304 * x[1] / 1000, Units.CUBIC_METRE), Units.CUBIC_FOOT);
            case "site dry" -> Si.in("dry", mix.dry(inPlace), Units.CUBIC_METRE);
            case "site sand" -> Si.in("sand", mix.sand(inPlace), Units.CUBIC_METRE);
            case "site cement bags" -> Si.in("cement", mix.cement(inPlace), Units.CUBIC_METRE) / x[4];
            case "site cement kg from ft3" -> siteCement(mix, x);
            case "site cement kg from ft3 in 50 kg bags" -> siteCement(mix, x) / 50;
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static double siteCement(SiteMortar mix, double[] x) {
        return Si.in(
                "cement",
                mix.cement(
                        Amounts.of(x[0] * CUBIC_FOOT, Units.CUBIC_METRE),
                        Amounts.of(x[4], Units.KILOGRAM_PER_CUBIC_METRE)),
                Units.KILOGRAM);
    }

    private static MembraneCut membrane(String[] text) {
        double pitch = number(text[3]);
        Membrane membrane = new Membrane(
                Amounts.metres(pitch),
                Amounts.metres(pitch / 2),
                Amounts.millimetres(6),
                Optional.of(new MembraneStock(
                        MembraneStock.Kind.ROLL, Amounts.metres(number(text[1])), Amounts.metres(number(text[2])))));
        StudLattice lattice =
                StudLattice.of(membrane, Schoolhouse.point(pitch / 2, pitch / 2), Units.METRE, Amounts.degrees(0));
        return MembraneCut.of(Room.ofWkt(text[0], Units.METRE), membrane, lattice);
    }

    private static double bays(String quantity, double[] x) {
        String[] words = quantity.split(" ", -1);
        JointRule rule =
                switch (words[words.length - 1]) {
                    case "interiorNorthAmerica" -> JointRule.interiorNorthAmerica();
                    case "sunOrMoistureNorthAmerica" -> JointRule.sunOrMoistureNorthAmerica();
                    case "heatedUnitedKingdom" -> JointRule.heatedUnitedKingdom();
                    default -> JointRule.heatedScreedEurope();
                };
        if (words[0].equals("bays")) {
            int bays = rule.bays(Amounts.feet(x[0]));
            return switch (words[1]) {
                case "length" -> x[0] / bays;
                case "joints" -> bays - 1;
                default -> bays;
            };
        }
        JointRule.BayGrid grid = rule.grid(Amounts.metres(x[0]), Amounts.metres(x[1]));
        double length = x[0] / grid.along();
        double width = x[1] / grid.across();
        return switch (words[1]) {
            case "grid" -> grid.count();
            case "bound" -> grid.lowerBound();
            case "length" -> length;
            case "width" -> width;
            case "area" -> length * width;
            case "ratio" -> Math.max(length, width) / Math.min(length, width);
            case "allowed" -> rule.allows(Amounts.metres(x[2]), Amounts.metres(x[3])) ? 1 : 0;
            default -> throw new IllegalArgumentException(quantity);
        };
    }

    private static double movement(String quantity, double[] x) {
        if (quantity.startsWith("exterior")) {
            return Si.in(
                    "joint",
                    SoftJoints.exteriorWidth(Amounts.feet(x[0]), Amounts.of(x[1], Units.FAHRENHEIT_DIFFERENCE)),
                    Units.INCH);
        }
        Quantity<Length> movement = SoftJoints.movement(
                Amounts.of(x[0] * 1e-6, Units.ONE_PER_KELVIN), Amounts.metres(x[1]), Amounts.kelvins(x[2]));
        return quantity.equals("movement mm") ? mm(movement) : mm(SoftJoints.width(movement, percent(x[3])));
    }

    private static double leastJoint(double variationInches) {
        TileSpec tile = tile(300, 300, 9, 3, TilePattern.STRAIGHT, 0)
                .withAccuracy(new TileAccuracy(
                        TileAccuracy.Edge.RECTIFIED, Amounts.inches(variationInches), Amounts.inches(0)));
        return Si.in("joint", TileStandard.ANSI_A108.leastJoint(tile).value(), Units.INCH);
    }

    private static Mortar timed(double[] x) {
        return Mortar.usual(MortarKind.UNMODIFIED, Amounts.kilograms(25))
                .withTimes(Amounts.of(x[1], Units.MINUTE), Amounts.of(x[2], Units.HOUR));
    }

    private static double batch(double[] x) {
        Mortar mixed = timed(x).withMix(Amounts.of(x[3], Units.KILOGRAM_PER_LITRE), Amounts.of(x[4], Units.ONE));
        return Si.in(
                "batch",
                mixed.largestBatch(Amounts.squareMetres(x[0]), Amounts.of(x[5], Units.LITRE_PER_SQUARE_METRE)),
                Units.KILOGRAM);
    }

    private static Trowel trowel(String[] text, double[] x) {
        Unit<Length> unit = text[1].equals("in") ? Units.INCH : Units.MILLIMETRE;
        return new Trowel(
                Notch.valueOf(text[0]),
                Amounts.of(x[2], unit),
                Amounts.of(x[3], unit),
                Amounts.of(x[4], unit),
                Amounts.degrees(x[5]));
    }

    private static Mortar mortar(double density, double water, double bagKilograms) {
        return Mortar.usual(MortarKind.MODIFIED, Amounts.kilograms(bagKilograms))
                .withMix(Amounts.of(density, Units.KILOGRAM_PER_LITRE), Amounts.of(water, Units.ONE));
    }

    private static Mortar bag(String[] text, double[] x) {
        return mortar(x[2], x[3], kilograms(text));
    }

    private static double kilograms(String[] text) {
        return number(text[0]) * (text[1].equals("lb") ? 0.45359237 : 1);
    }

    static TileSpec tile(
            double length, double width, double thickness, double joint, TilePattern pattern, double waste) {
        return TileSpec.of(
                Amounts.millimetres(length),
                Amounts.millimetres(width),
                Amounts.millimetres(thickness),
                Amounts.millimetres(joint),
                pattern,
                percent(waste));
    }

    static Room room(double length, double width, Unit<Length> unit) {
        return Room.of(FloorRegions.rectangle(0, 0, length, width), unit);
    }

    static Quantity<Dimensionless> percent(double value) {
        return Amounts.of(value, Units.PERCENT);
    }

    static double mm(Quantity<Length> length) {
        return Si.in("length", length, Units.MILLIMETRE);
    }

    private static double number(String text) {
        return text.matches("-?[0-9.]+") ? Double.parseDouble(text) : Double.NaN;
    }
}
