/** A button that opens a dialog over the page, to be left by "Done"; what a dialog is made of is fetched when it is opened. */
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import { shownLater } from './later/shown-later.tsx';

const PickerWindow = shownLater(() => import('./PickerWindow.tsx').then((m) => m.PickerWindow));

export function PickerDialog(props: {
  label: string;
  title: string;
  className?: string;
  children: ReactNode;
}) {
  const [open, setOpen] = useState(false);
  return (
    <>
      <Button
        className={`button ${props.className ?? ''}`}
        aria-haspopup="dialog"
        aria-expanded={open}
        onPress={() => setOpen(true)}
      >
        {props.label}
      </Button>
      {open && (
        <PickerWindow title={props.title} onClose={() => setOpen(false)}>
          {props.children}
        </PickerWindow>
      )}
    </>
  );
}
