/** A word beside a food in a list: the keeper is allergic to it, may be, or nobody knows. */
import type { Handled } from '../../../care/hands/allergens.ts';
import { keeperAllergy } from '../../../household/reckon/care/keeper-allergy.ts';
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import './hands.css';

export function AllergyWords({ food, className = '' }: { food: () => Handled; className?: string }) {
  const { house } = useMixDraft();
  const t = words().hands;
  const found = keeperAllergy(house, food);
  if (!found) return null;
  const named = (all: readonly (keyof typeof t.allergens)[]) => all.map((a) => t.allergens[a]);
  return (
    <small className={`allergy-mark ${found.holds.length > 0 ? 'holds' : ''} ${className}`}>
      {[
        ...(found.holds.length > 0 ? [t.allergy.short(named(found.holds))] : []),
        ...(found.traces.length > 0 ? [t.allergy.shortTraces(named(found.traces))] : []),
        ...(found.unknown.length > 0 ? [t.allergy.shortUnknown(named(found.unknown))] : []),
      ].join(' · ')}
    </small>
  );
}
