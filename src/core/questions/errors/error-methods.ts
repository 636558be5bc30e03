// Tests of rules and of agreement where measurements have errors, as the catalogue takes them.
import type { Method } from "../../base/index.ts";
import { correlationEvidence } from "./correlation-evidence.ts";
import { radiationAgainstDensity } from "./radiation-against-density.ts";
import { resultsAgree, weightedMean } from "./results-agree.ts";
import { ruleInLogs } from "./rule-in-logs.ts";
import { sharedMeasurementMethod } from "./shared-measurement-method.ts";
import { simpleLine } from "./simple-line.ts";

export const errorMethods: readonly Method[] = [
  simpleLine,
  ruleInLogs,
  sharedMeasurementMethod,
  radiationAgainstDensity,
  resultsAgree,
  weightedMean,
  correlationEvidence,
];
