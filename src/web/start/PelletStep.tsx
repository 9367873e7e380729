/** The second step: the pellet that is fed beside the mix, from its label. */
import { useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { addBeside, ownBeside } from '../../household/reckon/mix/beside.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { useSave } from '../store/household.ts';
import { type BoxFigures, LabelBox } from './LabelBox.tsx';
import { ownFoodFrom } from './own-food.ts';
import type { OwnMix } from './useOwnMix.ts';

export function PelletStep({ own }: { own: OwnMix }) {
  const t = words().start;
  const save = useSave('foods');
  const [name, setName] = useState(t.pellet.usualName);
  const [figures, setFigures] = useState<BoxFigures>();
  const [tried, setTried] = useState(false);
  const nameless = name.trim() === '';

  async function submit() {
    setTried(true);
    if (nameless || !figures || figures.fault !== undefined || save.isPending) return;
    const food = ownFoodFrom(name, 'pellet', figures);
    await save.mutateAsync(food, undefined);
    own.edit((m) => addBeside(m, ownBeside(food, m.problem)));
    focusWhenThere('.start-foods textarea');
  }

  return (
    <Form
      className="start-form start-pellet"
      onSubmit={(e) => {
        e.preventDefault();
        submit().catch(() => {}); // `error` says why
      }}
    >
      <p>{t.pellet.why}</p>
      <LabelBox kind="pellet" onChange={setFigures} />
      <div className="fields">
        <TextField value={name} onChange={setName} isInvalid={tried && nameless} validationBehavior="aria">
          <Label>{t.pellet.name}</Label>
          <Input autoComplete="off" />
        </TextField>
      </div>
      {tried && (nameless || !figures) && (
        <p role="alert" className="field-error">
          {nameless ? t.pellet.nameless : t.pellet.noFigures}
        </p>
      )}
      <Failed error={save.error} />
      <Button type="submit" className="button strong">
        {t.pellet.keep}
      </Button>
    </Form>
  );
}
