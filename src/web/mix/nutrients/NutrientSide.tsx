/** The side of the nutrients: what each may be and where it stands; on a phone a sheet from below, under a strip. */
import { memo, useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { ReferenceFood } from '../../../foods/reference.ts';
import type { Problem } from '../../../formulation/problem/problem.ts';
import type { Evaluation } from '../../../formulation/problem/result.ts';
import type { Mix } from '../../../household/model.ts';
import { besideTotal } from '../../../household/reckon/mix/beside.ts';
import { besideBlend } from '../../../household/reckon/mix/beside-blend.ts';
import { words } from '../../../words/words.ts';
import { type WindowView, windowViews } from '../../shared/windows.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import { useInSight } from '../live/useInSight.ts';
import { useStill } from '../live/useStill.ts';
import { makeFit } from '../NotMade.tsx';
import { type FormulationView, isFit, type MixActs, type MixState } from '../useFormulation.ts';
import { stateWords } from '../Verdict.tsx';
import { Micronutrients } from './Micronutrients.tsx';
import { NutrientTable } from './NutrientTable.tsx';
import { NutrientWindow } from './NutrientWindow.tsx';

interface Props {
  /** With what its animals bring; its shares are those that are kept. */
  mix: Mix;
  /** Whether its shares were ever worked out. */
  made: boolean;
  view: FormulationView;
  acts: MixActs;
  known: ReadonlyMap<string, ReferenceFood>;
  /** Whether a hand moves a slider. */
  moving: boolean;
  /** Whether the sheet is up. */
  sheet: boolean;
  setSheet(up: boolean): void;
}

export function NutrientSide({ mix, made, view, acts, known, moving, sheet, setSheet }: Props) {
  const t = words().mix;
  const { problem } = mix;
  const pellet = besideBlend(problem, view.evaluation, known);
  const windows = windowViews(problem, view.evaluation, pellet?.known, pellet?.least);
  const pelletName =
    problem.beside.length > 0 ? problem.beside.map((b) => b.name ?? b.id).join(', ') : undefined;
  const within = windows.filter((w) => w.state === 'in').length;

  return (
    <aside className="beside" aria-label={t.nutrients}>
      <Strip
        mix={mix}
        made={made}
        state={view.state}
        within={within}
        ranges={windows.length}
        acts={acts}
        sheet={sheet}
        setSheet={setSheet}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard */}
      <section className="windows" tabIndex={0} aria-label={t.ranges}>
        <h2>
          {t.ranges} {made && <small>{t.legend}</small>}
        </h2>
        {made ? (
          <>
            {problem.beside.length > 1 && <p className="hint">{t.pelletStands}</p>}
            {isFit(view.state) && view.evaluation && problem.rules.some((r) => 'nutrient' in r) && (
              <p className="hint" data-testid="all-chance">
                {chanceWords(view.evaluation.all_in_range_chance, problem)}
              </p>
            )}
            {windows.map((w) => (
              <Range key={w.key} view={w} pelletName={pelletName} moving={moving} />
            ))}
            <Figures mix={mix} evaluation={view.evaluation} moving={moving} />
          </>
        ) : (
          <p className="hint">{t.rangesLater}</p>
        )}
      </section>
    </aside>
  );
}

interface StripProps extends Pick<Props, 'mix' | 'made' | 'acts' | 'sheet' | 'setSheet'> {
  state: MixState;
  /** How many of the ranges are kept. */
  within: number;
  ranges: number;
}

/** How the mix stands in a few words, with the way to the sheet; drawn anew only where it says something else. */
const Strip = memo(function Strip({ mix, made, state, within, ranges, acts, sheet, setSheet }: StripProps) {
  const t = words().mix;
  const empty = mix.problem.foods.length === 0;
  return (
    <div className="strip">
      <span className={`strip-state ${made ? state : 'working'}`}>
        {!made ? (empty ? t.emptyShort : t.notMadeShort) : state === 'none' ? t.noneFits : stateWords(state)}
        {made && <small>{t.rangesKept(within, ranges)}</small>}
      </span>
      {/* The one that comes and goes is not at the edge: it would push the other from under the thumb. */}
      <Button className="button strip-fit" isDisabled={empty} onPress={() => void makeFit(acts, mix)}>
        {t.makeFit}
      </Button>
      <Button className="quiet-button sheet-toggle" aria-expanded={sheet} onPress={() => setSheet(!sheet)}>
        {sheet ? words().common.close : t.nutrients}
      </Button>
    </div>
  );
});

interface RangeProps {
  view: WindowView;
  pelletName: string | undefined;
  moving: boolean;
}

const Micro = memo(Micronutrients);
const Table = memo(NutrientTable);

/** A range out of sight waits while a hand moves a slider. */
function Range({ view, pelletName, moving }: RangeProps) {
  const [seen, watch] = useInSight();
  return <NutrientWindow view={useStill(view, moving && !seen)} pelletName={pelletName} watch={watch} />;
}

interface FiguresProps {
  mix: Mix;
  evaluation: Evaluation | undefined;
  moving: boolean;
}

/** Figures that are read rather than steered by: they follow once the slider is let go. */
function Figures({ mix, evaluation: now, moving }: FiguresProps) {
  const evaluation = useStill(now, moving);
  const { house } = useMixDraft();
  const profiles = useMemo(() => allProfiles(house), [house]);
  return (
    <>
      <Micro
        evaluation={evaluation}
        pelletPart={besideTotal(mix.problem, evaluation) / 100}
        profile={profiles.find((p) => p.id === mix.profileId)}
        profiles={profiles}
      />
      <Table evaluation={evaluation} />
    </>
  );
}

/** How sure all ranges are at once, and what to do where that is little. */
function chanceWords(chance: number, { margin, confidence }: Problem): string {
  const t = words().mix;
  const percent = Math.round(chance * 100);
  if (percent >= 80 || confidence > 0) return t.chance(percent);
  return `${t.chance(percent)} ${margin ? t.chanceMargin : t.chanceMore}`;
}
