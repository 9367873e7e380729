/** The mix at hand: foods and shares on one side, windows and verdict on the other. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Button, type Key } from 'react-aria-components';
import { gramsDoubt } from '../../formulation/explain/grams-words.ts';
import type { Ingredient, Problem } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { besideTotal } from '../../household/reckon/mix/beside.ts';
import { besideBlend } from '../../household/reckon/mix/beside-blend.ts';
import { eatersOf, withAnimals } from '../../household/reckon/mix/eaters.ts';
import { addFood, foodsByGroup } from '../../household/reckon/mix/mix-edits.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { windowViews } from '../shared/windows.ts';
import { allProfiles } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useReferenceFoods } from '../worker/engine.ts';
import { AdviceTabs, adviceAt, type OpenAdvice } from './advice/AdviceTabs.tsx';
import { FoodPicker } from './foods/FoodPicker.tsx';
import { GroupSection } from './foods/GroupSection.tsx';
import { TargetNotes } from './limits/TargetNotes.tsx';
import { MixAnimals } from './MixAnimals.tsx';
import { MixHead } from './MixHead.tsx';
import { MixSettings } from './MixSettings.tsx';
import { Micronutrients } from './nutrients/Micronutrients.tsx';
import { NutrientTable } from './nutrients/NutrientTable.tsx';
import { NutrientWindow } from './nutrients/NutrientWindow.tsx';
import { useOutOfSight } from './out-of-sight.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { RemedyList } from './RemedyList.tsx';
import { isFit, useFormulation } from './useFormulation.ts';
import { stateWords, Verdict } from './Verdict.tsx';
import './MixScreen.css';

/** @param shown the advice to open at once, by its name in the address */
export function MixScreen({ shown }: { shown: string | undefined }) {
  const { mix } = useMixDraft();
  /** Which advice is open: it stays open when another mix is taken up. */
  const advice = useState<Key>(() => adviceAt(shown));
  useEffect(() => {
    if (shown !== undefined) focusWhenThere('.advice-tab[aria-selected="true"]');
  }, [shown]);
  return mix ? <Workbench key={mix.id} mix={mix} advice={advice} /> : <FirstMix />;
}

