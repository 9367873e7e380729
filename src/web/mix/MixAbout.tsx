/** What stands between the verdict of a mix and its foods: what would mend it, its animals, its settings, what to know of it. */
import { gramsDoubt } from '../../formulation/explain/grams-words.ts';
import type { Ingredient } from '../../formulation/problem/problem.ts';
import type { Mix } from '../../household/model.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import type { OutOfMix } from '../../household/reckon/mix/eaters.ts';
import { words } from '../../words/words.ts';
import { shownLater } from '../shared/later/shown-later.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { NeverTried } from './animals/NeverTried.tsx';
import { RefusedFoods } from './animals/RefusedFoods.tsx';
import { UpsetFoods } from './animals/UpsetFoods.tsx';
import { HurtLines } from './foods/HurtLines.tsx';
import { TargetNotes } from './limits/TargetNotes.tsx';
import { MixAnimals } from './MixAnimals.tsx';
import { MixSettings } from './MixSettings.tsx';
import { type FormulationView, isFit } from './useFormulation.ts';

const RemedyList = shownLater(() => import('./RemedyList.tsx').then((m) => m.RemedyList));

interface Props {
  /** With what its animals bring. */
  mix: Mix;
  kept: Mix;
  /** Whether its shares were ever worked out. */
  made: boolean;
  view: FormulationView;
  out: OutOfMix;
  nameOf(food: Ingredient): string;
  nameById(id: string): string;
}

export function MixAbout({ mix, kept, made, view, out, nameOf, nameById }: Props) {
  const { house, change } = useMixDraft();
  const gramsHint = view.weighed && gramsDoubt(view.weighed);
  return (
    <>
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
        <section className="banner" aria-label={words().mix.toCheck}>
          {view.questions.map(({ pointer, sentence }) => (
            <p key={`${pointer} ${sentence}`}>{sentence}</p>
          ))}
        </section>
      )}
      {view.weighed?.grams_conflict && <p className="banner">{view.weighed.grams_conflict}</p>}
      {gramsHint && <p className="hint">{gramsHint}</p>}
      <UpsetFoods mix={mix} out={out} nameOf={nameById} />
      <HurtLines mix={mix} kept={kept} view={view} nameOf={nameById} />
    </>
  );
}
