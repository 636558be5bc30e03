import { declined, type MethodInputs, type Outcome, succeeded } from "../base/index.ts";
import { sources } from "./sources.ts";
import { woodAnswer } from "./wood-answer.ts";

/** With what powers a quantity goes with Young's modulus, density and thickness of a plate of given outline. */
type Powers = readonly [modulus: number, density: number, thickness: number];
const powersOf: Readonly<Record<string, Powers>> = {
  E: [1, 0, 0],
  rho: [0, 1, 0],
  h: [0, 0, 1],
  "rho h": [0, 1, 1],
  c: [1 / 2, -1 / 2, 0],
  R: [1 / 2, -3 / 2, 0],
  z: [1 / 2, 1 / 2, 0],
  "E/rho": [1, -1, 0],
  D: [1, 0, 3],
  y: [-1, 0, -3],
  f: [1 / 2, -1 / 2, 1],
};
/** What each rule holds constant. */
const heldBy: Readonly<Record<string, string>> = {
  "equal stiffness": "D",
  "equal areal mass": "rho h",
  "equal frequency": "f",
  "equal deflection": "y",
};
const otherNames: Readonly<Record<string, string>> = {
  "equal bending stiffness": "equal stiffness",
  "equal mass": "equal areal mass",
  "equal plate frequency": "equal frequency",
  "equal deflection at one load": "equal deflection",
  density: "rho",
  thickness: "h",
  "areal mass": "rho h",
  m: "rho h",
  "radiation ratio": "R",
  "sound speed": "c",
  impedance: "z",
};
const known = (name: string): string => otherNames[name] ?? name;

/** Powers of modulus and density with which a quantity goes among plates that keep the rule: the thickness is what the rule makes it. */
function alongRule(quantity: Powers, held: Powers): readonly [modulus: number, density: number] {
  const thickness = [-held[0] / held[2], -held[1] / held[2]] as const;
  return [quantity[0] + quantity[2] * thickness[0], quantity[1] + quantity[2] * thickness[1]];
}

/**
 * The slope of ln y against ln x that a thickness rule asks for. Each quantity is a product of powers of E, density and thickness; the rule makes the thickness.
 * rule, x, y: names of the tables above. x moves by the modulus at a fixed density (or, where the modulus is not in it, by density at a fixed modulus),
 * unless y is a power of x whatever moves. Null where x does not move. Source: algebra.
 * @example ruleExponent("equal stiffness", "E", "h") -> -1/3
 */
export function ruleExponent(
  rule: string,
  x: string,
  y: string,
  fixed: "density" | "modulus" | null = null,
): number | null {
  const held = powersOf[heldBy[known(rule)] ?? ""];
  const [one, other] = [powersOf[known(x)], powersOf[known(y)]];
  if (!held || !one || !other) return null;
  const [byModulus, byDensity] = alongRule(one, held);
  const [toModulus, toDensity] = alongRule(other, held);
  const isPower = Math.abs(byModulus * toDensity - byDensity * toModulus) < 1e-12;
  const usesModulus = fixed === null ? Math.abs(byModulus) > 1e-12 : fixed === "density";
  const [over, rise] = usesModulus ? [byModulus, toModulus] : [byDensity, toDensity];
  if (isPower && Math.abs(byModulus) > 1e-12) return toModulus / byModulus;
  return Math.abs(over) < 1e-12 ? null : rise / over;
}

const names = (record: Readonly<Record<string, unknown>>, kept: readonly string[]) => [
  ...Object.keys(record),
  ...Object.keys(otherNames).filter((name) => kept.includes(otherNames[name] ?? "")),
];
const quantities = names(powersOf, Object.keys(powersOf));
const choice = (meaning: string, choices: readonly string[]) => ({ kind: "choice", meaning, choices }) as const;

function run(_: unknown, { rule, x, y, fixed }: MethodInputs): Outcome<{ readonly slope: number }> {
  for (const [name, value] of Object.entries({ rule, x, y }))
    if (typeof value !== "string")
      return declined("out-of-domain", { name: `${name} (the rule or a quantity)`, needed: "one of the names listed" });
  const kept = fixed === "density" || fixed === "modulus" ? fixed : null;
  const slope = ruleExponent(String(rule), String(x), String(y), kept);
  return slope === null
    ? declined("out-of-domain", {
        name: `x (${String(x)})`,
        needed: "a quantity that differs among plates that keep the rule",
      })
    : succeeded({ slope: slope === 0 ? 0 : slope });
}

export const ruleExponentMethod = woodAnswer({
  id: "rule-exponent",
  name: "the log-log slope that a thickness rule asks for",
  inputs: {
    rule: choice("the rule", names(heldBy, Object.keys(heldBy))),
    x: choice("the quantity along", quantities),
    y: choice("the quantity up", quantities),
    fixed: {
      ...choice("what is held while x moves; density where left out, modulus where x is free of it", [
        "density",
        "modulus",
      ]),
      optional: true,
    },
  },
  fields: { slope: { meaning: "slope of ln y against ln x", dimension: "1" } },
  source: sources.equalRule,
  run,
});
