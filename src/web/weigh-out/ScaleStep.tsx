/** In what steps the scale reads; the targets are whole steps of it. */
import { Choice } from '../shared/Choice.tsx';
import { SCALE_STEPS } from './view-model.ts';

/** @param step g */
export function ScaleStep({ step, onChange }: { step: number; onChange(step: number): void }) {
  const steps = [...new Set([...SCALE_STEPS, step])].sort((a, b) => a - b);
  return (
    <Choice
      label="The scale reads in steps of"
      value={String(step)}
      options={steps.map((s) => [String(s), `${s} g`] as const)}
      onChange={(words) => onChange(Number(words))}
    />
  );
}
