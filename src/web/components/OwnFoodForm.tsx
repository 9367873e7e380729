/** A food of the keeper's own, typed from its label for whatever quantity the label prints. */
import { useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { type Composition, FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import type { OwnFood } from '../../household/model.ts';
import { NUTRIENTS, nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { put } from '../data/api.ts';
import { useSave } from '../data/household.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { refreshOwnFood, usesOwnFood } from '../mix/edits.ts';
import { compositionOf, faultsOf } from '../mix/label.ts';
import { unitWord } from '../mix/windows.ts';
import { Choice } from './Choice.tsx';
import { NumberInput } from './NumberInput.tsx';

const MAIN: readonly Tag[] = ['WATER', 'PROCNT', 'FAT', 'FIBC', 'FIBTG', 'ASH', 'CHOCDF', 'SUGAR', 'CA', 'P'];
const MORE = NUTRIENTS.map((n) => n.tag).filter((tag) => !MAIN.includes(tag));
const HINTS: Partial<Record<Tag, string>> = {
  WATER: 'percent of the food as fed',
  FIBC: 'what pet food labels print',
  FIBTG: 'what human food labels print',
};

export function OwnFoodForm({ food, onDone }: { food?: OwnFood; onDone(id?: string): void }) {
  const { house, mix, change } = useMixDraft();
  const save = useSave('foods');
  const [name, setName] = useState(food?.name ?? '');
  const [kind, setKind] = useState<OwnFood['kind']>(food?.kind ?? 'mix');
  const [group, setGroup] = useState<FoodGroup | ''>(food?.group ?? '');
  const [quantity, setQuantity] = useState(100);
  const [basis, setBasis] = useState<'as fed' | 'dry matter'>('as fed');
  const [amounts, setAmounts] = useState<Composition>(food?.composition ?? {});
  const [price, setPrice] = useState(food?.pricePerKg);
  const [source, setSource] = useState(food?.source ?? 'label');
  const [tried, setTried] = useState(false);

  const label = { quantity, basis, amounts };
  const faults = faultsOf(label);
  const composition = faults.some((f) => f.tag === 'WATER') ? {} : compositionOf(label);
  const converted = quantity !== 100 || basis === 'dry matter';
  const nameless = name.trim() === '';

  function submit() {
    setTried(true);
    if (nameless || faults.length > 0) return;
    const kept: OwnFood = {
      id: food?.id ?? crypto.randomUUID(),
      name: name.trim(),
      kind,
      group: group || undefined,
      composition,
      sd: food?.sd ?? {},
      pricePerKg: price,
      source,
      invented: food?.invented ?? false,
    };
    save.mutate(kept, {
      onSuccess: () => {
        for (const other of house.mixes) {
          if (!usesOwnFood(other, kept.id)) continue;
          if (other.id === mix?.id) change((m) => refreshOwnFood(m, kept));
          else void put('mixes', refreshOwnFood(other, kept));
        }
        onDone(kept.id);
      },
    });
  }

  const field = (tag: Tag) => {
    const { name: title } = nutrient(tag);
    const unit = unitWord(nutrient(tag).unit);
    const value = composition[tag];
    const worked =
      converted && tag !== 'WATER' && value !== undefined
        ? `= ${Number(value.toFixed(3))} ${unit} in 100 g as fed`
        : undefined;
    return (
      <NumberInput
        key={tag}
        label={title}
        unit={tag === 'WATER' ? '%' : unit}
        min={0}
        decimals={4}
        placeholder="unknown"
        value={amounts[tag]}
        hint={worked ?? HINTS[tag]}
        error={faults.find((f) => f.tag === tag)?.message}
        onCommit={(v) =>
          setAmounts((before) => {
            const { [tag]: _was, ...rest } = before;
            return v === undefined ? rest : { ...rest, [tag]: v };
          })
        }
      />
    );
  };

  return (
    <Form
      className="own-form"
      onSubmit={(e) => {
        e.preventDefault();
        submit();
      }}
    >
      <h2>{food ? `Edit ${food.name}` : 'New food'}</h2>
      <div className="fields">
        <TextField className="wide" value={name} onChange={setName} isInvalid={tried && nameless}>
          <Label>Name</Label>
          <Input />
        </TextField>
        <Choice
          label="Kind"
          value={kind}
          options={[
            ['mix', 'Food for a mix'],
            ['pellet', 'Complete pellet'],
          ]}
          onChange={setKind}
        />
        {kind === 'mix' && (
          <Choice
            label="Group"
            value={group}
            options={[['', 'None'], ...(Object.entries(FOOD_GROUPS) as [FoodGroup, string][])]}
            onChange={setGroup}
          />
        )}
        <NumberInput label="Price per kg" min={0} value={price} onCommit={setPrice} />
      </div>
      <h3>What the label says</h3>
      <p className="hint">Leave blank what the label does not give: blank means unknown, never zero.</p>
      <div className="fields">
        <NumberInput
          label="Amounts are for"
          unit="g"
          min={0.01}
          max={100_000}
          required
          value={quantity}
          onCommit={(q) => setQuantity(q ?? 100)}
        />
        <Choice
          label="Of"
          value={basis}
          options={[
            ['as fed', 'the food as fed'],
            ['dry matter', 'its dry matter'],
          ]}
          onChange={setBasis}
        />
      </div>
      <div className="fields">{MAIN.map(field)}</div>
      <details>
        <summary>More nutrients</summary>
        <div className="fields">{MORE.map(field)}</div>
      </details>
      <TextField className="wide" value={source} onChange={setSource}>
        <Label>Where the figures come from</Label>
        <Input />
      </TextField>
      {tried && nameless && (
        <p role="alert" className="field-error">
          Name is empty; give the food a name.
        </p>
      )}
      {faults.some((f) => !f.tag) && (
        <p role="alert" className="field-error">
          {faults.find((f) => !f.tag)!.message}
        </p>
      )}
      {tried && faults.some((f) => f.tag) && (
        <p role="alert" className="field-error">
          {faults[0]!.message}
        </p>
      )}
      {save.error && (
        <p role="alert" className="field-error">
          {save.error.message}
        </p>
      )}
      <div className="button-row">
        <Button type="submit" className="button strong" isDisabled={save.isPending}>
          Save food
        </Button>
        <Button className="quiet-button" onPress={() => onDone(food?.id)}>
          Cancel
        </Button>
      </div>
    </Form>
  );
}
