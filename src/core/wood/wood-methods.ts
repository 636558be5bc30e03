// Every quantity of wood physics that the catalogue offers, in the order in which it is shown.
import type { Method } from "../base/index.ts";
import { airResonanceMethod } from "./air-resonance.ts";
import { airSoundSpeedMethod } from "./air-sound-speed.ts";
import { arealMassMethod } from "./areal-mass.ts";
import { bandwidthFromDecayMethod } from "./bandwidth-from-decay.ts";
import { barFrequencyMethod } from "./bar-frequency.ts";
import { barIsotropicFactorMethod } from "./bar-isotropic-factor.ts";
import { barShearFactorMethod } from "./bar-shear-factor.ts";
import { barYoungsModulusMethod } from "./bar-youngs-modulus.ts";
import { barYoungsModulusByModeMethod } from "./bar-youngs-modulus-by-mode.ts";
import { bendingShearCorrectedMethod } from "./bending-shear-corrected.ts";
import { bendingStiffnessMethod } from "./bending-stiffness.ts";
import { cantileverModulusMethod } from "./cantilever-modulus.ts";
import { centsModulusChangeMethod } from "./cents-modulus-change.ts";
import { densityMethod } from "./density.ts";
import { densityAtMoistureMethod } from "./density-at-moisture.ts";
import { densityFromBasicGravityMethod } from "./density-from-basic-gravity.ts";
import { densityOfReadings } from "./density-of-readings.ts";
import { equalDeflectionThicknessMethod } from "./equal-deflection-thickness.ts";
import { equalFrequencyThicknessMethod } from "./equal-frequency-thickness.ts";
import { equalMassThicknessMethod } from "./equal-mass-thickness.ts";
import { equalStiffnessThicknessMethod } from "./equal-stiffness-thickness.ts";
import { equilibriumMoistureMethod } from "./equilibrium-moisture.ts";
import { errorMethods } from "./errors/error-methods.ts";
import { flightSoundSpeedMethod } from "./flight-sound-speed.ts";
import { frequencyResolutionMethod } from "./frequency-resolution.ts";
import { holdingPointMethod } from "./holding-point.ts";
import { impedanceMethod } from "./impedance.ts";
import { intervalCentsMethod } from "./interval-cents.ts";
import { longitudinalSoundSpeedMethod } from "./longitudinal-sound-speed.ts";
import { substitutionMassMethod } from "./mass-at-equal-frequency.ts";
import { moistureContentMethod } from "./moisture-content.ts";
import { moistureFromWetBasisMethod } from "./moisture-from-wet-basis.ts";
import { plainStringMassMethod } from "./plain-string-mass.ts";
import { plateMethods } from "./plates/plate-methods.ts";
import { propertyAt12Method } from "./property-at-12.ts";
import { propertyAtMoistureMethod } from "./property-at-moisture.ts";
import { qualityFromBandwidthMethod } from "./quality-from-bandwidth.ts";
import { qualityFromDecayMethod } from "./quality-from-decay.ts";
import { qualityFromDecrementMethod } from "./quality-from-decrement.ts";
import { qualityFromLevelSlopeMethod } from "./quality-from-level-slope.ts";
import { qualityFromReverberationMethod } from "./quality-from-reverberation.ts";
import { radiationRatioMethod } from "./radiation-ratio.ts";
import { ruleExponentMethod } from "./rule-exponent.ts";
import { shrunkSizeMethod } from "./shrunk-size.ts";
import { soundSpeedMethod } from "./sound-speed.ts";
import { specificGravityMethod } from "./specific-gravity.ts";
import { stringTensionMethod } from "./string-tension.ts";
import { stringTensionAtLengthMethod } from "./string-tension-at-length.ts";
import { tapRadiationRatioMethod } from "./tap-radiation-ratio.ts";
import { tapSoundSpeedMethod } from "./tap-sound-speed.ts";
import { targetThicknessMethod } from "./target-thickness.ts";
import { thinnedFrequencyMethod } from "./thinned-frequency.ts";
import { threePointByMassMethod } from "./three-point-by-mass.ts";
import { threePointModulusMethod } from "./three-point-modulus.ts";
import { timoshenkoBarFrequenciesMethod } from "./timoshenko-bar-frequencies.ts";
import { torsionShearModulusMethod } from "./torsion-shear-modulus.ts";
import { twoPistonInverseMethod } from "./two-piston-inverse.ts";
import { twoPistonPeaksMethod } from "./two-piston-peaks.ts";

export const woodMethods: readonly Method[] = [
  densityMethod,
  densityOfReadings,
  arealMassMethod,
  moistureContentMethod,
  moistureFromWetBasisMethod,
  specificGravityMethod,
  densityAtMoistureMethod,
  densityFromBasicGravityMethod,
  shrunkSizeMethod,
  equilibriumMoistureMethod,
  barYoungsModulusMethod,
  barYoungsModulusByModeMethod,
  barShearFactorMethod,
  barIsotropicFactorMethod,
  barFrequencyMethod,
  timoshenkoBarFrequenciesMethod,
  threePointModulusMethod,
  threePointByMassMethod,
  cantileverModulusMethod,
  bendingShearCorrectedMethod,
  longitudinalSoundSpeedMethod,
  flightSoundSpeedMethod,
  propertyAtMoistureMethod,
  propertyAt12Method,
  holdingPointMethod,
  torsionShearModulusMethod,
  soundSpeedMethod,
  radiationRatioMethod,
  tapRadiationRatioMethod,
  tapSoundSpeedMethod,
  impedanceMethod,
  bendingStiffnessMethod,
  qualityFromBandwidthMethod,
  qualityFromDecayMethod,
  qualityFromReverberationMethod,
  qualityFromDecrementMethod,
  qualityFromLevelSlopeMethod,
  bandwidthFromDecayMethod,
  frequencyResolutionMethod,
  equalStiffnessThicknessMethod,
  equalMassThicknessMethod,
  equalFrequencyThicknessMethod,
  equalDeflectionThicknessMethod,
  thinnedFrequencyMethod,
  substitutionMassMethod,
  ruleExponentMethod,
  targetThicknessMethod,
  intervalCentsMethod,
  centsModulusChangeMethod,
  stringTensionMethod,
  stringTensionAtLengthMethod,
  plainStringMassMethod,
  airSoundSpeedMethod,
  airResonanceMethod,
  twoPistonPeaksMethod,
  twoPistonInverseMethod,
  ...plateMethods,
  ...errorMethods,
];
