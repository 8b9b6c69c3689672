package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Heat to warm a mass by one kelvin; SI unit J/(kg·K). */
public interface SpecificHeatCapacity extends Quantity<SpecificHeatCapacity> {}
