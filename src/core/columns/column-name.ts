/**
 * The name by which sentences call a column: its header in lower case, spaces and punctuation as `_`, letters of every script kept.
 * header: as it stands in the file, its unit already removed. A header without letters or digits is called "column".
 * @example columnName("Final thickness") -> "final_thickness"
 */
export function columnName(header: string): string {
  const words = header
    .normalize("NFC")
    .toLowerCase()
    .split(/[^\p{L}\p{M}\p{N}]/u)
    .filter((word) => word !== "");
  return words.join("_") || "column";
}

/** The name, or with `_2`, `_3` … after it if it is taken. */
export function freeName(name: string, taken: { readonly has: (name: string) => boolean }): string {
  if (!taken.has(name)) return name;
  let count = 2;
  while (taken.has(`${name}_${count}`)) count += 1;
  return `${name}_${count}`;
}
