package org.heatfloor.electrical;

/** Colour of a factory-made cold lead. The NEC tied it to the voltage until its 2011 edition; later editions do not. */
public enum LeadColour {
    /** 120 V in the NEC of 2011. */
    YELLOW(120),
    /** 208 V in the NEC of 2011. */
    BLUE(208),
    /** 240 V in the NEC of 2011. */
    RED(240),
    /** 277 V in the NEC of 2011. */
    BROWN(277),
    /** 480 V in the NEC of 2011. */
    ORANGE(480),
    /** A colour that stands for no voltage. */
    OTHER(0);

    private final int nominalVolts;

    LeadColour(int nominalVolts) {
        this.nominalVolts = nominalVolts;
    }

    /** The voltage it stands for; 0 for none. */
    int nominalVolts() {
        return nominalVolts;
    }
}
