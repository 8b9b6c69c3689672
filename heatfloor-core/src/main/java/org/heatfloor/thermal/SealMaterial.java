package org.heatfloor.thermal;

import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.heatfloor.finding.Finding;
import org.heatfloor.finding.Severity;
import org.heatfloor.finding.Source;
import org.heatfloor.quantity.Amounts;
import org.heatfloor.quantity.Si;
import org.heatfloor.quantity.Units;

/** Materials of a seal ring at a toilet flange, with the lower end of their softening range. */
public enum SealMaterial {
    /** Petrolatum and blends rich in it: melting range from 38 °C. */
    PETROLATUM(38, Source.document("USP 32 (2009)", "monograph Petrolatum, melting range class III, 38 to 60 °C")),
    /** Paraffin: congealing range from 47 °C. */
    PARAFFIN(47, Source.document("NF 23 (2005)", "monograph Paraffin, congealing range 47 to 65 °C")),
    /** Beeswax: drop point from 61 °C. */
    BEESWAX(61, Source.fromMemory("European Pharmacopoeia, drop point 61 to 66 °C; seen in a secondary copy")),
    /** Microcrystalline wax: from about 66 °C. */
    MICROCRYSTALLINE_WAX(66, Source.fromMemory("microcrystalline wax, melting range about 66 to 85 °C"));

    private final double softens;
    // A record of an enum and a text.
    @SuppressWarnings("ImmutableEnumChecker")
    private final Source source;

    SealMaterial(double softens, Source source) {
        this.softens = softens;
        this.source = source;
    }

    /**
     * Where softening begins.
     *
     * @return the temperature
     */
    public Quantity<Temperature> softens() {
        return Amounts.celsius(softens);
    }

    /**
     * What it rests on.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * Judges a seal at a place of the floor, by the warmer of surface and cables' plane there at steady full power.
     *
     * @param subject the keep-out's name
     * @param field the floor
     * @param x distance along x
     * @param y distance along y
     * @return a note when the seal stays below its softening range, else a warning
     * @throws IllegalArgumentException if the place lies outside the floor's bounding rectangle
     */
    public Finding judge(String subject, FloorField field, Quantity<Length> x, Quantity<Length> y) {
        double found = Math.max(
                Si.in("surface", field.at(x, y), Units.CELSIUS),
                Si.in("plane", field.inCablePlane(x, y), Units.CELSIUS));
        return judge(subject, Amounts.celsius(found));
    }

    /**
     * Judges a seal by the warmest temperature of the floor that touches it at steady full power.
     *
     * @param subject the keep-out's name
     * @param warmest that temperature
     * @return a note when the seal stays below its softening range, else a warning
     * @throws IllegalArgumentException if the temperature is not absolute
     */
    public Finding judge(String subject, Quantity<Temperature> warmest) {
        Si.kelvin("warmest", warmest);
        double found = Si.in("warmest", warmest, Units.CELSIUS);
        boolean firm = found < softens;
        return Finding.of(
                firm ? Severity.NOTE : Severity.WARNING,
                subject,
                HeatFindings.text(
                        firm
                                ? "The floor at the seal reaches %.1f °C at steady full power; a seal of %s softens from"
                                        + " %.0f °C."
                                : "The floor at the seal reaches %.1f °C at steady full power and a seal of %s softens from"
                                        + " %.0f °C: keep the cable farther away or use an elastomer seal.",
                        found,
                        name().toLowerCase(Locale.ROOT).replace('_', ' '),
                        softens),
                warmest,
                softens(),
                source());
    }
}
