/** Undo and redo: like a plain list with a finger on it, whatever is done in whatever order. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { historyKey, undoesTyping } from '../mix/history-keys.ts';
import { changed, NO_HISTORY, ONE_STEP_MS, type Remake, redone, type Turned, undone } from './history.ts';

interface Version {
  readonly n: number;
}
/** Nothing came from elsewhere: the version as it was. */
const whole: Remake<Version> = (_from, to) => to;

type Deed = { do: 'change'; step: string; wait: number } | { do: 'undo' } | { do: 'redo' };

const deed: fc.Arbitrary<Deed> = fc.oneof(
  fc.record({
    do: fc.constant('change' as const),
    step: fc.constantFrom('', 'move oats', 'move millet'),
    wait: fc.constantFrom(1, ONE_STEP_MS - 1, ONE_STEP_MS, 5000),
  }),
  fc.record({ do: fc.constant('undo' as const) }),
  fc.record({ do: fc.constant('redo' as const) }),
);

/** The naive model: every version in a list, the place of the present, and the step still open. */
class Naive {
  versions: Version[] = [{ n: 0 }];
  place = 0;
  open: { step: string; at: number } | undefined;

  change(version: Version, step: string, at: number) {
    const joins = step !== '' && this.open?.step === step && at - this.open.at < ONE_STEP_MS;
    this.versions.splice(joins ? this.place : ++this.place, Number.POSITIVE_INFINITY, version);
    this.open = { step, at };
  }
  turn(by: -1 | 1) {
    if (!this.versions[this.place + by]) return;
    this.place += by;
    this.open = undefined;
  }
}

function play(deeds: readonly Deed[]): { turned: Turned<Version>; naive: Naive } {
  const naive = new Naive();
  let turned: Turned<Version> = { present: naive.versions[0]!, history: NO_HISTORY };
  let at = 0;
  let n = 0;
  for (const d of deeds) {
    if (d.do === 'change') {
      at += d.wait;
      const version = { n: ++n };
      turned = {
        present: version,
        history: changed(turned.history, { before: turned.present, after: version }, d.step, at),
      };
      naive.change(version, d.step, at);
    } else {
      turned = (d.do === 'undo' ? undone : redone)(turned.history, turned.present, whole) ?? turned;
      naive.turn(d.do === 'undo' ? -1 : 1);
    }
    expect(turned.present).toBe(naive.versions[naive.place]);
    expect(turned.history.past?.length ?? 0).toBe(naive.place);
    expect(turned.history.future?.length ?? 0).toBe(naive.versions.length - 1 - naive.place);
  }
  return { turned, naive };
}

/** Turns until there is nothing more, and counts. */
function allTheWay(
  turn: typeof undone<Version>,
  from: Turned<Version>,
): { turned: Turned<Version>; turns: number } {
  let turned = from;
  let turns = 0;
  const once = () => turn(turned.history, turned.present, whole);
  for (let next = once(); next; next = once()) {
    turned = next;
    turns++;
  }
  return { turned, turns };
}

