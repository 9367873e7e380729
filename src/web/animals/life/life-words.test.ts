import { describe, expect, test } from 'vitest';
import { batch, demo, house } from '../../../../test/kitchen/calendar-house.ts';
import type { FoodChange } from '../../../household/reckon/care/fed-batches.ts';
import type { LifeEvent } from '../../../household/reckon/care/lifeline.ts';
import { aroundWords, eventWords, quietWords, spanWords, type Told } from './life-words.ts';

const told: Told = { animal: 'Bramble', nameOf: (food) => food.toUpperCase() };
const ON = '2026-03-06';
const event = (what: LifeEvent['what'], on = ON): LifeEvent => ({ id: `${what.is} ${on}`, on, what });
const batchEvent = (change: FoodChange, assumed = false) =>
  event({ is: 'batch', fed: { batch: batch('a', ON), from: ON, assumed, change } });
const note = (kind: 'seen' | 'vet', on = ON) =>
  event({ is: 'note', note: { id: 'n', animalId: 'a', on, kind, text: 'Sleepy.' } }, on);

describe('the words of a life', () => {
  test('say what changed in its food', () => {
    const name = house().mixes[0]!.name;
    expect(eventWords(batchEvent({ kind: 'mix', added: ['Oats'], gone: ['Millet', 'Hemp'] }), told)).toBe(
      `Change to ${name}. New in it: Oats. No longer in it: Millet and Hemp.`,
    );
    expect(eventWords(batchEvent({ kind: 'same', added: [], gone: [] }, true), told)).toContain(
      'nobody noted what was fed',
    );
    const many = Array.from({ length: 9 }, (_, i) => `Food ${i}`);
    expect(eventWords(batchEvent({ kind: 'foods', added: many, gone: [] }), told)).toContain(
      'Food 5 and 3 more.',
    );
  });

  test('say what was seen of a new food, what was noted, and what it is in', () => {
    expect(
      eventWords(
        event({ is: 'offered', name: 'Chickpea', offering: { on: ON, seen: 'upset', note: 'Loose.' } }),
        told,
      ),
    ).toBe('Chickpea was offered, and the animal did not do well on it. Loose.');
    expect(eventWords(note('seen'), told)).toBe('Seen: Sleepy.');
    expect(eventWords(note('vet'), told)).toBe('From the vet: Sleepy.');
    const condition = { what: 'teeth', since: ON, vet: true, note: 'too long' } as const;
    expect(eventWords(event({ is: 'condition', condition, ends: false }), told)).toBe(
      'From here on: trouble with its teeth (too long). A vet said so.',
    );
    expect(eventWords(event({ is: 'condition', condition, ends: true }), told)).toBe(
      'Over: trouble with its teeth (too long).',
    );
    expect(spanWords({ id: 'c', lane: 'condition', from: ON, what: { is: 'condition', condition } })).toBe(
      'trouble with its teeth (too long)',
    );
  });

  test('say what was weighed and left on a day; what nobody looked into is not nothing', () => {
    const at = `${ON}T20:00:00Z`;
    const weighings = [
      { id: 'a', day: ON, at, grams: 142, unlikely: false },
      { id: 'b', day: ON, at, grams: 412, unlikely: true },
    ];
    const left = { on: ON, grams: 0, offered: 12, part: 0, atLeast: true, mostly: ['oats'] };
    expect(quietWords({ day: ON, events: [], weighings, left }, told)).toEqual([
      'Weighed: 142 g.',
      '412 g looks unlikely and does not count.',
      '0 g or more left of 12 g; hoards were not looked at.',
      'Mostly left: OATS.',
    ]);
    expect(
      quietWords({ day: ON, events: [], weighings: [], left: { ...left, atLeast: false, mostly: [] } }, told),
    ).toEqual(['0 g left of 12 g.']);
  });

  test('say what else happened round a day, and how far off', () => {
    const around = {
      weight: { before: 142, at: 140, after: 134 },
      left: { before: 0.05, after: 0.3 },
      events: [note('seen', '2026-03-05'), note('vet'), note('seen', '2026-03-09')],
    };
    expect(aroundWords(around, ON, told)).toEqual([
      'Trend of the weight: 142 g, then 140 g on the day, then 134 g.',
      'Left over: 5 % a night before, 30 % from then on.',
      '1 day before: Seen: Sleepy.',
      'The same day: From the vet: Sleepy.',
      '3 days after: Seen: Sleepy.',
    ]);
    expect(aroundWords({ events: [] }, ON, told)).toEqual([
      'The weight around it is not known.',
      'Nothing else is noted.',
    ]);
    expect(demo.animals[0]!.name).toBe(told.animal);
  });
});
