/** Its weights: one press to note one, what to look into, the picture, and all that were noted. */
import { useMemo } from 'react';
import { speciesKind } from '../../../care/animal/species.ts';
import type { Animal } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { ofAnimal } from '../../../household/reckon/care/of-animal.ts';
import { weightsOf } from '../../../household/reckon/care/weight-of.ts';
import { words } from '../../../words/words.ts';
import { useEachMinute } from '../../shared/hooks/each-minute.ts';
import { dayAt, today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { Alerts } from './Alerts.tsx';
import { CompareWith } from './CompareWith.tsx';
import { Doubtful } from './Doubtful.tsx';
import { Pad } from './Pad.tsx';
import { WeighingList } from './WeighingList.tsx';
import { WeightPicture } from './WeightPicture.tsx';
import './weight.css';

export function WeightPart({ animal }: { animal: Animal }) {
  useEachMinute();
  const { house } = useMixDraft();
  const { weighings, keeper } = house;
  const day = today();
  const story = useMemo(
    () => weightsOf({ weighings, keeper }, animal, { today: day, dayAt }),
    [weighings, keeper, animal, day],
  );
  const own = ofAnimal(weighings, animal.id);
  const here = isHere(animal);
  return (
    <div className="weight-part">
      {here ? (
        <Pad key={day} animal={animal} story={story} weighings={own} day={day} />
      ) : (
        <p className="hint">{words().bodyWeight.gone(animal.name)}</p>
      )}
      <Doubtful story={story} weighings={own} day={day} />
      {here && <Alerts name={animal.name} kind={speciesKind(animal.species)} story={story} day={day} />}
      <WeightPicture animal={animal} story={story} day={day} />
      <CompareWith animal={animal} story={story} day={day} />
      <WeighingList animal={animal} story={story} weighings={own} day={day} />
    </div>
  );
}
