package org.heatfloor.thermal;

import javax.measure.Quantity;
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
    PETROLATUM(38, Source.Kind.DOCUMENT, "USP monograph Petrolatum, melting range 38 to 60 °C"),
    /** Paraffin: congealing range from 47 °C. */
    PARAFFIN(47, Source.Kind.DOCUMENT, "USP-NF monograph Paraffin, congealing range 47 to 65 °C"),
    /** Beeswax: drop point from 61 °C. */
    BEESWAX(61, Source.Kind.FROM_MEMORY, "European Pharmacopoeia, drop point 61 to 66 °C"),
    /** Microcrystalline wax: from about 66 °C. */
    MICROCRYSTALLINE_WAX(66, Source.Kind.FROM_MEMORY, "microcrystalline wax, melting range about 66 to 85 °C");

    private final double softens;
    private final Source.Kind kind;
    private final String text;

    SealMaterial(double softens, Source.Kind kind, String text) {
        this.softens = softens;
        this.kind = kind;
        this.text = text;
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
        return new Source(kind, text);
    }

    /**
     * Judges a seal at a place of the floor, by the warmer of surface and cables' plane there at steady full power.
     *
     * @param subject the keep-out's name
     * @param field the floor
     * @param xMetres distance along x, metres
     * @param yMetres distance along y, metres
     * @return a note when the seal stays below its softening range, else a warning
     * @throws IllegalArgumentException if the place lies outside the floor's bounding rectangle
     */
    public Finding judge(String subject, FloorField field, double xMetres, double yMetres) {
        double found = Math.max(
                Si.in("surface", field.at(xMetres, yMetres), Units.CELSIUS),
                Si.in("plane", field.inCablePlane(xMetres, yMetres), Units.CELSIUS));
        boolean firm = found < softens;
        return Finding.of(
                firm ? Severity.NOTE : Severity.WARNING,
                subject,
                HeatFindings.text(
                        firm
                                ? "The floor at the seal reaches %.1f °C at steady full power; the seal softens from"
                                        + " %.0f °C."
                                : "The floor at the seal reaches %.1f °C at steady full power and the seal softens from"
                                        + " %.0f °C: keep the cable farther away or use an elastomer seal.",
                        found,
                        softens),
                Amounts.celsius(found),
                softens(),
                source());
    }
}
