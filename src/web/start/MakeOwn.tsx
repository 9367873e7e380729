/** A food of the keeper's own, made where it is needed: its name and what its label says. */
import { useEffect, useRef, useState } from 'react';
import { Form, Input, Label, TextField } from 'react-aria-components';
import type { OwnFood } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { FormFoot } from '../shared/FormFoot.tsx';
import { useSave } from '../store/household.ts';
import { type BoxFigures, LabelBox } from './LabelBox.tsx';
import { ownFoodFrom } from './own-food.ts';

export function MakeOwn(props: { name: string; onMade(food: OwnFood): void; onLeave(): void }) {
  const t = words().start;
  const save = useSave('foods');
  const [name, setName] = useState(props.name);
  const [figures, setFigures] = useState<BoxFigures>();
  const [tried, setTried] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  const nameless = name.trim() === '';

  async function submit() {
    setTried(true);
    if (nameless || !figures || figures.fault !== undefined || save.isPending) return;
    const food = ownFoodFrom(name, 'mix', figures);
    await save.mutateAsync(food, undefined);
    props.onMade(food);
  }

  return (
    <Form
      className="start-form start-own"
      onSubmit={(e) => {
        e.preventDefault();
        submit().catch(() => {}); // `error` says why
      }}
    >
      <div className="fields">
        <TextField value={name} onChange={setName} isInvalid={tried && nameless} validationBehavior="aria">
          <Label>{words().common.name}</Label>
          <Input ref={field} autoComplete="off" />
        </TextField>
      </div>
      <LabelBox kind="mix" onChange={setFigures} />
      {tried && (nameless || !figures) && (
        <p role="alert" className="field-error">
          {nameless ? t.pellet.nameless : t.pellet.noFigures}
        </p>
      )}
      <FormFoot
        error={save.error}
        save={t.foods.keepOwn}
        leave={words().common.cancel}
        onLeave={props.onLeave}
      />
    </Form>
  );
}
