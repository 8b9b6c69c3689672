package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Mass per area; SI unit kg/m². */
public interface ArealDensity extends Quantity<ArealDensity> {}
