/** Evenly spread points, always the same: for trying many ways without chance. */

/**
 * Steps of an evenly spread sequence in `dimensions`: the d-th is g^-(d+1), g the root of x^(dimensions+1) = x + 1. The n-th
 * point is the fraction of (0.5 + n · step). Source: derived.
 */
export function evenSteps(dimensions: number): number[] {
  let g = 2
  for (let i = 0; i < 40; i++) g = (1 + g) ** (1 / (dimensions + 1))
  return Array.from({ length: dimensions }, (_, d) => g ** -(d + 1))
}

/**
 * Steps for many dimensions at once, where the powers of `evenSteps` lie too near each other: square roots of the primes.
 * Source: derived.
 */
export function rootSteps(dimensions: number): number[] {
  const primes: number[] = []
  for (let n = 2; primes.length < dimensions; n++) if (primes.every((p) => n % p > 0)) primes.push(n)
  return primes.map(Math.sqrt)
}

/** Place of the n-th point along one dimension, 0 up to but never 1. Source: derived. */
export const evenAt = (n: number, step: number): number => (0.5 + n * step) % 1

/**
 * Shares that sum to 1, uniform over all such: each takes its part of what is left, by the inverse of how that part is spread,
 * 1 − (1 − u)^(1/m) with m shares still to come. No folding of the unit cube, so that even numbers give even shares.
 * @param even numbers from 0 to 1
 * @param shares one more than `even`; filled
 * Source: derived.
 */
export function sharesFrom(even: Float64Array, shares: Float64Array): void {
  let left = 1
  for (let i = 0; i < even.length; i++) {
    const toCome = even.length - i
    const kept = left * (toCome === 1 ? 1 - (even[i] as number) : (1 - (even[i] as number)) ** (1 / toCome))
    shares[i] = left - kept
    left = kept
  }
  shares[even.length] = left
}
