/** The figures of a food, by pasting its label or by filling in fields: two ways to the same result. */
import { useEffect, useMemo, useState } from 'react';
import { countOf } from '../../foods/figures.ts';
import type { FoodGroup } from '../../foods/food.ts';
import { type Fault, faultsOf, impossible } from '../../foods/label/faults.ts';
import { figuresFrom, type LabelForm, statedFrom, withLabelSd } from '../../foods/label/form.ts';
import type { FoodSource } from '../../foods/sources/source.ts';
import type { GivenFigures } from '../../household/reckon/foods/label-source.ts';
import { words } from '../../words/words.ts';
import { LabelPaste } from '../shared/label/LabelPaste.tsx';
import { usePastedLabel } from '../shared/label/usePastedLabel.ts';
import { Radios } from '../shared/Radios.tsx';
import { AmountFields } from './AmountFields.tsx';
import { FigureWarnings } from './FigureWarnings.tsx';
import '../shared/label/label.css';

export interface FigureResult extends GivenFigures {
  /** What cannot be true or kept; nothing is to be saved while there is any. */
  readonly faults: readonly string[];
}

type Way = 'paste' | 'fields';

interface Props {
  /** A source to change; absent for a new one. */
  initial?: FoodSource;
  about: { readonly name: string; readonly group?: FoodGroup; readonly kind: 'mix' | 'pellet' };
  /** Undefined while nothing is entered. Give a function that stays the same. */
  onChange(result: FigureResult | undefined): void;
}

/** Most characters of a label that the store keeps. */
const MOST_TEXT = 4000;

export function FigureForm({ initial, about, onChange }: Props) {
  const [start] = useState(() => ({ initial, kind: about.kind, form: startForm(initial) }));
  const [way, setWay] = useState<Way>(initial && initial.printed === undefined ? 'fields' : 'paste');
  const [form, setForm] = useState(start.form);
  const pasted = usePastedLabel(start.initial);
  const [carried, setCarried] = useState({ version: 0, amounts: 0 });
  const { name, group, kind } = about;
  const t = words().foods.figures;

  const faults = useMemo((): Fault[] => {
    if (way === 'fields') return faultsOf(form);
    if (pasted.text.length > MOST_TEXT)
      return [
        {
          message: words().foods.figures.tooLong(pasted.text.length, MOST_TEXT),
        },
      ];
    return impossible(pasted.figures, words().foods.figures.recheck);
  }, [way, form, pasted.text, pasted.figures]);

  const result = useMemo((): FigureResult | undefined => {
    const printed = pasted.text.trim() === '' ? undefined : pasted.text;
    const empty = way === 'paste' ? printed === undefined : Object.keys(form.amounts).length === 0;
    if (empty) return undefined;
    const unconvertible = way === 'fields' && faults.some((f) => f.tag === 'WATER');
    const told =
      way === 'paste' ? pasted.figures : figuresFrom(unconvertible ? { ...form, amounts: {} } : form);
    const asBefore = way === 'fields' && form === start.form && start.initial;
    return {
      figures: withLabelSd(told, kind, kind === start.kind ? start.initial : undefined),
      basis: way === 'paste' ? pasted.basis : asBefore ? asBefore.basis : form.basis,
      ...(printed !== undefined && { printed }),
      faults: faults.map((f) => f.message),
    };
  }, [way, form, faults, kind, start, pasted.text, pasted.figures, pasted.basis]);

  useEffect(() => onChange(result), [result, onChange]);

  /** Into the fields goes what was understood of the label, unless it was carried over already. */
  function choose(next: Way) {
    setWay(next);
    if (next !== 'fields' || !pasted.takeChanged()) return;
    const amounts = statedFrom(pasted.figures);
    setForm({ quantity: 100, basis: 'as fed', amounts });
    setCarried(({ version }) => ({ version: version + 1, amounts: countOf(pasted.figures) }));
  }

  return (
    <section className="figure-form" aria-label={t.says}>
      <Radios
        label={t.says}
        value={way}
        options={[
          ['paste', t.paste],
          ['fields', t.fields],
        ]}
        onChange={choose}
        className="ways"
      />
      {way === 'paste' ? (
        <LabelPaste pasted={pasted} isInvalid={faults.length > 0} />
      ) : (
        <>
          {carried.version > 0 && (
            <p className="notice-line" role="status">
              {t.carried(carried.amounts)}
            </p>
          )}
          <AmountFields key={carried.version} form={form} faults={faults} onChange={setForm} />
        </>
      )}
      {faults.length > 0 && (
        <div role="alert" className="field-error">
          {faults.map((f) => (
            <p key={f.message}>{f.message}</p>
          ))}
        </div>
      )}
      {result && (
        <FigureWarnings
          figures={result.figures}
          name={name}
          group={group}
          kind={kind}
          faulty={faults.length > 0}
        />
      )}
    </section>
  );
}

function startForm(initial: FoodSource | undefined): LabelForm {
  return { quantity: 100, basis: 'as fed', amounts: initial ? statedFrom(initial) : {} };
}
