// Units: where they stand, every spelling of the table with its code, and what differs, is mixed, missing or unknown.
import { expect, it } from "vitest";
import { columnReading } from "../../support/column-reading.ts";

type Case = readonly [title: string, lines: readonly string[]];

/** The table of written units and their UCUM codes, spelling by spelling. */
const TABLE: readonly (readonly [code: string, ...written: string[]])[] = [
  ["mm", "mm", "millimetre", "millimetres", "millimeter", "millimeters", "Millimetres"],
  ["cm", "cm"],
  ["m", "m"],
  ["km", "km"],
  ["um", "µm", "μm", "um"],
  ["[in_i]", "in", "in.", "inch", "inches", "Inches", '"', "″", "[in_i]"],
  ["[ft_i]", "ft", "foot", "feet", "Feet", "[ft_i]"],
  ["[mil_i]", "thou", "mil", "mils", "Thou", "[mil_i]"],
  ["g", "g", "gr"],
  ["kg", "kg"],
  ["mg", "mg"],
  ["[oz_av]", "oz", "[oz_av]"],
  ["[lb_av]", "lb", "lbs", "[lb_av]"],
  ["g/cm3", "g/cm³", "g/cm^3", "g/cm3", "g/cc"],
  ["kg/m3", "kg/m³", "kg/m^3", "kg/m3", "kg / m³"],
  ["[lb_av]/[ft_i]3", "lb/ft³", "lb/ft3", "lbs/ft3", "lbs/ft^3", "pcf", "[lb_av]/[ft_i]3"],
  ["g/cm2", "g/cm²", "g/cm2", "g/cm^2"],
  ["kg/m2", "kg/m²", "kg/m2"],
  ["mm2", "mm²", "mm2", "mm^2"],
  ["cm2", "cm²", "cm2"],
  ["m2", "m²", "m^2"],
  ["mm3", "mm³"],
  ["cm3", "cm³", "cm^3"],
  ["m3", "m³"],
  ["s", "s"],
  ["ms", "ms"],
  ["min", "min"],
  ["h", "h"],
  ["d", "d", "days", "Days"],
  ["dB", "dB"],
  ["m/s", "m/s"],
  ["mm/s", "mm/s"],
  ["GPa", "GPa"],
  ["MPa", "MPa"],
  ["kPa", "kPa"],
  ["Pa", "Pa"],
  ["N/mm2", "N/mm²", "N/mm^2", "N/mm2"],
  ["[psi]", "psi", "[psi]"],
  ["kgf/cm2", "kgf/cm²", "kp/cm²", "kgf/cm2", "kp/cm^2"],
  ["N", "N"],
  ["kgf", "kgf"],
  ["[lbf_av]", "lbf", "[lbf_av]"],
  ["N.m", "N·m", "N*m", "N m", "N.m"],
  ["N.m2", "N·m²", "N m²", "N*m^2", "N m2", "N.m2"],
  ["Hz", "Hz"],
  ["kHz", "kHz"],
  ["{cent}", "ct", "cent", "cents", "Cents", "{cent}"],
  ["%", "%", "pct", "percent", "Percent"],
  ["Cel", "°C", "Cel"],
  ["[degF]", "°F", "[degF]"],
  ["K", "K"],
  ["deg", "°", "deg", "degrees", "Degrees"],
  ["'", "arcmin", "Arcmin"],
  ["um/m", "µm/m", "um/m", "μm/m"],
];
const spellings = TABLE.flatMap(([code, ...written]) => written.map((one) => [one, code] as const));

it.each(spellings)("reads %s as %s in a header, a units row and a cell, with or without a space", (written, code) => {
  const spaced = [`a => a quantity ${code}`, `2.5 ${written} => 2.5 ${code}`];
  expect(columnReading(spaced)).toEqual(spaced);
  const glued = [`a => a quantity ${code}`, `2.5${written} => 2.5 ${code}`];
  expect(columnReading(glued)).toEqual(glued);
  for (const header of [`a (${written})`, `a [${written}]`, `a, ${written}`, `a / ${written}`, `a_${written}`]) {
    const beneath = [`${header} => a quantity ${code}`, `2.5 => 2.5 ${code}`];
    expect(columnReading(beneath)).toEqual(beneath);
  }
});

it.each(["mm", "cm", "kg", "Hz", "kHz", "GPa", "MPa", "psi", "thou", "kg/m3", "g/cm3", "kg/m³"])(
  "takes %s after a space of the header for its unit",
  (written) => {
    const code = { psi: "[psi]", thou: "[mil_i]", "kg/m³": "kg/m3" }[written] ?? written;
    const lines = [`E long ${written} => E long quantity ${code}`, `2.5 => 2.5 ${code}`];
    expect(columnReading(lines)).toEqual(lines);
  },
);

