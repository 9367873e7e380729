/** One food fed beside the mix: how much of it, whether its share may be chosen, and whether its water counts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import type { OutRule } from '../../../household/reckon/care/out-foods.ts';
import {
  byGrams,
  byShare,
  countAirDry,
  countedPart,
  gramsOfShare,
  isChosen,
  roomFor,
  type WaterOf,
  withChoice,
} from '../../../household/reckon/mix/beside.ts';
import { AIR_DRY_WATER, canBeAirDry } from '../../../nutrition/air-dry.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { outWords } from '../animals/out-words.ts';
import type { FormulationView } from '../useFormulation.ts';
import '../../shared/styles/ticks.css';

interface Props {
  food: Beside;
  name: string;
  invented: boolean;
  mix: Mix;
  view: FormulationView;
  /** Why it is not fed because of an animal; empty where none keeps it out. */
  out: readonly OutRule[];
  waterOf: WaterOf;
  onRemove(): void;
}

export function RationRow({ food, name, invented, mix, view, out, waterOf, onRemove }: Props) {
  const { beside: texts, common, figures } = words();
  const t = texts.row;
  const { id, share_of_ration: share, share_min, share_max, grams_a_day } = food;
  const daily = mix.problem.daily_grams;
  const [needsDay, setNeedsDay] = useState(false);
  const water = waterOf(food);
  const part = countedPart(food, water);
  const room = roomFor(mix.problem, id);
  const least = share_min ?? 0;
  const most = Math.min(share_max ?? 100, room);
  const edit = (next: (m: Mix) => Mix) => void view.edit(next);
  const grams = (percent: number) => gramsOfShare(percent, daily ?? 0, part);
  const fresh = food.counts_as === 'air dry';

  if (out.length > 0)
    return (
      <li className="ration-row">
        <fieldset data-beside={id}>
          <legend>
            {name} <span className="tag warn">{outWords(out)}</span>
          </legend>
          <Button className="quiet-button" aria-label={t.remove(name)} onPress={onRemove}>
            {common.remove}
          </Button>
        </fieldset>
      </li>
    );

  return (
    <li className="ration-row">
      <fieldset data-beside={id}>
        <legend>
          {name} {invented && <span className="tag">{t.invented}</span>}
        </legend>
        <div className="fields ration-fields">
          <Choice
            label={t.givenAs}
            value={grams_a_day === undefined ? 'share' : 'grams'}
            options={[
              ['share', t.asShare],
              ['grams', t.asGrams],
            ]}
            onChange={(by) => {
              if (by === 'share') edit((m) => byShare(m, id, share));
              else if (daily !== undefined) edit((m) => byGrams(m, id, round(grams(share)), waterOf));
              setNeedsDay(by === 'grams' && daily === undefined);
            }}
          />
          {grams_a_day === undefined ? (
            <div className="ration-share">
              <NumberInput
                label={t.share}
                unit="%"
                min={least}
                max={floor(most)}
                step={5}
                required
                value={share}
                hint={roomWords(room, least, most)}
                onCommit={(v) => edit((m) => byShare(m, id, v ?? 0))}
              />
            </div>
          ) : (
            <NumberInput
              label={t.grams}
              measure="mass"
              min={ceil(grams(least))}
              max={floor(grams(most))}
              step={0.5}
              required
              value={grams_a_day}
              hint={(fresh ? t.isShareDry : t.isShare)(share)}
              onCommit={(v) => edit((m) => byGrams(m, id, v ?? 0, waterOf))}
            />
          )}
          <NumberInput
            label={t.from}
            unit="%"
            min={0}
            max={floor(share)}
            step={5}
            value={share_min}
            placeholder={isChosen(food) ? figures.number(share) : t.fixed}
            onCommit={(v) => edit((m) => withChoice(m, id, v, share_max))}
          />
          <NumberInput
            label={t.to}
            unit="%"
            min={ceil(share)}
            max={100}
            step={5}
            value={share_max}
            placeholder={isChosen(food) ? figures.number(share) : t.fixed}
            onCommit={(v) => edit((m) => withChoice(m, id, share_min, v))}
          />
        </div>
        {needsDay && daily === undefined && (
          <p role="alert" className="field-error">
            {t.needsDay}
          </p>
        )}
        {isChosen(food) && <Chosen food={food} view={view} />}
        <div className="ration-foot">
          {canBeAirDry(water) && water > AIR_DRY_WATER && (
            <label className="tick">
              <input
                type="checkbox"
                checked={fresh}
                onChange={(e) => edit((m) => countAirDry(m, id, e.target.checked, waterOf))}
              />
              <span>{t.fresh}</span>
            </label>
          )}
          <Button className="quiet-button" aria-label={t.remove(name)} onPress={onRemove}>
            {common.remove}
          </Button>
        </div>
        {fresh && <p className="hint">{t.whyDry(AIR_DRY_WATER)}</p>}
      </fieldset>
    </li>
  );
}

/** What the program chose, and how far it could go. */
function Chosen({ food, view }: { food: Beside; view: FormulationView }) {
  const chosen = view.evaluation?.beside?.[food.id];
  const span = chosen?.span;
  const t = words().beside.row;
  let said = view.state === 'fault' ? '' : t.working;
  if (chosen && !span) said = t.noShare(chosen.share);
  if (chosen && span)
    said = span[1] - span[0] > 0.05 ? t.chosen(chosen.share, span[0], span[1]) : t.onlyShare(chosen.share);
  return (
    <p className="ration-chosen" aria-live="polite">
      {said}
    </p>
  );
}

/** Says why less or more is refused; nothing where there is all the room. */
function roomWords(room: number, least: number, most: number): string | undefined {
  const t = words().beside.row;
  const parts: string[] = [];
  if (least > 0) parts.push(t.atLeast(least));
  if (most < room) parts.push(t.atMost(most));
  else if (room < 99) parts.push(t.room(room));
  return parts.length === 0 ? undefined : parts.join(' ');
}

function round(value: number): number {
  return Number(value.toFixed(2));
}
/** Rounded inwards to what the field shows, so that no number it names is refused. */
function floor(value: number): number {
  return Math.floor(value * 100 + 1e-6) / 100;
}
function ceil(value: number): number {
  return Math.ceil(value * 100 - 1e-6) / 100;
}
