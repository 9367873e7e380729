/** One food of the mix: its share as slider and number, the span it may move in, its grams, hold and details. */
import { useState } from 'react';
import { Button, Label, Slider, SliderThumb, SliderTrack, ToggleButton } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import { hold, refuse, removeFood } from '../../../household/reckon/mix/mix-edits.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { HoldIcon } from '../icons.tsx';
import type { FormulationView } from '../useFormulation.ts';
import { FoodDetails } from './FoodDetails.tsx';
import { MixCautions } from './MixCautions.tsx';
import './ShareRow.css';

interface Props {
  food: Ingredient;
  name: string;
  share: number;
  span: Span | undefined;
  /** Share at the right end of the track, the same for every row. */
  top: number;
  grams: { text: string; exact: boolean };
  held: boolean;
  view: FormulationView;
}

/** After the answer, the new shares need a moment to reach the screen. */
const SETTLE_MS = 60;

export function ShareRow({ food, name, share, span, top, grams, held, view }: Props) {
  const [open, setOpen] = useState(false);
  /** Where the keeper put the share, until the mix has followed. */
  const [dragged, setDragged] = useState<number>();
  const low = span?.[0] ?? 0;
  const high = span?.[1] ?? 100;
  const percent = (v: number) => `${Math.min(100, Math.max(0, (100 * v) / top))}%`;

  function moveTo(wanted: number) {
    const reached = Math.min(high, Math.max(low, wanted));
    if (span && Math.abs(reached - wanted) > 0.051) {
      view.say(`${name} can stand from ${low.toFixed(1)} to ${high.toFixed(1)} % while every rule is kept.`);
    }
    setDragged(reached);
    const settle = () => setDragged((d) => (d === reached ? undefined : d));
    void view.move(food.id, reached).finally(() => setTimeout(settle, SETTLE_MS));
  }

  const cautions = view.evaluation?.cautions.filter((c) => c.food === food.id) ?? [];
  const blocked = cautions.some((c) => c.applied === 'blocked');

  if (blocked) {
    return (
      <li className="share-row blocked" data-food={food.id}>
        <span className="food-name">{name}</span>
        <span className="tag warn">not to be fed</span>
        <Button className="quiet-button" onPress={() => void view.edit((m) => removeFood(m, food.id))}>
          Remove from mix
        </Button>
        <MixCautions food={food} notes={cautions} view={view} />
      </li>
    );
  }

  if (food.refused) {
    return (
      <li className="share-row refused" data-food={food.id}>
        <span className="food-name">{name}</span>
        <span className="tag">refused</span>
        <Button className="quiet-button" onPress={() => void view.edit((m) => refuse(m, food.id, false))}>
          Offer again
        </Button>
      </li>
    );
  }

  return (
    <li className={`share-row ${held ? 'held' : ''}`} data-food={food.id}>
      <Slider
        className="share-slider"
        minValue={0}
        maxValue={top}
        step={0.1}
        value={Math.min(top, dragged ?? share)}
        isDisabled={held}
        onChange={moveTo}
        onChangeEnd={view.endMove}
      >
        <Label className="food-name">
          {name} {cautions.length > 0 && <span className="tag warn">{cautionWord(cautions)}</span>}
        </Label>
        <SliderTrack className="track">
          <span className="rail" />
          {span && (
            <span
              className="span"
              style={{ left: percent(low), right: `calc(100% - ${percent(Math.max(high, low))})` }}
              title={`May stand from ${low.toFixed(1)} to ${high.toFixed(1)} %`}
            />
          )}
          <SliderThumb className="thumb" aria-label={`Share of ${name} in percent`} />
        </SliderTrack>
      </Slider>
      <NumberInput
        label={`Share of ${name}`}
        quiet
        required
        unit="%"
        decimals={1}
        min={0}
        max={100}
        value={share}
        disabled={held}
        onCommit={(v) => {
          moveTo(v ?? 0);
          view.endMove();
        }}
      />
      <span className={`grams ${grams.exact ? '' : 'about'}`}>{grams.text}</span>
      <ToggleButton
        className="icon-button hold"
        isSelected={held}
        onChange={(on) => void view.edit((m) => hold(m, food.id, on))}
        aria-label={`Hold ${name} where it is`}
      >
        <HoldIcon closed={held} />
      </ToggleButton>
      <Button
        className="icon-button more"
        aria-expanded={open}
        aria-label={`More about ${name}`}
        onPress={() => setOpen(!open)}
      >
        <span aria-hidden="true">{open ? '▴' : '▾'}</span>
      </Button>
      {open && <FoodDetails food={food} name={name} span={span} cautions={cautions} view={view} />}
    </li>
  );
}

/** The strictest thing said of a food, in two words. */
function cautionWord(cautions: readonly CautionNote[]): string {
  const limits = cautions.filter((c) => c.applied === 'capped').map((c) => c.max_share ?? 0);
  if (limits.length > 0) return `limit ${Math.min(...limits)} %`;
  return cautions.some((c) => c.applied === 'overridden') ? 'limit lifted' : 'caution';
}
