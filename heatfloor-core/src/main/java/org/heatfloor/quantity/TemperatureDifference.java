package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Difference of two temperatures; SI unit K. Never an absolute temperature. */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
