/** One offer of a seller, for one food: who sells it, in which pack, for how much. */
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import { sameSeller, sellerNames } from '../../household/reckon/shopping/sellers.ts';
import type { Offer } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { FormFoot } from '../shared/FormFoot.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { Radios } from '../shared/Radios.tsx';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { packOf } from '../shared/words/pack.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';

interface Props {
  readonly food: string;
  readonly name: string;
  readonly offer?: Offer;
  /** How it is mostly sold: fresh where it is dried at home. */
  readonly usual: Offer['form'];
  /** Whether it is said how it is dried at home. */
  readonly drying: boolean;
  onDone(): void;
}

export function OfferForm({ food, name, offer, usual, drying, onDone }: Props) {
  const { house } = useMixDraft();
  const save = useSave('offers');
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [opened] = useState(offer);
  const known = sellerNames(house);
  const weighed = opened ? sayGrams(opened.packGrams) : '';
  const [seller, setSeller] = useState(offer?.seller ?? '');
  const [weight, setWeight] = useState(weighed);
  const [price, setPrice] = useState(offer?.price);
  const [form, setForm] = useState<Offer['form']>(offer?.form ?? usual);
  const [tried, setTried] = useState(false);
  const [left, setLeft] = useState(false);
  const first = useRef<HTMLInputElement>(null);
  const listId = useId();
  useEffect(() => first.current?.focus(), []);

  // What is shown is rounded: a weight nobody touched stays as it was.
  const read = opened && weight === weighed ? { grams: opened.packGrams } : packOf(weight);
  const sellerFault = seller.trim() === '' ? 'Seller is empty: say who sells it.' : undefined;
  const weightFault =
    typeof read !== 'string'
      ? undefined
      : weight.trim() === ''
        ? 'Weight of a pack is empty: write it like 500 g, 1.5 kg or 2 lb.'
        : `Weight of a pack ${read}.`;

  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    const box = event.currentTarget;
    if (sellerFault || typeof read === 'string' || price === undefined) {
      requestAnimationFrame(() => box.querySelector<HTMLElement>('input[aria-invalid="true"]')?.focus());
      return;
    }
    if (box.querySelector('input[aria-invalid="true"]')) return;
    const kept: Offer = {
      id: opened?.id ?? newId(),
      food,
      seller: sameSeller(seller, known),
      packGrams: read.grams,
      price,
      form,
    };
    await save.mutateAsync(kept, opened);
    onDone();
  }

  return (
    <Form
      className="shop-offer-form"
      aria-label={offer ? `Offer of ${name}` : `New offer of ${name}`}
      onSubmit={(e) => void submit(e).catch(() => {})}
    >
      <div className="fields">
        <TextField
          value={seller}
          onChange={setSeller}
          isInvalid={tried && sellerFault !== undefined}
          validationBehavior="aria"
        >
          <Label>Seller</Label>
          <NameInput ref={first} list={listId} autoComplete="off" />
          <datalist id={listId}>
            {known.map((each) => (
              <option key={each} value={each} />
            ))}
          </datalist>
          <FieldError className="field-error">{sellerFault}</FieldError>
        </TextField>
        <TextField
          value={weight}
          onChange={(next) => {
            setWeight(next);
            setLeft(false);
          }}
          onBlur={() => setLeft(weight.trim() !== '')}
          isInvalid={(tried || left) && weightFault !== undefined}
          validationBehavior="aria"
        >
          <Label>Weight of a pack</Label>
          <Input autoComplete="off" placeholder="500 g, 2 lb, 12 x 40 g" />
          <FieldError className="field-error">{weightFault}</FieldError>
        </TextField>
        <NumberInput
          label="Price of a pack"
          min={0}
          max={1_000_000}
          value={price}
          onCommit={setPrice}
          error={
            tried && price === undefined ? 'Price of a pack is empty: it is needed to compare offers.' : ''
          }
        />
      </div>
      <Radios
        label="Sold"
        value={form}
        options={[
          ['dry', 'Dry'],
          ['fresh', 'Fresh'],
        ]}
        onChange={setForm}
      />
      {form === 'fresh' && !drying && (
        <p className="hint">
          It counts once “dried at home” is chosen for {name}, since what is left of it dried follows from
          that.
        </p>
      )}
      <FormFoot error={save.error} save="Save offer" onLeave={onDone} />
    </Form>
  );
}
