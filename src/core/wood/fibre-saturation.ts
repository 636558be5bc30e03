/** Moisture content above which wood swells no more; real species lie at 0.25 to 0.30. Source: Wood Handbook, chapter 4. */
export const fibreSaturation = 0.3;

/** How far below fibre saturation wood is: 0 at and above it, 1 when oven-dry. moisture: fraction of oven-dry mass, >= 0. */
export const dryness = (moisture: number): number => Math.max(0, (fibreSaturation - moisture) / fibreSaturation);
