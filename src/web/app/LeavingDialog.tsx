/** The question before a screen is left on which something typed is not saved. Escape stays. */
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { leavingQuestion } from '../shared/hooks/leaving.ts';
import '../shared/PickerDialog.css';

export function LeavingDialog() {
  const t = words().store.leaving;
  return (
    <ModalOverlay
      className="overlay"
      isOpen
      onOpenChange={(open) => {
        if (!open) leavingQuestion.stay();
      }}
    >
      <Modal className="modal">
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">{t.title}</Heading>
          <p>{t.words}</p>
          <div className="button-row">
            <Button className="button strong" autoFocus onPress={leavingQuestion.stay}>
              {t.stay}
            </Button>
            <Button className="button" onPress={leavingQuestion.leave}>
              {t.leave}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
