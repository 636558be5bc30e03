// Which spellings count as a unit on import, and the canonical code of each. Units of people's tables, not of arithmetic.
const TABLE: readonly (readonly [code: string, spellings: string])[] = [
  ["mm", "mm millimetre millimetres millimeter millimeters"],
  ["cm", "cm"],
  ["m", "m"],
  ["km", "km"],
  ["um", "um"],
  ["[in_i]", "in in. inch inches \" ″ ” ''"],
  ["[ft_i]", "ft foot feet"],
  ["[mil_i]", "thou mil mils"],
  ["g", "g gr"],
  ["kg", "kg"],
  ["mg", "mg"],
  ["[oz_av]", "oz"],
  ["[lb_av]", "lb lbs"],
  ["g/cm3", "g/cm3 g/cc"],
  ["kg/m3", "kg/m3"],
  ["[lb_av]/[ft_i]3", "lb/ft3 lbs/ft3 pcf"],
  ["g/cm2", "g/cm2"],
  ["kg/m2", "kg/m2"],
  ["mm2", "mm2"],
  ["cm2", "cm2"],
  ["m2", "m2"],
  ["mm3", "mm3"],
  ["cm3", "cm3"],
  ["m3", "m3"],
  ["s", "s"],
  ["ms", "ms"],
  ["min", "min"],
  ["h", "h"],
  ["d", "d days"],
  ["dB", "dB"],
  ["m/s", "m/s"],
  ["mm/s", "mm/s"],
  ["GPa", "GPa"],
  ["MPa", "MPa"],
  ["kPa", "kPa"],
  ["Pa", "Pa"],
  ["N/mm2", "N/mm2"],
  ["[psi]", "psi"],
  ["kgf/cm2", "kgf/cm2 kp/cm2"],
  ["N", "N"],
  ["kgf", "kgf"],
  ["[lbf_av]", "lbf"],
  ["N.m", "N.m"],
  ["N.m2", "N.m2"],
  ["Hz", "Hz"],
  ["kHz", "kHz"],
  ["{cent}", "ct cent cents"],
  ["%", "% pct percent"],
  ["Cel", "°C"],
  ["[degF]", "°F"],
  ["K", "K"],
  ["deg", "° deg degrees"],
  ["'", "arcmin ' ′"],
  ["um/m", "um/m"],
];
const CODES = new Map(
  TABLE.flatMap(([code, spellings]) => [code, ...spellings.split(" ")].map((spelling) => [spelling, code] as const)),
);

/** The UCUM code of a written unit, null if it is none. Case matters, except for words of four letters or more. Source: UCUM 2.1. */
export function importUnit(written: string): string | null {
  const trimmed = written.trim();
  if (trimmed === "" || trimmed.length > 24) return null;
  const direct = CODES.get(trimmed);
  if (direct !== undefined) return direct;
  const parts = trimmed
    .replaceAll("²", "2")
    .replaceAll("³", "3")
    .replace(/\^(?=[23])/g, "")
    .replace(/[µμ]/g, "u")
    .split(/ ?([·*⋅./ ]) ?/);
  if (parts.some((part) => part === "")) return null;
  const known = parts.map((part, at) => (at % 2 === 0 || part === "/" ? part : ".")).join("");
  return CODES.get(known) ?? (/^\p{L}{4,}$/u.test(known) ? (CODES.get(known.toLowerCase()) ?? null) : null);
}
