/** A result as a table for people. */

import { gramsDoubt } from '../formulation/explain/grams-words.ts';
import { capital, figure } from '../formulation/explain/sentences.ts';
import type { Problem } from '../formulation/problem/problem.ts';
import type { Balanced, CautionNote } from '../formulation/problem/result.ts';
import { aimWords } from '../formulation/solve/aims.ts';
import { countedName, nutrient, type Tag } from '../nutrition/nutrients.ts';
import type { Advised } from './advised.ts';

const CAUTION =
  'Not veterinary advice. A home mix never replaces a complete food; change foods slowly; see a vet on weight loss or illness.';

/** Text ending in a newline. */
export function table(problem: Problem, result: Advised): string {
  const lines = [result.verdict, ''];
  if (result.status === 'optimal') {
    lines.push(...shares(problem, result), ...wishes(result), '', ...nutrients(problem, result));
  } else {
    lines.push('What collides:', ...result.conflict.map((c) => `  ${c.sentence}  (${c.pointer})`), '');
    lines.push(result.remedies.length > 0 ? 'What would mend it:' : 'No single change mends it.');
    lines.push(...result.remedies.map((r) => `  ${r.sentence}`));
  }
  if (result.reasons) lines.push('', 'Why it is so:', ...indented(result.reasons.map((r) => r.sentence)));
  if (result.swaps) lines.push('', 'Swaps:', ...indented(result.swaps.map((s) => s.sentence)));
  if (result.left_out) lines.push('', 'If a food is left:', ...indented([result.left_out.sentence]));
  const doubts = [...result.estimated, ...result.unsure].map((d) => `  ${d.sentence}  (${d.pointer})`);
  if (doubts.length > 0) lines.push('', 'Figures to be careful with:', ...new Set(doubts));
  if (result.questions.length > 0)
    lines.push('', 'Questions:', ...result.questions.map((q) => `  ${q.sentence}  (${q.pointer})`));
  if (result.cautions.length > 0) lines.push('', 'Cautions:', ...result.cautions.map(cautionLine(problem)));
  lines.push('', CAUTION, '');
  return lines.join('\n');
}

const indented = (sentences: readonly string[]) =>
  (sentences.length > 0 ? sentences : ['Nothing.']).map((s) => `  ${s}`);

/** What the aims came to, what is fed beside at a chosen share, and whether a better mix may be left. */
function wishes({ aims = [], beside = {}, gap }: Balanced): string[] {
  return [
    ...aims.map((a) => `${capital(aimWords(a))}: ${figure(a.value)}`),
    ...Object.entries(beside).map(([id, { share }]) => `Beside it ${id}: ${figure(share)} % of the ration`),
    ...(gap ? [`Not proven best: another may be better, by ${figure(gap)} at most.`] : []),
  ];
}

const cautionLine = (problem: Problem) => (note: CautionNote) => {
  const food = problem.foods.find((f) => f.id === note.food);
  const made = note.applied === 'noted' ? '' : ` (${note.applied})`;
  return `  ${food?.name ?? note.food}: ${note.title}${made}. ${note.reason} ${note.way} [${note.source}]`;
};

function shares(problem: Problem, result: Balanced): string[] {
  const width = Math.max(4, ...problem.foods.map((f) => (f.name ?? f.id).length));
  const rows = problem.foods.map((f) => {
    const [share, reach] = [result.shares[f.id], result.spans[f.id]];
    if (share === undefined || !reach) throw new Error(`the result tells no share of ${f.id}`);
    const [low, high] = reach;
    const grams = result.grams ? `${result.grams[f.id]} g` : '-';
    const span = `${low.toFixed(1)} to ${high.toFixed(1)}`;
    return `${(f.name ?? f.id).padEnd(width)}  ${share.toFixed(2).padStart(6)} %  ${grams.padStart(7)}  ${span.padStart(13)}`;
  });
  const head = `${'Food'.padEnd(width)}  ${'Share'.padStart(8)}  ${'Weigh'.padStart(7)}  ${'Can move'.padStart(13)}`;
  const doubt = result.grams_conflict ? `No grams: ${result.grams_conflict}.` : gramsDoubt(result);
  return [head, ...rows, ...(doubt ? ['', doubt] : [])];
}

function nutrients(problem: Problem, result: Balanced): string[] {
  const ruled = problem.rules.flatMap((r) =>
    'nutrient' in r ? [r.nutrient] : 'ratio' in r ? [...r.ratio] : [],
  );
  const rows = [...new Set<Tag>([...ruled, 'PROCNT', 'FAT', 'FIBC', 'FIBTG', 'CA', 'P'])].flatMap((tag) => {
    const line = result.nutrients[tag];
    return line ? [{ name: countedName(tag), unit: nutrient(tag).unit, line }] : [];
  });
  const width = Math.max(...rows.map((r) => r.name.length));
  const head = `${'Per 100 g as fed'.padEnd(width)}  ${'Mix'.padStart(9)}  ${'Ration'.padStart(9)}  Ration from-to (data cover)`;
  return [
    head,
    ...rows.map(({ name, unit, line: n }) => {
      const range = `${figure(n.low)} to ${figure(n.high)} ${unit} (${Math.round(n.coverage)} %)`;
      return `${name.padEnd(width)}  ${figure(n.mix).padStart(9)}  ${figure(n.ration).padStart(9)}  ${range}`;
    }),
  ];
}
