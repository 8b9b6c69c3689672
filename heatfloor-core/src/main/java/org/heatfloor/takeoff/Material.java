package org.heatfloor.takeoff;

/** What a shopping list has lines for. */
public enum Material {
    /** Sheets or rolls of membrane. */
    MEMBRANE("uncoupling membrane"),
    /** Mortar under the membrane. */
    MORTAR_UNDER_MEMBRANE("tile mortar, under membrane"),
    /** Mortar in and over the membrane. */
    MORTAR_IN_AND_OVER_MEMBRANE("tile mortar, in and over membrane"),
    /** Mortar under, in and over the membrane, where one serves for all. */
    MORTAR_THROUGHOUT("tile mortar, under, in and over membrane"),
    /** Tiles, or boxes of them. */
    TILE("tile"),
    /** Grout. */
    GROUT("grout"),
    /** Sealant for perimeter and movement joints. */
    SEALANT("sealant"),
    /** Strip that keeps the perimeter gap free of mortar. */
    EDGE_STRIP("edge strip"),
    /** Levelling compound. */
    LEVELLER("levelling compound");

    private final String text;

    Material(String text) {
        this.text = text;
    }

    /** The words for a list. */
    @Override
    public String toString() {
        return text;
    }
}
