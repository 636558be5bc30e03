// Pitch, strings, air.
import type { PhysicsAdapters } from "./physics-adapter.ts";

export const pitchAdapters: PhysicsAdapters = {
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
      fields: { f: "frequency" },
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
