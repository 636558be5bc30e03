/** From here on whole numbers have neighbours that a double cannot tell apart. */
const LARGEST_EXACT = 2 ** 53;

/** A whole number of which a sheet may have lost digits. */
export const isInexact = (value: number): boolean => Number.isInteger(value) && Math.abs(value) > LARGEST_EXACT;
