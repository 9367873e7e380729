/** A profile to read: each bound with unit, basis and source. */

import { dayInWords } from '../../kitchen/days.ts';
import { countedName, nutrient, unitWord } from '../../nutrition/nutrients.ts';
import { isUnconfirmed } from '../../targets/confirm.ts';
import type { TargetBound, TargetProfile } from '../../targets/profile.ts';
import { boundsText } from '../shared/windows.ts';

export const FIBRE_SENTENCE: Record<TargetProfile['fibre'], string> = {
  FIBTG: 'Its fibre range means total dietary fibre; a label’s crude fibre counts as a lower bound.',
  FIBC: 'Its fibre range means crude fibre, as pet food labels print it.',
  none: 'It sets no bound on fibre.',
};

export const BASIS_WORDS: Record<TargetBound['basis'], string> = {
  'as fed': 'per 100 g as fed',
  DM: 'per 100 g dry matter',
  'per 1000 kcal': 'per 1000 kcal',
};

export function ProfileTable({ profile }: { profile: TargetProfile }) {
  return (
    <>
      <p className="hint">{FIBRE_SENTENCE[profile.fibre]}</p>
      <div className="table-scroll">
        <table className="bounds">
          <thead>
            <tr>
              <th scope="col">Nutrient</th>
              <th scope="col">Bounds</th>
              <th scope="col">Source</th>
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
                  {b.source}
                  <Standing bound={b} />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </>
  );
}

/** Whether a figure from memory was confirmed; nothing for one that was looked up or is common practice. */
export function Standing({ bound }: { bound: TargetBound }) {
  const { confirmed } = bound;
  if (isUnconfirmed(bound)) return <span className="tag from-memory">from memory</span>;
  return (
    confirmed && (
      <span className="tag">
        you checked it against {confirmed.against} on {dayInWords(confirmed.on)}
      </span>
    )
  );
}

function boundKey(b: TargetBound): string {
  return `${b.nutrient ?? b.ratio?.join('/')} ${b.basis}`;
}

export function boundName(b: TargetBound): string {
  if (b.ratio) return `${nutrient(b.ratio[0]).name} to ${nutrient(b.ratio[1]).name.toLowerCase()}`;
  return b.nutrient ? countedName(b.nutrient) : 'Nothing';
}

export function boundUnit(b: TargetBound): string {
  if (!b.nutrient) return 'for each 1';
  return `${unitWord(nutrient(b.nutrient).unit)} ${BASIS_WORDS[b.basis]}`;
}
