// Thickness rules.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const thicknessAdapters: PhysicsAdapters = {
  equal_bending_stiffness_thickness: [
    {
      method: "equal-stiffness-thickness",
      inputs: { h1: "thickness", E1: "modulus1", E2: "modulus2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_areal_mass_thickness: [
    {
      method: "equal-mass-thickness",
      inputs: { h1: "thickness", rho1: "density1", rho2: "density2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_frequency_thickness: [
    {
      method: "equal-frequency-thickness",
      inputs: { h1: "thickness", E1: "modulus1", rho1: "density1", E2: "modulus2", rho2: "density2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_deflection_thickness: [
    {
      method: "equal-deflection-thickness",
      inputs: { h1: "thickness", y1: "deflection1", y2: "deflection2" },
      fields: { h2: "thickness" },
    },
  ],
  frequency_change_on_thinning: [
    {
      method: "thinned-frequency",
      inputs: { f1: "frequency", h1: "thickness1", h2: "thickness2" },
      fields: { f2: "frequency" },
    },
  ],
  target_thickness_simply_supported: [
    {
      method: "target-thickness",
      inputs: {
        f_target: "frequency",
        a: "length",
        b: "width",
        rho: "density",
        E_L: "along",
        E_R: "across",
        G_LR: "shear",
        nu_LR: "poisson",
      },
      fields: { h: "thickness" },
    },
  ],
  loglog_exponent_of_rule: [
    { method: "rule-exponent", inputs: { rule: "rule", x: "x", y: "y" }, fields: { slope: "slope" } },
  ],
  mass_penalty_of_substitution: [
    {
      method: "substitution-mass",
      inputs: { E1: "modulus1", rho1: "density1", E2: "modulus2", rho2: "density2" },
      fields: {
        mass_ratio_equal_stiffness: "atEqualStiffness",
        mass_ratio_equal_frequency: "atEqualFrequency",
        R_ratio: "radiationRatios",
      },
    },
  ],
};
