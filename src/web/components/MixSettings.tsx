/** What the mix is made for: target, pellet, batch, scale, aim and confidence. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Objective } from '../../formulation/problem.ts';
import type { Mix } from '../../household/model.ts';
import { allProfiles } from '../data/household.ts';
import { useMixDraft } from '../data/mix-draft.tsx';
import { besideFromOwn, withProblem, withProfile } from '../mix/edits.ts';
import type { FormulationView } from '../mix/useFormulation.ts';
import { Choice } from './Choice.tsx';
import { NumberInput } from './NumberInput.tsx';

const CONFIDENCES = [
  ['0', 'None, averages count'],
  ['0.8', '80 %'],
  ['0.9', '90 %'],
  ['0.95', '95 %'],
] as const;
const OBJECTIVES: readonly (readonly [Objective, string])[] = [
  ['nearest', 'Nearest to what I want'],
  ['cheapest', 'Cheapest'],
  ['varied', 'Most varied'],
];
/** Some cautions hold for dwarf hamsters alone. */
const SPECIES = ['hamster', 'golden hamster', 'dwarf hamster', 'mouse', 'gerbil'] as const;
const FIBRE_WORDS = { FIBTG: 'dietary fibre', FIBC: 'crude fibre' } as const;

export function MixSettings({ mix, view }: { mix: Mix; view: FormulationView }) {
  const { house } = useMixDraft();
  const [open, setOpen] = useState(false);
  const panel = useId();
  const { problem } = mix;
  const profiles = allProfiles(house);
  const profile = profiles.find((p) => p.id === mix.profileId);
  const beside = problem.beside[0];
  const bound = problem.rules.filter((r) => 'nutrient' in r || 'ratio' in r).length;
  const leftOut = profile ? profile.bounds.length - bound : 0;
  const pellets = house.foods.filter((f) => f.kind === 'pellet');
  const set = (patch: Partial<Mix['problem']>) => void view.edit((m) => withProblem(m, patch));
  const unpriced =
    problem.objective === 'cheapest' &&
    problem.foods.filter((f) => !f.refused && f.price_per_kg === undefined).length;

  function choosePellet(id: string) {
    const food = pellets.find((p) => p.id === id);
    const share = beside?.share_of_ration ?? 50;
    set({
      beside: food ? [besideFromOwn(food, share)] : id === beside?.id ? problem.beside : [],
    });
  }
  const pelletOptions: [string, string][] = [
    ['', 'No pellet'],
    ...pellets.map((p): [string, string] => [p.id, p.invented ? `${p.name} (invented)` : p.name]),
  ];
  if (beside && !pellets.some((p) => p.id === beside.id))
    pelletOptions.push([beside.id, beside.name ?? beside.id]);

  return (
    <section className="settings" aria-label="Settings">
      <div className="settings-line">
        <span>
          For <strong>{profile?.name ?? 'an unknown target'}</strong>,{' '}
          {beside
            ? `${format(beside.share_of_ration)} % pellet and ${format(100 - beside.share_of_ration)} % mix`
            : 'mix only'}
          , a batch of {format(problem.batch_grams)} g
        </span>
        <Button
          className="quiet-button"
          aria-expanded={open}
          aria-controls={panel}
          onPress={() => setOpen(!open)}
        >
          Settings
        </Button>
      </div>
      {profile && profile.fibre !== 'none' && (
        <p className="hint fibre-line">
          Fibre is read as {FIBRE_WORDS[profile.fibre]}.
          {view.otherFibre && otherFibreSentence(view.otherFibre)}
        </p>
      )}
      {profile && leftOut > 0 && (
        <p className="hint">
          {leftOut === 1 ? 'One bound' : `${leftOut} bounds`} of this target {leftOut === 1 ? 'is' : 'are'}{' '}
          left out of this mix.
          <Button
            className="quiet-button small"
            onPress={() => void view.edit((m) => withProfile(m, profile))}
          >
            Bring back
          </Button>
        </p>
      )}
      <div id={panel} hidden={!open} className="fields settings-panel">
        {open && (
          <>
            <Choice
              label="Target profile"
              value={mix.profileId}
              options={profiles.map((p) => [p.id, p.name] as const)}
              onChange={(id) => {
                const next = profiles.find((p) => p.id === id);
                if (next) void view.edit((m) => withProfile(m, next));
              }}
            />
            <Choice
              label="Pellet fed beside"
              value={beside?.id ?? ''}
              options={pelletOptions}
              onChange={choosePellet}
            />
            {beside && (
              <NumberInput
                label="Pellet share of the ration"
                unit="%"
                min={0}
                max={99}
                step={5}
                required
                value={beside.share_of_ration}
                onCommit={(v) =>
                  set({
                    beside: problem.beside.map((b, i) => (i === 0 ? { ...b, share_of_ration: v ?? 0 } : b)),
                  })
                }
              />
            )}
            <NumberInput
              label="Batch"
              unit="g"
              min={1}
              max={100_000}
              step={10}
              required
              value={problem.batch_grams}
              onCommit={(v) => set({ batch_grams: v })}
            />
            <NumberInput
              label="Scale step"
              unit="g"
              min={0.01}
              max={100}
              required
              value={problem.scale_step_grams}
              onCommit={(v) => set({ scale_step_grams: v })}
            />
            <Choice
              label="Aim"
              value={problem.objective}
              options={OBJECTIVES}
              onChange={(objective) => set({ objective })}
            />
            <Choice
              label="Confidence"
              value={String(problem.confidence)}
              options={
                CONFIDENCES.some(([v]) => v === String(problem.confidence))
                  ? CONFIDENCES
                  : [...CONFIDENCES, [String(problem.confidence), `${problem.confidence * 100} %`] as const]
              }
              onChange={(c) => set({ confidence: Number(c) })}
            />
            {problem.confidence > 0 && (
              <Choice
                label="Sure of"
                value={problem.confidence_for ?? 'each'}
                options={[
                  ['each', 'each rule by itself'],
                  ['all', 'all rules at once'],
                ]}
                onChange={(confidence_for) => set({ confidence_for })}
              />
            )}
            <Choice
              label="Species"
              value={problem.species ?? SPECIES[0]}
              options={[...new Set([...SPECIES, ...(problem.species ? [problem.species] : [])])].map(
                (s) => [s, s] as const,
              )}
              onChange={(species) => set({ species })}
            />
            {Boolean(unpriced) && (
              <p className="hint wide">Cheapest needs a price for every food; {unpriced} have none yet.</p>
            )}
          </>
        )}
      </div>
    </section>
  );
}

function format(value: number): string {
  return String(Number(value.toFixed(2)));
}

function otherFibreSentence({ tag, ration, fits }: NonNullable<FormulationView['otherFibre']>): string {
  const holds = ration === undefined ? '' : ` it comes to ${format(ration)} g in 100 g of ration,`;
  return ` Read as ${FIBRE_WORDS[tag]}${holds} ${fits ? 'in range too' : 'out of range'}.`;
}
