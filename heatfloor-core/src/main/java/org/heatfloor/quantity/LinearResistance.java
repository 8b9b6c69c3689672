package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Electric resistance per length; SI unit Ω/m. */
public interface LinearResistance extends Quantity<LinearResistance> {}
