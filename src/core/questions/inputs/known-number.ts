/** A number for a field; null where it cannot be said. */
export const knownNumber = (value: number): number | null => (Number.isFinite(value) ? value : null);
