package org.heatfloor.examples;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.heatfloor.quantity.QuantityText;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import org.locationtech.jts.operation.valid.IsValidOp;
import org.locationtech.jts.operation.valid.TopologyValidationError;

/** Reads Well-Known Text of the few kinds a room file knows into metres, and says what is wrong with it. */
final class ShapeText {

    /** The kinds of shape. */
    enum Kind {
        POINT(Point.class),
        LINESTRING(LineString.class),
        POLYGON(Polygon.class);

        private final Class<? extends Geometry> type;

        Kind(Class<? extends Geometry> type) {
            this.type = type;
        }
    }

    private static final int MOST_COORDINATES = 2_000;
    private static final double FARTHEST_METRES = 1_000;

    /** Only the plain kinds, with plain numbers: no collections to nest, no words for numbers. */
    private static final Pattern PLAIN =
            Pattern.compile("\\s*+(?:POINT|LINESTRING|POLYGON)\\s*+\\([-+0-9.eE,()\\s]*+\\s*+");

    private ShapeText() {}

    static String expected(Set<Kind> kinds) {
        return "Well-Known Text of a " + kinds.stream().sorted().map(Kind::name).collect(Collectors.joining(" or "));
    }

    static Optional<Geometry> read(String key, String text, LengthUnit unit, Set<Kind> kinds, Faults faults) {
        Geometry read;
        try {
            if (!PLAIN.matcher(text).matches() || !balanced(text)) {
                throw new ParseException("not plain");
            }
            read = new WKTReader().read(text);
        } catch (ParseException | IllegalArgumentException e) {
            faults.add(
                    key,
                    Fault.quoted(text),
                    expected(kinds) + " with plain numbers, closed rings and points as decimal signs");
            return Optional.empty();
        }
        if (kinds.stream().noneMatch(k -> k.type.isInstance(read))) {
            faults.add(key, "a " + read.getGeometryType(), expected(kinds));
            return Optional.empty();
        }
        return checked(key, read, unit, faults)
                ? Optional.of(AffineTransformation.scaleInstance(unit.metres(), unit.metres())
                        .transform(read))
                : Optional.empty();
    }

    private static boolean checked(String key, Geometry read, LengthUnit unit, Faults faults) {
        if (read.isEmpty() || read.getNumPoints() > MOST_COORDINATES) {
            faults.add(key, "a shape of " + read.getNumPoints() + " points", "1 to " + MOST_COORDINATES + " points");
            return false;
        }
        for (Coordinate c : read.getCoordinates()) {
            boolean near = Math.abs(c.x) * unit.metres() <= FARTHEST_METRES
                    && Math.abs(c.y) * unit.metres() <= FARTHEST_METRES;
            if (!near || !Double.isNaN(c.getZ())) {
                faults.add(
                        key,
                        Fault.quoted(near ? "three numbers for a point" : c.x + " " + c.y),
                        "two numbers for a point, within " + FARTHEST_METRES + " m of the origin, in " + unit + ",");
                return false;
            }
        }
        TopologyValidationError fault = new IsValidOp(read).getValidationError();
        if (fault != null) {
            Coordinate at = fault.getCoordinate();
            String where = at == null ? "" : " at " + number(at.x) + " " + number(at.y);
            faults.add(
                    key,
                    "a shape that is not simple" + where + " ("
                            + fault.getMessage().toLowerCase(Locale.ROOT) + ")",
                    "a shape that neither crosses nor touches itself");
            return false;
        }
        return true;
    }

    private static boolean balanced(String text) {
        int depth = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (depth < 0 || (depth == 0 && c == ')' && !text.substring(i + 1).isBlank())) {
                return false;
            }
        }
        return depth == 0;
    }

    static String number(double value) {
        return QuantityText.number(value, 3);
    }
}
