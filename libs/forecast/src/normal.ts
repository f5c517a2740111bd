/** Density of the standard normal distribution at `z`. */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Share of the standard normal distribution at or below `z`.
 * Series of M. Abramowitz and I. Stegun, Handbook of Mathematical Functions, 26.2.11; its terms are all positive.
 */
export const normalShareBelow = (z: number): number => {
  if (z < 0) return 1 - normalShareBelow(-z);
  // Beyond this the share is 1 to the last digit of a number.
  if (z > 9) return 1;
  let term = z;
  let series = z;
  for (let odd = 3; term > series * Number.EPSILON; odd += 2) {
    term *= (z * z) / odd;
    series += term;
  }
  return 0.5 + normalDensity(z) * series;
};

/**
 * The `z` that a share of the standard normal distribution lies below: 1.6449 for 0.95. Newton's method from the mean,
 * where the curve is concave towards the answer, so that every step comes nearer and none goes past it.
 * Throws a RangeError for a share that is not between 0 and 1.
 */
export const normalQuantile = (share: number): number => {
  if (!(share > 0 && share < 1))
    throw new RangeError(`A share such as a service level lies between 0 and 1, not at ${share}.`);
  if (share < 0.5) return -normalQuantile(1 - share);
  let z = 0;
  for (let step = 1; step > 1e-12; ) {
    step = (share - normalShareBelow(z)) / normalDensity(z);
    z += step;
  }
  return z;
};

/** Expected excess of a standard normal variable over `z` (the loss function). */
export const normalLoss = (z: number): number => normalDensity(z) - z * (1 - normalShareBelow(z));
