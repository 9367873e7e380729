/** Calcium, phosphorus, minerals and vitamins beside a target: what the mix brings, and what only the pellet does. */
import { useState } from 'react';
import { joined } from '../../../formulation/explain/sentences.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import {
  bindsMicronutrients,
  type Interval,
  type Judgement,
  type MicronutrientRow,
  micronutrientRows,
  usualComparison,
} from '../../../household/reckon/mix/micronutrients.ts';
import { nutrient, unitWord } from '../../../nutrition/nutrients.ts';
import { unconfirmedBounds } from '../../../targets/confirm.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { Choice } from '../../shared/Choice.tsx';
import { boundsText, figure } from '../../shared/windows.ts';
import { Folded } from './Folded.tsx';
import './chip.css';
import './Micronutrients.css';

const PARTS = {
  mineral: 'Minerals',
  vitamin: 'Vitamins',
  fat: 'Essential fats',
  'amino acid': 'Amino acids',
} as const;
const BASIS_WORDS = {
  'as fed': 'per 100 g',
  DM: 'per 100 g dry matter',
  'per 1000 kcal': 'per 1000 kcal',
} as const;
const WORDS: Record<Judgement, string> = {
  meets: 'meets the target',
  short: 'short',
  over: 'too much',
  'cannot tell': 'cannot tell',
  'no target': '',
};

/** Bars reach this many times a target, so that the target stands in the same place in each. */
const REACH = 2;
const WIDTH = 200;

export function Micronutrients({
  evaluation,
  pelletPart,
  profile,
  profiles,
}: {
  evaluation: Evaluation | undefined;
  /** Part of the ration fed beside the mix, 0 to 1. */
  pelletPart: number;
  /** The mix's own target. */
  profile: TargetProfile | undefined;
  profiles: readonly TargetProfile[];
}) {
  const comparable = profiles.filter(bindsMicronutrients);
  const [chosen, setChosen] = useState<string>();
  const against = comparable.find((p) => p.id === chosen) ?? usualComparison(profile, profiles);
  const fromMemory = against ? unconfirmedBounds(against).length : 0;
  const rows = evaluation ? micronutrientRows(evaluation, pelletPart, against) : [];
  const only = rows.filter((r) => r.onlyPellet).map((r) => inSentence(titleOf(r)));
  return (
    <Folded className="micronutrients" summary={`Minerals and vitamins (${rows.length})`}>
      <div className="fields">
        <Choice
          label="Compared with"
          value={against?.id ?? ''}
          options={comparable.map((p) => [p.id, p.name] as const)}
          onChange={setChosen}
        />
      </div>
      {against && <p className="hint">{against.about}</p>}
      {fromMemory > 0 && (
        <p className="hint">
          {fromMemory} of its figures are from memory, and you have not confirmed them: look, but do not rely
          on them.
        </p>
      )}
      {only.length > 0 && (
        <p className="only-pellet">
          The mix by itself is not known to reach the target for {joined(only)}: there the ration rests on the
          pellet.
        </p>
      )}
      <p className="hint micro-legend" aria-hidden="true">
        <i className="mix" /> mix <i className="pellet" /> pellet <i className="may" /> may be more <b>|</b>{' '}
        target
      </p>
      {(Object.keys(PARTS) as (keyof typeof PARTS)[]).map((part) => {
        const own = rows.filter((r) => r.part === part);
        if (own.length === 0) return null;
        return part === 'mineral' || part === 'vitamin' ? (
          <section key={part}>
            <h3>{PARTS[part]}</h3>
            <Rows rows={own} />
          </section>
        ) : (
          <Folded key={part} summary={`${PARTS[part]} (${own.length})`}>
            <Rows rows={own} />
          </Folded>
        );
      })}
    </Folded>
  );
}

