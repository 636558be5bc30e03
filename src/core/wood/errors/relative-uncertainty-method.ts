import { declined, type Method, succeeded } from "../../base/index.ts";
import { usualCautions } from "../usual-cautions.ts";
import { usualRanges } from "../usual-ranges.ts";
import type { WoodInput } from "../wood-method.ts";
import { type Exponents, powerLawUncertainty } from "./power-law-uncertainty.ts";

const relativeInput = (name: string): WoodInput => ({
  kind: "quantity",
  dimension: "1",
  meaning: `relative standard uncertainty of the ${name}`,
  usual: usualRanges.relativeUncertainty,
});

/**
 * A method that gives relative standard uncertainties of products of powers from those of their inputs. results: by field, its meaning and exponents.
 * A negative uncertainty is refused by name.
 */
export function relativeUncertaintyMethod(
  id: string,
  name: string,
  results: Readonly<Record<string, { readonly meaning: string; readonly exponents: Exponents }>>,
): Method {
  const names = [...new Set(Object.values(results).flatMap(({ exponents }) => Object.keys(exponents)))];
  const specs = Object.fromEntries(names.map((each) => [each, relativeInput(each)]));
  return {
    id,
    name,
    answers: "quantity",
    needs: {},
    inputs: specs,
    fields: {
      ...Object.fromEntries(
        Object.entries(results).map(([field, { meaning }]) => [
          field,
          { meaning: `relative standard uncertainty of ${meaning}`, dimension: "1" },
        ]),
      ),
      shares: { meaning: "share of each input in the variance, by field" },
    },
    source: { citation: "JCGM 100:2008, 5.1.6; exponents by the formula of each quantity", basis: "derived" },
    cautions: (inputs) => usualCautions(specs, inputs),
    run: (inputs) => {
      const relative: Record<string, number> = {};
      for (const each of names) {
        const value = inputs[each];
        if (typeof value !== "number" || !Number.isFinite(value))
          return declined("out-of-domain", { name: each, needed: "a relative standard uncertainty, such as 0.3 %" });
        if (value < 0) return declined("negative-uncertainty", { name: each });
        relative[each] = value;
      }
      const made = Object.entries(results).map(
        ([field, { exponents }]) => [field, Object.keys(exponents), powerLawUncertainty(exponents, relative)] as const,
      );
      const odd = made.find(([, , { standard }]) => !Number.isFinite(standard));
      if (odd) return declined("not-finite", { name: odd[0] });
      return succeeded({
        ...Object.fromEntries(made.map(([field, , { standard }]) => [field, standard])),
        shares: Object.fromEntries(
          made.map(([field, own, { shares }]) => [field, Object.fromEntries(own.map((each, i) => [each, shares[i]]))]),
        ),
      });
    },
  };
}
