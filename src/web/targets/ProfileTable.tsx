/** A profile to read: each bound with unit, basis and source. */

import { sourceWords } from '../../foods/source-words.ts';
import { countedName, countedWord, nutrient, nutrientWord, unitWord } from '../../nutrition/nutrients.ts';
import { isUnconfirmed } from '../../targets/confirm.ts';
import type { TargetBound, TargetProfile } from '../../targets/profile.ts';
import { words } from '../../words/words.ts';
import { boundsText } from '../shared/windows.ts';
import { Term } from '../shared/words/Term.tsx';

/** What the fibre of these needs means, with what that word means. */
export function FibreSentence({ profile }: { profile: TargetProfile }) {
  const { targets, terms } = words();
  const term = ({ FIBTG: 'dietaryFibre', FIBC: 'fibre', none: undefined } as const)[profile.fibre];
  return (
    <p className="hint">
      {targets.fibre[profile.fibre]} {term && <Term of={term}>{terms[term].word}</Term>}
    </p>
  );
}

export function ProfileTable({ profile }: { profile: TargetProfile }) {
  const t = words().targets.table;
  return (
    <>
      <FibreSentence profile={profile} />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-label={profile.name}>
        <table className="bounds">
          <thead>
            <tr>
              <th scope="col">{t.nutrient}</th>
              <th scope="col">{t.range}</th>
              <th scope="col">{t.source}</th>
            </tr>
          </thead>
          <tbody>
            {profile.bounds.map((b) => (
              <tr key={boundKey(b)}>
                <th scope="row">{boundName(b)}</th>
                <td>
                  {boundsText(b.min, b.max)} {boundUnit(b)}
                </td>
                <td className="source">
                  {sourceWords(b.source)} <Standing bound={b} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </>
  );
}

/** Whether a figure from memory was confirmed; nothing for one that was looked up or is common practice. */
export function Standing({ bound }: { bound: TargetBound }) {
  const { confirmed } = bound;
  const { targets: t, figures } = words();
  if (isUnconfirmed(bound)) return <span className="tag from-memory">{t.fromMemory}</span>;
  return (
    confirmed && <span className="tag">{t.table.checked(confirmed.against, figures.day(confirmed.on))}</span>
  );
}

function boundKey(b: TargetBound): string {
  return `${b.nutrient ?? b.ratio?.join('/')} ${b.basis}`;
}

export function boundName(b: TargetBound): string {
  const t = words();
  if (b.ratio) return t.nutrition.ratio(nutrient(b.ratio[0]).name, nutrientWord(b.ratio[1]));
  return b.nutrient ? countedName(b.nutrient) : t.targets.table.nothing;
}

/** The same within a sentence. */
export function boundWord(b: TargetBound): string {
  const t = words();
  if (b.ratio) return t.nutrition.ratio(nutrientWord(b.ratio[0]), nutrientWord(b.ratio[1]));
  return b.nutrient ? countedWord(b.nutrient) : t.targets.table.nothing;
}

export function boundUnit(b: TargetBound): string {
  const t = words().targets;
  if (!b.nutrient) return t.table.each;
  return `${unitWord(nutrient(b.nutrient).unit)} ${t.basis[b.basis]}`;
}
