/** One household in a database: every write is one transaction; what was answered is on disk. */
import type { Kysely } from 'kysely';
import type { Batch, Pour } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { type Household, type Kept, KINDS, type Kind, type PourEntry } from '../model.ts';
import type { By, ChangeDetail, HistoryPage, KeptRecord, RecordsPage, Write, Written } from '../records.ts';
import { MOST_POURS } from '../shape/kitchen-schemas.ts';
import { StoreError } from '../store-error.ts';
import { type BringIn, bringIn } from './bring-in.ts';
import { Cutter } from './cuts.ts';
import { FoundFit } from './found-fit.ts';
import { forgetOld, type HistoryQuery, readChange, readHistory, takeBack } from './history.ts';
import { MOST_BYTES, type PageText, readPage, readPageText, type Sent } from './pages.ts';
import { Quiet } from './quiet.ts';
import type { Asked } from './section.ts';
import { recordOf, type Session } from './session.ts';
import { RowReader } from './stored.ts';
import type { Tables, Tx } from './tables.ts';
import { Tally } from './tally.ts';
import { writeRecord } from './write.ts';

/** What a household keeps. */
export interface Store {
  /** What changed after a number; 0 gives what is there now. */
  records(asked: Asked): Promise<RecordsPage>;
  /** The same as JSON, which costs much less; only its sign where that is as `known` says. */
  recordsText(asked: Asked & Sent, known?: string): Promise<PageText>;
  /** Everything that can be read, as it stood at one moment. */
  household(): Promise<Household>;
  /** Number of the newest change, and the epoch it belongs to. */
  newest(): Promise<{ readonly seq: number; readonly epoch: string }>;
  /**
   * Puts or deletes one record.
   * @throws Overtaken where it stands at another version; StoreError where the household refuses it
   */
  write(write: Write, by: By): Promise<Written>;
  /** Puts all objects of a household, whatever stands there; all or none. @throws as `write` */
  putAll(household: Household, by?: By): Promise<void>;
  /** Every record that is there, those that cannot be read among them, in the order of their places. */
  everything(): Promise<KeptRecord[]>;
  /** Brings in what was checked as a whole; all or none. @throws StoreError where the household changed since */
  bringIn(all: BringIn, by: By): Promise<void>;
  /**
   * Adds pours to a batch; those that it has already (same food, grams and time) are not added again.
   * @param writeId the same for each repeat of a request: what was added by it and taken out since does not come back
   * @throws StoreError where there is none, it is finished, or it would have too many pours
   */
  addPours(batchId: string, entry: PourEntry, by: By, writeId?: string): Promise<Written>;
  history(query: HistoryQuery): Promise<HistoryPage>;
  /** @throws StoreError where there is none */
  change(seq: number): Promise<ChangeDetail>;
  /** Undoes a change and all that were made with it. @throws StoreError where later changes touch the same */
  takeBack(seq: number, by: By): Promise<Written[]>;
  /**
   * Looks through every record once, a few at a time while nobody else asks for anything: from then on neither those who read
   * nor those who write wait for it. What it found fit is kept for the next start.
   */
  lookThrough(): Promise<void>;
  /** Comes back once nobody asks for anything, or has not ceased to for long: for work that can wait. */
  quiet(): Promise<void>;
  /** Lets go of history older than a year. @param now ISO 8601 time */
  forgetOld(now: string): Promise<void>;
  /** Hears of every change of the household from now on, as `newest` then says. @returns a function that ends it */
  watch(changed: (seq: number, epoch: string) => void): () => void;
  /** Tells all who watch to look anew: an older state was put back, under a new epoch. */
  stirred(): Promise<void>;
}

/** What a program that keeps a household open for others says of itself. */
export interface StoreOptions {
  /**
   * Mark of the program that runs, which no program with other checks of a record has: what it found fit is then not
   * checked again after its next start. Absent where there is none.
   */
  readonly program?: string | undefined;
  /** How long nobody must have asked for anything before what can wait is done, ms. */
  readonly rest?: number;
}

export interface StoreParts {
  readonly db: Kysely<Tables>;
  /** Id of the household. */
  readonly household: string;
  /** Turns what the database throws into a StoreError where it is a fault of file or disk. */
  readonly fault?: (error: unknown) => unknown;
  /** Does one piece of work after the other, where there is one connection alone; see `turns`. */
  readonly inTurn?: <T>(work: () => Promise<T>) => Promise<T>;
  /** Gives another number once another program wrote to the household; absent where nobody can tell. */
  readonly outside?: () => number;
  readonly options?: StoreOptions | undefined;
}

