// Warnings that travel with a finding, gravest first. Code and facts are the truth; the sentence is made here and nowhere else.

type Facts = {
  "across-contradicts-within": { group: string; across: string; within: string };
  "groups-explain-slope": { group: string };
  "slopes-differ-by-group": { group: string };
  "another-line-as-good": { slope: string };
  "records-without-weight": { count: number; of: number };
  "one-piece-carries-it": { piece: string; without: string };
  "few-records": { have: number; need: number };
  "shared-ancestor": { columns: string; ancestor: string };
  "shared-error": { ancestor: string; arithmetic: string; alone: string; seen: string };
  "pieces-share": { column: string; groups: number; records: number };
  "no-spread-between-groups": { group: string };
  "measurement-error-flattens": { column: string; share: string };
  "scatter-beyond-uncertainty": { times: string };
  "curved-model": { share: string };
  "computed-from-the-other": { y: string; x: string; shared: string };
  "results-disagree": { how: string };
  "small-sample-correlation": { have: number; found: string; needed: string };
  "unequal-spread": { column: string };
  "not-straight": { column: string };
  "not-normal": { column: string };
  "beyond-records": { column: string; low: string; high: string };
  "many-questions": { asked: number };
  "records-set-aside": { count: number };
  "stated-after": { stated: string };
  "rig-as-large-as-spread": { rig: string };
  "ambiguous-cells": { column: string; count: number };
  "unlikely-density": { density: number; likely: string };
  "unusual-size": { name: string; value: string; low: string; high: string };
  "window-limited": { record: string; resolved: string; bandwidth: string };
  "above-intersection": { moisture: string; intersection: string };
  "above-fibre-saturation": { moisture: string };
  "thickness-scatters": { spread: string; rise: string };
  "point-may-group": { text: string; taken: string; other: string };
  "marked-amount": { text: string; mark: string };
  "axes-doubtful": { ratio: string };
  "modes-mixed": { along: string; across: string };
  "cross-not-second": { ratio: string };
  "large-deflection": { share: string; limit: string };
  "shape-too-short": { what: string; ratio: string; limit: number };
  "shear-left-out": { what: string; ratio: string; limit: number };
  "lower-bound": { name: string; share: string };
};

export type CautionCode = keyof Facts;
export type Caution = { [C in CautionCode]: { readonly code: C; readonly facts: Facts[C] } }[CautionCode];

