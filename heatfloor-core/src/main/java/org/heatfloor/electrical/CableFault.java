package org.heatfloor.electrical;

/** What a series of readings points to. */
public enum CableFault {
    /** Nothing: every reading lies in its band and none has moved. */
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
    /** The resistance never matched the label: another cable, another voltage, or two cables measured together. */
    WRONG_CABLE,
    /** The thermometer was wrong, or stood elsewhere than the cable; where the core cannot tell, or the sensor. */
    WRONG_TEMPERATURE,
    /** The sensor is of another kind than stated, or damaged. */
    SENSOR_MISMATCH,
    /** The sensor's circuit is open. */
    SENSOR_OPEN,
    /** The sensor's circuit is short. */
    SENSOR_SHORT,
    /** The screen is open: no path for a fault current. */
    SCREEN_OPEN
}
