package org.heatfloor.takeoff;

import org.heatfloor.area.JointRule;

/**
 * A region's building practice: whose limits a take-off is held to and the units it speaks in. Each part can be chosen
 * otherwise on the {@link TakeOffBuilder}. Where no national rule could be read, the American one stands in, and the finding
 * names it.
 */
public enum Practice {
    /** Tiles by ANSI A108, heated bays of 12 ft, steps by the ADA Standards, US units. */
    NORTH_AMERICA("North American"),
    /** Tiles by NHBC Standards, heated bays by BS 5385-3, steps by Approved Document M, metric units. */
    UNITED_KINGDOM("British"),
    /** Heated bays by EN 1264-4, metric units; tiles by ANSI A108 and steps by the ADA Standards stand in. */
    EUROPE("European");

    private final String text;

    Practice(String text) {
        this.text = text;
    }

    /**
     * Limits of joints, lippage and flatness.
     *
     * @return the standard
     */
    public TileStandard tileStandard() {
        return this == UNITED_KINGDOM ? TileStandard.NHBC_2025 : TileStandard.ANSI_A108;
    }

    /**
     * How large a bay of heated tile may be.
     *
     * @return the rule
     */
    public JointRule jointRule() {
        return switch (this) {
            case NORTH_AMERICA -> JointRule.heatedNorthAmerica();
            case UNITED_KINGDOM -> JointRule.heatedUnitedKingdom();
            case EUROPE -> JointRule.heatedScreedEurope();
        };
    }

    /**
     * Limits of steps at doors.
     *
     * @return the rule
     */
    public StepRule stepRule() {
        return this == UNITED_KINGDOM ? StepRule.APPROVED_DOCUMENT_M : StepRule.ADA_2010;
    }

    /**
     * The units findings and lists are written in.
     *
     * @return the units
     */
    public PurchaseUnits units() {
        return this == NORTH_AMERICA ? PurchaseUnits.US_CUSTOMARY : PurchaseUnits.METRIC;
    }

    /** The word for a sentence. */
    @Override
    public String toString() {
        return text;
    }
}
