import type { InputSpec, Source } from "../../base/index.ts";
import { CONCERT_PITCH } from "../pitch.ts";

/** Where equal temperament is from. */
export const temperament: Source = { citation: "ISO 16:1975, A4 = 440 Hz; equal temperament", basis: "standard" };

export const concertPitchInput: InputSpec = {
  kind: "quantity",
  dimension: "Hz",
  optional: true,
  above: 0,
  meaning: `frequency of A4, ${CONCERT_PITCH} Hz unless given`,
};

/** The concert pitch of a run, or null where it is none. */
export const concertPitchOf = (given: unknown): number | null =>
  given === undefined ? CONCERT_PITCH : typeof given === "number" && given > 0 && Number.isFinite(given) ? given : null;
