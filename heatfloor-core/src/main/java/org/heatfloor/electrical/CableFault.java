package org.heatfloor.electrical;

/** What a series of readings points to. */
public enum CableFault {
    /**
     * No fault that could be told from tolerance: what tolerance, meter and thermometer explain covers every reading. A fault
     * smaller than the {@link Resolution} of the limits may be there.
     */
    NONE,
    /** The core is open: cut through, or a joint with the cold lead has parted. */
    OPEN_CORE,
    /** The insulation to the screen is damaged: a nick, a nail, a crushed place, or water in an open end. */
    INSULATION,
    /** The insulation still passes but has fallen far: damp, or damage on its way. */
    INSULATION_FALLING,
    /** The core has become shorter: its two conductors touch, or cable was cut off. */
    SHORTED_CORE,
    /** The core has become longer or worse: a bad joint, a partly broken core. */
    RESISTANCE_RISEN,
    /**
     * Another cable than the label says, or one for another voltage: too high a resistance from the first test on, or, where
     * the maker's reading on the cable's own tag is known, a tag that does not belong to the label.
     */
    WRONG_CABLE,
    /**
     * Too low a resistance from the first test on, and no maker's reading to compare with: another cable, two cables measured
     * together, or conductors that touch already. The core's resistance alone cannot tell these apart.
     */
    WRONG_CABLE_OR_SHORT,
    /** The thermometer was wrong, or stood elsewhere than the cable; where the core cannot tell, or the sensor. */
    WRONG_TEMPERATURE,
    /** The sensor is of another kind than stated, or damaged. */
    SENSOR_MISMATCH,
    /** The sensor's circuit is open. */
    SENSOR_OPEN,
    /** The sensor's circuit is short. */
    SENSOR_SHORT,
    /** The screen is open: no path for a fault current. */
    SCREEN_OPEN,
    /** Something moved that more than one fault would explain, or a meter's range was too small: test again. */
    UNDECIDED
}
