/** Which mix is at hand, where there are several. */
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { Choice } from '../Choice.tsx';

export function MixChoice() {
  const { house, mix, choose } = useMixDraft();
  if (!mix || house.mixes.length < 2) return null;
  return (
    <div className="fields">
      <Choice
        label={words().shared.firstMix.choice}
        value={mix.id}
        options={house.mixes.map((m) => [m.id, m.name])}
        onChange={choose}
      />
    </div>
  );
}
