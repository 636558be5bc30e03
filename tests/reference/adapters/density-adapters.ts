// Mass, density, moisture.
import { listedInputs, type PhysicsAdapters } from "./physics-adapter.ts";

const plate = { L: "length", b: "width", h: "thickness" };

export const densityAdapters: PhysicsAdapters = {
  density_rectangular: [{ method: "density", inputs: { m: "mass", ...plate }, fields: { density: "density" } }],
  density_mean_of_thickness_readings: [
    {
      method: "density-of-readings",
      inputs: { m: "mass", L: "length", b: "width" },
      fields: { density: "density", thickness_mean: "thicknessMean", thickness_sd: "thicknessDeviation" },
      made: (one) => ({ thicknesses: listedInputs(one, "h") }),
    },
  ],
  areal_mass: [{ method: "areal-mass", inputs: { m: "mass", ...plate }, fields: { areal_mass: "arealMass" } }],
  moisture_content_oven_dry: [
    { method: "moisture-content", inputs: { m_wet: "wetMass", m_dry: "dryMass" }, fields: { MC: "moisture" } },
  ],
  moisture_wet_basis_to_dry_basis: [
    { method: "moisture-from-wet-basis", inputs: { MC_wet: "wetBasis" }, fields: { MC: "moisture" } },
  ],
  density_from_basic_specific_gravity: [
    {
      method: "density-from-basic-gravity",
      inputs: { Gb: "basic", M: "moisture" },
      fields: { density: "density", G_M: "specificGravity" },
    },
  ],
  density_from_basic_specific_gravity_and_shrinkage: [
    {
      method: "density-from-basic-gravity",
      inputs: { Gb: "basic", M: "moisture", S0: "shrinkage" },
      fields: { density: "density", G_M: "specificGravity" },
    },
  ],
  specific_gravity_oven_dry_mass_volume_at_M: [
    {
      method: "specific-gravity",
      inputs: { rho: "density", M: "moisture" },
      fields: { G_M: "specificGravity", Gb: "basic" },
    },
  ],
  density_to_reference_moisture: [
    {
      method: "density-at-moisture",
      inputs: { rho: "density", M: "from", M_ref: "to" },
      fields: { density_ref: "density" },
    },
  ],
  shrinkage_dimension_change: [
    { method: "shrunk-size", inputs: { D1: "size", M1: "from", M2: "to", S: "shrinkage" }, fields: { D2: "size" } },
  ],
  equilibrium_moisture_content: [
    { method: "equilibrium-moisture", inputs: { T: "temperature", RH: "humidity" }, fields: { EMC: "moisture" } },
  ],
};
