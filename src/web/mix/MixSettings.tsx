/** What the mix is made for: target, batch, scale, aim and confidence, and the whole ration. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Beside } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { mostWater, withMostWater } from '../../household/reckon/mix/keep-dry.ts';
import { isDryRule, MARGIN, withProblem, withProfile } from '../../household/reckon/mix/mix-edits.ts';
import { MIX_MOISTURE } from '../../kitchen/batch/mix-moisture.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { Choice } from '../shared/Choice.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { targetOption, unconfirmedWords } from '../shared/targets/target-words.ts';
import { Unconfirmed } from '../shared/targets/Unconfirmed.tsx';
import { allProfiles } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { objectiveChoices } from './advice/wishes/wish-words.ts';
import { RationEditor } from './beside/RationEditor.tsx';
import { rationWords } from './beside/ration-words.ts';
import type { FormulationView } from './useFormulation.ts';
import './MixSettings.css';

const CONFIDENCES = [
  ['margin', 'As sure as can be, up to 90 %'],
  ['0', 'None, averages count'],
  ['0.8', '80 %'],
  ['0.9', '90 %'],
  ['0.95', '95 %'],
] as const;
/** Some cautions hold for dwarf hamsters alone. */
const SPECIES = ['hamster', 'golden hamster', 'dwarf hamster', 'mouse', 'gerbil'] as const;

export function MixSettings({ mix, view }: { mix: Mix; view: FormulationView }) {
  const { house } = useMixDraft();
  const [open, setOpen] = useState(false);
  /** A target that was asked for and may not be followed yet. */
  const [refused, setRefused] = useState<TargetProfile>();
  const panel = useId();
  const { problem } = mix;
  const profiles = allProfiles(house);
  const profile = profiles.find((p) => p.id === mix.profileId);
  const bound = problem.rules.filter((r) => ('nutrient' in r || 'ratio' in r) && !isDryRule(r)).length;
  // Those that the keeper left out by name stand in a list of their own.
  const named = problem.own_limits?.filter((l) => !l.now).length ?? 0;
  const leftOut = profile ? profile.bounds.length - bound - named : 0;
  const { beside } = problem;
  /** One pellet is just that; where more is fed, each by its name. */
  const nameOf = (b: Beside) => (beside.length === 1 && b.ref === undefined ? 'pellet' : (b.name ?? b.id));
  const set = (patch: Partial<Mix['problem']>) => void view.edit((m) => withProblem(m, patch));
  const confidence = problem.confidence === 0 && problem.margin ? 'margin' : String(problem.confidence);
  const unpriced =
    problem.objective === 'cheapest' &&
    problem.foods.filter((f) => !f.refused && f.price_per_kg === undefined).length;

  return (
    <section className="settings" aria-label="Settings">
      <div className="settings-line">
        <span>
          For <strong>{profile?.name ?? 'an unknown target'}</strong>,{' '}
          {rationWords(problem, view.evaluation, nameOf)}, a batch of {format(problem.batch_grams)} g
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
              options={profiles.map(targetOption)}
              onChange={(id) => {
                const next = profiles.find((p) => p.id === id);
                const waits = next && unconfirmedWords(next) !== undefined;
                setRefused(waits ? next : undefined);
                if (next && !waits) void view.edit((m) => withProfile(m, next));
              }}
            />
            <p className="wide field-error" role="status">
              {refused && <Unconfirmed profile={refused} />}
            </p>
            <NumberInput
              label="Batch"
              unit="g"
              min={Math.max(1, problem.least_grams ?? 1)}
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
              options={objectiveChoices()}
              onChange={(objective) => set({ objective })}
            />
            <Choice
              label="Confidence"
              value={confidence}
              options={
                CONFIDENCES.some(([v]) => v === confidence)
                  ? CONFIDENCES
                  : [...CONFIDENCES, [confidence, `${problem.confidence * 100} %`] as const]
              }
              onChange={(c) =>
                set(
                  c === 'margin'
                    ? { confidence: 0, margin: MARGIN }
                    : { confidence: Number(c), margin: undefined },
                )
              }
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
            <NumberInput
              label="Most water in the mix"
              unit="%"
              min={1}
              max={99}
              step={0.5}
              placeholder="not bound"
              value={mostWater(mix)}
              onCommit={(most) => void view.edit((m) => withMostWater(m, most))}
              hint={`At ${MIX_MOISTURE.most} % or less it keeps.`}
            />
            <details className="wide">
              <summary>Why {MIX_MOISTURE.most} % water</summary>
              <p className="source">{MIX_MOISTURE.source}</p>
            </details>
            {Boolean(unpriced) && (
              <p className="hint wide">Cheapest needs a price for every food; {unpriced} have none yet.</p>
            )}
            <RationEditor mix={mix} view={view} />
          </>
        )}
      </div>
    </section>
  );
}

function format(value: number): string {
  return String(Number(value.toFixed(2)));
}
