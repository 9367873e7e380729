/** Calcium, phosphorus, minerals and vitamins beside a target: what the mix brings, and what only the pellet does. */
import { scaleLinear } from 'd3-scale';
import { useState } from 'react';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import {
  bindsMicronutrients,
  type Interval,
  type Judgement,
  type MicronutrientRow,
  micronutrientRows,
  usualComparison,
} from '../../../household/reckon/mix/micronutrients.ts';
import { nutrient, nutrientWord, unitWord } from '../../../nutrition/nutrients.ts';
import { unconfirmedBounds } from '../../../targets/confirm.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { boundsText, figure } from '../../shared/windows.ts';
import { Folded } from './Folded.tsx';
import { LANES_HEIGHT, Lanes, LEFT, RIGHT, WIDTH } from './Lanes.tsx';
import './chip.css';
import './Micronutrients.css';

const PARTS = ['mineral', 'vitamin', 'fat', 'amino acid'] as const;

const PER = { 'as fed': 'asFed', DM: 'dryMatter', 'per 1000 kcal': 'perEnergy' } as const;

/** A picture reaches this many times what is needed, so that it stands in the same place in each. */
const REACH = 2;

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
  const t = words().nutrients.micro;
  return (
    <Folded className="micronutrients" summary={t.title(rows.length)}>
      {() => (
        <>
          <div className="fields">
            <Choice
              label={t.comparedWith}
              value={against?.id ?? ''}
              options={comparable.map((p) => [p.id, p.name] as const)}
              onChange={setChosen}
            />
          </div>
          {against && <p className="hint">{against.about}</p>}
          {fromMemory > 0 && <p className="hint">{t.fromMemory(fromMemory)}</p>}
          <OnlyPellet rows={rows} />
          {PARTS.map((part) => {
            const own = rows.filter((r) => r.part === part);
            if (own.length === 0) return null;
            return part === 'mineral' || part === 'vitamin' ? (
              <section key={part}>
                <h3>{t.parts[part]}</h3>
                <Rows rows={own} />
              </section>
            ) : (
              <Folded key={part} summary={t.part(t.parts[part], own.length)}>
                {() => <Rows rows={own} />}
              </Folded>
            );
          })}
        </>
      )}
    </Folded>
  );
}

function OnlyPellet({ rows }: { rows: readonly MicronutrientRow[] }) {
  const only = rows
    .filter((r) => r.onlyPellet)
    .map(({ key }) => (key === 'CA:P' ? titleOf({ key }) : shortly(nutrientWord(key))));
  return only.length > 0 && <p className="only-pellet">{words().nutrients.micro.onlyPellet(only)}</p>;
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
  const t = words().nutrients;
  const judged = row.judgement === 'untargeted' ? undefined : t.micro.judged[row.judgement];
  return (
    <li className={`micro ${row.judgement.replace(' ', '-')}`} data-nutrient={row.key}>
      <div className="micro-head">
        <strong>{titleOf(row)}</strong>
        <span className="micro-target" title={row.source}>
          {min === undefined && max === undefined
            ? unitOf(row)
            : `${boundsText(rounded(min), rounded(max))} ${unitOf(row)}`}
        </span>
        {judged && <span className={`chip ${CHIP[row.judgement]}`}>{judged}</span>}
      </div>
      {row.brought && min !== undefined && <Picture row={row} min={min} />}
      <dl>
        <Said term={t.lane.ration} of={row.ration} />
        <Said term={t.lane.mix} of={row.mix} />
        {row.pellet && <Said term={t.lane.pellet} of={row.pellet} />}
      </dl>
    </li>
  );
}

function titleOf({ key }: Pick<MicronutrientRow, 'key'>): string {
  return key === 'CA:P' ? words().nutrients.micro.ratio : nutrient(key).name;
}

/** The unit of an amount, with the quantity that the amount is in. */
function unitOf({ key, basis }: MicronutrientRow): string {
  const t = words().nutrients.micro;
  return key === 'CA:P' ? t.toOne : t.per[PER[basis]](unitWord(nutrient(key).unit));
}

const CHIP: Record<Judgement, string> = {
  meets: 'in',
  short: 'out',
  over: 'out',
  untold: 'unknown',
  untargeted: '',
};

function Said({ term, of }: { term: string; of: Interval }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>
        {spoken(of)}
        {of.coverage > 0.5 && of.coverage < 99.5 && (
          <small> {words().nutrients.micro.knownFor(of.coverage)}</small>
        )}
      </dd>
    </div>
  );
}

/** "at least 3.2", "3.2", "unknown"; never a bare number where figures are missing. */
function spoken({ low, high, coverage }: Interval): string {
  const t = words().nutrients;
  if (coverage <= 0.5 && low === 0) return t.unknown;
  if (coverage >= 99.5 && high - low <= 0.01 * high) return figure((low + high) / 2);
  return coverage >= 99.5 ? t.micro.between(low, high) : t.micro.atLeast(low);
}

/** Pellet, mix and ration in their lanes beside what is needed, as in the ranges; the ration with what it may hold. */
function Picture({ row, min }: { row: MicronutrientRow; min: number }) {
  const { mix, pellet } = row.brought!;
  const x = scaleLinear([0, REACH * min], [LEFT, RIGHT]).clamp(true);
  const top = row.max === undefined ? RIGHT : x(row.max);
  const contents = {
    mix: at(row.mix),
    ration: at(row.ration),
    pellet: row.pellet && at(row.pellet),
    low: row.ration.low,
    high: row.ration.high,
  };
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${LANES_HEIGHT}`}
      role="img"
      aria-label={words().nutrients.micro.picture(min, mix, pellet)}
    >
      <rect className="band" x={x(min)} y={0} width={Math.max(1, top - x(min))} height={LANES_HEIGHT} />
      <line className="bound" x1={x(min)} x2={x(min)} y1={0} y2={LANES_HEIGHT} />
      {row.max !== undefined && <line className="bound" x1={top} x2={top} y1={0} y2={LANES_HEIGHT} />}
      <Lanes contents={contents} x={x} ruled="ration" pellet={row.pellet !== undefined} bare />
    </svg>
  );
}

/** Where an amount stands on its lane: at the least that is known of it; nowhere where nothing is. */
function at({ low, coverage }: Interval): number | undefined {
  return coverage <= 0.5 && low === 0 ? undefined : low;
}

/** Bounds turned to dry matter have more digits than anybody can read. */
function rounded(bound: number | undefined): number | undefined {
  return bound === undefined ? undefined : Number(bound.toPrecision(3));
}

/** "folate" of "folate, total": a list has commas of its own. */
function shortly(name: string): string {
  return name.split(',')[0] ?? name;
}
