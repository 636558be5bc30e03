import { declined, succeeded } from "../../base/index.ts";
import { sources } from "../sources.ts";
import { woodAnswer } from "../wood-answer.ts";
import { woodModulus } from "../wood-method.ts";
import { axesCautions } from "./axes-cautions.ts";
import { isPoissonAdmissible } from "./plate-inputs.ts";

/** The other Poisson ratio of an orthotropic plate: nu_RL = nu_LR E_R/E_L. Source: symmetry of the elastic constants. */
export const poissonReciprocity = (poisson: number, along: number, across: number): number =>
  (poisson * across) / along;

export const poissonReciprocityMethod = woodAnswer({
  id: "poisson-reciprocity",
  name: "the other Poisson ratio of a plate",
  inputs: {
    poisson: { kind: "quantity", dimension: "1", meaning: "Poisson ratio nu_LR" },
    along: woodModulus("Young's modulus along the grain, E_L"),
    across: woodModulus("Young's modulus across the grain, E_R"),
  },
  fields: {
    poissonAcross: { meaning: "Poisson ratio nu_RL", dimension: "1" },
    oneMinusProduct: { meaning: "1 - nu_LR nu_RL, by which plates are stiffer than strips", dimension: "1" },
  },
  source: sources.elasticity,
  run: ({ poisson, along, across }) => {
    if (!isPoissonAdmissible(poisson, along, across))
      return declined("poisson-too-large", { poisson: String(poisson) });
    const poissonAcross = poissonReciprocity(poisson, along, across);
    return succeeded({ poissonAcross, oneMinusProduct: 1 - poisson * poissonAcross });
  },
  cautions: ({ along, across }) => axesCautions(along, across),
});
