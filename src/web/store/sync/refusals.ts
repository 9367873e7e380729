/** What was refused and nobody waited for: told until the keeper has read it, however much is kept after it. */
import { same } from '../../../household/merge/merge-record.ts';
import type { ApiError } from '../api-error.ts';
import type { Change } from './change.ts';
import type { Refusal } from './keeper-parts.ts';

/** Of one record, the last refusal is told. */
export function withRefusal(
  refusals: readonly Refusal[],
  change: Change,
  { message, field }: Pick<ApiError, 'message' | 'field'>,
): readonly Refusal[] {
  return [
    ...refusals.filter((r) => !isOf(r, change)),
    { change, message, ...(field !== undefined && field !== '' && { field }) },
  ];
}

/** A later change of the record was kept: one that sets right what was refused ends its telling. */
export function afterMade(refusals: readonly Refusal[], made: Change): readonly Refusal[] {
  return refusals.flatMap((refusal) => {
    if (!isOf(refusal, made)) return refusal;
    return setsRight(refusal, made) ? [] : { ...refusal, isPast: true as const };
  });
}

function isOf({ change }: Refusal, { kind, id }: Change): boolean {
  return change.kind === kind && change.id === id;
}

function setsRight({ field, change }: Refusal, { base, body }: Change): boolean {
  const [, key] = field?.split('/') ?? [];
  if (key === undefined || body === null || change.body === null) return true;
  const at = (record: object | null) => (record as Record<string, unknown> | null)?.[key];
  return !same(at(base.body), at(body));
}
