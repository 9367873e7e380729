/** A dried, blanched, roasted or sprouted form of a food, where a source says what becomes of it. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Food } from '../../foods/food.ts';
import { type Form, type Formed, formOf } from '../../foods/forms/form-of.ts';
import { type FreshNeeded, freshFor } from '../../foods/forms/fresh-for.ts';
import { ownFrom } from '../../household/reckon/foods/own-food.ts';
import { NUTRIENTS, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { go } from '../shared/route.ts';
import { figure } from '../shared/windows.ts';
import { newId } from '../store/new-id.ts';
import { useSaveFood } from '../store/save-food.ts';

/** Home-dried vegetables keep at about this (common practice, no source). */
const DRIED_MOISTURE = 10;
/** A food at most this damp is dry already, g of water per 100 g (common practice, no source). */
const DRY = 20;

export function MakeForm({ food }: { food: Food & { refuse?: number } }) {
  const { save, error } = useSaveFood();
  const [open, setOpen] = useState(false);
  const t = words().foods.make;
  const water = food.composition.WATER;
  const [form, setForm] = useState<Form>(water !== undefined && water <= DRY ? 'roasted' : 'dried');
  const [moisture, setMoisture] = useState<number>();
  const [before, setBefore] = useState<number>();
  const [after, setAfter] = useState<number>();
  const damp = moisture ?? (form === 'blanched' ? water : Math.min(DRIED_MOISTURE, (water ?? 0) / 2));
  if (water === undefined) return <p className="hint">{t.noMoisture}</p>;
  const made = open ? attempt(() => formOf(food, form, { moisture: damp!, before, after })) : undefined;
  const fresh = form === 'dried' ? attempt(() => freshFor(100, food, damp!)) : undefined;

  async function keep(formed: Formed) {
    const { figures, source } = formed;
    const own = ownFrom(food, { name: t.named[form](food.name), figures, source, newId });
    await save(own, undefined);
    go('foods', own.id);
  }

  return (
    <section className="make-form" aria-label={t.section}>
      <Button className="quiet-button" aria-expanded={open} onPress={() => setOpen(!open)}>
        {t.open}
      </Button>
      {open && (
        <>
          <div className="fields">
            <Choice
              label={t.form}
              value={form}
              options={Object.entries(t.forms) as [Form, string][]}
              onChange={setForm}
            />
            {form !== 'sprouted' && (
              <NumberInput
                label={t.moisture}
                unit="%"
                min={0}
                max={99}
                required
                value={damp}
                onCommit={setMoisture}
              />
            )}
            {form === 'blanched' && (
              <>
                <NumberInput label={t.before} measure="mass" min={0.1} value={before} onCommit={setBefore} />
                <NumberInput label={t.after} measure="mass" min={0.1} value={after} onCommit={setAfter} />
              </>
            )}
          </div>
          {made && 'fault' in made && (
            <p role="alert" className="field-error">
              {made.fault}
            </p>
          )}
          {made && 'formed' in made && !made.formed && <p>{made.reason}</p>}
          {made && 'formed' in made && made.formed && (
            <>
              {fresh && !('fault' in fresh) && <Fresh needed={fresh} />}
              <Preview made={made} />
              <Button className="button strong" onPress={() => void keep(made).catch(() => {})}>
                {t.keep(t.named[form](food.name))}
              </Button>
              {form === 'dried' && <p className="caution">{t.mindHeat}</p>}
            </>
          )}
          <Failed error={error} />
        </>
      )}
    </section>
  );
}

function Fresh({ needed }: { needed: FreshNeeded }) {
  const t = words().foods.make;
  const { prepared, purchased } = needed;
  return (
    <p>
      {purchased === undefined ? t.fresh(100, prepared) : t.freshBought(100, prepared, purchased)}{' '}
      {needed.note}
    </p>
  );
}

function Preview({ made }: { made: Formed }) {
  const { composition, sd, low, high } = made.figures;
  const rows = NUTRIENTS.filter((n) => made.notes[n.tag] !== undefined);
  return (
    <details>
      <summary>{words().foods.make.preview(rows.length)}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-label={words().foods.make.preview(rows.length)}>
        <table>
          <tbody>
            {rows.map(({ tag, name, unit }) => (
              <tr key={tag}>
                <th scope="row">{name}</th>
                <td>
                  {said(composition[tag], sd[tag], low?.[tag], high?.[tag], unitWord(unit))}
                  <small className="note">{made.notes[tag]}</small>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}

function said(
  value: number | undefined,
  sd: number | undefined,
  low: number | undefined,
  high: number | undefined,
  unit: string,
): string {
  const { foods, common } = words();
  if (value !== undefined)
    return `${figure(value)}${sd ? ` ${foods.amounts.spread(figure(sd))}` : ''} ${unit}`;
  if (low !== undefined && high !== undefined) return foods.make.between(figure(low), figure(high), unit);
  return common.unknown;
}

/** The answer, or what was wrong with the question, in words. */
function attempt<T>(ask: () => T): T | { readonly fault: string } {
  try {
    return ask();
  } catch (error) {
    if (error instanceof RangeError) return { fault: error.message };
    throw error;
  }
}
