/** A group of foods with its total, its window and its rows; folds away. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { GroupRule, Ingredient } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import type { OutOfMix } from '../../../household/reckon/mix/eaters.ts';
import { groupName, OTHER, withGroupWindow } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { boundsText } from '../../shared/windows.ts';
import type { FormulationView } from '../useFormulation.ts';
import { isBestMix } from './ask-words.ts';
import { ShareRow } from './ShareRow.tsx';
import './GroupSection.css';

interface Props {
  group: string;
  foods: readonly Ingredient[];
  mix: Mix;
  view: FormulationView;
  top: number;
  out: OutOfMix;
  nameOf(food: Ingredient): string;
}

export function GroupSection({ group, foods, mix, view, top, out, nameOf }: Props) {
  const t = words().rows;
  const [open, setOpen] = useState(true);
  const [editing, setEditing] = useState(false);
  const rule = mix.problem.rules.find(
    (r): r is GroupRule => 'group' in r && r.group === group && (r.on ?? 'mix') === 'mix',
  );
  const total = foods.reduce((sum, f) => sum + (mix.shares[f.id] ?? 0), 0);
  const outside =
    rule &&
    ((rule.min !== undefined && total < rule.min - 0.01) ||
      (rule.max !== undefined && total > rule.max + 0.01));
  const best = isBestMix(mix.shares, view.best?.shares);
  const nameById = (id: string) => nameOf(mix.problem.foods.find((f) => f.id === id) ?? { id });
  const windowOf = (min?: number, max?: number) => void view.edit((m) => withGroupWindow(m, group, min, max));

  return (
    <section className="group" aria-label={groupName(group)}>
      <header className="group-head">
        <h2>
          <Button className="fold" aria-expanded={open} onPress={() => setOpen(!open)}>
            <span aria-hidden="true">{open ? '▾' : '▸'}</span> {groupName(group)}
          </Button>
        </h2>
        <span className={`group-total ${outside ? 'outside' : ''}`}>
          <strong>{t.group.total(total)}</strong>
          {rule && ` ${(outside ? t.group.outside : t.group.of)(`${boundsText(rule.min, rule.max)} %`)}`}
        </span>
        {group !== OTHER && (
          <Button
            className="quiet-button small"
            aria-expanded={editing}
            aria-label={(rule ? t.group.rangeOf : t.group.setRangeOf)(groupName(group))}
            onPress={() => setEditing(!editing)}
          >
            {rule ? t.group.range : t.group.setRange}
          </Button>
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
            <ShareRow
              key={food.id}
              food={food}
              name={nameOf(food)}
              share={mix.shares[food.id] ?? 0}
              span={view.spans?.[food.id]}
              top={top}
              grams={gramsOf(food.id, mix, view)}
              held={mix.held.includes(food.id)}
              mix={mix}
              best={best}
              view={view}
              out={out[food.id]}
              nameOf={nameById}
            />
          ))}
        </ul>
      )}
    </section>
  );
}

function gramsOf(id: string, mix: Mix, view: FormulationView): { text: string; exact: boolean } {
  const step = mix.problem.scale_step_grams;
  const decimals = step >= 1 ? 0 : Math.ceil(-Math.log10(step));
  const weighed = view.weighed?.grams?.[id];
  const t = words();
  if (weighed !== undefined) return { text: t.figures.grams(weighed, decimals), exact: true };
  const about = ((mix.shares[id] ?? 0) * mix.problem.batch_grams) / 100;
  return { text: t.rows.about(t.figures.grams(about, decimals)), exact: false };
}
