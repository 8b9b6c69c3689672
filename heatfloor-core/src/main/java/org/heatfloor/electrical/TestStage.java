package org.heatfloor.electrical;

/** When a cable is tested; every stage has its test, in this order. */
public enum TestStage {
    /** Out of the box, before laying. */
    OUT_OF_THE_BOX,
    /** Fixed on the membrane, before covering. */
    FIXED_ON_MEMBRANE,
    /** After covering with mortar and tile. */
    AFTER_COVERING,
    /** Before it is energised for the first time. */
    BEFORE_ENERGISING
}
