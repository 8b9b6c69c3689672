package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Power per length of cable; SI unit W/m. */
public interface LinearPower extends Quantity<LinearPower> {}
