/** An animal: its name, what it is, how old, which target it starts from, what it is fed a day; the rest behind one press. */
import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { stageForAge } from '../../../care/animal/age.ts';
import { speciesKind } from '../../../care/animal/species.ts';
import { capital } from '../../../formulation/explain/sentences.ts';
import type { Animal } from '../../../household/model.ts';
import {
  LIFE_STAGES,
  type LifeStage,
  profileFor,
  SPECIES,
  speciesToChoose,
} from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { targetOption } from '../../shared/targets/target-words.ts';
import { Unconfirmed } from '../../shared/targets/Unconfirmed.tsx';
import { today } from '../../shared/today.ts';
import { NameInput } from '../../shared/typing/NameInput.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { newId } from '../../store/new-id.ts';
import { allProfiles } from '../../store/profiles.ts';
import { BornFields, bornSaid } from './BornFields.tsx';
import { MoreFields, type MoreOf } from './MoreFields.tsx';

const OTHER = 'other';

export function AnimalForm({ animal: now, onDone }: { animal?: Animal; onDone(id?: string): void }) {
  const { house } = useMixDraft();
  const { animals, common } = words();
  const t = animals.form;
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [animal] = useState(now);
  const save = useSave('animals');
  const [name, setName] = useState(animal?.name ?? '');
  const [species, setSpecies] = useState(animal?.species ?? SPECIES[0]);
  const [inWords, setInWords] = useState(!SPECIES.includes(species));
  const [lifeStage, setLifeStage] = useState<LifeStage>(animal?.lifeStage ?? 'adult');
  /** The profile chosen by hand; until then a new animal's follows its species and life stage. */
  const [chosen, setChosen] = useState(animal?.profileId);
  const [dailyGrams, setDailyGrams] = useState(animal?.dailyGrams);
  const [birth, setBirth] = useState(() => bornSaid(animal?.born));
  const [more, setMore] = useState<MoreOf>(() => moreOf(animal));
  const [tried, setTried] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const nameField = useRef<HTMLInputElement>(null);
  const speciesField = useRef<HTMLInputElement>(null);
  // From here one Tab leads to the name, and a screen reader says where it is.
  useEffect(() => heading.current?.focus(), []);

  const profiles = allProfiles(house);
  const start = profileFor(species, lifeStage);
  const profileId = chosen ?? start.profileId;
  const target = profiles.find((p) => p.id === profileId);
  const matching = profiles.find((p) => p.id === start.profileId)!;
  const changed = species.trim() !== animal?.species || lifeStage !== animal.lifeStage;
  const { born } = birth;
  const unborn = born !== undefined && born.on > today();
  const stage = born && stageForAge(speciesKind(species), born.on, today());
  const nameless = name.trim() === '';
  const kindless = species.trim() === '';

  function cancel() {
    onDone(animal?.id);
    focusWhenThere(animal ? '.animal-page h2' : '.finder .list-head .button');
  }

  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (save.isPending) return;
    setTried(true);
    if (nameless) return nameField.current?.focus();
    if (kindless) return speciesField.current?.focus();
    const wrong = event.currentTarget.querySelector<HTMLElement>('.number input[aria-invalid]');
    if (wrong) return wrong.focus();
    if (unborn) return event.currentTarget.querySelector<HTMLElement>('input[type=date]')?.focus();
    const kept: Animal = {
      ...animal,
      ...more,
      id: animal?.id ?? newId(),
      name: name.trim(),
      species: species.trim(),
      lifeStage,
      profileId,
      refuses: animal?.refuses ?? [],
      dailyGrams,
      born,
      invented: animal?.invented ?? false,
    };
    await save.mutateAsync(kept, animal);
    onDone(kept.id);
    focusWhenThere('.animal-page h2');
  }

  return (
    <Form className="animal-form" onSubmit={(e) => void submit(e).catch(() => {})}>
      <h2 ref={heading} tabIndex={-1}>
        {animal ? t.edit(animal.name) : animals.new}
      </h2>
      <div className="fields">
        <TextField
          className="wide"
          value={name}
          onChange={setName}
          isInvalid={tried && nameless}
          validationBehavior="aria"
        >
          <Label>{common.name}</Label>
          <NameInput ref={nameField} autoComplete="off" />
        </TextField>
        <Choice
          label={t.species}
          value={inWords ? OTHER : species}
          options={[
            ...SPECIES.map((s) => [s, capital(speciesToChoose(s))] as const),
            [OTHER, t.other] as const,
          ]}
          onChange={(next) => {
            setInWords(next === OTHER);
            setSpecies(next === OTHER ? '' : next);
          }}
        />
        {inWords && (
          <TextField
            value={species}
            onChange={setSpecies}
            isInvalid={tried && kindless}
            validationBehavior="aria"
          >
            <Label>{t.inWords}</Label>
            <Input ref={speciesField} autoComplete="off" />
          </TextField>
        )}
        <Choice
          label={t.stage}
          value={lifeStage}
          options={(Object.entries(LIFE_STAGES) as [LifeStage, string][]).map(
            ([stage, said]) => [stage, capital(said)] as const,
          )}
          onChange={setLifeStage}
        />
        <BornFields
          said={birth}
          today={today()}
          error={tried && unborn ? t.bornLater : undefined}
          onChange={setBirth}
        />
      </div>
      {stage !== undefined && stage !== lifeStage && lifeStage !== 'breeding' && (
        <div className="notice-line offer-target">
          <span>{t.stageHint(LIFE_STAGES[stage])}</span>
          <Button className="button small" onPress={() => setLifeStage(stage)}>
            {t.takeStage(LIFE_STAGES[stage])}
          </Button>
        </div>
      )}
      <div className="fields">
        <Choice
          label={animals.needs}
          value={profileId}
          options={profiles.map(targetOption)}
          onChange={setChosen}
        />
        <NumberInput
          label={animals.foodADay}
          measure="mass"
          min={0.1}
          step={0.5}
          decimals={1}
          placeholder={animals.notKnown}
          value={dailyGrams}
          onCommit={setDailyGrams}
          hint={species === 'golden hamster' && lifeStage === 'adult' ? t.goldenADay : t.aDay}
        />
      </div>
      <div className="start-notes" aria-live="polite">
        {chosen !== undefined && changed && profileId !== start.profileId && (
          <div className="notice-line offer-target">
            <span>{t.otherTarget(matching.name)}</span>
            <Button className="button small" onPress={() => setChosen(start.profileId)}>
              {t.use(matching.name)}
            </Button>
          </div>
        )}
        {target && (
          <p className="hint">
            <Unconfirmed profile={target} />
          </p>
        )}
        {start.notes.map((note) => (
          <p key={note} className="hint">
            {note}
          </p>
        ))}
      </div>
      <MoreFields more={more} onChange={setMore} />
      {tried && (nameless || kindless) && (
        <p role="alert" className="field-error">
          {nameless ? t.nameless : t.kindless}
        </p>
      )}
      <FormFoot error={save.error} save={t.save} onLeave={cancel} />
    </Form>
  );
}

function moreOf(animal: Animal | undefined): MoreOf {
  const { sex, wheel, room, daylight, usualGrams, tub, notes } = animal ?? {};
  return { sex, wheel, room, daylight, usualGrams, tub, notes };
}
