/** The mix at hand: foods and shares on one side, windows and verdict on the other. */

import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Button, type Key } from 'react-aria-components';
import { gramsDoubt } from '../../formulation/explain/grams-words.ts';
import type { Ingredient, Problem } from '../../formulation/problem/problem.ts';
import type { Household, Mix } from '../../household/model.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import { isMade } from '../../household/reckon/first-steps.ts';
import { besideTotal } from '../../household/reckon/mix/beside.ts';
import { besideBlend } from '../../household/reckon/mix/beside-blend.ts';
import { type Bringing, bringingOf, eatersOf, withAnimals } from '../../household/reckon/mix/eaters.ts';
import { addFood, foodsByGroup } from '../../household/reckon/mix/mix-edits.ts';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { FirstMix } from '../shared/mix/FirstMix.tsx';
import { windowViews } from '../shared/windows.ts';
import { useRemove, useSave } from '../store/household.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { allProfiles } from '../store/profiles.ts';
import { useReferenceTable } from '../worker/engine.ts';
import { AdviceTabs, adviceAt, type OpenAdvice } from './advice/AdviceTabs.tsx';
import { NeverTried } from './animals/NeverTried.tsx';
import { RefusedFoods } from './animals/RefusedFoods.tsx';
import { UpsetFoods } from './animals/UpsetFoods.tsx';
import { FoodPicker } from './foods/FoodPicker.tsx';
import { GroupSection } from './foods/GroupSection.tsx';
import { HurtLines } from './foods/HurtLines.tsx';
import { TargetNotes } from './limits/TargetNotes.tsx';
import { MixAnimals } from './MixAnimals.tsx';
import { MixHead } from './MixHead.tsx';
import { MixSettings } from './MixSettings.tsx';
import { makeFit, NotMade } from './NotMade.tsx';
import { Micronutrients } from './nutrients/Micronutrients.tsx';
import { NutrientTable } from './nutrients/NutrientTable.tsx';
import { NutrientWindow } from './nutrients/NutrientWindow.tsx';
import { useOutOfSight } from './out-of-sight.ts';
import { PrintSheet } from './PrintSheet.tsx';
import { RemedyList } from './RemedyList.tsx';
import { isFit, useFormulation } from './useFormulation.ts';
import { stateWords, Verdict } from './Verdict.tsx';
import './MixScreen.css';

/** A mix that was just deleted, with what went along. */
interface Deleted {
  readonly mix: Mix;
  readonly versions: Household['versions'];
}

/** @param shown the advice to open at once, by its name in the address */
export function MixScreen({ shown }: { shown: string | undefined }) {
  const { house, mix, choose } = useMixDraft();
  /** Which advice is open: it stays open when another mix is taken up. */
  const advice = useState<Key>(() => adviceAt(shown));
  useEffect(() => {
    if (shown !== undefined) focusWhenThere('.advice-tab[aria-selected="true"]');
  }, [shown]);
  const [deleted, setDeleted] = useState<Deleted>();
  const remove = useRemove('mixes');
  const mixes = useSave('mixes');
  const versions = useSave('versions');

  /** Versions go with their mix; both can be had back. */
  async function take(mix: Mix) {
    const along = house.versions.filter((v) => v.mixId === mix.id);
    // As it is kept this moment: what was changed last counts.
    await remove.mutateAsync(house.mixes.find((m) => m.id === mix.id) ?? mix);
    setDeleted({ mix, versions: along });
    focusWhenThere('.mix-deleted button');
  }
  async function bringBack({ mix, versions: along }: Deleted) {
    setDeleted(undefined);
    await mixes.mutateAsync(mix, undefined);
    for (const version of along) await versions.mutateAsync(version, undefined);
    choose(mix.id);
    focusWhenThere('.mix-name input');
  }
  const error = remove.error ?? mixes.error ?? versions.error;
  return (
    <>
      {(deleted || error) && (
        <div className="mix-deleted notice-line" role="status">
          {deleted && words().mix.head.deleted(deleted.mix.name)}{' '}
          {deleted && (
            <Button className="quiet-button small" onPress={() => void bringBack(deleted).catch(() => {})}>
              {words().common.undo}
            </Button>
          )}
          <Failed error={error} />
        </div>
      )}
      {mix ? (
        <Workbench
          key={mix.id}
          mix={mix}
          advice={advice}
          onDelete={() => void take(mix).catch(() => {})} // `error` says why
        />
      ) : (
        <FirstMix />
      )}
    </>
  );
}

