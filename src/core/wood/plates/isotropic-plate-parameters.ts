import { succeeded } from "../../base/index.ts";
import { sources } from "../sources.ts";
import { woodAnswer } from "../wood-answer.ts";
import { leftOut, positive } from "../wood-method.ts";
import { modesInput, polynomialsInput } from "./plate-inputs.ts";
import { plateModes } from "./plate-modes.ts";

/**
 * Frequencies of a free isotropic plate as pure numbers: lambda = omega a^2 sqrt(density h/D). poisson: 0 to 0.5; aspect: a/b; modes, polynomials as in plateModes.
 * A square of poisson 0.3: 13.468, 19.596, 24.270, 34.801 twice. Source: as plateModes.
 */
export function isotropicPlateParameters(poisson: number, aspect = 1, modes = 6, polynomials = 16): readonly number[] {
  // With D = 1, a = 1, density h = 1, lambda is the angular frequency: thickness 1, E = 12 (1 - poisson^2).
  const modulus = 12 * (1 - poisson ** 2);
  const { lowest } = plateModes(
    {
      length: 1,
      width: 1 / aspect,
      thickness: 1,
      density: 1,
      along: modulus,
      across: modulus,
      shear: modulus / (2 * (1 + poisson)),
      poisson,
    },
    modes,
    polynomials,
  );
  return lowest.map(({ frequency }) => 2 * Math.PI * frequency);
}

const ordinals = ["lowest", "second", "third", "fourth", "fifth", "sixth"];
export const isotropicPlateMethod = woodAnswer({
  id: "isotropic-plate-parameters",
  name: "frequencies of a free isotropic plate as pure numbers",
  inputs: {
    poisson: { kind: "quantity", dimension: "1", meaning: "Poisson ratio", above: -1, atMost: 0.5 },
    aspect: leftOut(positive("1", "length over width"), 1),
    modes: modesInput,
    polynomials: polynomialsInput(16),
  },
  fields: {
    lambdas: {
      meaning: "angular frequency times length squared times sqrt(density h/D), lowest first",
      dimension: "1",
    },
    ...Object.fromEntries(
      ordinals.map((which, at) => [`lambda${at + 1}`, { meaning: `the ${which} of them`, dimension: "1" }]),
    ),
  },
  source: sources.ritzPlate,
  run: ({ poisson, aspect, modes, polynomials }) => {
    const lambdas = isotropicPlateParameters(poisson, aspect, modes, polynomials);
    return succeeded({
      lambdas,
      ...Object.fromEntries(lambdas.slice(0, 6).map((lambda, at) => [`lambda${at + 1}`, lambda])),
    });
  },
});
