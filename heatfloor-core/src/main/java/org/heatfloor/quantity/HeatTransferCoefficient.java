package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Surface coefficient of heat transfer; SI unit W/(m²·K). */
public interface HeatTransferCoefficient extends Quantity<HeatTransferCoefficient> {}
