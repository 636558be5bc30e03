// Young's modulus of strips and bars.
import type { PhysicsAdapters } from "./physics-adapter.ts";

const plate = { L: "length", b: "width", h: "thickness" };

export const barAdapters: PhysicsAdapters = {
  E_three_point_bending: [
    {
      method: "three-point-stiffness",
      inputs: { F: "force", y: "deflection", L: "span", b: "width", h: "thickness" },
      fields: { E: "youngsModulus" },
    },
  ],
  E_three_point_from_mass: [
    {
      method: "three-point-stiffness-by-mass",
      inputs: { m: "mass", y: "deflection", L: "span", b: "width", h: "thickness" },
      fields: { E: "youngsModulus" },
    },
  ],
  bar_Timoshenko_frequency: [
    {
      method: "timoshenko-bar-frequencies",
      inputs: { E: "youngsModulus", G: "shearModulus", rho: "density", L: "length", h: "thickness", k: "coefficient" },
      fields: Object.fromEntries([1, 2, 3, 4, 5, 6].map((at) => [`f${at}`, `frequency${at}`])),
    },
  ],
  bar_isotropic_correction_ASTM: [
    {
      method: "bar-isotropic-factor",
      inputs: { poisson: "poisson", t_over_L: "slenderness" },
      fields: { T1: "factor" },
    },
  ],
  E_cantilever: [
    {
      method: "cantilever-stiffness",
      inputs: { F: "force", y: "deflection", ...plate },
      fields: { E: "youngsModulus" },
    },
  ],
  E_three_point_shear_corrected: [
    {
      method: "bending-shear-corrected",
      inputs: { E_app: "apparent", E_over_G: "modulusRatio", L: "span", h: "thickness", k: "coefficient" },
      fields: { E_true: "youngsModulus" },
    },
  ],
  E_free_free_bar: [
    { method: "bar-stiffness", inputs: { m: "mass", f: "frequency", ...plate }, fields: { E: "youngsModulus" } },
  ],
  E_free_free_bar_second_mode: [
    {
      method: "bar-stiffness-by-mode",
      inputs: { m: "mass", f: "frequency", ...plate },
      fields: { E: "youngsModulus" },
      fixed: { mode: 2 },
    },
  ],
  free_free_bar_frequency: [1, 2, 3, 4, 5, 6].map((mode) => ({
    method: "bar-frequency",
    inputs: { E: "youngsModulus", rho: "density", L: "length", h: "thickness" },
    fields: { [`f${mode}`]: "frequency" },
    fixed: { mode },
  })),
  bar_shear_correction_factor: [
    {
      method: "bar-shear-factor",
      inputs: { E_over_G: "modulusRatio", h_over_L: "slenderness", k: "coefficient" },
      fields: { T: "factor" },
    },
  ],
  E_longitudinal_resonance: [
    {
      method: "longitudinal-stiffness",
      inputs: { rho: "density", L: "length", f: "frequency" },
      fields: { c: "soundSpeed", E: "youngsModulus" },
    },
  ],
  E_time_of_flight: [
    {
      method: "flight-stiffness",
      inputs: { rho: "density", L: "length", t: "time" },
      fields: { c: "soundSpeed", E: "youngsModulus" },
    },
  ],
  property_moisture_adjustment: [
    {
      method: "property-at-moisture",
      inputs: { P12: "at12", Pg: "green", M: "moisture", Mp: "intersection" },
      fields: { P: "property" },
    },
  ],
  holding_points_bending_mode: [
    { method: "holding-points", inputs: { L: "length" }, fields: { x1: "near", x2: "far" } },
  ],
  G_torsion_strip: [
    {
      method: "torsion-shear-modulus",
      inputs: { rho: "density", f: "frequency", ...plate },
      fields: { G: "shearModulus" },
    },
  ],
  property_back_to_12_percent: [
    {
      method: "property-at-12",
      inputs: { P: "found", ratio: "ratio", M: "moisture", Mp: "intersection" },
      fields: { P12: "property" },
    },
  ],
};
