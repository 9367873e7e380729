/** One page for the vet: shown as it prints, with the button that prints it. */
import { Button } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { vetPage } from '../../../household/reckon/care/vet-page.ts';
import { words } from '../../../words/words.ts';
import { dayAt, today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useVetFood } from './useVetFood.ts';
import { VetSheet } from './VetSheet.tsx';

export function VetPart({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const day = today();
  const food = useVetFood(animal, day);
  const t = words().vetPage;
  return (
    <section className="vet-part" aria-label={t.title}>
      <p className="vet-tools">
        <span className="hint">{t.help}</span>
        <Button className="button" isDisabled={food.working} onPress={() => window.print()}>
          {food.working ? t.working : t.print}
        </Button>
      </p>
      <VetSheet animal={animal} page={vetPage(house, animal, { today: day, dayAt })} food={food} />
    </section>
  );
}
