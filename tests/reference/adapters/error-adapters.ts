// Uncertainty and tests of rules.
import { fromSi, toSi, unitFromText } from "../../../src/core/units/index.ts";
import type { PhysicsCase, PhysicsValue } from "../physics-case.ts";
import { listedInputs, type PhysicsAdapters } from "./physics-adapter.ts";

const SHARED = { um: "mass", uf: "frequency", uL: "length", ub: "width", uh: "thickness" };
const WORKED = { m: "mass", f: "frequency", L: "length", b: "width", h: "thickness" };

/** A number in another unit of the same kind; methods without a dimension of their own give their result in the unit of their inputs. */
export function inUnit({ value, unit }: PhysicsValue, wanted: string): unknown {
  const [from, to] = [unitFromText(unit), unitFromText(wanted)];
  return typeof value === "number" && from && to && unit !== wanted ? fromSi(toSi(value, from), to) : value;
}
const wantedUnit = ({ expected }: PhysicsCase, field: string, otherwise: string): string =>
  expected[field]?.unit ?? otherwise;

export const errorAdapters: PhysicsAdapters = {
  uncertainty_bar_independent: [
    {
      method: "bar-relative-uncertainty",
      inputs: SHARED,
      fields: { u_E: "youngsModulus", u_rho: "density", u_R: "radiationRatio", u_c: "soundSpeed" },
    },
  ],
  uncertainty_bar_worked: [
    {
      method: "bar-stiffness-uncertainty",
      inputs: {
        ...WORKED,
        ...Object.fromEntries(Object.entries(WORKED).map(([theirs, ours]) => [`u${theirs}`, `${ours}Uncertainty`])),
      },
      fields: {
        E: "youngsModulus",
        u_E: "uncertainty",
        U_E_k2: "expanded",
        ...Object.fromEntries(Object.entries(WORKED).map(([theirs, ours]) => [`share_of_${theirs}`, `${ours}Share`])),
      },
    },
  ],
  uncertainty_three_point: [
    {
      method: "three-point-relative-uncertainty",
      inputs: { uF: "force", uL: "length", ub: "width", uh: "thickness", uy: "deflection" },
      fields: { u_E: "youngsModulus" },
    },
  ],
  uncertainty_plate_inverse: [
    {
      method: "plate-relative-uncertainty",
      inputs: { um: "mass", uf: "frequency", ua: "length", ub: "width", uh: "thickness" },
      fields: { u_EL: "alongModulus", u_ER: "acrossModulus", u_GLR: "shearModulus" },
    },
  ],
  rectangular_to_standard_uncertainty: [
    {
      method: "uncertainty-from-limits",
      inputs: {},
      fields: { u: "standard" },
      made: (one) => {
        const given = one.inputs.half_width;
        return given ? { halfWidth: inUnit(given, wantedUnit(one, "u", given.unit)) } : {};
      },
    },
  ],
  common_calliper_scale_error: [
    {
      method: "common-scale-error",
      inputs: { g: "scaleError" },
      fields: { E: "youngsModulus", rho: "density", R: "radiationRatio", c: "soundSpeed" },
    },
  ],
  thickness_error_effect: [
    {
      method: "thickness-error-effect",
      inputs: { g: "thicknessError" },
      fields: {
        E_from_mass: "youngsModulus",
        E_from_known_density: "youngsModulusAtKnownDensity",
        rho: "density",
        R: "radiationRatio",
        c: "soundSpeed",
      },
    },
  ],
  spurious_correlation_E_against_h: [
    {
      method: "shared-measurement-null",
      inputs: { s: "xSpread", u: "error", e: "ySpread", x: "x", y: "y" },
      fields: { corr: "correlation", slope_E_on_h: "slopeYOnX", slope_h_on_E: "slopeXOnY" },
    },
  ],
  spurious_correlation_R_against_density: [
    {
      method: "radiation-density-null",
      inputs: { e: "modulusSpread", d: "densitySpread" },
      fields: { corr: "correlation", slope: "slopeYOnX" },
    },
  ],
  rule_test_stiffer_tops_thinner: [
    {
      method: "rule-in-logs",
      inputs: { E_raw_board: "x", h_final: "y", density: "given" },
      fields: {
        n: "n",
        loglog_slope: "slope",
        slope_se: "slope_se",
        ci95_low: "low",
        ci95_high: "high",
        pearson_log: "r",
        p_two_sided: "p",
        spearman: "spearman",
        kendall_tau_b: "tau_b",
        slope_given_density: "slope_given",
        slope_given_density_se: "slope_given_se",
        partial_corr_given_density: "partial_r",
        interval_contains_minus_third: "contains_exponent",
        interval_contains_zero: "contains_zero",
      },
    },
  ],
  two_methods_agree_En: [
    {
      method: "results-agree",
      inputs: { x1: "first", U1: "firstExpanded", x2: "second", U2: "secondExpanded" },
      fields: { En: "En", agree: "agrees", agrees: "agrees" },
    },
  ],
  weighted_mean: [
    {
      method: "weighted-mean",
      inputs: {},
      fields: { mean: "mean", u: "u", chi2: "chi_square", p: "p", birge_ratio: "birge_ratio" },
      made: (one) => {
        const [values, errors] = [listedInputs(one, "x"), listedInputs(one, "u")];
        const unit = wantedUnit(one, "mean", values[0]?.unit ?? "1");
        return {
          values: values.map((each) => inUnit(each, unit)),
          uncertainties: errors.map((each) => inUnit(each, unit)),
        };
      },
      shownIn: (one) => {
        const unit = wantedUnit(one, "mean", listedInputs(one, "x")[0]?.unit ?? "1");
        return { mean: unit, u: unit };
      },
    },
  ],
};
