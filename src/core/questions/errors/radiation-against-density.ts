import { declined, type Method, succeeded } from "../../base/index.ts";
import { sharedMeasurementNull } from "./shared-measurement-null.ts";
import { nullFields, nullSource, spreadInput, spreadInputs } from "./spread-inputs.ts";

/** The radiation ratio sqrt(E / density^3) against density: it falls with the power -3/2 though nature does nothing. */
export const radiationAgainstDensity: Method = {
  id: "radiation-density-null",
  name: "Radiation ratio against density by arithmetic alone",
  answers: "relation",
  needs: {},
  inputs: {
    modulusSpread: spreadInput("spread of ln E"),
    densitySpread: spreadInput("spread of ln density"),
  },
  fields: nullFields,
  source: nullSource,
  run: (inputs) => {
    const spreads = spreadInputs(inputs, ["modulusSpread", "densitySpread"]);
    if (!spreads.ok) return spreads;
    const { modulusSpread = 0, densitySpread = 0 } = spreads.value;
    const made = sharedMeasurementNull({
      shared: densitySpread,
      xExponent: 1,
      yExponent: -1.5,
      xOwn: 0,
      yOwn: modulusSpread / 2,
    });
    return Object.values(made).every(Number.isFinite)
      ? succeeded({ ...made })
      : declined("out-of-domain", { name: "densitySpread", needed: "a spread above zero" });
  },
  cautions: () => [
    { code: "computed-from-the-other", facts: { y: "The radiation ratio", x: "density", shared: "density" } },
  ],
};