/** The order of this catalogue is the order of gravity. */
export const cautions: { readonly [C in CautionCode]: (facts: Facts[C]) => string } = {
  "across-contradicts-within": ({ group, across, within }) =>
    `Across all records the slope ${across}; within each ${group} it ${within}. The difference between one ${group} and another makes the picture as a whole misleading.`,
  "groups-explain-slope": ({ group }) =>
    `Most of the slope across all records comes from differences between one ${group} and another.`,
  "slopes-differ-by-group": ({ group }) => `The slope is not the same in each ${group}; one common slope hides that.`,
  "one-piece-carries-it": ({ piece, without }) => `${piece} carries much of this answer: without it, ${without}.`,
  "another-line-as-good": ({ slope }) =>
    `Another line fits most of the records as well as this one, with a slope of ${slope}. Which records belong together has to be known from elsewhere.`,
  "records-without-weight": ({ count, of }) =>
    `${count} of ${of} records lie so far out that they count for nothing here. Look at them before you trust this line or another.`,
  "few-records": ({ have, need }) =>
    `This rests on ${have} ${have === 1 ? "record" : "records"}; with fewer than ${need} an answer can turn with the next instrument.`,
  "shared-ancestor": ({ columns, ancestor }) =>
    `Both ${columns} rest on the same measurement of ${ancestor}, so an error in it moves both and can imitate a rule.`,
  "shared-error": ({ ancestor, arithmetic, alone, seen }) =>
    `The records show a correlation of ${seen}. If only the error of ${ancestor} tied them it would be ${alone}${arithmetic}.`,
  "pieces-share": ({ column, groups, records }) =>
    `Pieces that share a ${column} are not separate evidence: ${records} records come from ${groups}.`,
  "no-spread-between-groups": ({ group }) =>
    `No spread between one ${group} and another can be seen: it is estimated as zero, and the answer is that of records taken one by one. With few groups that does not show that there is none.`,
  "measurement-error-flattens": ({ column, share }) =>
    `Measurement error of ${column} flattens the slope by about ${share}.`,
  "scatter-beyond-uncertainty": ({ times }) =>
    `The records scatter ${times} times as far from the line as their uncertainties explain. Standard errors are of those uncertainties alone; the interval of an answer is wider by as much.`,
  "curved-model": ({ share }) =>
    `The model bends within the uncertainty of its inputs: curvature alone adds ${share} to the variance. Take the interval of the Monte Carlo.`,
  "computed-from-the-other": ({ y, x, shared }) =>
    `${y} was computed from ${shared}, which is also in ${x}, so part of the correlation is arithmetic and no law of nature.`,
  "results-disagree": ({ how }) =>
    `The results do not agree within their uncertainties (${how}), so their mean hides a difference.`,
  "small-sample-correlation": ({ have, found, needed }) =>
    `With ${have} records a correlation must be larger than ${needed} in size to count at one in twenty; ${found} is not evidence.`,
  "unequal-spread": ({ column }) => `The scatter grows or shrinks along ${column}; the interval allows for that.`,
  "not-straight": ({ column }) => `The records bend along ${column}; a straight line describes them only roughly.`,
  "not-normal": ({ column }) => `Some records of ${column} lie far outside what chance alone would scatter.`,
  "beyond-records": ({ column, low, high }) =>
    `The records of ${column} run from ${low} to ${high}; this looks beyond them.`,
  "many-questions": ({ asked }) =>
    `This is one of ${asked} questions asked of these records, of which one in twenty would look surprising by chance; it is judged as one of so many.`,
  "records-set-aside": ({ count }) =>
    count === 1
      ? "One of the records asked about takes no part; the list says why."
      : `${count} of the records asked about take no part; the list says why.`,
  "stated-after": ({ stated }) =>
    `No instrument was finished after the rule was stated (${stated}), so nothing here is a test of it.`,
  "rig-as-large-as-spread": ({ rig }) => `The repeatability of ${rig} is as large as the spread between pieces.`,
  "ambiguous-cells": ({ column, count }) => `${count} cells of ${column} can be read two ways and were left out.`,
  "unlikely-density": ({ density, likely }) =>
    `A density of ${density} kg/m3 is ${likely} than any wood, which lies between 100 and 1400. Check the units of mass, length, width and thickness: a slip of ten is likely.`,
  "unusual-size": ({ name, value, low, high }) =>
    `${name} is ${value}, outside what is usual here, ${low} to ${high}: a slip of units or of the decimal point is likely.`,
  "window-limited": ({ record, resolved, bandwidth }) =>
    `A record of ${record} cannot show a line narrower than about ${resolved}, so a bandwidth of ${bandwidth} is not measured from it but set by its length. Record for longer, or use the decay.`,
  "above-intersection": ({ moisture, intersection }) =>
    `At ${moisture} the wood is wetter than ${intersection}, where the property stops changing: the value of green wood is taken, and the formula is not carried further.`,
  "above-fibre-saturation": ({ moisture }) =>
    `${moisture} lies above fibre saturation (about 30 %): wood swells no more there, and readings of a moisture meter are not reliable.`,
  "thickness-scatters": ({ spread, rise }) =>
    `The thickness readings scatter by ${spread} of their mean. That serves density, but bending stiffness goes with the mean of the cubes, which is ${rise} above the cube of the mean.`,
  "point-may-group": ({ text, taken, other }) =>
    `"${text}" was read as ${taken}, its point taken for the decimal mark. If the point groups thousands, it is ${other}.`,
  "marked-amount": ({ text, mark }) => `"${text}" is no plain reading (${mark}); its number was taken all the same.`,
  "axes-doubtful": ({ ratio }) =>
    `Across the grain it is ${ratio} times as stiff as along it, which no wood is. Check that length and modulus along the grain are not swapped with those across.`,
  "modes-mixed": ({ along, across }) =>
    `The first bending along (${along}) and across (${across}) lie within 25 % of each other, near a/b = (E_L/E_R)^(1/4): there they mix into a ring and a cross, so their names are not safe and formulas for a single mode must not be used.`,
  "cross-not-second": ({ ratio }) =>
    `The frequency across is ${ratio} times the one along: beyond 5.4, a/b above 2.32 (E_L/E_R)^(1/4), the next even bending along lies below it and may be taken for it. Look at the nodal lines.`,
  "large-deflection": ({ share, limit }) =>
    `The deflection is ${share} of the span. The formula is for small ones, up to about ${limit}: take a lighter load.`,
  "shape-too-short": ({ what, ratio, limit }) =>
    `${what} is ${ratio}. The formula is for about ${limit} and more; below, what happens at the ends counts.`,
  "shear-left-out": ({ what, ratio, limit }) =>
    `${what} is ${ratio}, below ${limit}: shear and rotary inertia lower the frequency noticeably and are not corrected here, so a modulus comes out too low. Give a shear factor or use the calculation with shear.`,
  "lower-bound": ({ name, share }) => `${name} by this formula is a lower bound: it comes out about ${share} too low.`,
};

/** A caution with its sentence. */
export function stated(caution: Caution): Caution & { readonly sentence: string } {
  const say = cautions[caution.code] as (facts: Caution["facts"]) => string;
  return { ...caution, sentence: say(caution.facts) };
}
