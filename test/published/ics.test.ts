/**
 * The calendar file against the standard, RFC 5545 (Internet Calendaring and Scheduling Core Object Specification,
 * September 2009), whose sections are named, and against ical.js, a reader that others have written.
 */
import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, test, vi } from 'vitest';
import {
  asIcs,
  clean,
  type DayEntry,
  dryingEntries,
  planAsIcs,
  planEntries,
  type TimedEntry,
  uidOf,
} from '../../src/kitchen/calendar/icalendar.ts';
import type { KitchenInput } from '../../src/kitchen/calendar/kitchen-plan.ts';
import { moved } from '../../src/kitchen/calendar/move-step.ts';
import { planKitchen } from '../../src/kitchen/calendar/plan-kitchen.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import { withRandomIds } from '../../src/web/shared/random-ids.ts';
import { wordsIn } from '../../src/words/languages.ts';
import { PLAIN_MANNER } from '../../src/words/manner.ts';
import { speak } from '../../src/words/words.ts';

const kitchen: KitchenInput = {
  id: 'plan-4',
  name: 'batch 4',
  supplies: [
    {
      id: 'dry-goods',
      route: 'freeze',
      goods: [
        { food: 'oats', name: 'oats, rolled; "fine"', lot: 'L\\7' },
        { food: 'millet', name: 'Hirse für Zwerghamster 🐹 aus der Mühle am Großen Bach' },
      ],
    },
    { id: 'fresh-goods', route: 'dry', goods: [{ food: 'carrot', name: 'carrot \\7' }] },
  ],
};
const stamp = '2026-02-01T08:30:00Z';
const plan = planKitchen(kitchen, { from: '2026-02-01' });
const checks = dryingEntries({ id: 'run-9', name: 'carrot' }, [
  '2026-02-02T11:00:00Z',
  '2026-02-02T13:00:00.000Z',
]);
const file = planAsIcs(plan, { stamp, reminders: true }, checks);

const octets = (text: string) => new TextEncoder().encode(text).length;
/** Content lines, unfolded: 3.1. */
const unfolded = (text: string) => text.replace(/\r\n[ \t]/g, '').split('\r\n');
const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((c) => new ICAL.Event(c));
/** Components of one kind as lists of their content lines, those of components inside left out. */
function components(text: string, name: string): string[][] {
  const found: string[][] = [];
  const open: { name: string; lines: string[] }[] = [];
  for (const line of unfolded(text)) {
    if (line.startsWith('BEGIN:')) open.push({ name: line.slice(6), lines: [] });
    else if (line.startsWith('END:')) {
      const done = open.pop()!;
      expect(line.slice(4)).toBe(done.name);
      if (done.name === name) found.push(done.lines);
    } else open.at(-1)?.lines.push(line);
  }
  expect(open).toEqual([]);
  return found;
}
const named = (lines: readonly string[], name: string) => lines.filter((l) => l.split(/[:;]/)[0] === name);

function keepsTheForm(text: string): void {
  // 3.1: lines end with CRLF, and have at most 75 octets without it.
  expect(text.endsWith('\r\n')).toBe(true);
  expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  for (const line of text.split('\r\n')) expect(octets(line)).toBeLessThanOrEqual(75);
  // 3.1.4: UTF-8; a fold through the middle of a letter would leave half a one.
  expect(new TextDecoder('utf-8', { fatal: true }).decode(new TextEncoder().encode(text))).toBe(text);
  for (const line of text.split('\r\n')) expect(line).not.toMatch(/\p{Cs}/u);
  // 3.1: no control characters but the tab.
  expect(text.replace(/[\r\n\t]/g, '')).not.toMatch(/\p{Cc}/u);
}

