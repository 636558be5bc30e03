/** Moisture content above which wood swells no more; real species lie at 0.25 to 0.30. Source: Wood Handbook, chapter 4. */
export const FIBRE_SATURATION = 0.3;

/** Whether swelling and the strength of wood still follow the moisture. moisture: fraction of oven-dry mass. */
export const fibreSaturation = { isBelow: (moisture: number): boolean => moisture < FIBRE_SATURATION } as const;
