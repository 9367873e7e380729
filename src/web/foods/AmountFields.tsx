/** What a label says, field by field, for whatever quantity it prints. */
import { useState } from 'react';
import { knownWords } from '../../foods/figure-words.ts';
import type { Fault } from '../../foods/label/faults.ts';
import { figuresFrom, type LabelForm, type Stated } from '../../foods/label/form.ts';
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { AmountField } from './AmountField.tsx';

const MAIN: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'FIBC', 'FIBTG', 'ASH', 'CHOCDF', 'SUGAR', 'CA', 'P'];
const TAGS = NUTRIENTS.map((n) => n.tag);

interface Props {
  form: LabelForm;
  faults: readonly Fault[];
  onChange(next: (form: LabelForm) => LabelForm): void;
}

export function AmountFields({ form, faults, onChange }: Props) {
  const { quantity, basis, amounts } = form;
  const { foods } = words();
  const t = foods.figures;
  const hints: Partial<Record<Tag, string>> = {
    WATER: t.water,
    FIBC: t.crudeFibre,
    FIBTG: t.dietaryFibre,
  };
  // What the label is known to give stands in sight; it stays there while it is emptied and filled again.
  const [inSight] = useState(() => [...MAIN, ...TAGS.filter((tag) => amounts[tag] && !MAIN.includes(tag))]);
  const more = TAGS.filter((tag) => !inSight.includes(tag));
  const converted = quantity !== 100 || basis === 'dry matter';
  const unconvertible = faults.some((f) => f.tag === 'WATER');
  const figures = figuresFrom(unconvertible ? { ...form, amounts: {} } : form);

  const set = (tag: Tag, stated: Stated | undefined) =>
    onChange((before) => {
      const { [tag]: _was, ...rest } = before.amounts;
      return { ...before, amounts: stated ? { ...rest, [tag]: stated } : rest };
    });

  const field = (tag: Tag) => {
    const said = tag === 'WATER' || !converted ? undefined : knownWords(figures, tag);
    const worked = said && t.worked(said);
    return (
      <AmountField
        key={tag}
        tag={tag}
        stated={amounts[tag]}
        hint={worked ?? hints[tag]}
        error={faults.find((f) => f.tag === tag)?.message}
        onChange={(stated) => set(tag, stated)}
      />
    );
  };
  const moreKnown = more.filter((tag) => amounts[tag]).length;

  return (
    <>
      <p className="hint">{t.blank}</p>
      <div className="fields">
        <NumberInput
          label={t.amountsFor}
          unit="g"
          min={0.01}
          max={100_000}
          required
          value={quantity}
          onCommit={(q) => onChange((before) => ({ ...before, quantity: q ?? 100 }))}
        />
        <Choice
          label={foods.amounts.of}
          value={basis}
          options={[
            ['as fed', foods.amounts.fed],
            ['dry matter', foods.amounts.dry],
          ]}
          onChange={(of) => onChange((before) => ({ ...before, basis: of }))}
        />
      </div>
      <div className="fields amounts">{inSight.map(field)}</div>
      <details>
        <summary>
          {t.more} {moreKnown > 0 && <small>{t.filled(moreKnown)}</small>}
        </summary>
        <div className="fields amounts">{more.map(field)}</div>
      </details>
    </>
  );
}