function Rows({ rows }: { rows: readonly MicronutrientRow[] }) {
  return (
    <ul>
      {rows.map((row) => (
        <Row key={`${row.key} ${row.basis}`} row={row} />
      ))}
    </ul>
  );
}

function Row({ row }: { row: MicronutrientRow }) {
  const { min, max } = row;
  return (
    <li className={`micro ${row.judgement.replace(' ', '-')}`} data-nutrient={row.key}>
      <div className="micro-head">
        <strong>{titleOf(row)}</strong>
        <span className="micro-target" title={row.source}>
          {min === undefined && max === undefined
            ? unitOf(row)
            : `${boundsText(rounded(min), rounded(max))} ${unitOf(row)}`}
        </span>
        {WORDS[row.judgement] && (
          <span className={`chip ${CHIP[row.judgement]}`}>{WORDS[row.judgement]}</span>
        )}
      </div>
      {row.brought && min !== undefined && <Bar row={row} min={min} />}
      <dl>
        <Said term="ration" of={row.ration} />
        <Said term="mix" of={row.mix} />
        {row.pellet && <Said term="pellet" of={row.pellet} />}
      </dl>
    </li>
  );
}

function titleOf({ key }: MicronutrientRow): string {
  return key === 'CA:P' ? 'Calcium to phosphorus' : nutrient(key).name;
}

/** The unit of an amount, with the quantity that the amount is in. */
function unitOf({ key, basis }: MicronutrientRow): string {
  if (key === 'CA:P') return 'to 1';
  return `${unitWord(nutrient(key).unit)} ${BASIS_WORDS[basis]}`;
}

const CHIP: Record<Judgement, string> = {
  meets: 'in',
  short: 'out',
  over: 'out',
  'cannot tell': 'unknown',
  'no target': '',
};

function Said({ term, of }: { term: string; of: Interval }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {spoken(of)}
        {of.coverage > 0.5 && of.coverage < 99.5 && <small> known for {Math.round(of.coverage)} %</small>}
      </dd>
    </div>
  );
}

/** "at least 3.2", "3.2", "unknown"; never a bare number where figures are missing. */
function spoken({ low, high, coverage }: Interval): string {
  if (coverage <= 0.5 && low === 0) return 'unknown';
  if (coverage >= 99.5 && high - low <= 0.01 * high) return figure((low + high) / 2);
  return coverage >= 99.5 ? `${figure(low)} to ${figure(high)}` : `at least ${figure(low)}`;
}

/** The ration's known amount, mix part and pellet part end to end, up to what it may be, with the target marked. */
function Bar({ row, min }: { row: MicronutrientRow; min: number }) {
  const x = (amount: number) => Math.min(WIDTH, (amount / (REACH * min)) * WIDTH);
  const { mix, pellet } = row.brought!;
  const known = x(mix + pellet);
  const words = `Target ${figure(min)}. From the mix ${figure(mix)}, from the pellet ${figure(pellet)}.`;
  return (
    <svg viewBox={`0 0 ${WIDTH} 14`} role="img" aria-label={words} preserveAspectRatio="none">
      <rect className="micro-ground" x={0} y={2} width={WIDTH} height={10} />
      <rect
        className="micro-may"
        x={known}
        y={4}
        width={Math.max(0, x(row.ration.high) - known)}
        height={6}
      />
      <rect className="micro-mix" x={0} y={2} width={x(mix)} height={10} />
      <rect className="micro-pellet" x={x(mix)} y={2} width={Math.max(0, known - x(mix))} height={10} />
      <line className="micro-mark" x1={WIDTH / REACH} x2={WIDTH / REACH} y1={0} y2={14} />
    </svg>
  );
}

/** Bounds turned to dry matter have more digits than anybody can read. */
function rounded(bound: number | undefined): number | undefined {
  return bound === undefined ? undefined : Number(bound.toPrecision(3));
}

/** "vitamin B12", not "vitamin b12"; "folate", not "folate, total". */
function inSentence(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1).split(',')[0];
}
