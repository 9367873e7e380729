/** One offer of a seller, for one food: who sells it, in which pack, for how much. */
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { FieldError, Form, Input, Label, TextField } from 'react-aria-components';
import { sameSeller, sellerNames } from '../../household/reckon/shopping/sellers.ts';
import type { Offer } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
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
  const t = words().shopping.offers;
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
  const sellerFault = seller.trim() === '' ? t.sellerEmpty : undefined;
  const weightFault =
    typeof read !== 'string' ? undefined : weight.trim() === '' ? t.weightEmpty : t.weightWrong(read);

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
      aria-label={offer ? t.form(name) : t.formNew(name)}
      onSubmit={(e) => void submit(e).catch(() => {})}
    >
      <div className="fields">
        <TextField
          value={seller}
          onChange={setSeller}
          isInvalid={tried && sellerFault !== undefined}
          validationBehavior="aria"
        >
          <Label>{t.seller}</Label>
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
          <Label>{t.weight}</Label>
          <Input autoComplete="off" placeholder={t.weightExample} />
          <FieldError className="field-error">{weightFault}</FieldError>
        </TextField>
        <NumberInput
          label={t.price}
          unit={words().figures.currency}
          min={0}
          max={1_000_000}
          value={price}
          onCommit={setPrice}
          error={tried && price === undefined ? t.priceEmpty : ''}
        />
      </div>
      <Radios
        label={t.sold}
        value={form}
        options={[
          ['dry', t.dry],
          ['fresh', t.fresh],
        ]}
        onChange={setForm}
      />
      {form === 'fresh' && !drying && <p className="hint">{t.countsOnceDried(name)}</p>}
      <FormFoot error={save.error} save={t.save} onLeave={onDone} />
    </Form>
  );
}
