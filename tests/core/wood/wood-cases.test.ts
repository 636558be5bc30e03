// The catalogue of wood physics against worked cases from outside (tests/reference/physics/SOURCES.md says where they come from).
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { fromSi, toSi, unitFromText } from "../../../src/core/units/index.ts";
import { woodMethods } from "../../../src/core/wood/index.ts";
import { closeTo } from "../../support/close-to.ts";

type Value = {
  readonly value: number | string;
  readonly unit: string;
  readonly tolerance_relative?: number;
  readonly tolerance_absolute?: number;
};
type Case = {
  readonly id: string;
  readonly quantity: string;
  readonly section: number;
  readonly inputs: Record<string, Value>;
  readonly expected: Record<string, Value>;
};
const cases: Case[] = JSON.parse(
  readFileSync(new URL("../../reference/physics/wood-cases.json", import.meta.url), "utf8"),
);

/** quantity of the cases -> our method, its arguments by theirs, our fields by theirs. */
const plate = { L: "length", b: "width", h: "thickness" };
const WAYS: Record<
  string,
  readonly {
    id: string;
    inputs: Record<string, string>;
    fields: Record<string, string>;
    fixed?: Record<string, number>;
  }[]
> = {
  density_rectangular: [{ id: "density", inputs: { m: "mass", ...plate }, fields: { density: "density" } }],
  areal_mass: [{ id: "areal-mass", inputs: { m: "mass", ...plate }, fields: { areal_mass: "arealMass" } }],
  moisture_content_oven_dry: [
    { id: "moisture-content", inputs: { m_wet: "wetMass", m_dry: "dryMass" }, fields: { MC: "moisture" } },
  ],
  moisture_wet_basis_to_dry_basis: [
    { id: "moisture-from-wet-basis", inputs: { MC_wet: "wetBasis" }, fields: { MC: "moisture" } },
  ],
  density_from_basic_specific_gravity: [
    {
      id: "density-from-basic-gravity",
      inputs: { Gb: "basic", M: "moisture" },
      fields: { density: "density", G_M: "specificGravity" },
    },
  ],
  density_from_basic_specific_gravity_and_shrinkage: [
    {
      id: "density-from-basic-gravity",
      inputs: { Gb: "basic", M: "moisture", S0: "shrinkage" },
      fields: { density: "density", G_M: "specificGravity" },
    },
  ],
  specific_gravity_oven_dry_mass_volume_at_M: [
    {
      id: "specific-gravity",
      inputs: { rho: "density", M: "moisture" },
      fields: { G_M: "specificGravity", Gb: "basic" },
    },
  ],
  density_to_reference_moisture: [
    {
      id: "density-at-moisture",
      inputs: { rho: "density", M: "from", M_ref: "to" },
      fields: { density_ref: "density" },
    },
  ],
  shrinkage_dimension_change: [
    { id: "shrunk-size", inputs: { D1: "size", M1: "from", M2: "to", S: "shrinkage" }, fields: { D2: "size" } },
  ],
  equilibrium_moisture_content: [
    { id: "equilibrium-moisture", inputs: { T: "temperature", RH: "humidity" }, fields: { EMC: "moisture" } },
  ],
  E_three_point_bending: [
    {
      id: "three-point-stiffness",
      inputs: { F: "force", y: "deflection", L: "span", b: "width", h: "thickness" },
      fields: { E: "youngsModulus" },
    },
  ],
  E_cantilever: [
    { id: "cantilever-stiffness", inputs: { F: "force", y: "deflection", ...plate }, fields: { E: "youngsModulus" } },
  ],
  E_three_point_shear_corrected: [
    {
      id: "bending-shear-corrected",
      inputs: { E_app: "apparent", E_over_G: "modulusRatio", L: "span", h: "thickness" },
      fields: { E_true: "youngsModulus" },
    },
  ],
  E_free_free_bar: [
    { id: "bar-stiffness", inputs: { m: "mass", f: "frequency", ...plate }, fields: { E: "youngsModulus" } },
  ],
  E_free_free_bar_second_mode: [
    {
      id: "bar-stiffness-by-mode",
      inputs: { m: "mass", f: "frequency", ...plate },
      fields: { E: "youngsModulus" },
      fixed: { mode: 2 },
    },
  ],
  free_free_bar_frequency: [1, 2, 3].map((mode) => ({
    id: "bar-frequency",
    inputs: { E: "youngsModulus", rho: "density", L: "length", h: "thickness" },
    fields: { [`f${mode}`]: "frequency" },
    fixed: { mode },
  })),
  bar_shear_correction_factor: [
    { id: "bar-shear-factor", inputs: { E_over_G: "modulusRatio", h_over_L: "slenderness" }, fields: { T: "factor" } },
  ],
  E_longitudinal_resonance: [
    {
      id: "longitudinal-stiffness",
      inputs: { rho: "density", L: "length", f: "frequency" },
      fields: { c: "soundSpeed", E: "youngsModulus" },
    },
  ],
  E_time_of_flight: [
    {
      id: "flight-stiffness",
      inputs: { rho: "density", L: "length", t: "time" },
      fields: { c: "soundSpeed", E: "youngsModulus" },
    },
  ],
  property_moisture_adjustment: [
    {
      id: "property-at-moisture",
      inputs: { P12: "at12", Pg: "green", M: "moisture", Mp: "intersection" },
      fields: { P: "property" },
    },
  ],
  holding_points_bending_mode: [{ id: "holding-points", inputs: { L: "length" }, fields: { x1: "near", x2: "far" } }],
  G_torsion_strip: [
    {
      id: "torsion-shear-modulus",
      inputs: { rho: "density", f: "frequency", ...plate },
      fields: { G: "shearModulus" },
    },
  ],
  sound_speed_radiation_ratio_impedance: [
    {
      id: "sound-speed",
      inputs: { E: "youngsModulus", rho: "density" },
      fields: { c: "soundSpeed", specific_modulus: "specificModulus" },
    },
    { id: "radiation-ratio", inputs: { E: "youngsModulus", rho: "density" }, fields: { R: "radiationRatio" } },
    { id: "impedance", inputs: { E: "youngsModulus", rho: "density" }, fields: { z: "impedance" } },
  ],
  radiation_ratio_without_thickness: [
    {
      id: "tap-radiation-ratio",
      inputs: { f: "frequency", L: "length", b: "width", m: "mass" },
      fields: { R: "radiationRatio" },
    },
  ],
  sound_speed_from_bar: [
    { id: "tap-sound-speed", inputs: { f: "frequency", L: "length", h: "thickness" }, fields: { c: "soundSpeed" } },
  ],
  plate_bending_stiffness: [
    {
      id: "bending-stiffness",
      inputs: { E: "youngsModulus", h: "thickness" },
      fields: { D: "bendingStiffness" },
      fixed: { poissonProduct: 0.37 * 0.029 },
    },
  ],
  Q_from_bandwidth: [
    {
      id: "quality-from-bandwidth",
      inputs: { f0: "frequency", df: "bandwidth" },
      fields: { Q: "quality", tan_delta: "lossTangent", zeta: "dampingRatio", decrement: "decrement" },
    },
  ],
  Q_from_decay_time_constant: [
    {
      id: "quality-from-decay",
      inputs: { f0: "frequency", tau: "time" },
      fields: { Q: "quality", T60: "reverberation" },
    },
  ],
  bandwidth_from_decay: [
    { id: "quality-from-decay", inputs: { tau: "time" }, fields: { df: "bandwidth" }, fixed: { frequency: 1 } },
  ],
  Q_from_T60: [
    { id: "quality-from-reverberation", inputs: { f0: "frequency", T60: "time" }, fields: { Q: "quality" } },
  ],
  Q_from_log_decrement: [
    {
      id: "quality-from-decrement",
      inputs: { a1: "first", an: "later", n: "swings" },
      fields: { Q: "quality", decrement: "decrement" },
    },
  ],
  Q_from_dB_slope: [
    { id: "quality-from-level-slope", inputs: { f0: "frequency", slope_dB_per_s: "slope" }, fields: { Q: "quality" } },
  ],
  equal_bending_stiffness_thickness: [
    {
      id: "equal-stiffness-thickness",
      inputs: { h1: "thickness", E1: "modulus1", E2: "modulus2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_areal_mass_thickness: [
    {
      id: "equal-mass-thickness",
      inputs: { h1: "thickness", rho1: "density1", rho2: "density2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_frequency_thickness: [
    {
      id: "equal-frequency-thickness",
      inputs: { h1: "thickness", E1: "modulus1", rho1: "density1", E2: "modulus2", rho2: "density2" },
      fields: { h2: "thickness" },
    },
  ],
  equal_deflection_thickness: [
    {
      id: "equal-deflection-thickness",
      inputs: { h1: "thickness", y1: "deflection1", y2: "deflection2" },
      fields: { h2: "thickness" },
    },
  ],
  frequency_change_on_thinning: [
    {
      id: "thinned-frequency",
      inputs: { f1: "frequency", h1: "thickness1", h2: "thickness2" },
      fields: { f2: "frequency" },
    },
  ],
  target_thickness_simply_supported: [
    {
      id: "target-thickness",
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
  string_tension: [
    { id: "string-tension", inputs: { mu: "unitMass", L: "length", f: "frequency" }, fields: { T: "tension" } },
  ],
  plain_string_unit_mass: [
    { id: "plain-string-mass", inputs: { rho: "density", d: "diameter" }, fields: { mu: "unitMass" } },
  ],
  speed_of_sound_air: [{ id: "air-sound-speed", inputs: { t: "temperature" }, fields: { c: "soundSpeed" } }],
  helmholtz_rigid_body: [
    {
      id: "air-resonance",
      inputs: { c: "soundSpeed", V: "volume", a: "radius", t: "depth", alpha: "endCorrection" },
      fields: { f: "frequency" },
    },
  ],
  two_piston_inverse: [
    {
      id: "two-piston-inverse",
      inputs: { f_minus: "lower", f_plus: "upper", fA: "air" },
      fields: { fP: "plate", fAP: "coupling" },
    },
  ],
  property_back_to_12_percent: [
    {
      id: "property-at-12",
      inputs: { P: "found", ratio: "ratio", M: "moisture", Mp: "intersection" },
      fields: { P12: "property" },
    },
  ],
  two_piston_top_air: [
    {
      id: "two-piston-peaks",
      inputs: { fA: "air", fP: "plate", fAP: "coupling" },
      fields: { f_minus: "lower", f_plus: "upper" },
    },
  ],
};
const SPELLED: Record<string, string> = { "% of green": "%", L: "L" };

const unitOf = (text: string) => unitFromText(SPELLED[text] ?? text);
/** "21 1/2" -> 21.5 */
const numberOf = (value: number | string) =>
  typeof value === "number"
    ? value
    : value.split(" ").reduce(
        (sum, part) =>
          sum +
          part
            .split("/")
            .map(Number)
            .reduce((a, b) => a / b),
        0,
      );
const si = ({ value, unit }: Value) => {
  const known = unitOf(unit);
  return known ? toSi(numberOf(value), known) : numberOf(value);
};

for (const [quantity, ways] of Object.entries(WAYS))
  describe(quantity, () => {
    const mine = cases.filter((one) => one.quantity === quantity);
    it("has cases", () => expect(mine.length).toBeGreaterThan(0));
    for (const one of mine)
      for (const way of ways)
        it(`${one.id} by ${way.id}`, () => {
          const method = woodMethods.find((candidate) => candidate.id === way.id);
          const inputs: Record<string, number> = { ...way.fixed };
          for (const [theirs, ours] of Object.entries(way.inputs))
            if (one.inputs[theirs]) inputs[ours] = si(one.inputs[theirs]);
          const outcome = method?.run(inputs);
          if (one.expected.outcome?.value === "refuse") return expect(outcome?.ok).toBe(false);
          if (!outcome?.ok) throw new Error(JSON.stringify(outcome));
          let compared = 0;
          for (const [theirs, ours] of Object.entries(way.fields)) {
            const expected = one.expected[theirs];
            if (!expected) continue;
            const unit = unitOf(expected.unit);
            const actual = outcome.value[ours] as number;
            const shown = unit ? fromSi(actual, unit) : actual;
            const value = expected.value as number;
            closeTo(shown, value, expected.tolerance_relative ?? (expected.tolerance_absolute ?? 0) / Math.abs(value));
            compared += 1;
          }
          expect(compared).toBeGreaterThan(0);
        });
  });
