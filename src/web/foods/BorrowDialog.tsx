/** Filling a gap from a similar food: an explicit act, marked as borrowed, taken back with one press. */
import { useQuery } from '@tanstack/react-query';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Lent } from '../../foods/evidence.ts';
import type { OwnFood } from '../../household/model.ts';
import { nutrient, type Tag, unitWord } from '../../nutrition/nutrients.ts';
import { tableNote } from '../shared/table-name.ts';
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
            <Heading slot="title">Borrow {name.toLowerCase()}</Heading>
            <Button className="quiet-button" onPress={onClose}>
              Cancel
            </Button>
          </div>
          <p>
            Nobody gives the {name.toLowerCase()} of {own.name}. These foods are built most like it. A
            borrowed amount is an estimate: it is marked as borrowed and counts with a wide spread.
          </p>
          <p className="hint" aria-live="polite">
            {error
              ? error.message
              : offers === undefined
                ? 'Searching…'
                : offers.length === 0
                  ? 'No similar food knows it. Give the food’s group and main parts first.'
                  : `${offers.length} foods, the most similar first`}
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
                  aria-label={`Borrow ${figure(lent.value)} ${unitWord(unit)} from ${food.name}`}
                  onPress={() => {
                    onBorrow(lent);
                    onClose();
                  }}
                >
                  Borrow
                </Button>
              </li>
            ))}
          </ul>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
