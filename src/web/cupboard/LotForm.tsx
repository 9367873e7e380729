/** A lot as it comes into the cupboard: of which food, how much as the pack says, from when and from whom. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { FieldError, Form, Input, Label, Text, TextField } from 'react-aria-components';
import { contentsOf } from '../../household/reckon/cupboard/contents.ts';
import { foodsForLots } from '../../household/reckon/cupboard/lot-foods.ts';
import { lotName } from '../../household/reckon/cupboard/lot-name.ts';
import { foodKeys } from '../../household/reckon/foods/same-food.ts';
import { leftOver } from '../../kitchen/cupboard/cupboard.ts';
import type { Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { DayInput } from '../shared/DayInput.tsx';
import { FormFoot } from '../shared/FormFoot.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { today } from '../shared/today.ts';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { packOf } from '../shared/words/pack.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { Keeping } from './PelletLeft.tsx';
import '../shared/styles/ticks.css';

const FORMS = ['dry', 'fresh', 'dried'] as const;

export function LotForm({ lot: now, onDone }: { lot?: Lot; onDone(id?: string): void }) {
  const t = words().cupboard.form;
  const { house } = useMixDraft();
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [lot] = useState(now);
  const save = useSave('lots');
  const sameFood = foodKeys(house);
  const foods = foodsForLots(house);
  /** The id by which the list has the food of this lot. */
  const listed = lot && (foods.find((f) => sameFood(f.id) === sameFood(lot.food))?.id ?? lot.food);
  const used = lot ? (leftOver(contentsOf(house)).find((l) => l.lot.id === lot.id)?.used ?? 0) : 0;
  const [food, setFood] = useState(listed ?? '');
  const [name, setName] = useState(lot?.name ?? '');
  const weighed = lot ? sayGrams(lot.grams) : '';
  const [weight, setWeight] = useState(weighed);
  const [form, setForm] = useState<Lot['form']>(lot?.form ?? 'dry');
  const [boughtOn, setBoughtOn] = useState<string | undefined>(lot?.boughtOn ?? today());
  const [openedOn, setOpenedOn] = useState(lot?.openedOn);
  const [bestBefore, setBestBefore] = useState(lot?.bestBefore);
  const [frozen, setFrozen] = useState(lot?.frozen ?? false);
  const [seller, setSeller] = useState(lot?.seller ?? '');
  const [price, setPrice] = useState(lot?.price);
  const [tried, setTried] = useState(false);
  const [left, setLeft] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  // From here one Tab leads to the food, and a screen reader says where it is.
  useEffect(() => heading.current?.focus(), []);

  // What is shown is rounded: a weight nobody touched stays as it was.
  const read = lot && weight === weighed ? { grams: lot.grams, count: 1, each: lot.grams } : packOf(weight);
  const pellet = foods.find((f) => f.id === food)?.group === 'pellet';
  const foodName = foods.find((f) => f.id === food)?.name ?? lot?.name;
  const faults = {
    food: food === '' ? t.foodEmpty : undefined,
    weight: typeof read !== 'string' ? undefined : weight.trim() === '' ? t.weightEmpty : t.weightWrong(read),
    bought: boughtOn === undefined ? t.boughtEmpty : undefined,
    opened:
      openedOn !== undefined && boughtOn !== undefined && openedOn < boughtOn ? t.openedBefore : undefined,
  };

  function cancel() {
    onDone(lot?.id);
    focusWhenThere(lot ? '.lot-page h2' : '.finder .list-head .button');
  }

  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    const box = event.currentTarget;
    const numberWrong = box.querySelector<HTMLElement>('.number input[aria-invalid]');
    if (numberWrong) return numberWrong.focus();
    if (Object.values(faults).some((f) => f !== undefined) || typeof read === 'string') {
      requestAnimationFrame(() =>
        box.querySelector<HTMLElement>('[data-invalid] select, [aria-invalid="true"]')?.focus(),
      );
      return;
    }
    const others = house.lots.filter((l) => l.id !== lot?.id).map((l) => l.name);
    const kept: Lot = {
      ...(lot ?? { id: newId(), cold: [] }),
      food: lot && food === listed ? lot.food : food,
      name: name.trim() || lotName(foodName!, boughtOn!, others),
      grams: read.grams,
      form: pellet ? 'dry' : form,
      boughtOn: boughtOn!,
      openedOn,
      bestBefore,
      frozen,
      seller: seller.trim() || undefined,
      price,
    };
    await save.mutateAsync(kept, lot);
    onDone(kept.id);
    focusWhenThere('.lot-page h2');
  }

  return (
    <Form className="lot-form" onSubmit={(e) => void submit(e).catch(() => {})}>
      <h2 ref={heading} tabIndex={-1}>
        {lot ? t.edit(lot.name) : t.add}
      </h2>
      <div className="fields">
        {used > 0 ? (
          <p className="wide hint">{t.foodStays(foodName ?? '')}</p>
        ) : (
          <div
            className="wide lot-choice"
            data-invalid={tried && faults.food !== undefined ? true : undefined}
          >
            <Choice
              label={t.food}
              value={food}
              options={[
                ['', t.choose],
                ...foods.map((f) => [f.id, f.name] as const),
                // A food that no mix names any more is still what this lot is of.
                ...(lot && listed !== undefined && !foods.some((f) => f.id === listed)
                  ? [[listed, t.inNoMix(lot.name)] as const]
                  : []),
              ]}
              onChange={setFood}
            />
            <p className="hint">{t.foodHint}</p>
            {tried && faults.food && (
              <p role="alert" className="field-error">
                {faults.food}
              </p>
            )}
          </div>
        )}
        <TextField
          className="wide"
          value={weight}
          onChange={(next) => {
            setWeight(next);
            setLeft(false);
          }}
          onBlur={() => setLeft(weight.trim() !== '')}
          isInvalid={(tried || left) && faults.weight !== undefined}
          validationBehavior="aria"
        >
          <Label>{t.weight}</Label>
          <Input autoComplete="off" placeholder={t.weightExample} />
          <Text slot="description" className="hint">
            {typeof read !== 'string' && weight !== weighed
              ? read.count > 1
                ? t.readPacks(sayGrams(read.grams), read.count, sayGrams(read.each))
                : sayGrams(read.grams)
              : t.weightFresh}
          </Text>
          <FieldError className="field-error">{faults.weight}</FieldError>
        </TextField>
        <TextField value={name} onChange={setName}>
          <Label>{words().common.name}</Label>
          <NameInput autoComplete="off" placeholder={foodName ?? t.asFood} />
        </TextField>
        {!pellet && (
          <Choice
            label={t.kind}
            value={form}
            options={FORMS.map((f) => [f, t.kinds[f]])}
            onChange={setForm}
          />
        )}
        <DayInput
          label={form === 'dried' && !pellet ? t.dried : t.bought}
          value={boughtOn}
          onChange={setBoughtOn}
          error={tried ? faults.bought : undefined}
        />
        <DayInput
          label={t.opened}
          value={openedOn}
          onChange={setOpenedOn}
          error={tried ? faults.opened : undefined}
        />
        <DayInput label={t.best} value={bestBefore} onChange={setBestBefore} />
        <TextField value={seller} onChange={setSeller}>
          <Label>{t.seller}</Label>
          <NameInput autoComplete="off" />
        </TextField>
        <NumberInput
          label={t.price}
          unit={words().figures.currency}
          min={0}
          value={price}
          onCommit={setPrice}
          placeholder={t.priceUnknown}
        />
        {pellet && (
          <div className="wide">
            <Keeping />
          </div>
        )}
        <label className="tick">
          <input type="checkbox" checked={frozen} onChange={(e) => setFrozen(e.target.checked)} />
          <span>{t.frozen}</span>
        </label>
      </div>
      <FormFoot error={save.error} save={t.save} onLeave={cancel} />
    </Form>
  );
}