const headers: Case[] = [
  ["in after a space is a word", ["check in => check in quantity", "2 => 2"]],
  ["other units after a space stay in the name", ["mass g => mass g quantity", "2 => 2"]],
  ["a bracket that holds no unit stays", ["thickness (bass side) => thickness (bass side) quantity", "2 => 2"]],
  ["the last bracket is the unit's", ["width (bass) [mm] => width (bass) quantity mm", "2 => 2 mm"]],
  ["two brackets with units: the last", ["width (in) (mm) => width (in) quantity mm", "2 => 2 mm"]],
  ["brackets of its own", ["depth [[in_i]] => depth quantity [in_i]", "2 => 2 [in_i]"]],
  [
    "a quotient of bracketed codes",
    ["heavy [[lb_av]/[ft_i]3] => heavy quantity [lb_av]/[ft_i]3", "2 => 2 [lb_av]/[ft_i]3"],
  ],
  [
    "a bracketed code after a comma",
    ["heavy, [lb_av]/[ft_i]3 => heavy quantity [lb_av]/[ft_i]3", "2 => 2 [lb_av]/[ft_i]3"],
  ],
  ["a quotient after an underscore", ["density_kg/m3 => density quantity kg/m3", "2 => 2 kg/m3"]],
  ["a quotient with other letters after an underscore", ["v_m/s => v quantity m/s", "2 => 2 m/s"]],
  ["half a quotient is no unit", ["density_kg_m3 => density_kg_m3 quantity", "2 => 2"]],
  ["nor is half a product", ["torque_N_m => torque_N_m quantity", "2 => 2"]],
  ["words that are units by chance part nothing", ["length_in_mm => length_in quantity mm", "2 => 2 mm"]],
  ["a quotient after a slash", ["density / kg/m3 => density quantity kg/m3", "2 => 2 kg/m3"]],
  ["a quotient after a comma", ["speed, m/s => speed quantity m/s", "2 => 2 m/s"]],
  ["runs of white space are one space", ["  tap   tone  (Hz)  => tap tone quantity Hz", "2 => 2 Hz"]],
  ["letters' case matters", ["a (MM) => a (MM) quantity", "2 => 2"]],
  ["no unit in a bracket of words", ["a (in mm) => a (in mm) quantity", "2 => 2"]],
];

const cells: Case[] = [
  [
    "the cell wins over the header and says so; the same unit is no warning",
    [
      "a (mm) => a quantity mm",
      "2.4 => 2.4 mm",
      "2.5 mm => 2.5 mm",
      "2.5millimetres => 2.5 mm",
      "0.25 cm => 0.25 cm !unit-differs",
      "94 thou => 94 [mil_i] !unit-differs",
    ],
  ],
  [
    "several units without one in the header",
    [
      "a => a quantity !mixed-units",
      "2.4 mm => 2.4 mm",
      "0.094 in => 0.094 [in_i]",
      "94 mils => 94 [mil_i]",
      "2.5 => 2.5 !unit-missing",
    ],
  ],
  [
    "bare numbers among cells with a unit",
    ["a => a quantity mm", "2.4 mm => 2.4 mm", "2.5 => 2.5 !unit-missing", "2.6mm => 2.6 mm", "~3 => 3 !unit-missing"],
  ],
  [
    "units that nobody knows",
    [
      "a (g) => a quantity g",
      "201 => 201 g",
      "7.1 zorks => !unknown-unit",
      "7.1 MM => !unknown-unit",
      "7.1 kgs => !unknown-unit",
      "7 grain => !unknown-unit",
      "7 PSI => !unknown-unit",
      "7 m/s² => !unknown-unit",
      "7 N·mm => !unknown-unit",
      "7 °X => !unknown-unit",
      "2 kg => 2 kg !unit-differs",
    ],
  ],
  [
    "a point or a star beside a unit is no unit",
    ["a (mm) => a quantity mm", "2 => 2 mm", "2.5 .mm => !unreadable-number", "2.5 ·mm => !unreadable-number"],
  ],
  ["a mark after a number is feet", ["a => a quantity [ft_i]", "6' => 6 [ft_i]", "5′ => 5 [ft_i]", "4 ft => 4 [ft_i]"]],
  [
    "and minutes of arc under degrees",
    [
      "a (°) => a quantity deg",
      "1.5 => 1.5 deg",
      "30' => 30 ' !unit-differs",
      "30′ => 30 ' !unit-differs",
      "1° 30' => 1.5 deg",
      "1°30′ => 1.5 deg",
      "2° => 2 deg",
    ],
  ],
  ["and under arc minutes", ["a (arcmin) => a quantity '", "30 => 30 '", "30' => 30 '", "45 arcmin => 45 '"]],
  ["a prime in a header is arc minutes", ["a (′) => a quantity '", "30 => 30 '", "30′ => 30 '"]],
];

for (const [title, lines] of [...headers, ...cells]) it(title, () => expect(columnReading(lines)).toEqual(lines));
