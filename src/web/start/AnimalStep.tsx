/** The first step: the animal, what it is, and what it is fed a day. */
import { useRef, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { dailySuggestion } from '../../care/feeding/common-rules.ts';
import { capital } from '../../formulation/explain/sentences.ts';
import type { Animal } from '../../household/model.ts';
import { withProfile } from '../../household/reckon/mix/mix-edits.ts';
import {
  LIFE_STAGES,
  type LifeStage,
  profileFor,
  SPECIES,
  speciesToChoose,
} from '../../targets/life-stage.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { allProfiles } from '../store/profiles.ts';
import type { OwnMix } from './useOwnMix.ts';

const STAGES = Object.keys(LIFE_STAGES) as LifeStage[];

export function AnimalStep({ own }: { own: OwnMix }) {
  const t = words().start.animal;
  const { house } = useMixDraft();
  const save = useSave('animals');
  const [name, setName] = useState('');
  const [species, setSpecies] = useState<string>(SPECIES[0]);
  const [lifeStage, setLifeStage] = useState<LifeStage>('adult');
  /** What the keeper wrote; until then what is common. */
  const [typed, setTyped] = useState<{ grams: number | undefined }>();
  const [tried, setTried] = useState(false);
  const field = useRef<HTMLInputElement>(null);
  const suggested = dailySuggestion(species, lifeStage);
  const dailyGrams = typed ? typed.grams : suggested?.grams;
  const start = profileFor(species, lifeStage);
  const profile = allProfiles(house).find((p) => p.id === start.profileId);
  const nameless = name.trim() === '';

  async function submit() {
    setTried(true);
    if (nameless) return field.current?.focus();
    if (save.isPending || !profile) return;
    const animal: Animal = {
      id: newId(),
      name: name.trim(),
      species,
      lifeStage,
      profileId: profile.id,
      refuses: [],
      ...(dailyGrams !== undefined && { dailyGrams }),
      invented: false,
    };
    await save.mutateAsync(animal, undefined);
    own.edit((m) => ({
      ...withProfile({ ...m, problem: { ...m.problem, species } }, profile),
      animalIds: [...m.animalIds.filter((id) => id !== animal.id), animal.id],
      name: own.mix ? m.name : words().start.mixFor(animal.name),
    }));
    focusWhenThere('.start-step.now textarea');
  }

  return (
    <Form
      className="start-form"
      onSubmit={(e) => {
        e.preventDefault();
        submit().catch(() => {}); // `error` says why
      }}
    >
      <div className="fields">
        <TextField value={name} onChange={setName} isInvalid={tried && nameless} validationBehavior="aria">
          <Label>{t.name}</Label>
          <Input ref={field} autoComplete="off" />
        </TextField>
        <Choice
          label={t.species}
          value={species}
          options={SPECIES.map((s) => [s, capital(speciesToChoose(s))] as const)}
          onChange={setSpecies}
        />
        <Choice
          label={t.lifeStage}
          value={lifeStage}
          options={STAGES.map((s) => [s, capital(LIFE_STAGES[s])] as const)}
          onChange={setLifeStage}
        />
        <NumberInput
          label={t.daily}
          measure="mass"
          min={0.1}
          max={1000}
          step={0.5}
          decimals={1}
          placeholder={t.notKnown}
          value={dailyGrams}
          onCommit={(grams) => setTyped({ grams })}
          hint={suggested ? t.suggested[suggested.source](suggested.low, suggested.high) : t.noSuggestion}
        />
      </div>
      {start.notes.map((note) => (
        <p key={note} className="hint">
          {note}
        </p>
      ))}
      {tried && nameless && (
        <p role="alert" className="field-error">
          {t.nameless}
        </p>
      )}
      <Failed error={save.error} />
      <Button type="submit" className="button strong">
        {t.keep}
      </Button>
    </Form>
  );
}
