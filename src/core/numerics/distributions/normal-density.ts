/** Density of the standard normal law, exp(-z^2/2) / sqrt(2 pi). z: any real. Relative 1e-15 for |z| < 30. Source: DLMF 7.1. */
export const normalDensity = (z: number): number => 0.3989422804014327 * Math.exp(-0.5 * z * z);