/** The store of one household. The caller owns the database and closes it. */
export function storeOver({
  db,
  household,
  fault = (error) => error,
  inTurn = (work) => work(),
  outside,
  options: { program, rest = 0 } = {},
}: StoreParts): Store {
  const found = new FoundFit(program);
  const reader = new RowReader(found);
  const parts = { household, reader, cutter: new Cutter(MOST_BYTES), outside };
  const known = new Tally();
  const quiet = new Quiet(rest);
  const watchers = new Set<(seq: number, epoch: string) => void>();

  /** @param patient whether it gives way to all others */
  async function read<T>(work: (tx: Tx) => Promise<T>, patient = false): Promise<T> {
    const transact = () =>
      inTurn(() =>
        db.transaction().execute(async (tx) => {
          await found.recall(tx, household);
          return work(tx);
        }),
      );
    try {
      if (!patient) return await quiet.asked(transact);
      await quiet.comes();
      return await transact();
    } catch (error) {
      throw fault(error);
    }
  }

  /** @param alone whether one record is written, and may join the line of the history that was written just before */
  async function write<T>(
    by: By,
    work: (session: Session, stood: number) => Promise<T>,
    alone = false,
  ): Promise<T> {
    const { answer, before, after, epoch } = await read(async (tx) => {
      // Takes the lock that writers of this household wait for, before anything is read.
      const before = await tx
        .updateTable('households')
        .set(({ ref }) => ({ seq: ref('seq') }))
        .where('id', '=', household)
        .returning('seq')
        .executeTakeFirstOrThrow();
      const atEnd: (() => Promise<void>)[] = [];
      // One record is checked before it is written. What is asked between writes must not outlive a transaction that fails.
      if (!alone) await known.catchUp(tx, household, reader);
      let tally = alone ? known : undefined;
      const session = {
        ...{ tx, household, by, reader, together: undefined, joins: alone },
        known: { foods: new Map<string, boolean>() },
        async tally() {
          tally ??= known.copy();
          await tally.catchUp(tx, household, reader);
          return tally;
        },
      };
      const answer = await work(alone ? session : { ...session, atEnd }, before.seq);
      for (const check of atEnd) await check();
      const after = await tx
        .selectFrom('households')
        .select(['seq', 'epoch'])
        .where('id', '=', household)
        .executeTakeFirstOrThrow();
      return { answer, before: before.seq, after: after.seq, epoch: after.epoch };
    });
    if (after > before) for (const changed of watchers) changed(after, epoch);
    return answer;
  }

  const newest = () =>
    read((tx) =>
      tx
        .selectFrom('households')
        .select(['seq', 'epoch'])
        .where('id', '=', household)
        .executeTakeFirstOrThrow(),
    );

  /** What to write so that an object stands, whatever stands there. */
  async function upon<K extends Kind>(session: Session, kind: K, body: Kept<K>): Promise<Write<K>> {
    const { version } = await recordOf(session, kind, body.id);
    return { kind, id: body.id, body, basedOn: version };
  }

  async function putEach(session: Session, all: Household): Promise<void> {
    for (const kind of KINDS)
      for (const body of all[kind]) await writeRecord(session, await upon(session, kind, body));
  }

  return {
    records: (asked) => read((tx) => readPage(tx, parts, asked)),
    recordsText: (asked, known) => read((tx) => readPageText(tx, parts, asked, known)),
    household: () => read((tx) => readAll(tx, household, reader)),
    newest,
    write: (one, by) => write(by, (session) => writeRecord(session, one), true),
    putAll: (all, by = NOW()) => write(by, (session) => putEach(session, all)),
    everything: () => read((tx) => recordsThere(tx, household, reader)),
    bringIn: (all, by) => write(by, (session, stood) => bringIn(session, all, stood)),
    addPours: (batchId, entry, by, writeId) =>
      write(by, (session) => addPours(session, batchId, entry, writeId), true),
    history: (query) => read((tx) => readHistory(tx, household, query)),
    change: (seq) => read((tx) => readChange(tx, household, seq)),
    takeBack: (seq, by) => write(by, (session) => takeBack(session, seq)),
    async lookThrough() {
      while (await read((tx) => known.readSlice(tx, household, reader), true));
      // What cannot be kept (a full disk, say) is found out again after the next start.
      await found.keep(household, (work) => read(work, true)).catch(() => {});
    },
    quiet: () => quiet.comes(),
    forgetOld: (now) => read((tx) => forgetOld(tx, household, now)),
    watch(changed) {
      watchers.add(changed);
      return () => {
        watchers.delete(changed);
      };
    },
    async stirred() {
      const { seq, epoch } = await newest();
      for (const changed of watchers) changed(seq, epoch);
    },
  };
}

/** The program itself, at this moment. */
const NOW = (): By => ({ device: 'Pouchful', at: new Date().toISOString() });

async function recordsThere(tx: Tx, household: string, reader: RowReader): Promise<KeptRecord[]> {
  const rows = await tx
    .selectFrom('records')
    .selectAll()
    .where('household', '=', household)
    .where('body', 'is not', null)
    .orderBy('place')
    .execute();
  return rows.map((row) => reader.record(row));
}

async function readAll(tx: Tx, household: string, reader: RowReader): Promise<Household> {
  const records = await recordsThere(tx, household, reader);
  const of = (kind: Kind) => records.flatMap((r) => (r.kind === kind && r.body !== null ? [r.body] : []));
  return Object.fromEntries(KINDS.map((kind) => [kind, of(kind)])) as unknown as Household;
}

async function addPours(
  session: Session,
  id: string,
  { pours, stock }: PourEntry,
  writeId: string | undefined,
): Promise<Written> {
  const { body, version } = await recordOf(session, 'batches', id);
  if (body === null)
    throw new StoreError(
      'missing',
      '/id',
      words().household.refusal.notThere(words().household.kinds.batches, id),
    );
  const batch = body as Batch;
  const all = [...batch.pours];
  for (const pour of pours) if (!all.some((there) => samePour(there, pour))) all.push(pour);
  if (all.length > batch.pours.length && batch.finishedAt !== undefined)
    throw new StoreError('finished', '', words().household.refusal.finishedBatch);
  if (all.length > MOST_POURS)
    throw new StoreError('too many', '/pours', words().household.refusal.mostPours(MOST_POURS));
  const next = all.length > batch.pours.length ? { ...batch, pours: all, ...(stock && { stock }) } : batch;
  return writeRecord(session, {
    kind: 'batches',
    id,
    body: next,
    basedOn: version,
    ...(writeId !== undefined && { writeId }),
  });
}

const samePour = (a: Pour, b: Pour) => a.food === b.food && a.grams === b.grams && a.at === b.at;
