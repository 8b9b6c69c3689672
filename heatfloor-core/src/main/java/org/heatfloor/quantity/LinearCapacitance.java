package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Electric capacitance per length; SI unit F/m. */
public interface LinearCapacitance extends Quantity<LinearCapacitance> {}
