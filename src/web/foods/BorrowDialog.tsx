/** Filling a gap from a similar food: an explicit act, marked as borrowed, taken back with one press. */
import { useQuery } from '@tanstack/react-query';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Lent } from '../../foods/evidence.ts';
import { tableNote } from '../../foods/food-name.ts';
import type { OwnFood } from '../../household/model.ts';
import { nutrient, nutrientWord, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { figure } from '../shared/windows.ts';
import { engine } from '../worker/engine.ts';
import '../shared/PickerDialog.css';
import '../shared/styles/offers.css';

interface Props {
  own: OwnFood;
  tag: Tag;
  onBorrow(lent: Lent): void;
  onClose(): void;
}

export function BorrowDialog({ own, tag, onBorrow, onClose }: Props) {
  const { name, unit } = nutrient(tag);
  const { foods, common } = words();
  const t = foods.borrow;
  const { composition, sd, group } = own;
  const { data: offers, error } = useQuery({
    queryKey: ['lenders', own.id, tag, composition],
    queryFn: () => engine.lenders({ composition, sd }, group, tag),
  });
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(open) => !open && onClose()}>
      <Modal className="modal">
        <Dialog className="dialog">
          <div className="dialog-head">
            <Heading slot="title">{t.title(name)}</Heading>
            <Button className="quiet-button" onPress={onClose}>
              {common.cancel}
            </Button>
          </div>
          <p>{t.why(nutrientWord(tag), own.name)}</p>
          <p className="hint" aria-live="polite">
            {error
              ? error.message
              : offers === undefined
                ? t.searching
                : offers.length === 0
                  ? t.none
                  : t.offers(offers.length)}
          </p>
          <ul className="offers">
            {offers?.map(({ food, lent }) => (
              <li key={food.ref}>
                <span className="offer-name">
                  {food.name}{' '}
                  <small>
                    {[tableNote(food), `${figure(lent.value)} ± ${figure(lent.sd)} ${unitWord(unit)}`]
                      .filter(Boolean)
                      .join(' · ')}
                  </small>
                </span>
                <Button
                  className="button small"
                  aria-label={t.borrowFrom(`${figure(lent.value)} ${unitWord(unit)}`, food.name)}
                  onPress={() => {
                    onBorrow(lent);
                    onClose();
                  }}
                >
                  {t.borrow}
                </Button>
              </li>
            ))}
          </ul>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
