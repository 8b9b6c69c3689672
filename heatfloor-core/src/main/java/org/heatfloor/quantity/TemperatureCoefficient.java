package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Relative change of a resistance per kelvin; SI unit 1/K. */
public interface TemperatureCoefficient extends Quantity<TemperatureCoefficient> {}
