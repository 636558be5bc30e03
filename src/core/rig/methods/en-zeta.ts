import { declined, type Method, succeeded } from "../../base/index.ts";
import { inputNumbers } from "./input-numbers.ts";

/** A list as long as the readings: as given, or one value for all. */
const spread = (list: readonly number[], count: number): readonly number[] | null =>
  list.length === count ? list : list.length === 1 ? Array.from({ length: count }, () => list[0] as number) : null;

const verdictOfZeta = (zeta: number): string =>
  Math.abs(zeta) <= 2 ? "satisfactory" : Math.abs(zeta) < 3 ? "questionable" : "unsatisfactory";

/**
 * Scores of readings against certificates: En = (x - reference) / sqrt(U^2 + U_reference^2) with expanded uncertainties, satisfactory up to 1 in size;
 * zeta the same with standard uncertainties, U / k: to 2 satisfactory, 3 and beyond unsatisfactory. x, U, reference, U_reference: lists of one length, or
 * one value for all; U >= 0, not both zero; k > 0. Standard ones, k = 1, are expanded by 2 for En. Source: ISO 13528:2015, 9.6 and 9.7; ISO/IEC 17043:2023, annex B.
 */
export const enZeta: Method = {
  id: "en-zeta",
  name: "Scores against certificates",
  answers: "rig",
  needs: { rows: 1 },
  inputs: {
    x: { kind: "quantities", meaning: "own readings" },
    U: { kind: "quantities", meaning: "expanded uncertainty of each" },
    reference: { kind: "quantities", meaning: "values of the certificates" },
    U_reference: { kind: "quantities", meaning: "expanded uncertainty of each certificate" },
    k: {
      kind: "number",
      optional: true,
      above: 0,
      meaning: "coverage factor of the uncertainties, 2; 1 where they are standard ones, which En expands by 2",
    },
  },
  fields: {
    En: { meaning: "difference over its expanded uncertainty; null where a value is missing" },
    zeta: { meaning: "difference over its standard uncertainty" },
    verdict: { meaning: "satisfactory where En is at most 1 in size, else unsatisfactory" },
    zeta_verdict: { meaning: "satisfactory to 2, questionable to 3, unsatisfactory from 3 on" },
  },
  source: { citation: "ISO 13528:2015, 9.6 and 9.7; ISO/IEC 17043:2023, annex B", basis: "memory" },
  run: (inputs) => {
    const x = inputNumbers(inputs.x);
    const { k = 2 } = inputs;
    if (x.length === 0) return declined("too-few-records", { have: 0, need: 1 });
    if (typeof k !== "number" || !(k > 0)) return declined("out-of-domain", { name: "k", needed: "a number above 0" });
    const [own, reference, theirs] = ["U", "reference", "U_reference"].map((name) =>
      spread(inputNumbers(inputs[name]), x.length),
    );
    if (!own || !reference || !theirs)
      return declined("out-of-domain", {
        name: "U, reference, U_reference",
        needed: "lists as long as x, or one value for all",
      });
    const negative = [...own, ...theirs].some((value) => value < 0);
    if (negative)
      return declined("negative-uncertainty", { name: own.some((value) => value < 0) ? "U" : "U_reference" });
    const expanded = x.map((_, i) => Math.hypot(own[i] as number, theirs[i] as number));
    if (expanded.includes(0))
      return declined("out-of-domain", {
        name: `U, record ${expanded.indexOf(0) + 1}`,
        needed: "an uncertainty above 0 on one side at least",
      });
    const coverage = k === 1 ? 2 : k;
    const scores = x.map((value, i) => (value - (reference[i] as number)) / ((coverage / k) * (expanded[i] as number)));
    if (scores.every((score) => !Number.isFinite(score))) return declined("too-few-records", { have: 0, need: 1 });
    const known = scores.map((score) => (Number.isFinite(score) ? score : null));
    return succeeded({
      En: known,
      zeta: known.map((score) => (score === null ? null : score * coverage)),
      verdict: known.map((score) => (score === null ? null : Math.abs(score) <= 1 ? "satisfactory" : "unsatisfactory")),
      zeta_verdict: known.map((score) => (score === null ? null : verdictOfZeta(score * coverage))),
    });
  },
};
