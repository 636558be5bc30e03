// The notebook of a new workspace: the questions people come for, asked of tables that are still empty.
export const exampleNotebook = `---
title: First questions
records: [wood, instruments, rig-checks]
---
This workspace is new. Its tables in \`records/\` have their headers and no records yet, so nothing below can be told yet: fill in a table, and
each answer follows. Beside every table lies its description, \`NAME.about.json\`: what each column means, its unit, how far off a reading may be.
Those figures are common practice; put your own.

Pieces of wood are weighed, measured and tapped before work. The table of instruments says what became of them:

\`\`\`records tops
from records/wood.csv
join records/instruments.csv on piece
piece is piece
pieces share tree
finished on finished_on
\`\`\`

\`\`\`columns tops
density = mass / (length * width * thickness)                                   in kg/m3
stiffness_along = bar_stiffness(mass, length, width, thickness, frequency_along)    in GPa
\`\`\`

Did stiffer tops end up thinner?

\`\`\`question stiffer-thinner
final_thickness against stiffness_along, allowing for species
\`\`\`

Do the woods differ?

\`\`\`question density-of-woods
density across species
\`\`\`

A rule of thumb says it before the records do. Write yours with the day on which you stated it:

\`\`\`rule stiffer-ends-thinner
when stiffness_along rises, final_thickness falls
within species
\`\`\`

Can the balance be trusted? Weigh what has a known mass, again and again:

\`\`\`rig balance
reading against reference in records/rig-checks.csv where rig is "balance"
\`\`\`

*Planing and sanding make dust that harms the lungs, and some woods are protected by law: extraction, a mask that fits, papers kept, and follow
your local codes and licensed practice.*
`;
