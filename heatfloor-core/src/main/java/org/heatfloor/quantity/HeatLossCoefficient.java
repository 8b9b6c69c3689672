package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Power per kelvin of difference between inside and outside; SI unit W/K. */
public interface HeatLossCoefficient extends Quantity<HeatLossCoefficient> {}