describe('the form that RFC 5545 asks for', () => {
  test('3.1, 3.1.4: CRLF, 75 octets, UTF-8', () => {
    keepsTheForm(file);
    expect(file).toMatch(/\r\n /);
  });

  test('3.4, 3.6, 3.7.3, 3.7.4: one calendar, with version and product', () => {
    expect(file.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
    expect(file.endsWith('\r\nEND:VCALENDAR\r\n')).toBe(true);
    const [calendar, ...others] = components(file, 'VCALENDAR');
    expect(others).toEqual([]);
    expect(named(calendar!, 'VERSION')).toEqual(['VERSION:2.0']);
    expect(named(calendar!, 'PRODID')).toEqual(['PRODID:-//Pouchful//Calendar//EN']);
  });

  test('3.6.1: each event has one UID, DTSTAMP and DTSTART, and no UID comes twice (3.8.4.7)', () => {
    const events = components(file, 'VEVENT');
    expect(events).toHaveLength(plan.steps.length + checks.length);
    for (const lines of events) {
      for (const name of ['UID', 'DTSTAMP', 'DTSTART', 'DTEND', 'SUMMARY', 'DESCRIPTION', 'SEQUENCE'])
        expect([name, named(lines, name).length]).toEqual([name, 1]);
      // 3.8.7.2: in UTC.
      expect(named(lines, 'DTSTAMP')).toEqual(['DTSTAMP:20260201T083000Z']);
    }
    const uids = events.map((lines) => named(lines, 'UID')[0]);
    expect(new Set(uids).size).toBe(events.length);
    for (const uid of uids) expect(uid).toMatch(/^UID:[!-~]+@pouchful$/);
  });

  test('3.3.4, 3.6.1, 3.8.2.2: whole days are dates, and the end is the first day after', () => {
    const weigh = components(file, 'VEVENT').find((l) => l.includes('SUMMARY:Weigh out: batch 4'))!;
    expect(named(weigh, 'DTSTART')).toEqual(['DTSTART;VALUE=DATE:20260217']);
    expect(named(weigh, 'DTEND')).toEqual(['DTEND;VALUE=DATE:20260218']);
    expect(named(weigh, 'TRANSP')).toEqual(['TRANSP:TRANSPARENT']);
  });

  test('3.3.5: times are in UTC', () => {
    const check = components(file, 'VEVENT').filter((l) => l.includes('SUMMARY:Turn and check: carrot'));
    expect(check.map((l) => [...named(l, 'DTSTART'), ...named(l, 'DTEND')])).toEqual([
      ['DTSTART:20260202T110000Z', 'DTEND:20260202T111500Z'],
      ['DTSTART:20260202T130000Z', 'DTEND:20260202T131500Z'],
    ]);
  });

  test('3.6.6, 3.8.6.3: a reminder has action, trigger and text; by day at nine, by time at the time', () => {
    const alarms = components(file, 'VALARM');
    expect(alarms).toHaveLength(plan.steps.length + checks.length);
    for (const lines of alarms) {
      expect(named(lines, 'ACTION')).toEqual(['ACTION:DISPLAY']);
      expect(named(lines, 'DESCRIPTION')).toHaveLength(1);
    }
    const triggers = alarms.map((lines) => named(lines, 'TRIGGER'));
    expect(triggers.slice(0, plan.steps.length).flat()).toEqual(
      plan.steps.map(() => 'TRIGGER;RELATED=START:PT9H'),
    );
    for (const [trigger] of triggers.slice(plan.steps.length))
      expect(ICAL.Duration.fromString(trigger!.split(':')[1]!).toSeconds()).toBe(0);
    expect(planAsIcs(plan, { stamp })).not.toContain('VALARM');
  });

  test('3.3.11: comma, semicolon, backslash and line break are escaped, quotation marks and colons are not', () => {
    const [line] = unfolded(file).filter((l) => l.startsWith('SUMMARY:Buy: oats'));
    expect(line).toContain('SUMMARY:Buy: oats\\, rolled\\; "fine"\\, Hirse für');
    expect(unfolded(file).some((l) => l.includes('DESCRIPTION:For batch 4: carrot \\\\7.\\n'))).toBe(true);
  });
});

describe('what is told', () => {
  const bought: KitchenInput = {
    ...kitchen,
    supplies: [
      {
        id: 'dry-goods',
        route: 'freeze',
        boughtOn: '2026-01-28',
        progress: [{ from: '2026-01-28', to: '2026-02-01' }, { from: '2026-02-01' }],
        goods: [
          { food: 'oats', name: 'Oats', lot: 'lot-4711' },
          { food: 'oats', name: 'Oats', lot: 'lot-4712' },
        ],
      },
      {
        id: 'other-goods',
        route: 'ready',
        boughtOn: '2026-01-28',
        goods: [{ food: 'grubs', name: 'Grubs', lot: 'lot-4713' }],
      },
    ],
  };
  const later = planKitchen(bought, { from: '2026-02-01' });
  const calendar = planAsIcs(later, { stamp });

  test('steps that go on or are to come, none that is done', () => {
    expect(later.steps.filter((s) => s.state === 'done').map((s) => s.kind)).toEqual([
      'buy',
      'buy',
      'freeze',
    ]);
    expect(read(calendar).map((e) => e.summary)).toEqual([
      'Thaw (1 of 2): Oats',
      'Freeze (2 of 2): Oats',
      'Thaw (2 of 2): Oats',
      'Weigh out: batch 4',
      'Change over: batch 4',
    ]);
  });

  test('foods by their names, no id of a pack', () => {
    expect(unfolded(calendar).join('\n')).not.toContain('lot-47');
    const weigh = read(calendar).find((e) => e.summary === 'Weigh out: batch 4')!;
    expect(weigh.description).toMatch(/^For batch 4: Oats, Grubs\.\n/);
  });

  test('in the language of the keeper', async () => {
    const german = await wordsIn({ ...PLAIN_MANNER, language: 'de' });
    speak(() => german);
    try {
      const told = planAsIcs(later, { stamp });
      expect(read(told).map((e) => e.summary)).toContain('Abwiegen: batch 4');
      expect(told).toContain('PRODID:-//Pouchful//Calendar//DE');
      keepsTheForm(told);
      // The same entries, whatever the language: a file in another changes them and adds none.
      expect(read(told).map((e) => e.uid)).toEqual(read(calendar).map((e) => e.uid));
    } finally {
      speak(() => undefined);
    }
  });
});

describe('as another program reads it', () => {
  test('the entries have the same names, days, texts and categories', () => {
    const entries = planEntries(plan);
    const events = read(planAsIcs(plan, { stamp }));
    expect(
      events.map((e) => ({
        uid: e.uid,
        title: e.summary,
        text: e.description,
        from: e.startDate.toString(),
        to: e.endDate.toString(),
        categories: e.component.getAllProperties('categories').flatMap((p) => p.getValues()),
      })),
    ).toEqual(entries);
    expect(events.every((e) => e.startDate.isDate && e.endDate.isDate)).toBe(true);
    for (const s of plan.steps.filter((p) => p.days > 0)) {
      const e = events.find((v) => v.uid === uidOf('plan-4', s.id))!;
      expect([e.startDate.toString(), e.endDate.toString()]).toEqual([s.start, s.end]);
    }
  });

  test('a later file of a moved plan changes its entries and adds none', () => {
    const answer = moved(plan, 'weigh', '2026-02-20');
    if (!answer.ok) throw new Error(answer.sentence);
    const before = read(planAsIcs(plan, { stamp }));
    const after = read(planAsIcs(answer.plan, { stamp: '2026-02-03T20:00:00Z' }));
    expect(after.map((e) => e.uid)).toEqual(before.map((e) => e.uid));
    expect(after.map((e) => Number(e.sequence) > Number(before[0]!.sequence))).not.toContain(false);
    const weigh = after.find((e) => e.uid === uidOf('plan-4', 'weigh'))!;
    expect(weigh.startDate.toString()).toBe('2026-02-20');
  });

  test('the same plan at the same moment gives the same file', () => {
    expect(planAsIcs(planKitchen(kitchen, { from: '2026-02-01' }), { stamp, reminders: true }, checks)).toBe(
      file,
    );
  });

  const odd = fc
    .array(
      fc.oneof(
        fc.constantFrom(
          ',',
          ';',
          '\\',
          '\n',
          '\r\n',
          '\r',
          '"',
          ':',
          ' ',
          '\t',
          '\\n',
          '\\N',
          'END:VEVENT',
          '\u2028',
        ),
        fc.constantFrom('🐹', '👨‍👩‍👧', 'ß', 'é', '漢字', '\u0000', '\u007f', '\ud83d', '\udc39'),
        fc.string({ unit: 'binary', maxLength: 40 }),
        fc.constantFrom('a long line without any break '.repeat(6), 'ü'.repeat(80), '🐹'.repeat(50)),
      ),
      { maxLength: 12 },
    )
    .map((parts) => parts.join(''));
  // An empty text and no text are the same to readers.
  const text = odd.map((t) => `x${t}x`);
  const dayEntry = fc.record({
    plan: odd,
    step: odd,
    title: text,
    text,
    day: fc.nat(40_000),
    days: fc.integer({ min: 1, max: 60 }),
  });

  test('odd texts come back as they were, whatever is in them', () => {
    fc.assert(
      fc.property(fc.array(dayEntry, { maxLength: 4 }), fc.boolean(), (list, reminders) => {
        const entries = list.map(
          (e, i): DayEntry => ({
            uid: uidOf(e.plan, `${i}${e.step}`),
            title: e.title,
            text: e.text,
            categories: [e.title, 'Drying'],
            from: plusDays('1970-01-01', e.day),
            to: plusDays('1970-01-01', e.day + e.days),
          }),
        );
        const made = asIcs(entries, { stamp, reminders });
        keepsTheForm(made);
        const events = read(made);
        expect(events).toHaveLength(entries.length);
        entries.forEach((entry, i) => {
          const e = events[i]!;
          expect(e.uid).toBe(entry.uid);
          expect(e.summary).toBe(clean(entry.title));
          expect(e.description).toBe(clean(entry.text));
          expect(e.startDate.toString()).toBe(entry.from);
          expect(e.endDate.toString()).toBe(entry.to);
          expect(e.component.getAllProperties('categories').flatMap((p) => p.getValues())).toEqual([
            clean(entry.title),
            'Drying',
          ]);
        });
      }),
    );
  });

  test('names are different for different plans and steps', () => {
    fc.assert(
      fc.property(odd, odd, odd, odd, (a, b, c, d) => {
        const same = clean(a) === clean(c) && clean(b) === clean(d);
        expect(uidOf(a, b) === uidOf(c, d)).toBe(same);
      }),
    );
    expect(uidOf('a/b', 'c')).not.toBe(uidOf('a', 'b/c'));
  });

  test('all line breaks become one kind, control characters go, and half a letter is marked', () => {
    expect(clean('a\r\nb\rc\nd\te\u0000\u007ff\ud83dg')).toBe('a\nb\nc\nd\tef\ufffdg');
  });

  test('plain text is left as it is', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (t) => {
        expect(clean(t)).toBe(t);
      }),
    );
  });
});

