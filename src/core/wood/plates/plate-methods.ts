// Every calculation of plates, in the order in which it is shown.
import type { Method } from "../../base/index.ts";
import { airLoadingMethod } from "./air-loading-bound.ts";
import { criticalAspectMethod } from "./critical-aspect.ts";
import { isotropicPlateMethod } from "./isotropic-plate-parameters.ts";
import { plateEstimatesMethod } from "./plate-estimates-method.ts";
import { plateFrequenciesMethod, plateFrequenciesWithShearMethod } from "./plate-frequencies-method.ts";
import { plateModuliMethod } from "./plate-moduli-method.ts";
import { poissonReciprocityMethod } from "./poisson-reciprocity.ts";
import { simplySupportedFrequencyMethod } from "./simply-supported-frequency.ts";

export const plateMethods: readonly Method[] = [
  plateModuliMethod,
  plateFrequenciesMethod,
  plateFrequenciesWithShearMethod,
  plateEstimatesMethod,
  poissonReciprocityMethod,
  criticalAspectMethod,
  isotropicPlateMethod,
  simplySupportedFrequencyMethod,
  airLoadingMethod,
];
