package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Thermal conductivity; SI unit W/(m·K). */
public interface ThermalConductivity extends Quantity<ThermalConductivity> {}
