// How the maker writes a number or a record down.

/** Fixed decimals. */
export const written = (value: number, decimals: number): string => value.toFixed(decimals);

/** With the decimal comma. */
export const withComma = (value: number, decimals: number): string => value.toFixed(decimals).replace(".", ",");

/** The nearest `parts`th of an inch as a fraction in lowest terms: 0.00238 -> "3/32". */
export function asFraction(metres: number, parts = 64): string {
  let above = Math.round((metres / 0.0254) * parts);
  let below = parts;
  while (above % 2 === 0 && below > 1) [above, below] = [above / 2, below / 2];
  const whole = Math.floor(above / below);
  const rest = above - whole * below;
  return rest === 0 ? String(whole) : `${whole === 0 ? "" : `${whole} `}${rest}/${below}`;
}

/** One record: fields with the delimiter, a quote or a newline inside are quoted. */
export const record = (fields: readonly string[], delimiter = ","): string =>
  fields
    .map((field) => (field.includes(delimiter) || field.includes('"') ? `"${field.replaceAll('"', '""')}"` : field))
    .join(delimiter);