describe('a history', () => {
  test('equals a naive list after any changes, undos and redos', () => {
    fc.assert(fc.property(fc.array(deed, { maxLength: 60 }), (deeds) => void play(deeds)));
  });

  test('undoing all and redoing all comes back to the very same version', () => {
    fc.assert(
      fc.property(fc.array(deed, { maxLength: 60 }), (deeds) => {
        const { turned, naive } = play(deeds);
        const last = allTheWay(redone, turned).turned.present;
        const back = allTheWay(undone, turned).turned;
        expect(back.present).toBe(naive.versions[0]);
        const again = allTheWay(redone, back);
        expect(again.turned.present).toBe(last);
        expect(again.turned.present).toBe(naive.versions.at(-1));
      }),
    );
  });

  test('has no end: 10,000 steps are all undone', () => {
    const deeds = Array.from({ length: 10_000 }, (): Deed => ({ do: 'change', step: '', wait: 1 }));
    let turned: Turned<Version> = { present: { n: 0 }, history: NO_HISTORY };
    deeds.forEach((_, i) => {
      const after = { n: i + 1 };
      turned = { present: after, history: changed(turned.history, { before: turned.present, after }, '', i) };
    });
    const { turned: first, turns } = allTheWay(undone, turned);
    expect(turns).toBe(10_000);
    expect(first.present).toEqual({ n: 0 });
  });

  test('changes of one step made close together are one, and undo closes the step', () => {
    const [v0, v1, v2, v3] = [{ n: 0 }, { n: 1 }, { n: 2 }, { n: 3 }];
    const one = changed<Version>(NO_HISTORY, { before: v0, after: v1 }, 'move', 0);
    const two = changed(one, { before: v1, after: v2 }, 'move', ONE_STEP_MS - 1);
    const late = changed(two, { before: v2, after: v3 }, 'move', 2 * ONE_STEP_MS);
    expect([one, two, late].map((h) => h.past?.length)).toEqual([1, 1, 2]);
    const back = undone(two, v2, whole)!;
    expect(back.present).toBe(v0);
    expect(changed(back.history, { before: v0, after: v1 }, 'move', ONE_STEP_MS).past?.length).toBe(1);
  });

  test('a change drops what was taken back', () => {
    const [v0, v1, v2] = [{ n: 0 }, { n: 1 }, { n: 2 }];
    const back = undone(changed<Version>(NO_HISTORY, { before: v0, after: v1 }, '', 0), v1, whole)!;
    expect(back.history.future?.after).toBe(v1);
    const next = changed(back.history, { before: v0, after: v2 }, '', 1);
    expect(redone(next, v2, whole)).toBeUndefined();
  });

  test('a step is taken back and made again by itself: what came from elsewhere stays', () => {
    interface Two {
      readonly mine: number;
      readonly theirs: number;
    }
    const remake: Remake<Two> = (from, to, now) => ({
      mine: from.mine === to.mine ? now.mine : to.mine,
      theirs: from.theirs === to.theirs ? now.theirs : to.theirs,
    });
    const [v0, v1] = [
      { mine: 0, theirs: 0 },
      { mine: 1, theirs: 0 },
    ];
    const one = changed<Two>(NO_HISTORY, { before: v0, after: v1 }, 'move', 0);
    // Another device's change comes in, and the same slider goes on at once.
    const merged = { mine: 1, theirs: 7 };
    const two = changed(one, { before: merged, after: { mine: 2, theirs: 7 } }, 'move', 1);
    expect(two.past?.length).toBe(2);
    const back = undone(two, { mine: 2, theirs: 8 }, remake)!;
    expect(back.present).toEqual({ mine: 1, theirs: 8 });
    const first = undone(back.history, back.present, remake)!;
    expect(first.present).toEqual({ mine: 0, theirs: 8 });
    expect(redone(first.history, first.present, remake)?.present).toEqual({ mine: 1, theirs: 8 });
  });
});

describe('keys', () => {
  const press = (key: string, held: string) => ({
    key,
    ctrlKey: held.includes('ctrl'),
    metaKey: held.includes('cmd'),
    shiftKey: held.includes('shift'),
    altKey: held.includes('alt'),
  });

  test.each([
    ['z', 'ctrl', 'undo'],
    ['z', 'cmd', 'undo'],
    ['Z', 'ctrl shift', 'redo'],
    ['z', 'cmd shift', 'redo'],
    ['y', 'ctrl', 'redo'],
    ['y', 'cmd', undefined],
    ['y', 'ctrl shift', undefined],
    ['z', '', undefined],
    ['z', 'ctrl alt', undefined],
    ['z', 'ctrl cmd', undefined],
    ['x', 'ctrl', undefined],
  ])('%s with "%s" is %s', (key, held, meant) => {
    expect(historyKey(press(key, held))).toBe(meant);
  });

  test('text fields keep their own undo; sliders and buttons have none', () => {
    expect(undoesTyping({ tagName: 'INPUT', type: 'text' })).toBe(true);
    expect(undoesTyping({ tagName: 'INPUT', type: 'search' })).toBe(true);
    expect(undoesTyping({ tagName: 'TEXTAREA' })).toBe(true);
    expect(undoesTyping({ tagName: 'DIV', isContentEditable: true })).toBe(true);
    expect(undoesTyping({ tagName: 'INPUT', type: 'range' })).toBe(false);
    expect(undoesTyping({ tagName: 'BUTTON' })).toBe(false);
    expect(undoesTyping({ tagName: 'BODY' })).toBe(false);
  });
});

test('a step that changes nothing any more is passed over, and one press changes something', () => {
  const versions = [{ n: 0 }, { n: 1 }, { n: 2 }] as const;
  let history = changed<Version>(NO_HISTORY, { before: versions[0], after: versions[1] }, '', 0);
  history = changed(history, { before: versions[1], after: versions[2] }, '', 9000);
  // What the last step did was taken back elsewhere meanwhile.
  const upon: Remake<Version> = (from, to, now) => (from.n === 2 ? now : to);
  const turned = undone(history, versions[1], upon);
  expect(turned?.present).toEqual(versions[0]);
  expect(undone(turned?.history ?? NO_HISTORY, versions[0], upon)).toBeUndefined();
  expect(undone(history, versions[1], (_from, _to, now) => now)).toBeUndefined();
});
