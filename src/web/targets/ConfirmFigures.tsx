/** Figures from memory: what the keeper compared them with, and the day. Until then no mix may follow the target. */
import { useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { confirmedProfile, unconfirmedBounds } from '../../targets/confirm.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { words } from '../../words/words.ts';
import { DayInput } from '../shared/DayInput.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { today } from '../shared/today.ts';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';

export function ConfirmFigures(props: {
  profile: TargetProfile;
  /** Not before other changes of the profile are saved. */
  isBlocked?: boolean;
}) {
  const { profile, isBlocked } = props;
  const { house } = useMixDraft();
  const save = useSave('profiles');
  const [against, setAgainst] = useState('');
  const [on, setOn] = useState<string | undefined>(today);
  const [tried, setTried] = useState(false);
  if (unconfirmedBounds(profile).length === 0) return null;
  const said = against.trim();
  const t = words().targets.confirm;

  function confirm() {
    setTried(true);
    if (said === '' || on === undefined) return;
    const confirmed = confirmedProfile(profile, { against: said, on });
    // Of a published target, what is kept is what was confirmed before.
    const kept = house.profiles.find((p) => p.id === profile.id);
    save.mutate(confirmed, kept, {
      onSuccess: () => focusWhenThere('.detail .button-row .button'),
    });
  }

  return (
    <Form
      className="confirm-figures"
      onSubmit={(event) => {
        event.preventDefault();
        confirm();
      }}
    >
      <h3>{t.title}</h3>
      <p>{t.compare}</p>
      <div className="fields">
        <TextField
          className="wide"
          value={against}
          onChange={setAgainst}
          isInvalid={tried && said === ''}
          validationBehavior="aria"
        >
          <Label>{t.against}</Label>
          <Input autoComplete="off" placeholder={t.example} />
        </TextField>
        <DayInput
          label={t.on}
          value={on}
          onChange={setOn}
          {...(tried && on === undefined && { error: t.day })}
        />
      </div>
      {tried && said === '' && (
        <p role="alert" className="field-error">
          {t.empty}
        </p>
      )}
      <Failed error={save.error} />
      <div className="button-row">
        <Button type="submit" className="button strong" isDisabled={isBlocked || save.isPending}>
          {t.confirm}
        </Button>
        {isBlocked && <span className="hint">{t.saveFirst}</span>}
      </div>
    </Form>
  );
}