function Workbench({ mix: kept, advice, onDelete }: { mix: Mix; advice: OpenAdvice; onDelete(): void }) {
  const t = words().mix;
  const { house, change } = useMixDraft();
  const profiles = useMemo(() => allProfiles(house), [house]);
  // As text, so that what follows is worked out anew only where this says something else.
  const bound = JSON.stringify(bringingOf(house, kept, profiles));
  const bringing = useMemo((): Bringing => JSON.parse(bound), [bound]);
  const eaters = useMemo(() => eatersOf(kept, bringing), [kept, bringing]);
  const effective = useCallback((m: Mix) => withAnimals(m, bringing).mix, [bringing]);
  const { mix, out } = useMemo(() => withAnimals(kept, bringing), [kept, bringing]);
  const view = useFormulation(mix, effective);
  const [sheet, setSheet] = useState(false);
  const verdict = useRef<HTMLDivElement>(null);
  const gone = useOutOfSight(verdict);
  const { problem } = mix;
  const made = isMade(kept);
  const gramsHint = view.weighed && gramsDoubt(view.weighed);
  const { foods: known, lookedUp } = useReferenceTable(
    [...problem.foods, ...problem.beside].flatMap((f) => f.ref ?? []),
  );
  // A row that moves to another group is made anew, without what is being typed in it. So rows are drawn once the groups
  // that the table gives were looked up the first time, or could not be.
  const drawn = useRef(false);
  drawn.current ||= lookedUp || problem.foods.every((f) => f.group !== undefined || f.ref === undefined);
  const nameOf = (food: Ingredient) => food.name ?? (food.ref && known.get(food.ref)?.name) ?? food.id;
  const notBeside = house.foods.filter((f) => !problem.beside.some((b) => b.id === f.id));
  const nameById = (id: string) =>
    nameOf([...problem.foods, ...problem.beside].find((f) => f.id === id) ?? { id });
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
        <MixHead mix={kept} onDelete={onDelete} />
        <div ref={verdict}>
          {made ? <Verdict view={view} mix={mix} /> : <NotMade mix={mix} view={view} />}
        </div>
        <div className="mix-tools">
          <FoodPicker
            label={problem.foods.length === 0 ? t.addFirst : t.addFood}
            mix={mix}
            out={bringing.out}
            own={notBeside}
            onAdd={(food) => void view.edit((m) => addFood(m, food))}
          />
          {problem.foods.length > 0 && (
            <span>{t.together(problem.foods.filter((f) => !f.refused).length, total(mix))}</span>
          )}
        </div>
        {made && view.collision && !isFit(view.state) && (
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
          animals={house.animals.filter(isHere)}
          onChange={(animalIds) => change((m) => ({ ...m, animalIds }))}
        >
          <RefusedFoods mix={mix} out={out} nameOf={nameById} />
          <NeverTried mix={mix} nameOf={nameOf} />
        </MixAnimals>
        <MixSettings mix={mix} view={view} />
        <TargetNotes mix={kept} view={view} />
        {view.questions.length > 0 && (
          <section className="banner" aria-label={t.toCheck}>
            {view.questions.map(({ pointer, sentence }) => (
              <p key={`${pointer} ${sentence}`}>{sentence}</p>
            ))}
          </section>
        )}
        {view.weighed?.grams_conflict && <p className="banner">{view.weighed.grams_conflict}</p>}
        {gramsHint && <p className="hint">{gramsHint}</p>}
        <UpsetFoods mix={mix} out={out} nameOf={nameById} />
        <HurtLines mix={mix} kept={kept} view={view} nameOf={nameById} />
        <div className="groups">
          {foodsByGroup(drawn.current ? foods : []).map(([group, list]) => (
            <GroupSection
              key={group}
              group={group}
              foods={list}
              mix={mix}
              view={view}
              top={top}
              out={out}
              nameOf={nameOf}
            />
          ))}
        </div>
        {problem.foods.length > 0 && (
          <AdviceTabs open={advice} mix={mix} kept={kept} view={view} eaters={eaters} nameOf={nameById} />
        )}
      </main>
      <aside className="beside" aria-label={t.nutrients}>
        <div className="strip">
          <span className={`strip-state ${made ? view.state : 'working'}`}>
            {!made
              ? problem.foods.length === 0
                ? t.emptyShort
                : t.notMadeShort
              : view.state === 'none'
                ? t.noneFits
                : stateWords(view.state)}
            {made && <small>{t.rangesKept(within, windows.length)}</small>}
          </span>
          {/* The one that comes and goes is not at the edge: it would push the other from under the thumb. */}
          <Button
            className="button strip-fit"
            isDisabled={problem.foods.length === 0}
            onPress={() => void makeFit(view, mix)}
          >
            {t.makeFit}
          </Button>
          <Button
            className="quiet-button sheet-toggle"
            aria-expanded={sheet}
            onPress={() => setSheet(!sheet)}
          >
            {sheet ? words().common.close : t.nutrients}
          </Button>
        </div>
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
                <NutrientWindow key={w.key} view={w} pelletName={pelletName} />
              ))}
              <Micronutrients
                evaluation={view.evaluation}
                pelletPart={besideTotal(problem, view.evaluation) / 100}
                profile={profiles.find((p) => p.id === mix.profileId)}
                profiles={profiles}
              />
              <NutrientTable evaluation={view.evaluation} />
            </>
          ) : (
            <p className="hint">{t.rangesLater}</p>
          )}
        </section>
      </aside>
      <PrintSheet mix={mix} view={view} nameOf={nameOf} />
    </div>
  );
}

/** How sure all ranges are at once, and what to do where that is little. */
function chanceWords(chance: number, { margin, confidence }: Problem): string {
  const t = words().mix;
  const percent = Math.round(chance * 100);
  if (percent >= 80 || confidence > 0) return t.chance(percent);
  return `${t.chance(percent)} ${margin ? t.chanceMargin : t.chanceMore}`;
}

function total(mix: Mix): number {
  return mix.problem.foods.reduce((sum, f) => sum + (mix.shares[f.id] ?? 0), 0);
}
