/**
 * The critical path method: tasks with lengths and what each must wait for; the earliest and the latest day on which
 * each can begin. Source: Kelley and Walker 1959, "Critical-path planning and scheduling", Proceedings of the Eastern
 * Joint Computer Conference, from p. 160.
 *
 * Days are whole numbers. A task of n days that begins on day d ends on day d + n, and what waits for it may begin on
 * that day. A task of no days begins and ends on the same day.
 */

export interface Task {
  readonly id: string;
  /** Whole days, 0 or more. */
  readonly days: number;
  /** Ids of the tasks that must end before it begins. */
  readonly after: readonly string[];
  /** The day on which it began; it does not move any more. */
  readonly fixed?: number;
  /** The day on which it is set down elsewhere: it begins then, and nothing here moves it. */
  readonly appointed?: number;
  /** Does not begin before this day, whatever it waits for. */
  readonly notBefore?: number;
}

/** Begin of each task by id. */
export type Starts = ReadonlyMap<string, number>;

/** A task that cannot give way, and the day on which it would have to begin. */
export interface Blocked {
  readonly blocked: Task;
  readonly needed: number;
}

export class Network {
  /** Every task after all that it waits for. */
  readonly order: readonly Task[];
  readonly #byId: ReadonlyMap<string, Task>;
  readonly #followers: ReadonlyMap<string, readonly Task[]>;

  /** @throws RangeError where an id comes twice or is unknown, where tasks wait for each other, or a length is wrong */
  constructor(tasks: readonly Task[]) {
    this.#byId = new Map(tasks.map((t) => [t.id, t]));
    if (this.#byId.size < tasks.length)
      throw new RangeError('steps: two of them have the same id; rename one');
    for (const t of tasks) check(t, this.#byId);
    this.order = inOrder(tasks);
    this.#followers = new Map(tasks.map((t) => [t.id, tasks.filter((f) => f.after.includes(t.id))]));
  }

  /** The task of that id. @throws RangeError where there is none */
  task(id: string): Task {
    const task = this.#byId.get(id);
    if (!task)
      throw new RangeError(
        `step: "${id}" is none of the plan; its steps are ${[...this.#byId.keys()].join(', ')}`,
      );
    return task;
  }

  /** Forward pass: nothing begins before `from` but what has begun already or is set down elsewhere. */
  earliest(from: number): Starts {
    const starts = new Map<string, number>();
    for (const t of this.order)
      starts.set(t.id, t.fixed ?? t.appointed ?? Math.max(firstDay(t, from), this.#ready(t, starts)));
    return starts;
  }

  /** Backward pass: the latest begin of each task with which everything ends by `until`. */
  latest(until: number): Starts {
    const starts = new Map<string, number>();
    for (const t of this.order.toReversed()) starts.set(t.id, this.#due(t, starts, until) - t.days);
    return starts;
  }

  /** Day on which the last task ends. */
  end(starts: Starts): number {
    return Math.max(...this.order.map((t) => starts.get(t.id)! + t.days));
  }

  /** A longest chain up to the task that ends last: each of its tasks begins on the day on which the one before ends. */
  criticalChain(earliest: Starts): Task[] {
    const end = this.end(earliest);
    const endOf = (t: Task) => earliest.get(t.id)! + t.days;
    const chain: Task[] = [];
    // Of several that end on the last day, one that nothing waits for.
    let at = this.order.findLast((t) => endOf(t) === end);
    while (at) {
      chain.unshift(at);
      const begin: number = earliest.get(at.id)!;
      const before: readonly string[] = at.after;
      at = this.order.findLast((t) => before.includes(t.id) && endOf(t) === begin);
    }
    return chain;
  }

  /**
   * Puts one task on another day. What waits for it begins later where it must; what it waits for begins earlier where
   * it must; all else stays.
   * @param starts a schedule in which nothing begins too early @param floor first day on which anything can begin
   */
  shifted(starts: Starts, id: string, to: number, floor: number): Starts | Blocked {
    const moved = new Map(starts);
    const self = this.task(id);
    if (stays(self) || to < firstDay(self, floor)) return { blocked: self, needed: to };
    moved.set(id, to);
    for (const t of this.order) {
      if (t.id === id || stays(t)) continue;
      if (!this.#waitsFor(t, id)) continue;
      moved.set(t.id, Math.max(moved.get(t.id)!, this.#ready(t, moved)));
    }
    for (const t of this.order.toReversed()) {
      if (!this.#waitsFor(self, t.id)) continue;
      const due = this.#due(t, moved, Number.POSITIVE_INFINITY) - t.days;
      if (due >= moved.get(t.id)!) continue;
      if (stays(t) || due < firstDay(t, floor)) return { blocked: t, needed: due };
      moved.set(t.id, due);
    }
    return moved;
  }

  /** First day on which all that a task waits for has ended. */
  #ready(t: Task, starts: Starts): number {
    return Math.max(Number.NEGATIVE_INFINITY, ...t.after.map((id) => starts.get(id)! + this.task(id).days));
  }

  /** Last day on which a task may end. A follower that began too early is past mending and sets no limit. */
  #due(t: Task, starts: Starts, until: number): number {
    const followers = this.#followers.get(t.id)!.filter((f) => f.fixed === undefined);
    return Math.min(until, ...followers.map((f) => starts.get(f.id)!));
  }

  /** Whether a task waits for another, straight or through others. */
  #waitsFor(t: Task, id: string): boolean {
    return t.after.some((before) => before === id || this.#waitsFor(this.task(before), id));
  }
}

const stays = (t: Task) => t.fixed !== undefined || t.appointed !== undefined;
const firstDay = (t: Task, floor: number) => Math.max(floor, t.notBefore ?? Number.NEGATIVE_INFINITY);

function check(t: Task, byId: ReadonlyMap<string, Task>): void {
  if (!Number.isInteger(t.days) || t.days < 0)
    throw new RangeError(`days of "${t.id}": ${t.days} is no whole number of days from 0 up; give one`);
  for (const id of t.after) {
    const before = byId.get(id);
    if (!before) throw new RangeError(`after of "${t.id}": there is no step "${id}"; add it or leave it out`);
    if (t.fixed !== undefined && before.fixed === undefined)
      throw new RangeError(`"${t.id}" has begun, but "${id}" before it has not; mark that as begun too`);
  }
}

function inOrder(tasks: readonly Task[]): Task[] {
  const order: Task[] = [];
  const placed = new Set<string>();
  while (order.length < tasks.length) {
    const next = tasks.filter((t) => !placed.has(t.id) && t.after.every((id) => placed.has(id)));
    if (next.length === 0) {
      const stuck = tasks.filter((t) => !placed.has(t.id)).map((t) => t.id);
      throw new RangeError(`steps: ${stuck.join(', ')} wait for each other in a ring; break it somewhere`);
    }
    for (const t of next) placed.add(t.id);
    order.push(...next);
  }
  return order;
}
