package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Power per area (heat flux density); SI unit W/m². */
public interface HeatFlux extends Quantity<HeatFlux> {}