function Workbench({ mix: kept, advice }: { mix: Mix; advice: OpenAdvice }) {
  const { house, change } = useMixDraft();
  const profiles = useMemo(() => allProfiles(house), [house]);
  const eaters = useMemo(() => eatersOf(kept, house.animals, profiles), [kept, house.animals, profiles]);
  const bound = JSON.stringify(eaters);
  const effective = useCallback((m: Mix) => withAnimals(m, JSON.parse(bound)).mix, [bound]);
  const { mix, refusedBy } = useMemo(() => withAnimals(kept, JSON.parse(bound)), [kept, bound]);
  const view = useFormulation(mix, effective);
  const [sheet, setSheet] = useState(false);
  const verdict = useRef<HTMLDivElement>(null);
  const gone = useOutOfSight(verdict);
  const { problem } = mix;
  const gramsHint = view.weighed && gramsDoubt(view.weighed);
  const known = useReferenceFoods([...problem.foods, ...problem.beside].flatMap((f) => f.ref ?? []));
  const nameOf = (food: Ingredient) => food.name ?? (food.ref && known.get(food.ref)?.name) ?? food.id;
  const notBeside = house.foods.filter((f) => !problem.beside.some((b) => b.id === f.id));
  const nameById = (id: string) => nameOf(problem.foods.find((f) => f.id === id) ?? { id });
  const foods = problem.foods.map((f) => ({
    ...f,
    group: f.group ?? (f.ref && known.get(f.ref)?.group) ?? undefined,
  }));
  const pellet = besideBlend(problem, view.evaluation, known);
  const windows = windowViews(problem, view.evaluation, pellet?.known, pellet?.least);
  const pelletName =
    problem.beside.length > 0 ? problem.beside.map((b) => b.name ?? b.id).join(', ') : undefined;
  const within = windows.filter((w) => w.state === 'in').length;
  const top = useMemo(() => {
    const highs = [...Object.values(view.spans ?? {}).map((s) => s[1]), ...Object.values(mix.shares)];
    return Math.min(100, Math.max(10, Math.ceil(Math.max(0, ...highs) / 5) * 5));
  }, [view.spans, mix.shares]);

  return (
    <div className={`mix-screen ${sheet ? 'sheet-open' : ''} ${gone ? 'verdict-gone' : ''}`}>
      <main id="main">
        <MixHead mix={mix} />
        <div ref={verdict}>
          <Verdict view={view} mix={mix} />
        </div>
        {view.collision && !isFit(view.state) && (
          <RemedyList
            collision={view.collision}
            breaches={view.evaluation?.breaches ?? []}
            mix={mix}
            keptRules={kept.problem.rules.length}
            nameOf={nameById}
            mend={(change) => void view.edit(change, 'mend').then(() => view.balance())}
          />
        )}
        <MixAnimals
          mix={mix}
          animals={house.animals}
          refusedBy={refusedBy}
          onChange={(animalIds) => change((m) => ({ ...m, animalIds }))}
        />
        <MixSettings mix={mix} view={view} />
        <TargetNotes mix={kept} view={view} />
        {view.questions.length > 0 && (
          <section className="banner" aria-label="Figures to look at">
            {view.questions.map(({ pointer, sentence }) => (
              <p key={`${pointer} ${sentence}`}>{sentence}</p>
            ))}
          </section>
        )}
        {view.weighed?.grams_conflict && <p className="banner">{view.weighed.grams_conflict}</p>}
        {gramsHint && <p className="hint">{gramsHint}</p>}
        <div className="groups">
          {foodsByGroup(foods).map(([group, list]) => (
            <GroupSection
              key={group}
              group={group}
              foods={list}
              mix={mix}
              view={view}
              top={top}
              nameOf={nameOf}
            />
          ))}
        </div>
        <div className="total-line">
          <FoodPicker mix={mix} own={notBeside} onAdd={(food) => void view.edit((m) => addFood(m, food))} />
          <span>
            {problem.foods.filter((f) => !f.refused).length} foods, together {total(mix).toFixed(1)} %
          </span>
        </div>
        <AdviceTabs open={advice} mix={mix} kept={kept} view={view} eaters={eaters} nameOf={nameById} />
      </main>
      <aside className="beside" aria-label="Nutrients">
        <div className="strip">
          <span className={`strip-state ${view.state}`}>
            {view.state === 'none' ? 'No mix fits' : stateWords(view.state)}
            <small>
              {within} of {windows.length} windows kept
            </small>
          </span>
          <Button
            className="quiet-button sheet-toggle"
            aria-expanded={sheet}
            onPress={() => setSheet(!sheet)}
          >
            {sheet ? 'Close' : 'Nutrients'}
          </Button>
          <Button className="button" onPress={() => void view.balance()}>
            Balance
          </Button>
        </div>
        {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard */}
        <section className="windows" tabIndex={0} aria-label="Nutrient windows">
          <h2>
            Nutrient windows <small>pellet ■ mix ● ration ◆</small>
          </h2>
          {problem.beside.length > 1 && (
            <p className="hint">“Pellet” stands for all that is fed beside the mix, together.</p>
          )}
          {isFit(view.state) && view.evaluation && problem.rules.some((r) => 'nutrient' in r) && (
            <p className="hint" data-testid="all-chance">
              {chanceWords(view.evaluation.all_in_range_chance, problem)}
            </p>
          )}
          {windows.map((w) => (
            <NutrientWindow key={w.key} view={w} pelletName={pelletName} />
          ))}
          <Micronutrients
            evaluation={view.evaluation}
            pelletPart={besideTotal(problem, view.evaluation) / 100}
            profile={profiles.find((p) => p.id === mix.profileId)}
            profiles={profiles}
          />
          <NutrientTable evaluation={view.evaluation} />
        </section>
      </aside>
      <PrintSheet mix={mix} view={view} nameOf={nameOf} />
    </div>
  );
}

/** How sure all windows are at once, and what to do where that is little. */
function chanceWords(chance: number, { margin, confidence }: Problem): string {
  const percent = Math.round(chance * 100);
  const words = `Foods vary from bag to bag: all windows are kept at once with a chance of ${percent} %.`;
  if (percent >= 80 || confidence > 0) return words;
  return margin
    ? `${words} Balance goes as far from the bounds as these foods allow.`
    : `${words} To stay further from the bounds, choose “As sure as can be” in the settings.`;
}

function total(mix: Mix): number {
  return mix.problem.foods.reduce((sum, f) => sum + (mix.shares[f.id] ?? 0), 0);
}
