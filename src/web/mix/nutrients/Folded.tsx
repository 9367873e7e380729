/** What is folded away until it is wanted, and drawn only then: hundreds of figures cost time at every change of a share. */
import { type ReactNode, useState } from 'react';

export function Folded(props: { summary: string; className?: string; children: () => ReactNode }) {
  const [open, setOpen] = useState(false);
  return (
    <details
      className={props.className}
      onToggle={(e) => e.target === e.currentTarget && setOpen(e.currentTarget.open)}
    >
      <summary>{props.summary}</summary>
      {open && props.children()}
    </details>
  );
}
