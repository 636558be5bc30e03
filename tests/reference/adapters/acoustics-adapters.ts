// Sound speed, radiation ratio, impedance, loss.
import type { PhysicsAdapters } from "./physics-adapter.ts";

const loss = { tan_delta: "lossTangent", zeta: "dampingRatio", decrement: "decrement" };

export const acousticsAdapters: PhysicsAdapters = {
  sound_speed_radiation_ratio_impedance: [
    {
      method: "sound-speed",
      inputs: { E: "youngsModulus", rho: "density" },
      fields: { c: "soundSpeed", specific_modulus: "specificModulus" },
    },
    { method: "radiation-ratio", inputs: { E: "youngsModulus", rho: "density" }, fields: { R: "radiationRatio" } },
    { method: "impedance", inputs: { E: "youngsModulus", rho: "density" }, fields: { z: "impedance" } },
  ],
  radiation_ratio_without_thickness: [
    {
      method: "tap-radiation-ratio",
      inputs: { f: "frequency", L: "length", b: "width", m: "mass" },
      fields: { R: "radiationRatio" },
    },
  ],
  sound_speed_from_bar: [
    { method: "tap-sound-speed", inputs: { f: "frequency", L: "length", h: "thickness" }, fields: { c: "soundSpeed" } },
  ],
  plate_bending_stiffness: [
    {
      method: "bending-stiffness",
      inputs: { E: "youngsModulus", h: "thickness" },
      fields: { D: "bendingStiffness" },
      made: ({ inputs }) => ({
        poissonProduct: Number(inputs["nu_LR"]?.value ?? 0) * Number(inputs["nu_RL"]?.value ?? 0),
      }),
    },
  ],
  Q_from_bandwidth: [
    {
      method: "quality-from-bandwidth",
      inputs: { f0: "frequency", df: "bandwidth", record_length: "recordLength" },
      fields: { Q: "quality", ...loss },
    },
  ],
  Q_from_decay_time_constant: [
    {
      method: "quality-from-decay",
      inputs: { f0: "frequency", tau: "time" },
      fields: { Q: "quality", T60: "reverberation", df: "bandwidth", ...loss },
    },
  ],
  bandwidth_from_decay: [{ method: "bandwidth-from-decay", inputs: { tau: "time" }, fields: { df: "bandwidth" } }],
  frequency_resolution: [
    {
      method: "frequency-resolution",
      inputs: { fs: "sampleRate", N: "points", f0: "frequency" },
      fields: { df: "resolution", half_bin_cents: "halfBinCents", u_E_half_bin: "modulusUncertainty" },
    },
  ],
  Q_from_T60: [
    {
      method: "quality-from-reverberation",
      inputs: { f0: "frequency", T60: "time" },
      fields: { Q: "quality", ...loss },
    },
  ],
  Q_from_log_decrement: [
    {
      method: "quality-from-decrement",
      inputs: { a1: "first", an: "later", n: "swings" },
      // Two amplitudes of one unit, whatever it is: their ratio counts.
      made: ({ inputs: { a1, an } }) => (a1?.unit === an?.unit ? { first: a1?.value, later: an?.value } : {}),
      fields: { Q: "quality", ...loss },
    },
  ],
  Q_from_dB_slope: [
    {
      method: "quality-from-level-slope",
      inputs: { f0: "frequency", slope_dB_per_s: "slope" },
      fields: { Q: "quality", ...loss },
    },
  ],
};
