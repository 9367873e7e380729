/** Turns at the one connection of a file. */

/**
 * Does one piece of work after the other, in the order asked; Kysely's own lock lets a newcomer pass those who wait, and
 * under load some would wait for ever. Between two of them the process does what else there is: answers are sent off.
 */
export function turns(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.then(breathe, breathe);
    return mine;
  };
}

const breathe = () => new Promise<void>((done) => setImmediate(done));