test('times are read to the second, wherever the file is made', () => {
  fc.assert(
    fc.property(
      fc.date({ min: new Date('1980-01-01'), max: new Date('2099-12-31'), noInvalidDate: true }),
      (date) => {
        const at = date.toISOString();
        const entry: TimedEntry = {
          uid: 'a@pouchful',
          title: 't',
          text: 'x',
          categories: [],
          at,
          minutes: 15,
        };
        const [event] = read(asIcs([entry], { stamp: at }));
        const seconds = Math.floor(date.getTime() / 1000);
        expect(event!.startDate.toUnixTime()).toBe(seconds);
        expect(event!.endDate.toUnixTime()).toBe(seconds + 15 * 60);
      },
    ),
  );
});

describe('what is no entry', () => {
  const entry: DayEntry = {
    uid: 'a@pouchful',
    title: 'Freeze',
    text: '',
    categories: [],
    from: '2026-02-01',
    to: '2026-02-05',
  };
  test.each<[string, DayEntry | TimedEntry, string?]>([
    ['stamp: "2026-02-01" is no time', entry, '2026-02-01'],
    ['stamp: "2026-02-01T08:30:00" is no time', entry, '2026-02-01T08:30:00'],
    ['to of "Freeze": 2026-02-01 is not after 2026-02-01', { ...entry, to: '2026-02-01' }],
    ['from: "1 February" is no day', { ...entry, from: '1 February' }],
    ['at ("Check"): "noon" is no time', { ...entry, title: 'Check', at: 'noon', minutes: 15 }],
    ['minutes of "Check": 0 is not above 0', { ...entry, title: 'Check', at: stamp, minutes: 0 }],
  ])('%s', (message, wrong, when = stamp) => {
    expect(() => asIcs([wrong], { stamp: when })).toThrow(message);
  });
});

test('where the page lends no random ids, the file is the same, and none is left behind', () => {
  const { getRandomValues } = crypto;
  vi.stubGlobal('crypto', { getRandomValues: getRandomValues.bind(crypto) });
  try {
    expect(withRandomIds(() => planAsIcs(plan, { stamp, reminders: true }, checks))).toBe(file);
    expect('randomUUID' in crypto).toBe(false);
  } finally {
    vi.unstubAllGlobals();
  }
});
