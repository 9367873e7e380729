/** One mix: foods and shares on one side, windows and verdict on the other. */

import { memo, useCallback, useMemo, useRef, useState } from 'react';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { CautionNote } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { isMade } from '../../household/reckon/first-steps.ts';
import {
  type Bringing,
  bringingOf,
  broughtTo,
  eatersOf,
  withBrought,
} from '../../household/reckon/mix/eaters.ts';
import { addFood, foodsByGroup } from '../../household/reckon/mix/mix-edits.ts';
import { words } from '../../words/words.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { allProfiles } from '../store/profiles.ts';
import { useReferenceTable } from '../worker/engine.ts';
import { AdviceTabs, type OpenAdvice } from './advice/AdviceTabs.tsx';
import { isBestMix } from './foods/ask-words.ts';
import { FoodPicker } from './foods/FoodPicker.tsx';
import { GroupSection } from './foods/GroupSection.tsx';
import { useRoomKept } from './live/useRoomKept.ts';
import { useStill } from './live/useStill.ts';
import { MixAbout } from './MixAbout.tsx';
import { MixHead } from './MixHead.tsx';
import { NotMade } from './NotMade.tsx';
import { NutrientSide } from './nutrients/NutrientSide.tsx';
import { useOutOfSight } from './out-of-sight.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { isFit, useFormulation } from './useFormulation.ts';
import { Verdict } from './Verdict.tsx';

// A dragged slider draws the workbench at every frame: what does not move with it is left as it is.
const Head = memo(MixHead);
const About = memo(MixAbout);
const Picker = memo(FoodPicker);
const Advice = memo(AdviceTabs);
const Paper = memo(PrintSheet);

interface Props {
  mix: Mix;
  advice: OpenAdvice;
  onDelete(): void;
}

export function Workbench({ mix: kept, advice, onDelete }: Props) {
  const t = words().mix;
  const { house } = useMixDraft();
  const { mix, out, bringing, effective } = useFedMix(kept);
  const eaters = useMemo(() => eatersOf(kept, bringing), [kept, bringing]);
  const { shown, moving, view, acts } = useFormulation(mix, effective);
  const still = useStill(view, moving);
  const [sheet, setSheet] = useState(false);
  const verdict = useRef<HTMLDivElement>(null);
  const gone = useOutOfSight(verdict);
  useRoomKept(verdict, moving);
  const { problem } = mix;
  const { shares } = shown;
  const made = isMade(kept);
  const fit = isFit(view.state);
  const { known, groups, nameOf, nameById } = useNamedFoods(mix);
  const notBeside = useMemo(
    () => house.foods.filter((f) => !problem.beside.some((b) => b.id === f.id)),
    [house.foods, problem.beside],
  );
  const add = useCallback((food: Ingredient) => void acts.edit((m) => addFood(m, food)), [acts]);
  const cautions = useMemo(() => byFood(still.evaluation?.cautions ?? []), [still.evaluation]);
  // The scale of the tracks does not change under the hand.
  const top = useStill(
    useMemo(() => {
      const highs = [...Object.values(view.spans ?? {}).map((s) => s[1]), ...Object.values(mix.shares)];
      return Math.min(100, Math.max(10, Math.ceil(Math.max(0, ...highs) / 5) * 5));
    }, [view.spans, mix.shares]),
    moving,
  );
  const best = isBestMix(shares, view.best?.shares);
  const rows = { mix, shares, view, fit, moving, best, cautions, top, out, acts, nameOf, nameById };

  return (
    <div className={`mix-screen ${sheet ? 'sheet-open' : ''} ${gone ? 'verdict-gone' : ''}`}>
      <main id="main">
        <Head mix={kept} onDelete={onDelete} />
        <div ref={verdict}>
          {made ? <Verdict view={view} mix={mix} /> : <NotMade mix={mix} view={still} />}
        </div>
        <div className="mix-tools">
          <Picker
            label={problem.foods.length === 0 ? t.addFirst : t.addFood}
            foods={problem.foods}
            out={bringing.out}
            own={notBeside}
            onAdd={add}
          />
          {problem.foods.length > 0 && (
            <span>{t.together(problem.foods.filter((f) => !f.refused).length, total(shown))}</span>
          )}
        </div>
        <About mix={mix} kept={kept} made={made} view={still} out={out} nameOf={nameOf} nameById={nameById} />
        <div className="groups">
          {groups.map(([group, foods]) => (
            <GroupSection key={group} group={group} foods={foods} {...rows} />
          ))}
        </div>
        {problem.foods.length > 0 && (
          <Advice open={advice} mix={mix} kept={kept} view={still} eaters={eaters} nameOf={nameById} />
        )}
      </main>
      <NutrientSide
        mix={mix}
        made={made}
        view={view}
        acts={acts}
        known={known}
        moving={moving}
        sheet={sheet}
        setSheet={setSheet}
      />
      <Paper mix={mix} view={still} nameOf={nameOf} />
    </div>
  );
}

