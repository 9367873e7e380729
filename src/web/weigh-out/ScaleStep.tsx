/** In what steps the scale reads; the targets are whole steps of it. */

import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { scaleSteps } from './view-model.ts';

/** @param step g */
export function ScaleStep({ step, onChange }: { step: number; onChange(step: number): void }) {
  const t = words().weighing;
  const steps = [...new Set([...scaleSteps(), step])].sort((a, b) => a - b);
  return (
    <Choice
      label={t.scaleSteps}
      value={String(step)}
      options={steps.map((s) => [String(s), t.scaleStep(s)] as const)}
      onChange={(words) => onChange(Number(words))}
    />
  );
}
