/** An own profile being changed; saved on request, and carried into the mix that uses it. */
import { useEffect, useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import { withProfile } from '../../household/reckon/mix/mix-edits.ts';
import { NUTRIENTS, type Tag } from '../../nutrition/nutrients.ts';
import { changedBound, OWN_CHOICE } from '../../targets/changed-bound.ts';
import { unconfirmedBounds } from '../../targets/confirm.ts';
import { finishProfile } from '../../targets/finish-profile.ts';
import type { TargetBound, TargetProfile } from '../../targets/profile.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { useLeaving } from '../shared/hooks/leaving.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { ConfirmFigures } from './ConfirmFigures.tsx';
import { boundName, boundUnit, boundWord, FibreSentence, Standing } from './ProfileTable.tsx';
import './targets.css';

/** A nutrient to bound, or calcium against phosphorus; '' for none. */
type Added = Tag | 'CA:P' | '';

export function ProfileEditor({ profile }: { profile: TargetProfile }) {
  const { mix, change } = useMixDraft();
  const save = useSave('profiles');
  const { targets, common } = words();
  const t = targets.editor;
  /** As it stood when it was begun to be changed: only what is changed here is changed. */
  const [opened, setOpened] = useState(profile);
  const [draft, setDraft] = useState(profile);
  const [added, setAdded] = useState<Added>('');
  const dirty = JSON.stringify(draft) !== JSON.stringify(opened);
  useLeaving(dirty);
  useEffect(() => {
    if (dirty) return;
    setOpened(profile);
    setDraft(profile);
  }, [profile, dirty]);
  const nameless = draft.name.trim() === '';
  const keys = draft.bounds.map((b, i) => `${boundName(b)} ${sameBefore(draft.bounds, i)}`);
  const missing = NUTRIENTS.filter((n) => !draft.bounds.some((b) => b.nutrient === n.tag));

  const patchBound = (i: number, patch: Partial<TargetBound>) =>
    setDraft((d) => ({ ...d, bounds: d.bounds.map((b, j) => (i === j ? changedBound(b, patch) : b)) }));

  function add(what: Added) {
    if (!what) return;
    const about = what === 'CA:P' ? ({ ratio: ['CA', 'P'] } as const) : { nutrient: what };
    setDraft((d) => ({ ...d, bounds: [...d.bounds, { ...about, basis: 'as fed', source: OWN_CHOICE }] }));
    setAdded('');
  }

  function keep() {
    const finished = finishProfile(draft);
    save.mutate(finished, opened, {
      onSuccess: (kept) => {
        setOpened(kept);
        setDraft(kept);
        // A figure from memory comes into no mix before it is confirmed.
        if (mix?.profileId === kept.id && unconfirmedBounds(kept).length === 0)
          change((m) => withProfile(m, kept));
      },
    });
  }

  return (
    <div className="profile-editor">
      <div className="fields">
        <TextField
          className="wide"
          value={draft.name}
          onChange={(name) => setDraft({ ...draft, name })}
          isInvalid={nameless}
        >
          <Label>{common.name}</Label>
          <NameInput />
        </TextField>
      </div>
      <FibreSentence profile={draft} />
      <ul className="bound-list">
        {draft.bounds.map((b, i) => (
          <li key={keys[i]}>
            <div className="list-head">
              <span>
                <strong>{boundName(b)}</strong> <small>{boundUnit(b)}</small> <Standing bound={b} />
              </span>
              <Button
                className="quiet-button"
                aria-label={t.remove(boundName(b))}
                onPress={() => setDraft((d) => ({ ...d, bounds: d.bounds.filter((_, j) => j !== i) }))}
              >
                {common.remove}
              </Button>
            </div>
            <div className="fields">
              <NumberInput
                label={t.least(boundName(b))}
                min={0}
                max={b.max}
                decimals={4}
                placeholder={t.none}
                value={b.min}
                onCommit={(min) => patchBound(i, { min })}
              />
              <NumberInput
                label={t.most(boundName(b))}
                min={b.min ?? 0}
                decimals={4}
                placeholder={t.none}
                value={b.max}
                onCommit={(max) => patchBound(i, { max })}
              />
              {b.nutrient && (
                <Choice
                  label={t.counted(boundName(b))}
                  value={b.basis}
                  options={Object.entries(targets.basis) as [TargetBound['basis'], string][]}
                  onChange={(basis) => patchBound(i, { basis })}
                />
              )}
              <TextField value={b.source} onChange={(source) => patchBound(i, { source })}>
                <Label>{t.sourceOf(boundWord(b))}</Label>
                <Input />
              </TextField>
            </div>
          </li>
        ))}
      </ul>
      <Choice
        label={t.add}
        value={added}
        options={[
          ['', t.choose],
          ...(draft.bounds.some((b) => b.ratio)
            ? []
            : [['CA:P', boundName({ ratio: ['CA', 'P'], basis: 'as fed', source: '' })] as const]),
          ...missing.map((n): [Tag, string] => [n.tag, n.name]),
        ]}
        onChange={add}
      />
      {nameless && (
        <p role="alert" className="field-error">
          {t.nameless}
        </p>
      )}
      <Failed error={save.error} />
      <div className="button-row">
        <Button className="button strong" isDisabled={!dirty || nameless || save.isPending} onPress={keep}>
          {t.save}
        </Button>
        <span className="hint" aria-live="polite">
          {save.isSuccess && !dirty ? t.saved : dirty ? t.notYet : ''}
        </span>
      </div>
      <ConfirmFigures profile={profile} isBlocked={dirty} />
    </div>
  );
}

/** How many bounds before this one are about the same: a key that stays while figures and basis change. */
function sameBefore(bounds: readonly TargetBound[], i: number): number {
  const name = bounds[i] && boundName(bounds[i]);
  return bounds.slice(0, i).filter((b) => boundName(b) === name).length;
}
