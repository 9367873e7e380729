/** A batch while it is weighed out: its pours, and what there is of its foods. Each change is a function from one batch to the next. */
import type { Agreed, Batch, Moment, Overruled, Pour } from '../../../kitchen/model.ts';

export function withPour(batch: Batch, pour: Pour): Batch {
  return { ...batch, pours: [...batch.pours, pour] };
}

/** The batch weighed on a scale that reads in other steps; its targets follow. @param step g */
export function withScaleStep(batch: Batch, step: number): Batch {
  return { ...batch, problem: { ...batch.problem, scale_step_grams: step } };
}

const pouredOf = (batch: Batch, food: string) =>
  Number(
    batch.pours
      .filter((p) => p.food === food)
      .reduce((sum, p) => sum + p.grams, 0)
      .toPrecision(12),
  );

/** The batch with no more to come of a food than lies in the bowl: there is no more of it. */
export function withNoMore(batch: Batch, food: string): Batch {
  return { ...batch, stock: { ...batch.stock, [food]: Math.max(0, pouredOf(batch, food)) } };
}

/** The batch as the keeper chose between what it may become: to grow, to do without foods, or to stay as it is. */
export function agreedTo(batch: Batch, { grams, without, keep }: Agreed): Batch {
  const before = batch.agreed;
  const size = Math.max(grams ?? 0, before?.grams ?? 0);
  const out = [...new Set([...(before?.without ?? []), ...(without ?? [])])];
  const agreed: Agreed = {
    ...(size > 0 && { grams: size }),
    ...(out.length > 0 && { without: out }),
    ...(keep && { keep }),
  };
  return { ...batch, agreed };
}

/** Foods of which there is no more than what lies in the bowl, by their ids. */
export function usedUp(batch: Batch): string[] {
  return Object.entries(batch.stock ?? {}).flatMap(([food, grams]) =>
    batch.pours.some((p) => p.food === food) && grams <= pouredOf(batch, food) + 1e-9 ? [food] : [],
  );
}

/** The batch with any amount of a food to be had, whatever its lots are said to hold. */
export function withAnyAmount(batch: Batch, food: string): Batch {
  const { stock: { [food]: _gone, ...stock } = {}, ...rest } = batch;
  return Object.keys(stock).length > 0 ? { ...rest, stock } : rest;
}

/** The batch before its last entry, which was written wrong; what was said with it, that there is no more, goes too. */
export function withoutLast(batch: Batch): Batch {
  const last = batch.pours.at(-1);
  const said = last && usedUp(batch).includes(last.food);
  const before = { ...batch, pours: batch.pours.slice(0, -1) };
  return said ? withAnyAmount(before, last.food) : before;
}

/** The batch when its last food is in. @param p.accepted why it is fed though it is out of range */
export function finished(
  batch: Batch,
  p: { readonly at: Moment; readonly madeBy?: string; readonly accepted?: Overruled },
): Batch {
  return {
    ...batch,
    ...(p.madeBy && { madeBy: p.madeBy }),
    ...(p.accepted && { accepted: p.accepted }),
    finishedAt: p.at,
  };
}

/** The batch closed before it was complete: it is not fed. */
export function givenUp(batch: Batch, p: { readonly at: Moment; readonly why: Overruled }): Batch {
  return { ...batch, givenUp: p.why, finishedAt: p.at };
}

/**
 * The same plan with an empty bowl, as a batch of its own. What was poured is gone, so its lots hold so much less.
 * @param now ISO 8601 time at which it begins
 */
export function begunAgain(batch: Batch, id: string, now: string): Batch {
  const { accepted: _reason, givenUp: _why, finishedAt: _end, agreed: _ways, ...plan } = batch;
  const stock =
    batch.stock &&
    Object.fromEntries(
      Object.entries(batch.stock).map(([food, g]) => [food, Math.max(0, g - pouredOf(batch, food))]),
    );
  return { ...plan, ...(stock && { stock }), id, pours: [], startedAt: now };
}

/** The batch with its lots counted as holding so much more, g by food id. */
export function withMoreStock(batch: Batch, needed: Readonly<Record<string, number>>): Batch {
  if (!batch.stock) return batch;
  const stock: Record<string, number> = { ...batch.stock };
  for (const [food, grams] of Object.entries(needed)) {
    if (stock[food] !== undefined) stock[food] = Math.max(stock[food], pouredOf(batch, food)) + grams;
  }
  return { ...batch, stock };
}
