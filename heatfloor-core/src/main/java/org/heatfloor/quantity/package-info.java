/**
 * The quantity types the field needs beyond JSR 385, their units, short factories, conversion to SI at the door of the
 * library, and a strict reader and writer of quantities as text (metric and feet-inches-fractions).
 *
 * <p>Public methods of the library take and return {@link javax.measure.Quantity}; kernels work in SI {@code double}.
 * {@link org.heatfloor.quantity.Si} is the one place where a quantity becomes a {@code double} and back. Temperatures:
 * {@link javax.measure.quantity.Temperature} is an absolute temperature and nothing else; a difference is a
 * {@link org.heatfloor.quantity.TemperatureDifference}.
 */
@NullMarked
package org.heatfloor.quantity;

import org.jspecify.annotations.NullMarked;
