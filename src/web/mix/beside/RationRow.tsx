/** One food fed beside the mix: how much of it, whether its share may be chosen, and whether its water counts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
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
import { Choice } from '../../shared/Choice.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import type { FormulationView } from '../useFormulation.ts';
import '../../shared/styles/ticks.css';
import { capital } from '../../../formulation/explain/sentences.ts';

interface Props {
  food: Beside;
  name: string;
  invented: boolean;
  mix: Mix;
  view: FormulationView;
  waterOf: WaterOf;
  onRemove(): void;
}

export function RationRow({ food, name, invented, mix, view, waterOf, onRemove }: Props) {
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

  return (
    <li className="ration-row">
      <fieldset data-beside={id}>
        <legend>
          {name} {invented && <span className="tag">invented</span>}
        </legend>
        <div className="fields ration-fields">
          <Choice
            label="Given as"
            value={grams_a_day === undefined ? 'share' : 'grams'}
            options={[
              ['share', 'share'],
              ['grams', 'grams a day'],
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
                label="Share of the ration"
                unit="%"
                min={least}
                max={floor(most)}
                step={5}
                required
                value={share}
                hint={roomWords(room, least, most, '%')}
                onCommit={(v) => edit((m) => byShare(m, id, v ?? 0))}
              />
            </div>
          ) : (
            <NumberInput
              label="Grams a day"
              unit="g"
              min={ceil(grams(least))}
              max={floor(grams(most))}
              step={0.5}
              required
              value={grams_a_day}
              hint={`${fresh ? 'Counted dry, that is' : 'That is'} ${round(share)} % of the ration.`}
              onCommit={(v) => edit((m) => byGrams(m, id, v ?? 0, waterOf))}
            />
          )}
          <NumberInput
            label="Choose from"
            unit="%"
            min={0}
            max={floor(share)}
            step={5}
            value={share_min}
            placeholder={isChosen(food) ? String(round(share)) : 'fixed'}
            onCommit={(v) => edit((m) => withChoice(m, id, v, share_max))}
          />
          <NumberInput
            label="to"
            unit="%"
            min={ceil(share)}
            max={100}
            step={5}
            value={share_max}
            placeholder={isChosen(food) ? String(round(share)) : 'fixed'}
            onCommit={(v) => edit((m) => withChoice(m, id, share_min, v))}
          />
        </div>
        {needsDay && daily === undefined && (
          <p role="alert" className="field-error">
            Grams a day need the whole ration of a day. Write that first, above; then choose grams again.
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
              <span>Fresh: count it without its water</span>
            </label>
          )}
          <Button className="quiet-button" aria-label={`Remove ${name} from the ration`} onPress={onRemove}>
            Remove
          </Button>
        </div>
        {fresh && (
          <p className="hint">
            The ranges are meant for dry food, so a slice of cucumber does not lower the protein that the
            animal gets: its water counts only up to {AIR_DRY_WATER} %, the moisture at which feed tables
            state their figures (NRC 1995).
          </p>
        )}
      </fieldset>
    </li>
  );
}

/** What the program chose, and how far it could go. */
function Chosen({ food, view }: { food: Beside; view: FormulationView }) {
  const chosen = view.evaluation?.beside?.[food.id];
  const span = chosen?.span;
  let words = view.state === 'fault' ? '' : 'Working…';
  if (chosen && !span)
    words = `No share within these bounds lets a mix keep every rule; ${round(chosen.share)} % counts.`;
  if (chosen && span) {
    const reach =
      span[1] - span[0] > 0.05
        ? `A mix keeps every rule from ${round(span[0])} to ${round(span[1])} %.`
        : 'No other share lets a mix keep every rule.';
    words = `Chosen: ${round(chosen.share)} %. ${reach}`;
  }
  return (
    <p className="ration-chosen" aria-live="polite">
      {words}
    </p>
  );
}

/** Says why less or more is refused; nothing where there is all the room. */
function roomWords(room: number, least: number, most: number, unit: string): string | undefined {
  const parts: string[] = [];
  if (least > 0) parts.push(`at least ${round(least)} ${unit}, its own bound`);
  if (most < room) parts.push(`at most ${round(most)} ${unit}, its own bound`);
  else if (room < 99) parts.push(`at most ${round(room)} ${unit}: what else is fed leaves no more`);
  if (parts.length === 0) return undefined;
  const words = parts.join('; ');
  return `${capital(words)}.`;
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
