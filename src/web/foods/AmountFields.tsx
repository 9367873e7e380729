/** What a label says, field by field, for whatever quantity it prints. */
import { useState } from 'react';
import { amountWords } from '../../foods/figure-words.ts';
import type { Fault } from '../../foods/label/faults.ts';
import { figuresFrom, type LabelForm, type Stated } from '../../foods/label/form.ts';
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { AmountField } from './AmountField.tsx';

const MAIN: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'FIBC', 'FIBTG', 'ASH', 'CHOCDF', 'SUGAR', 'CA', 'P'];
const TAGS = NUTRIENTS.map((n) => n.tag);
const HINTS: Partial<Record<Tag, string>> = {
  WATER: 'percent of the food as fed',
  FIBC: 'what pet food labels print',
  FIBTG: 'what human food labels print',
};

interface Props {
  form: LabelForm;
  faults: readonly Fault[];
  onChange(next: (form: LabelForm) => LabelForm): void;
}

export function AmountFields({ form, faults, onChange }: Props) {
  const { quantity, basis, amounts } = form;
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
    const said = tag === 'WATER' || !converted ? 'unknown' : amountWords(figures, tag);
    const worked = said === 'unknown' ? undefined : `= ${said} in 100 g as fed`;
    return (
      <AmountField
        key={tag}
        tag={tag}
        stated={amounts[tag]}
        hint={worked ?? HINTS[tag]}
        error={faults.find((f) => f.tag === tag)?.message}
        onChange={(stated) => set(tag, stated)}
      />
    );
  };
  const moreKnown = more.filter((tag) => amounts[tag]).length;

  return (
    <>
      <p className="hint">
        Leave blank what the label does not give: blank means unknown, never zero. A guarantee (“min.”,
        “max.”) is “at least” or “at most”.
      </p>
      <div className="fields">
        <NumberInput
          label="Amounts are for"
          unit="g"
          min={0.01}
          max={100_000}
          required
          value={quantity}
          onCommit={(q) => onChange((before) => ({ ...before, quantity: q ?? 100 }))}
        />
        <Choice
          label="Of"
          value={basis}
          options={[
            ['as fed', 'the food as fed'],
            ['dry matter', 'its dry matter'],
          ]}
          onChange={(of) => onChange((before) => ({ ...before, basis: of }))}
        />
      </div>
      <div className="fields amounts">{inSight.map(field)}</div>
      <details>
        <summary>More nutrients {moreKnown > 0 && <small>{moreKnown} filled in</small>}</summary>
        <div className="fields amounts">{more.map(field)}</div>
      </details>
    </>
  );
}
