/** One food of the mix: its share as slider and number, the span it may move in, its grams, hold and details. */
import { useState } from 'react';
import { Button, Label, Slider, SliderThumb, SliderTrack, ToggleButton } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import type { Span } from '../../../formulation/solve/mix-solver.ts';
import type { Mix } from '../../../household/model.ts';
import type { OutRule } from '../../../household/reckon/care/out-foods.ts';
import { hold, refuse, removeFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { outWords } from '../animals/out-words.ts';
import { HoldIcon } from '../icons.tsx';
import { type FormulationView, isFit } from '../useFormulation.ts';
import { AskNote, WantLine } from './AskNote.tsx';
import { clashWords } from './ask-words.ts';
import { FoodDetails } from './FoodDetails.tsx';
import { MixCautions } from './MixCautions.tsx';
import { useAsk } from './useAsk.ts';
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
  /** With what its animals bring. */
  mix: Mix;
  /** Whether the mix is the one nearest to all that is wanted. */
  best: boolean;
  view: FormulationView;
  /** Why it is out because of an animal; undefined where no animal keeps it out. */
  out: readonly OutRule[] | undefined;
  nameOf(id: string): string;
}

/** After the answer, the new shares need a moment to reach the screen. */
const SETTLE_MS = 60;

export function ShareRow({ food, name, share, span, top, grams, held, mix, best, view, out, nameOf }: Props) {
  const t = words().rows;
  const [open, setOpen] = useState(false);
  /** Where the keeper put the slider, until the mix has followed. */
  const [dragged, setDragged] = useState<number>();
  const ask = useAsk(food, mix, view);
  const low = span?.[0] ?? 0;
  const high = span?.[1] ?? 100;
  const percent = (v: number) => `${Math.min(100, Math.max(0, (100 * v) / top))}%`;
  const settle = (at: number) => setTimeout(() => setDragged((d) => (d === at ? undefined : d)), SETTLE_MS);

  function drag(wanted: number) {
    const reached = Math.min(high, Math.max(low, wanted));
    setDragged(reached);
    // Where other foods would be left with nothing the mix waits, and the slider stays where it was put.
    void ask.drag(reached).then((followed) => followed && settle(reached));
  }
  function letGo(wanted: number) {
    void ask.letGo(wanted).finally(() => settle(Math.min(high, Math.max(low, wanted))));
  }

  const cautions = view.evaluation?.cautions.filter((c) => c.food === food.id) ?? [];
  const blocked = cautions.some((c) => c.applied === 'blocked');
  const clash = isFit(view.state) ? undefined : clashWords(view.collision?.conflict, mix.problem, food.id);

  if (blocked) {
    return (
      <li className="share-row blocked" data-food={food.id}>
        <span className="food-name">{name}</span>
        <span className="tag warn">{t.notFed}</span>
        <Button className="quiet-button" onPress={() => void view.edit((m) => removeFood(m, food.id))}>
          {t.takeOut}
        </Button>
        <MixCautions food={food} notes={cautions} view={view} />
      </li>
    );
  }

  if (food.refused) {
    return (
      <li className="share-row refused" data-food={food.id}>
        <span className="food-name">{name}</span>
        {out ? (
          <span className="tag">{outWords(out)}</span>
        ) : (
          <>
            <span className="tag">{t.refused}</span>
            <Button className="quiet-button" onPress={() => void view.edit((m) => refuse(m, food.id, false))}>
              {t.offerAgain}
            </Button>
          </>
        )}
      </li>
    );
  }

  return (
    <li
      className={`share-row ${held ? 'held' : ''}`}
      data-food={food.id}
      onKeyDown={(event) => {
        if (event.key === 'Escape') ask.leave();
      }}
    >
      <Slider
        className="share-slider"
        minValue={0}
        maxValue={top}
        step={0.1}
        value={Math.min(top, dragged ?? share)}
        isDisabled={held}
        onChange={drag}
        onChangeEnd={letGo}
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
              title={t.mayStand(low, high)}
            />
          )}
          <SliderThumb className="thumb" aria-label={t.shareInPercent(name)} />
        </SliderTrack>
      </Slider>
      <NumberInput
        label={t.shareOf(name)}
        quiet
        required
        unit="%"
        decimals={1}
        min={0}
        max={100}
        value={ask.pending ?? share}
        disabled={held}
        onCommit={(v) => void ask.share(v ?? 0)}
      />
      <AskNote food={food} share={share} mix={mix} ask={ask} nameOf={nameOf} />
      <span className={`grams ${grams.exact ? '' : 'about'}`}>{grams.text}</span>
      <ToggleButton
        className="icon-button hold"
        isSelected={held}
        onChange={(on) => void view.edit((m) => hold(m, food.id, on))}
        aria-label={t.hold(name)}
      >
        <HoldIcon closed={held} />
      </ToggleButton>
      <Button
        className="icon-button more"
        aria-expanded={open}
        aria-label={t.more(name)}
        onPress={() => setOpen(!open)}
      >
        <span aria-hidden="true">{open ? '▴' : '▾'}</span>
      </Button>
      {!held && <WantLine food={food} share={share} mix={mix} best={best} />}
      {clash && (
        <p className="clash">
          <span aria-hidden="true">✕</span> {clash}
        </p>
      )}
      {open && (
        <FoodDetails food={food} name={name} span={span} cautions={cautions} view={view} patch={ask.patch} />
      )}
    </li>
  );
}

/** The strictest thing said of a food, in two words. */
function cautionWord(cautions: readonly CautionNote[]): string {
  const t = words().rows.tags;
  const limits = cautions.filter((c) => c.applied === 'capped').map((c) => c.max_share ?? 0);
  if (limits.length > 0) return t.limit(Math.min(...limits));
  return cautions.some((c) => c.applied === 'overridden') ? t.lifted : t.caution;
}
