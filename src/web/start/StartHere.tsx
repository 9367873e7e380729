/** What stands on Now for a household that is new: the example's note, or the first steps to a mix of its own. */
import { EXAMPLE } from '../../household/reckon/example.ts';
import { firstSteps } from '../../household/reckon/first-steps.ts';
import { PARTS } from '../../words/parts.ts';
import { shownLater } from '../shared/later/shown-later.tsx';
import { fetchTexts } from '../shared/words/texts.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { ExampleNote } from './ExampleNote.tsx';

/** Most households have taken them long ago. */
const FirstSteps = shownLater(async () => {
  const [steps] = await Promise.all([import('./FirstSteps.tsx'), ...PARTS.map(fetchTexts)]);
  return steps.FirstSteps;
});

export function StartHere() {
  const { house, mix } = useMixDraft();
  const taken = firstSteps(house, mix);
  if (taken.stage !== 'start' || mix?.id === EXAMPLE.mix) return <ExampleNote steps={taken} />;
  return <FirstSteps steps={taken} />;
}
