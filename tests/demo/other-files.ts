// The shop's smaller tables: backs (decimal commas, semicolons), earlier tops (fractional inches), checks of balance and calliper.
import { seeded } from "./seeded.ts";
import { trueEffects } from "./true-effects.ts";
import { dayAfter } from "./true-pieces.ts";
import { asFraction, record, withComma, written } from "./written.ts";

const BACKS = [
  { wood: "rosewood", count: 9, density: 838 },
  { wood: "cypress", count: 7, density: 508 },
  { wood: "maple", count: 5, density: 642 },
] as const;

/** Written on a machine that uses the decimal comma: a title above, a mean below. */
function backs(): string {
  const stream = seeded(trueEffects.seed, "backs file");
  const lines = [
    "Backs in the dry store;;;;;;",
    record(["Back ID", "Wood", "Mass (g)", "Length (mm)", "Width (mm)", "Thickness (mm)", "Note"], ";"),
  ];
  let number = 0;
  let total = 0;
  for (const { wood, count, density } of BACKS)
    for (let i = 0; i < count; i++) {
      number += 1;
      const [length, width, thickness] = [
        0.53 + 0.003 * stream.normal(),
        0.195 + 0.002 * stream.normal(),
        0.0035 + 0.0002 * stream.normal(),
      ];
      const grams = density * Math.exp(0.055 * stream.normal()) * length * width * thickness * 1e3;
      total += grams;
      const note =
        wood === "rosewood" && i === 0 ? "bought with its papers" : number === 11 ? "knot near the edge" : "";
      lines.push(
        record(
          [
            `B-${String(number).padStart(2, "0")}`,
            wood,
            withComma(grams, 1),
            withComma(length * 1e3, 1),
            withComma(width * 1e3, 1),
            number === 14 ? "" : withComma(thickness * 1e3, 2),
            note,
          ],
          ";",
        ),
      );
    }
  lines.push(record(["Mean", "", withComma(total / number, 1), "", "", "", ""], ";"));
  return `${lines.join("\r\n")}\r\n`;
}

/** From the years when the only rule in the shop was in inches. */
function earlierTops(): string {
  const stream = seeded(trueEffects.seed, "earlier tops file");
  const lines = [record(["Earlier top", "Year", "Species", "Length", "Width", "Thickness", "Mass (oz)"])];
  for (let i = 0; i < 16; i++) {
    const species = i % 3 === 2 ? "cedar" : "spruce";
    const [length, width, thickness] = [
      0.54 + 0.004 * stream.normal(),
      0.197 + 0.003 * stream.normal(),
      (species === "cedar" ? 0.0024 : 0.0027) + 0.00016 * stream.normal(),
    ];
    const ounces =
      ((species === "cedar" ? 355 : 428) * Math.exp(0.05 * stream.normal()) * length * width * thickness) /
      0.028349523125;
    const mark = i % 4 === 1 ? '"' : " in";
    lines.push(
      record([
        `E-${i + 1}`,
        String(2012 + Math.floor(i / 2)),
        species,
        asFraction(length, 16) + mark,
        asFraction(width, 16) + mark,
        i === 6 ? "" : asFraction(thickness) + mark,
        written(ounces, 2),
      ]),
    );
  }
  return `${lines.join("\n")}\n`;
}

const WEIGHTS = [50, 100, 200, 500];
const BLOCKS = [1, 2, 3, 4, 5];

/** The balance, and the kitchen scale it replaced, against check weights. */
function balanceChecks(): string {
  const stream = seeded(trueEffects.seed, "balance file");
  const lines = [record(["Date", "Rig", "Operator", "Reference (g)", "Reading (g)", "Remark"])];
  for (let visit = 0; visit < 12; visit++) {
    const date = dayAfter("2021-01-11", visit * 158);
    const isSet = date >= trueEffects.balanceSet;
    for (const weight of WEIGHTS) {
      const shown =
        weight * (isSet ? 1 : 1 + trueEffects.balanceShare) +
        (isSet ? 0 : trueEffects.balanceOffset * 1e3) +
        trueEffects.balanceScatter * 1e3 * stream.normal();
      lines.push(
        record([
          date,
          "balance",
          visit % 3 === 2 ? "apprentice" : "maker",
          written(weight, 1),
          visit === 4 && weight === 200 ? "" : written(shown, 1),
          visit === 4 && weight === 200 ? "weight mislaid" : "",
        ]),
      );
    }
    if (visit < 3)
      for (const weight of WEIGHTS)
        lines.push(
          record([
            date,
            "kitchen scale",
            "maker",
            written(weight, 1),
            written(Math.round((weight * 1.011 + 0.8 * stream.normal()) / 2) * 2, 1),
            "",
          ]),
        );
  }
  return `${lines.join("\n")}\n`;
}

/** The calliper against gauge blocks. */
function calliperChecks(): string {
  const stream = seeded(trueEffects.seed, "calliper file");
  const lines = [record(["Date", "Rig", "Operator", "Reference (mm)", "Reading (mm)"])];
  for (let visit = 0; visit < 10; visit++)
    for (const block of BLOCKS) {
      const shown = block + (trueEffects.calliperOffset + 0.6 * trueEffects.calliper * stream.normal()) * 1e3;
      lines.push(
        record([
          dayAfter("2021-01-11", visit * 190),
          "calliper",
          visit % 3 === 2 ? "apprentice" : "maker",
          written(block, 2),
          written(shown, 2),
        ]),
      );
    }
  return `${lines.join("\n")}\n`;
}

export const otherFiles: ReadonlyMap<string, () => string> = new Map([
  ["backs.csv", backs],
  ["earlier-tops.csv", earlierTops],
  ["rig-checks.csv", balanceChecks],
  ["calliper-checks.csv", calliperChecks],
]);
