/** What was offered, taken and eaten, in sentences; and what makes it doubtful. */
import { DRIES } from '../../../care/leftovers/pile-of.ts';
import type { Intake } from '../../../household/reckon/care/intake.ts';
import { words } from '../../../words/words.ts';

export function intakeWords(intake: Intake): string[] {
  const { leftovers } = words();
  const t = leftovers.result;
  const { nights, grams, hoard, mix, doubts } = intake;
  const eaten = {
    counted: () => t.eatenExactly(grams.eaten.low, grams.eaten.high),
    'in-part': () => t.eatenInPart(grams.eaten.low, grams.eaten.high),
    unknown: () => t.eatenUnknown(grams.taken.high),
  }[hoard]();
  return [
    `${t.nights(nights.noted, nights.fed)} ${t.taken(grams.offered, grams.taken.low, grams.taken.high)} ${eaten}`,
    ...(intake.olderHoard ? [t.older] : []),
    ...(nights.unticked > 0 ? [t.unticked(nights.unticked)] : []),
    ...(mix === 'planned'
      ? [leftovers.offered.planned]
      : mix === 'unknown'
        ? [leftovers.offered.unknown]
        : []),
    ...doubtWords(doubts, intake.names),
  ];
}

/** Each kind of doubt once, whichever nights and foods it is about. */
function doubtWords(doubts: Intake['doubts'], names: Intake['names']): string[] {
  const t = words().leftovers.result.doubt;
  const said = new Set<string>();
  for (const { kind, foods } of doubts) {
    if (kind === 'dried') said.add(t.dried(100 * DRIES));
    else if (kind === 'not-offered') said.add(t['not-offered'](foods.map((id) => names[id] ?? id)));
    else said.add(t[kind]);
  }
  return [...said];
}
