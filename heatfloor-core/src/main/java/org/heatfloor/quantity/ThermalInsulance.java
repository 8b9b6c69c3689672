package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Thermal resistance of an area; SI unit m²·K/W. */
public interface ThermalInsulance extends Quantity<ThermalInsulance> {}
