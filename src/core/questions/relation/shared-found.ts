import type { Caution, Check, Estimate } from "../../base/index.ts";
import type { QuantityColumn } from "../../columns/index.ts";
import { numberInWords } from "../../units/index.ts";
import { directionAmong } from "../among-questions.ts";
import { columnInWords } from "../column-in-words.ts";
import type { PlaceAmongDraws } from "../resampling/place-among-draws.ts";
import { rootsOf } from "../trace-of-answer.ts";
import { coupledNull } from "./coupled-null.ts";
import { dealtNull } from "./dealt-null.ts";
import type { RelationDesign } from "./relation-design.ts";
import type { RelationInput } from "./relation-input.ts";
import { sharedErrors } from "./shared-errors.ts";

export type SharedFound = {
  readonly cautions: readonly Caution[];
  readonly checks: readonly Check[];
  /** Said after an answer that claims a direction where what is shared alone may give as much; else empty. */
  readonly sentence: string;
  readonly seed?: number;
};

const figure = (r: number): string => numberInWords(r, 0.01);

/** Whether the records show more than a drawn world without a law: seldom as far from its middle, and not on the way to it. */
const isMore = (seen: number, { middle, p }: PlaceAmongDraws): boolean =>
  p < 0.05 && !(middle * seen > 0 && Math.abs(middle) >= Math.abs(seen));

function check(id: string, name: string, value: number, passed: boolean, what: string, seen: number): Check {
  const sentence = `${what} alone ${passed ? "would seldom" : "may well"} give a correlation like ${figure(seen)}.`;
  return { id, name, value, limit: 0.05, passed, sentence };
}

/** What y shares with the x at one place, against the two worlds in which nothing else ties them; nothing where they share nothing. */
function sharedWith(input: RelationInput, design: RelationDesign, x: QuantityColumn, at: number): SharedFound {
  const own = new Set(rootsOf(x));
  const common = rootsOf(input.y).filter((root) => own.has(root));
  if (common.length === 0) return { cautions: [], checks: [], sentence: "" };
  const ancestor = common.map((name) => columnInWords({ name })).join(", ");
  const columns = `${columnInWords(input.y)} and ${columnInWords(x)}`;
  const shared: Caution = { code: "shared-ancestor", facts: { columns, ancestor } };
  const errors = sharedErrors(input, design, at);
  const error = errors.length > 0 ? coupledNull(design, at, errors) : null;
  if (!error) return { cautions: [shared], checks: [], sentence: "" };
  const sources = common.flatMap((name) => {
    const column = input.table.columns.get(name);
    return column?.kind === "quantity" ? [column] : [];
  });
  const dealt = sources.length === common.length ? dealtNull(input, design, at, sources) : null;
  const { seen, middle, low, high } = error;
  const [beyondError, beyondArithmetic] = [isMore(seen, error), dealt === null || isMore(seen, dealt)];
  return {
    cautions: [
      shared,
      {
        code: "shared-error",
        facts: {
          ancestor,
          seen: figure(seen),
          arithmetic: dealt
            ? `; if all else were dealt out at random, ${figure(dealt.middle)} by arithmetic alone`
            : "",
          alone: `${figure(middle)} (95 % of draws ${figure(low)} to ${figure(high)})`,
        },
      },
    ],
    checks: [
      check(
        `shared-error-${x.name}`,
        `more than the error of ${ancestor}`,
        error.p,
        beyondError,
        `The error of ${ancestor}`,
        seen,
      ),
      ...(dealt
        ? [
            check(
              `shared-arithmetic-${x.name}`,
              `more than arithmetic with ${ancestor}`,
              dealt.p,
              beyondArithmetic,
              "Arithmetic",
              seen,
            ),
          ]
        : []),
    ],
    sentence: !beyondError
      ? ` The error of ${ancestor}, which is in both, may give as much alone.`
      : !beyondArithmetic
        ? ` As much comes of arithmetic alone: ${ancestor} is in both.`
        : "",
    seed: error.seed,
  };
}

/** Measurements that y and an x were both computed from, and what they alone would show, as cautions and checks. `claims`: the slopes of the answer, an x each. */
export function sharedFound(input: RelationInput, design: RelationDesign, claims: readonly Estimate[]): SharedFound {
  const found = input.x.map((x, at) => sharedWith(input, design, x, at));
  const seed = found.find((one) => one.seed !== undefined)?.seed;
  const claimed = found.filter((_, at) => claims[at] && directionAmong(claims[at], input.asked) !== 0);
  return {
    cautions: found.flatMap(({ cautions }) => cautions),
    checks: found.flatMap(({ checks }) => checks),
    sentence: claimed.map(({ sentence }) => sentence).join(""),
    ...(seed === undefined ? {} : { seed }),
  };
}
