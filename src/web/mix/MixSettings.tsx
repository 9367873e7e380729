/** What the mix is made for: target, batch, scale, aim and confidence, and the whole ration. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Beside } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { mostWater, withMostWater } from '../../household/reckon/mix/keep-dry.ts';
import { isDryRule, MARGIN, withProblem, withProfile } from '../../household/reckon/mix/mix-edits.ts';
import { MIX_MOISTURE } from '../../kitchen/batch/mix-moisture.ts';
import { SPECIES, speciesToChoose } from '../../targets/life-stage.ts';
import type { TargetProfile } from '../../targets/profile.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { shownLater } from '../shared/later/shown-later.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { targetOption, unconfirmedWords } from '../shared/targets/target-words.ts';
import { Unconfirmed } from '../shared/targets/Unconfirmed.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { allProfiles } from '../store/profiles.ts';
import { objectiveChoices } from './advice/wishes/wish-words.ts';
import { rationWords } from './beside/ration-words.ts';
import type { FormulationView } from './useFormulation.ts';
import './MixSettings.css';

const RationEditor = shownLater(() => import('./beside/RationEditor.tsx').then((m) => m.RationEditor));

const CONFIDENCES = ['0.8', '0.9', '0.95'] as const;
/** Some cautions hold for dwarf hamsters alone; a mix that names no animal is for any hamster. */
const ANY = 'hamster';

export function MixSettings({ mix, view }: { mix: Mix; view: FormulationView }) {
  const t = words().mix.settings;
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
  const nameOf = (b: Beside) => (beside.length === 1 && b.ref === undefined ? t.pellet : (b.name ?? b.id));
  const set = (patch: Partial<Mix['problem']>) => void view.edit((m) => withProblem(m, patch));
  const confidence = problem.confidence === 0 && problem.margin ? 'margin' : String(problem.confidence);
  const unpriced =
    problem.objective === 'cheapest' &&
    problem.foods.filter((f) => !f.refused && f.price_per_kg === undefined).length;

  return (
    <section className="settings" aria-label={t.title}>
      <div className="settings-line">
        <span>
          <Sentence
            of={t.line(problem.batch_grams)}
            with={{
              target: () => <strong>{profile?.name ?? t.unknownTarget}</strong>,
              ration: () => rationWords(problem, view.evaluation, nameOf),
            }}
          />
        </span>
        <Button
          className="quiet-button"
          aria-expanded={open}
          aria-controls={panel}
          onPress={() => setOpen(!open)}
        >
          {t.title}
        </Button>
      </div>
      {profile && leftOut > 0 && (
        <p className="hint">
          {t.leftOut(leftOut)}
          <Button
            className="quiet-button small"
            onPress={() => void view.edit((m) => withProfile(m, profile))}
          >
            {t.bringBack}
          </Button>
        </p>
      )}
      <div id={panel} hidden={!open} className="fields settings-panel">
        {open && (
          <>
            <Choice
              label={t.target}
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
              label={t.batch}
              measure="mass"
              min={Math.max(1, problem.least_grams ?? 1)}
              max={100_000}
              step={10}
              required
              value={problem.batch_grams}
              onCommit={(v) => set({ batch_grams: v })}
            />
            <NumberInput
              label={t.scaleStep}
              measure="mass"
              min={0.01}
              max={100}
              required
              value={problem.scale_step_grams}
              onCommit={(v) => set({ scale_step_grams: v })}
            />
            <Choice
              label={t.aim}
              value={problem.objective}
              options={objectiveChoices()}
              onChange={(objective) => set({ objective })}
            />
            <Choice
              label={t.howSure}
              value={confidence}
              options={[
                ['margin', t.sureMargin],
                ['0', t.sureNone],
                ...[...new Set([...CONFIDENCES, ...(problem.confidence > 0 ? [confidence] : [])])].map(
                  (sure) => [sure, t.sureAt(100 * Number(sure))] as const,
                ),
              ]}
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
                label={t.sureOf}
                value={problem.confidence_for ?? 'each'}
                options={[
                  ['each', t.sureEach],
                  ['all', t.sureAll],
                ]}
                onChange={(confidence_for) => set({ confidence_for })}
              />
            )}
            <Choice
              label={t.species}
              value={problem.species ?? ANY}
              options={[...new Set([...SPECIES, ...(problem.species ? [problem.species] : [])])].map(
                (s) => [s, speciesToChoose(s)] as const,
              )}
              onChange={(species) => set({ species })}
            />
            <NumberInput
              label={t.mostWater}
              unit="%"
              min={1}
              max={99}
              step={0.5}
              placeholder={t.noLimit}
              value={mostWater(mix)}
              onCommit={(most) => void view.edit((m) => withMostWater(m, most))}
              hint={t.keepsAt(MIX_MOISTURE.most)}
            />
            <details className="wide">
              <summary>{t.whyWater(MIX_MOISTURE.most)}</summary>
              <p className="source">{MIX_MOISTURE.source}</p>
            </details>
            {Boolean(unpriced) && <p className="hint wide">{t.unpriced(Number(unpriced))}</p>}
            <RationEditor mix={mix} view={view} />
          </>
        )}
      </div>
    </section>
  );
}
