/** The keeper's own bounds, wishes, price and stock of one food of the mix, and the ways to take it out. */
import { Button } from 'react-aria-components';
import { FOOD_GROUPS } from '../../../foods/food.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import { groupName, refuse, removeFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import type { MixActs } from '../useFormulation.ts';
import { MixCautions } from './MixCautions.tsx';
import './FoodDetails.css';
import '../../shared/styles/ticks.css';

export function FoodDetails(props: {
  food: Ingredient;
  name: string;
  span: Span | undefined;
  cautions: readonly CautionNote[];
  view: Pick<MixActs, 'edit'>;
  /** Changes what is asked of the food. */
  patch(change: Partial<Ingredient>): Promise<void>;
}) {
  const { food, name, span, cautions, view } = props;
  const t = words().rows;
  const d = t.details;
  const patch = (change: Partial<Ingredient>) => void props.patch(change);
  return (
    <div className="food-details">
      <MixCautions food={food} notes={cautions} view={view} />
      {span && span[1] - span[0] > 0.05 && <p className="hint">{t.mayStandNamed(name, span[0], span[1])}</p>}
      <div className="fields">
        <NumberInput
          label={d.least}
          unit="%"
          min={0}
          max={food.max ?? 100}
          value={food.min}
          onCommit={(min) => patch({ min })}
        />
        <NumberInput
          label={d.most}
          unit="%"
          min={food.min ?? 0}
          max={100}
          value={food.max}
          onCommit={(max) => patch({ max })}
        />
        <NumberInput
          label={d.wanted}
          unit="%"
          min={0}
          max={100}
          value={food.want}
          placeholder={d.even}
          onCommit={(want) => patch({ want })}
        />
        <NumberInput
          label={d.price}
          min={0}
          value={food.price_per_kg}
          onCommit={(price) => patch({ price_per_kg: price })}
        />
        <NumberInput
          label={d.ifUsed}
          unit="%"
          min={0}
          max={food.max ?? 100}
          value={food.if_used}
          placeholder={d.any}
          onCommit={(share) => patch({ if_used: share || undefined })}
        />
        <NumberInput
          label={d.athome}
          measure="mass"
          min={0}
          step={10}
          value={food.on_hand_grams}
          placeholder={d.notSaid}
          onCommit={(grams) => patch({ on_hand_grams: grams })}
        />
        <Choice
          label={d.group}
          value={food.group ?? ''}
          options={[
            ['', d.noGroup],
            ...Object.keys(FOOD_GROUPS).map((g): [string, string] => [g, groupName(g)]),
          ]}
          onChange={(group) => patch({ group: group || undefined })}
        />
        <label className="tick liked">
          <input
            type="checkbox"
            checked={food.liked ?? false}
            onChange={(e) => patch({ liked: e.target.checked || undefined })}
          />
          <span>{d.liked}</span>
        </label>
      </div>
      <div className="button-row">
        <Button className="quiet-button" onPress={() => void view.edit((m) => refuse(m, food.id, true))}>
          {t.markRefused}
        </Button>
        <Button className="quiet-button" onPress={() => void view.edit((m) => removeFood(m, food.id))}>
          {t.takeOut}
        </Button>
      </div>
    </div>
  );
}
