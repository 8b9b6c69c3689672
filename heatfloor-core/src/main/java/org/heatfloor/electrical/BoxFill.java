package org.heatfloor.electrical;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Volume;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.QuantityText;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/**
 * Volume a device box must have by the NEC, 314.16: an allowance for every conductor, for internal clamps, for support
 * fittings, for every device and for the equipment grounding conductors together. Boxes under IEC 60364 and BS 7671 have
 * no such count: follow the box's instructions.
 *
 * @param required volume the contents need
 * @param available volume of the box
 * @param finding whether it fits
 */
public record BoxFill(Quantity<Volume> required, Quantity<Volume> available, Finding finding) {

    /**
     * Checks the parts.
     *
     * @param required volume the contents need
     * @param available volume of the box
     * @param finding whether it fits
     */
    public BoxFill {
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(available, "available");
        Objects.requireNonNull(finding, "finding");
    }

    /**
     * Starts a count.
     *
     * @param code an edition of the NEC
     * @return the contents, empty
     * @throws IllegalArgumentException if the code has no box fill rule
     */
    public static BoxContents in(ElectricalCode code) {
        return new BoxContents(code);
    }

    /**
     * Whether the contents fit.
     *
     * @return true if they do
     */
    public boolean fits() {
        return !finding.isError();
    }

    /**
     * The volume of a standard metal box, NEC Table 314.16(A).
     *
     * @param name its trade size, such as {@code "4 x 1 1/2 square"}
     * @return the volume
     * @throws IllegalArgumentException if the table has no such box; the message lists the names
     */
    public static Quantity<Volume> boxVolume(String name) {
        List<Csv.Row> boxes = Csv.read("box-volume.csv");
        for (Csv.Row row : boxes) {
            if (row.text("box").equals(name)) {
                return Amounts.of(row.number("cubicInches"), Units.CUBIC_INCH);
            }
        }
        throw new IllegalArgumentException("box: '" + name + "' was given; one of "
                + boxes.stream().map(row -> row.text("box")).toList() + " is expected");
    }

    static BoxFill judge(ElectricalCode code, double cubicInches, Quantity<Volume> box) {
        double available = Si.positive("box volume", box, Units.CUBIC_INCH);
        boolean fits = cubicInches <= available * (1 + 1e-9);
        Quantity<Volume> required = Amounts.of(cubicInches, Units.CUBIC_INCH);
        Optional<String> larger = Csv.read("box-volume.csv").stream()
                .filter(row -> row.number("cubicInches") >= cubicInches)
                .min((a, b) -> Double.compare(a.number("cubicInches"), b.number("cubicInches")))
                .map(row -> row.text("box"));
        Source source = code.source(RuleTopic.BOX_FILL);
        return new BoxFill(
                required,
                box,
                Finding.of(
                        fits ? Severity.NOTE : Severity.ERROR,
                        "box",
                        fits
                                ? "the contents fit the box"
                                : "the contents need " + QuantityText.number(cubicInches, 2) + " in³; "
                                        + larger.map(name -> "a box " + name + " would do")
                                                .orElse("take a marked box of that volume"),
                        required,
                        box,
                        source));
    }
}
