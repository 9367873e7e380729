/** One printed page for whoever looks after the animals: what and how much, cautions, whom to call. */
import { useMixDraft } from '../../store/mix-draft.tsx';

export function SitterCard() {
  const { house } = useMixDraft();
  return <p>{house.animals.map((a) => a.name).join(', ')}</p>;
}
