package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Mass per volume; SI unit kg/m³. */
public interface Density extends Quantity<Density> {}