/** The mix as it may be fed. What is brought to it stays the same object while its foods, rules and animals do. */
function useFedMix(kept: Mix) {
  const { house } = useMixDraft();
  const profiles = useMemo(() => allProfiles(house), [house]);
  const { animalIds, profileId, problem } = kept;
  // As text, so that what follows is worked out anew only where this says something else.
  const bound = useMemo(
    () => JSON.stringify(bringingOf(house, { animalIds, profileId }, profiles)),
    [house, animalIds, profileId, profiles],
  );
  const bringing = useMemo((): Bringing => JSON.parse(bound), [bound]);
  const brought = useMemo(() => broughtTo(problem, bringing), [problem, bringing]);
  const mix = useMemo(() => withBrought(kept, brought), [kept, brought]);
  const effective = useCallback(
    (m: Mix) => withBrought(m, m.problem === problem ? brought : broughtTo(m.problem, bringing)),
    [problem, brought, bringing],
  );
  return { mix, out: brought.out, bringing, effective };
}

/** The foods of a mix under their groups, and what each is called. */
function useNamedFoods({ problem }: Mix) {
  const { foods: known, lookedUp } = useReferenceTable(
    [...problem.foods, ...problem.beside].flatMap((f) => f.ref ?? []),
  );
  // A row that moves to another group is made anew, without what is being typed in it. So rows are drawn once the groups
  // that the table gives were looked up the first time, or could not be.
  const everLookedUp = useRef(false);
  everLookedUp.current ||= lookedUp;
  const drawn =
    everLookedUp.current || problem.foods.every((f) => f.group !== undefined || f.ref === undefined);
  const groups = useMemo(() => {
    const grouped = ({ group, ref }: Ingredient) => group ?? (ref && known.get(ref)?.group) ?? undefined;
    return drawn ? foodsByGroup(problem.foods.map((f) => ({ ...f, group: grouped(f) }))) : [];
  }, [drawn, problem.foods, known]);
  const nameOf = useCallback(
    (food: Ingredient) => food.name ?? (food.ref && known.get(food.ref)?.name) ?? food.id,
    [known],
  );
  const nameById = useCallback(
    (id: string) => nameOf([...problem.foods, ...problem.beside].find((f) => f.id === id) ?? { id }),
    [nameOf, problem],
  );
  return { known, groups, nameOf, nameById };
}

function byFood(cautions: readonly CautionNote[]): ReadonlyMap<string, readonly CautionNote[]> {
  const all = new Map<string, CautionNote[]>();
  for (const note of cautions) all.set(note.food, [...(all.get(note.food) ?? []), note]);
  return all;
}

function total({ problem, shares }: Mix): number {
  return problem.foods.reduce((sum, f) => sum + (shares[f.id] ?? 0), 0);
}
