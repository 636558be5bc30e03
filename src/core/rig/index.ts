export type { RigCalibration } from "./calibration-from-rig.ts";
export { calibrationFromRig } from "./calibration-from-rig.ts";
export { checkRig } from "./check-rig.ts";
export type { RigInput } from "./rig-errors.ts";
export { rigMethods } from "./rig-methods.ts";
