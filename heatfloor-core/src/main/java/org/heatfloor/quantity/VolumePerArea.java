package org.heatfloor.quantity;

import javax.measure.Quantity;

/** Volume per area; SI unit m³/m², which is a depth in metres; the trade says L/m². */
public interface VolumePerArea extends Quantity<VolumePerArea> {}
