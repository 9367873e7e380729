/** What is left of the batches that are fed beside that of the mix at hand; folded, since it is rarely asked. */
import { useState } from 'react';
import type { PresentBatch } from '../../household/reckon/batch/present-batch.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { BatchLeft } from './BatchLeft.tsx';
import { batchWords } from './care-words.ts';
import type { AskDue } from './useCareDue.ts';

interface Props {
  care: AskDue;
  /** The batch of the mix at hand. */
  atHand: PresentBatch | undefined;
  day: Day;
}

export function OtherBatches({ care, atHand, day }: Props) {
  const due = care();
  const others = due?.fed.filter((f) => f.present.batch.id !== atHand?.batch.id) ?? [];
  /** One that was just said to be all eaten stays, to be taken back. */
  const [shown, setShown] = useState<readonly string[]>([]);
  const more = others.flatMap((f) => (shown.includes(f.present.batch.id) ? [] : [f.present.batch.id]));
  if (more.length > 0) setShown([...shown, ...more]);
  if (!due || shown.length === 0) return null;
  const presentOf = (id: string) => {
    const fed = others.find((f) => f.present.batch.id === id);
    return fed && { ...fed.present, name: batchWords(fed, due, day) };
  };
  return (
    <details className="today-others">
      <summary>{words().today.left.others}</summary>
      {shown.map((id) => (
        <BatchLeft key={id} present={presentOf(id)} day={day} />
      ))}
    </details>
  );
}
