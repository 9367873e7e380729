/** A food of the keeper's own from what its label says. */
import { withEvidence } from '../../foods/evidence.ts';
import type { OwnFood } from '../../household/model.ts';
import { sourceWith } from '../../household/reckon/foods/label-source.ts';
import { words } from '../../words/words.ts';
import { today } from '../shared/today.ts';
import { newId } from '../store/new-id.ts';
import type { BoxFigures } from './LabelBox.tsx';

export function ownFoodFrom(name: string, kind: OwnFood['kind'], given: BoxFigures | undefined): OwnFood {
  const source = words().start.label.source;
  const bare: OwnFood = {
    id: newId(),
    name: name.trim(),
    kind,
    composition: {},
    sd: {},
    source,
    invented: false,
  };
  if (!given) return bare;
  return withEvidence(bare, {
    sources: [sourceWith(given, { id: newId(), name: source, today: today() })],
  });
}
