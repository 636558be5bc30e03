// Pitch, strings, air.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const pitchAdapters: PhysicsAdapters = {
  note_to_frequency: [
    {
      method: "note-frequency",
      inputs: { note: "note", A4: "concertPitch" },
      fields: { f: "frequency", midi: "midi", cents: "cents" },
    },
  ],
  frequency_to_note_and_cents: [
    {
      method: "note-of-frequency",
      inputs: { f: "frequency", A4: "concertPitch" },
      fields: { note: "note", cents: "cents", midi: "midi" },
    },
  ],
  interval_cents: [
    { method: "interval-cents", inputs: { f1: "from", f2: "to" }, fields: { cents: "cents", f_ratio: "ratio" } },
  ],
  cents_to_modulus_change: [
    {
      method: "cents-modulus-change",
      inputs: { cents: "cents" },
      fields: { f_ratio: "frequencyRatio", E_ratio: "modulusRatio" },
    },
  ],
  string_tension_scale_change: [
    {
      method: "string-tension-at-length",
      inputs: { T1: "tension", L1: "length1", L2: "length2" },
      fields: { T2: "tension" },
    },
  ],
  string_tension: [
    { method: "string-tension", inputs: { mu: "unitMass", L: "length", f: "frequency" }, fields: { T: "tension" } },
  ],
  plain_string_unit_mass: [
    { method: "plain-string-mass", inputs: { rho: "density", d: "diameter" }, fields: { mu: "unitMass" } },
  ],
  speed_of_sound_air: [{ method: "air-sound-speed", inputs: { t: "temperature" }, fields: { c: "soundSpeed" } }],
  helmholtz_rigid_body: [
    {
      method: "air-resonance",
      inputs: { c: "soundSpeed", V: "volume", a: "radius", t: "depth", alpha: "endCorrection" },
      fields: { f: "frequency", L_eff: "effectiveLength" },
    },
  ],
  two_piston_inverse: [
    {
      method: "two-piston-inverse",
      inputs: { f_minus: "lower", f_plus: "upper", fA: "air" },
      fields: { fP: "plate", fAP: "coupling" },
    },
  ],
  two_piston_top_air: [
    {
      method: "two-piston-peaks",
      inputs: { fA: "air", fP: "plate", fAP: "coupling" },
      fields: { f_minus: "lower", f_plus: "upper" },
    },
  ],
};
