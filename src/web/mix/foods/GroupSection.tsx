/** A group of foods with its total, its window and its rows; folds away. */
import { memo, useState } from 'react';
import { Button } from 'react-aria-components';
import type { GroupRule, Ingredient, Shares } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import type { OutOfMix } from '../../../household/reckon/mix/eaters.ts';
import { groupName, OTHER, withGroupWindow } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { boundsText } from '../../shared/windows.ts';
import { useInSight } from '../live/useInSight.ts';
import { useStill } from '../live/useStill.ts';
import type { FormulationView, MixActs } from '../useFormulation.ts';
import { clashWords } from './ask-words.ts';
import { ShareRow, type ShareRowProps } from './ShareRow.tsx';
import './GroupSection.css';

/** What the rows of all groups are drawn with. */
export interface RowsProps {
  /** As it is kept, with what its animals bring: it stays the same while a slider moves. */
  readonly mix: Mix;
  /** As they are shown, percent by food id. */
  readonly shares: Shares;
  readonly view: Pick<FormulationView, 'spans' | 'weighed' | 'collision'>;
  /** Whether the mix breaks no rule. */
  readonly fit: boolean;
  /** Whether a hand moves a slider. */
  readonly moving: boolean;
  /** Whether it is the one nearest to all that is wanted. */
  readonly best: boolean;
  /** By food id. */
  readonly cautions: ReadonlyMap<string, readonly CautionNote[]>;
  /** Share at the right end of every track. */
  readonly top: number;
  readonly out: OutOfMix;
  readonly acts: MixActs;
  nameOf(food: Ingredient): string;
  nameById(id: string): string;
}

const NO_CAUTIONS: readonly CautionNote[] = [];

export function GroupSection(props: RowsProps & { group: string; foods: readonly Ingredient[] }) {
  const { group, foods, mix, shares, view, fit, moving, acts } = props;
  const t = words().rows;
  const [open, setOpen] = useState(true);
  const [editing, setEditing] = useState(false);
  const rule = mix.problem.rules.find(
    (r): r is GroupRule => 'group' in r && r.group === group && (r.on ?? 'mix') === 'mix',
  );
  const total = foods.reduce((sum, f) => sum + (shares[f.id] ?? 0), 0);
  const outside =
    rule &&
    ((rule.min !== undefined && total < rule.min - 0.01) ||
      (rule.max !== undefined && total > rule.max + 0.01));
  const windowOf = (min?: number, max?: number) => void acts.edit((m) => withGroupWindow(m, group, min, max));

  return (
    <section className="group" aria-label={groupName(group)}>
      <header className="group-head">
        <h2>
          <Fold open={open} setOpen={setOpen} name={groupName(group)} />
        </h2>
        <span className={`group-total ${outside ? 'outside' : ''}`}>
          <strong>{t.group.total(total)}</strong>
          {rule && ` ${(outside ? t.group.outside : t.group.of)(`${boundsText(rule.min, rule.max)} %`)}`}
        </span>
        {group !== OTHER && (
          <RangePress
            open={editing}
            setOpen={setEditing}
            name={groupName(group)}
            ruled={rule !== undefined}
          />
        )}
      </header>
      {editing && (
        <div className="fields group-window">
          <NumberInput
            label={t.group.least}
            unit="%"
            min={0}
            max={rule?.max ?? 100}
            value={rule?.min}
            onCommit={(min) => windowOf(min, rule?.max)}
          />
          <NumberInput
            label={t.group.most}
            unit="%"
            min={rule?.min ?? 0}
            max={100}
            value={rule?.max}
            onCommit={(max) => windowOf(rule?.min, max)}
          />
        </div>
      )}
      {open && (
        <ul className="share-rows">
          {foods.map((food) => (
            <Row
              key={food.id}
              food={food}
              name={props.nameOf(food)}
              share={moving ? seen(shares[food.id] ?? 0) : (shares[food.id] ?? 0)}
              span={view.spans?.[food.id]}
              top={props.top}
              weighed={view.weighed?.grams?.[food.id]}
              held={mix.held.includes(food.id)}
              mix={mix}
              best={props.best}
              fit={fit}
              cautions={props.cautions.get(food.id) ?? NO_CAUTIONS}
              clash={fit ? undefined : clashWords(view.collision?.conflict, mix.problem, food.id)}
              acts={acts}
              out={props.out[food.id]}
              nameOf={props.nameById}
              moving={moving}
            />
          ))}
        </ul>
      )}
    </section>
  );
}

interface Press {
  open: boolean;
  setOpen(open: boolean): void;
  name: string;
}

const Fold = memo(function Fold({ open, setOpen, name }: Press) {
  return (
    <Button className="fold" aria-expanded={open} onPress={() => setOpen(!open)}>
      <span aria-hidden="true">{open ? '▾' : '▸'}</span> {name}
    </Button>
  );
});

const RangePress = memo(function RangePress({ open, setOpen, name, ruled }: Press & { ruled: boolean }) {
  const t = words().rows.group;
  return (
    <Button
      className="quiet-button small"
      aria-expanded={open}
      aria-label={(ruled ? t.rangeOf : t.setRangeOf)(name)}
      onPress={() => setOpen(!open)}
    >
      {ruled ? t.range : t.setRange}
    </Button>
  );
});

interface RowProps extends Omit<ShareRowProps, 'watch' | 'grams' | 'exact'> {
  /** Its grams for the scale; undefined while they are not worked out. */
  weighed: number | undefined;
  moving: boolean;
}

/** A row out of sight waits while a hand moves a slider, and follows once it can be seen or the slider is let go. */
const Row = memo(function Row({ moving, weighed, ...row }: RowProps) {
  const [inSight, watch] = useInSight();
  const share = useStill(row.share, moving && !inSight);
  return <ShareRow {...row} {...gramsOf(share, weighed, row.mix)} share={share} watch={watch} />;
});

/** A fifth of the last digit of a share's number, percent: rounded so first, the number is the same. */
const SEEN = 0.02;

/** As much of a share as can be seen of it while it moves: a row that moves by less is not drawn anew. */
function seen(share: number): number {
  return Math.round(share / SEEN) * SEEN;
}

function gramsOf(share: number, weighed: number | undefined, { problem }: Mix) {
  const { scale_step_grams: step, batch_grams } = problem;
  const decimals = step >= 1 ? 0 : Math.ceil(-Math.log10(step));
  const t = words();
  if (weighed !== undefined) return { grams: t.figures.grams(weighed, decimals), exact: true };
  return { grams: t.rows.about(t.figures.grams((share * batch_grams) / 100, decimals)), exact: false };
}
