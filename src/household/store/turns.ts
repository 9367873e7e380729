/** Turns at the one connection of a file. */

/** Does a piece of work when it is its turn. @param patient it gives way to whoever is there, also to those who come later */
export type InTurn = <T>(work: () => Promise<T>, patient?: boolean) => Promise<T>;

/**
 * Does one piece of work after the other, in the order asked; Kysely's own lock lets a newcomer pass those who wait, and
 * under load some would wait for ever. Between two of them the process does what else there is: answers are sent off.
 */
export function turns(): InTurn {
  const waiting: (() => Promise<void>)[] = [];
  const patient: (() => Promise<void>)[] = [];
  let isBusy = false;

  const nextOf = () => waiting.shift() ?? patient.shift();

  async function workOff(): Promise<void> {
    if (isBusy) return;
    isBusy = true;
    for (let next = nextOf(); next; next = nextOf()) {
      await next();
      await breathe();
    }
    isBusy = false;
  }

  return (work, isPatient = false) =>
    new Promise((done, failed) => {
      (isPatient ? patient : waiting).push(async () => {
        try {
          done(await work());
        } catch (error) {
          failed(error);
        }
      });
      void workOff();
    });
}

const breathe = () => new Promise<void>((done) => setImmediate(done));
