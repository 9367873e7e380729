/** What to watch while the food changes. Nothing here is veterinary advice. */

import { words } from '../../words/words.ts';

/** One thing to watch. */
export interface ChangeCaution {
  readonly id: string;
  readonly sentence: string;
  readonly source: string;
}

/** In the order in which they are told. */
const IDS = ['slowly', 'droppings', 'weigh', 'slow-down', 'vet'] as const;

/** What to watch, most usual first. */
export function changeCautions(): ChangeCaution[] {
  const { feedingChange, kitchen } = words();
  return IDS.map((id) => ({ id, sentence: feedingChange.caution[id], source: kitchen.practiceNotAVet }));
}
