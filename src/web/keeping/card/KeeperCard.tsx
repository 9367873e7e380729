/** The keeper's card: whom to call, and what the keeper cannot touch. */
import { type FormEvent, useState } from 'react';
import { Button, FieldError, Form, Input, Label, TextArea, TextField } from 'react-aria-components';
import { ALLERGENS, type Allergen, type Keeper } from '../../../care/model.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import '../../shared/styles/ticks.css';
import './card.css';

/** As the server takes it. */
const PHONE = /^[\d+()/.\- ]*$/;

export function KeeperCard() {
  const { house } = useMixDraft();
  const t = words().hands.card;
  const { allergens } = words().hands;
  const save = useSave('keeper');
  /** As it stood when it was opened or last saved: only what is changed here is changed. */
  const [before, setBefore] = useState<Keeper | undefined>(house.keeper[0]);
  const [card, setCard] = useState<Keeper>(before ?? { id: 'keeper' });
  const [tried, setTried] = useState(false);
  const { vet = {}, allergies = [] } = card;
  const wrong = (number: string | undefined) => number !== undefined && !PHONE.test(number.trim());

  const setVet = (part: Keeper['vet']) => setCard({ ...card, vet: { ...vet, ...part } });
  const said = (text: string) => (text === '' ? undefined : text);
  const allergic = (to: Allergen, is: boolean) =>
    setCard({ ...card, allergies: ALLERGENS.filter((a) => (a === to ? is : allergies.includes(a))) });

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    setTried(true);
    if (wrong(vet.phone) || wrong(vet.emergency))
      return event.currentTarget.querySelector<HTMLElement>('input[data-invalid]')?.focus();
    const kept = tidy(card);
    save.mutate(kept, before, { onSuccess: setBefore });
  }

  const phone = (field: 'phone' | 'emergency') => (
    <TextField
      value={vet[field] ?? ''}
      onChange={(text) => setVet({ [field]: said(text) })}
      type="tel"
      isInvalid={tried && wrong(vet[field])}
      validationBehavior="aria"
    >
      <Label>{t[field]}</Label>
      <Input autoComplete="off" maxLength={60} />
      <FieldError className="field-error">{t.noPhone}</FieldError>
    </TextField>
  );

  return (
    <section className="keeper-card" aria-label={t.title}>
      <h2>{t.title}</h2>
      <p className="hint">{t.lead}</p>
      <Form onSubmit={submit}>
        <div className="fields">
          <TextField value={vet.name ?? ''} onChange={(text) => setVet({ name: said(text) })}>
            <Label>{t.name}</Label>
            <Input autoComplete="off" maxLength={200} />
          </TextField>
          {phone('phone')}
          {phone('emergency')}
        </div>
        <fieldset className="ticks">
          <legend>{t.allergies}</legend>
          {ALLERGENS.map((a) => (
            <label key={a} className="tick">
              <input
                type="checkbox"
                checked={allergies.includes(a)}
                onChange={(e) => allergic(a, e.target.checked)}
              />
              <span>{allergens[a]}</span>
            </label>
          ))}
        </fieldset>
        <p className="hint">{t.allergiesHint}</p>
        <label className="tick">
          <input
            type="checkbox"
            checked={card.south ?? false}
            onChange={(e) => setCard({ ...card, south: e.target.checked ? true : undefined })}
          />
          <span>{t.south}</span>
        </label>
        <p className="hint">{t.southHint}</p>
        <TextField
          className="wide"
          value={card.forSitter ?? ''}
          onChange={(text) => setCard({ ...card, forSitter: said(text) })}
        >
          <Label>{t.forSitter}</Label>
          <TextArea rows={3} maxLength={4000} />
        </TextField>
        <Failed error={save.error} />
        <div className="button-row">
          <Button type="submit" className="button strong">
            {t.save}
          </Button>
          <span role="status" className="hint">
            {save.isSuccess && t.saved}
          </span>
        </div>
      </Form>
    </section>
  );
}

/** Without what was left empty. */
function tidy({ id, vet = {}, allergies = [], south, forSitter }: Keeper): Keeper {
  const [name, phone, emergency] = [vet.name, vet.phone, vet.emergency].map(
    (text) => text?.trim() || undefined,
  );
  return {
    id,
    ...((name ?? phone ?? emergency) !== undefined && { vet: { name, phone, emergency } }),
    ...(allergies.length > 0 && { allergies }),
    ...(south && { south }),
    ...(forSitter?.trim() && { forSitter: forSitter.trim() }),
  };
}
