// Plates.
import type { PhysicsAdapters, PhysicsWay } from "./physics-adapter.ts";

const moduli = { E_L: "along", E_R: "across", G_LR: "shear", nu_LR: "poisson" };
const outline = { a_along: "length", b_across: "width", a: "length", b: "width", h: "thickness", rho: "density" };
const threeModes = { f_long: "long", f_cross: "cross", f_twist: "twist" };
const throughThickness = { G_LT: "shearAlong", G_RT: "shearAcross", k: "coefficient" };
const upToNine = [1, 2, 3, 4, 5, 6, 7, 8, 9];
const numbered = (theirs: string, ours: string) =>
  Object.fromEntries(upToNine.slice(0, 6).map((at) => [`${theirs}${at}`, `${ours}${at}`]));

/** f11, f21 …: half waves along the grain, then across it. */
const simplySupported: readonly PhysicsWay[] = upToNine.flatMap((m) =>
  upToNine.map((n) => ({
    method: "simply-supported-frequency",
    inputs: { ...outline, ...moduli },
    fields: { [`f${m}${n}`]: "frequency" },
    fixed: { m, n },
  })),
);

export const plateAdapters: PhysicsAdapters = {
  free_square_plate_isotropic_parameter: [
    {
      method: "isotropic-plate-parameters",
      inputs: { poisson: "poisson", aspect: "aspect" },
      fields: numbered("lambda", "lambda"),
    },
  ],
  free_orthotropic_plate_forward: [
    {
      method: "plate-frequencies",
      inputs: { ...outline, ...moduli },
      fields: { ...numbered("f", "frequency"), ...threeModes, mixing_caution: "mixed" },
    },
  ],
  free_orthotropic_plate_inverse: [
    {
      method: "plate-moduli",
      inputs: { ...outline, m: "mass", ...threeModes, nu_LR: "poisson", ...throughThickness },
      fields: moduli,
    },
  ],
  free_orthotropic_plate_with_shear: [
    {
      method: "plate-frequencies-with-shear",
      inputs: { ...outline, ...moduli, ...throughThickness },
      fields: { ...numbered("f", "frequency"), ...threeModes },
    },
  ],
  plate_quick_estimates: [{ method: "plate-estimates", inputs: { ...outline, ...threeModes }, fields: moduli }],
  poisson_reciprocity: [
    {
      method: "poisson-reciprocity",
      inputs: moduli,
      fields: { nu_RL: "poissonAcross", one_minus_product: "oneMinusProduct" },
    },
  ],
  critical_aspect_ratio: [{ method: "critical-aspect", inputs: moduli, fields: { aspect: "aspect" } }],
  simply_supported_orthotropic_plate: simplySupported,
  air_loading_upper_bound: [
    {
      method: "air-loading-bound",
      inputs: { rho: "density", h: "thickness", k: "waveNumber", rho_air: "airDensity" },
      fields: { f_ratio: "ratio" },
    },
  ],
};
