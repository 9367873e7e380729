/** The keeper's own bounds, wishes, price and stock of one food of the mix, and the ways to take it out. */
import { Button } from 'react-aria-components';
import { FOOD_GROUPS } from '../../../foods/food.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import { patchFood, refuse, removeFood } from '../../../household/reckon/mix/mix-edits.ts';
import { Choice } from '../../shared/Choice.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import type { FormulationView } from '../useFormulation.ts';
import { MixCautions } from './MixCautions.tsx';
import './FoodDetails.css';
import '../../shared/styles/ticks.css';

export function FoodDetails(props: {
  food: Ingredient;
  name: string;
  span: Span | undefined;
  cautions: readonly CautionNote[];
  view: FormulationView;
}) {
  const { food, name, span, cautions, view } = props;
  const patch = (change: Partial<Ingredient>) => void view.edit((m) => patchFood(m, food.id, change));
  return (
    <div className="food-details">
      <MixCautions food={food} notes={cautions} view={view} />
      {span && span[1] - span[0] > 0.05 && (
        <p className="hint">
          While every rule is kept, {name} may stand from {span[0].toFixed(1)} to {span[1].toFixed(1)} %.
        </p>
      )}
      <div className="fields">
        <NumberInput
          label="At least"
          unit="%"
          min={0}
          max={food.max ?? 100}
          value={food.min}
          onCommit={(min) => patch({ min })}
        />
        <NumberInput
          label="At most"
          unit="%"
          min={food.min ?? 0}
          max={100}
          value={food.max}
          onCommit={(max) => patch({ max })}
        />
        <NumberInput
          label="Wanted"
          unit="%"
          min={0}
          max={100}
          value={food.want}
          placeholder="even"
          onCommit={(want) => patch({ want })}
        />
        <NumberInput
          label="Price per kg"
          min={0}
          value={food.price_per_kg}
          onCommit={(price) => patch({ price_per_kg: price })}
        />
        <NumberInput
          label="If used, at least"
          unit="%"
          min={0}
          max={food.max ?? 100}
          value={food.if_used}
          placeholder="any"
          onCommit={(share) => patch({ if_used: share || undefined })}
        />
        <NumberInput
          label="In the cupboard"
          unit="g"
          min={0}
          step={10}
          value={food.on_hand_grams}
          placeholder="not said"
          onCommit={(grams) => patch({ on_hand_grams: grams })}
        />
        <Choice
          label="Group"
          value={food.group ?? ''}
          options={[['', 'None'], ...Object.entries(FOOD_GROUPS)]}
          onChange={(group) => patch({ group: group || undefined })}
        />
        <label className="tick liked">
          <input
            type="checkbox"
            checked={food.liked ?? false}
            onChange={(e) => patch({ liked: e.target.checked || undefined })}
          />
          <span>Liked</span>
        </label>
      </div>
      <div className="button-row">
        <Button className="quiet-button" onPress={() => void view.edit((m) => refuse(m, food.id, true))}>
          Mark as refused
        </Button>
        <Button className="quiet-button" onPress={() => void view.edit((m) => removeFood(m, food.id))}>
          Remove from mix
        </Button>
      </div>
    </div>
  );
}
