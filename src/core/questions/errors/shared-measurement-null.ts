/** ln x = xExponent (s) and ln y = yExponent (s) + (own spreads), where s is what both were computed from. Spreads are standard deviations of logarithms. */
export type SharedMeasurement = {
  /** Spread of what is shared: the error of the measurement, or the quantity itself. */
  readonly shared: number;
  readonly xExponent: number;
  readonly yExponent: number;
  /** Spread of x and of y without it. */
  readonly xOwn: number;
  readonly yOwn: number;
};
export type SharedMeasurementNull = {
  readonly correlation: number;
  readonly slopeYOnX: number;
  readonly slopeXOnY: number;
};

/**
 * Correlation and slopes that arithmetic alone gives where y and x were computed from one measurement and no law of nature ties them:
 * covariance p q u^2, variances q^2 u^2 + s^2 of ln x and p^2 u^2 + e^2 of ln y.
 * u = shared, q = xExponent, p = yExponent, s = xOwn, e = yOwn; spreads >= 0, of logarithms (5 % is 0.05). Result: no units; NaN where x or y has no spread.
 * E computed from the thickness that is on the other axis: q = 1, p = -3. Source: K. Pearson (1897), Proc. Royal Society 60, 489-498; derived.
 * @example sharedMeasurementNull({ shared: 0.02, xExponent: 1, yExponent: -3, xOwn: 0.02, yOwn: 0.08 }).slopeXOnY // -0.12
 */
export function sharedMeasurementNull(between: SharedMeasurement): SharedMeasurementNull {
  const { shared, xExponent, yExponent, xOwn, yOwn } = between;
  const covariance = xExponent * yExponent * shared ** 2;
  const [varianceX, varianceY] = [(xExponent * shared) ** 2 + xOwn ** 2, (yExponent * shared) ** 2 + yOwn ** 2];
  return {
    correlation: covariance / Math.sqrt(varianceX * varianceY),
    slopeYOnX: covariance / varianceX,
    slopeXOnY: covariance / varianceY,
  };
}
