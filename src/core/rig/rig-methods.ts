// The methods of this room, as the one catalogue takes them.
import type { Method } from "../base/index.ts";
import { controlConstants } from "./methods/control-constants.ts";
import { cusum } from "./methods/cusum.ts";
import { duplicatesRepeatability } from "./methods/duplicates-repeatability.ts";
import { enZeta } from "./methods/en-zeta.ts";
import { ewma } from "./methods/ewma.ts";
import { gaugeRr } from "./methods/gauge-rr.ts";
import { individualsChart } from "./methods/individuals-chart.ts";
import { iso5725 } from "./methods/iso-5725.ts";
import { rigBias } from "./methods/rig-bias.ts";
import { rigLinearity } from "./methods/rig-linearity.ts";

export const rigMethods: readonly Method[] = [
  rigBias,
  rigLinearity,
  iso5725,
  gaugeRr,
  individualsChart,
  cusum,
  ewma,
  controlConstants,
  enZeta,
  duplicatesRepeatability,
];
