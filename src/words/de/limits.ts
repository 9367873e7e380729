import type { Limits } from '../en/limits.ts';
import type { Figures } from '../figures.ts';

export const limits = (f: Figures): Limits => ({
  heading: (many, whose) => (many ? `Grenzen: ${whose}` : `Eine Grenze: ${whose}`),
  youAsked: 'Das hast du so gewollt.',
  source: (source) => `Quelle der Grenze: ${source}`,
  noSource: 'keine Quelle angegeben',
  needsHave: (source, range) => `${source}; im Bedarf steht ${range}`,
  about: (many, animals) => {
    const who = animals.length > 0 ? f.list(animals) : 'das Tier';
    return many
      ? `Diese Grenzen sind für ${who} da. Wenn du weitergehst, werden sie deine eigenen Grenzen für diese Mischung: mit dem heutigen Datum vermerkt, über den Zutaten gezeigt und mit einem Druck zurückgesetzt.`
      : `Diese Grenze ist für ${who} da. Wenn du weitergehst, wird sie deine eigene Grenze für diese Mischung: mit dem heutigen Datum vermerkt, über den Zutaten gezeigt und mit einem Druck zurückgesetzt.`;
  },
  keep: (many) => (many ? 'Grenzen lassen' : 'Grenze lassen'),
  makeOwn: (many) => (many ? 'Zu meinen Grenzen machen' : 'Zu meiner Grenze machen'),
  changed: 'Grenzen, die du geändert hast',
  setBack: 'Zurücksetzen',
  setBackOf: (limit) => `Zurücksetzen: ${limit}`,
  isBack: 'Die Grenze steht wieder wie im Bedarf.',
  otherNeeds: (animal, needs) =>
    `Der eigene Bedarf von ${animal} ist ${needs}; diese Mischung folgt einem anderen.`,
  follow: (animal) => `Dem Bedarf von ${animal} folgen`,
  fromMemory: 'Diese Mischung wurde mit einem Bedarf aus dem Gedächtnis gemacht und hält seine Regeln ein.',
  needs: 'der Bedarf',
  needsCalled: (needs) => `Bedarf „${needs}“`,
  needsOf: (animals) => `Bedarf von ${f.list(animals)}`,
  needsOfCalled: (animals, needs) => `Bedarf von ${f.list(animals)}, „${needs}“`,
  rule: 'Regel',
  range: (subject, range) => `${subject}, ${range}`,
  leftOut: (limit) => `${limit}: weggelassen.`,
  ownLeftOut: (limit, day) => `${limit}: am ${day} von dir weggelassen`,
  raised: (from, to) => `von ${f.number(from, 4)} auf ${to} angehoben`,
  lowered: (from, to) => `von ${f.number(from, 4)} auf ${to} gesenkt`,
  changedTo: (range) => `auf ${range} geändert`,
  own: (subject, ends, day) => `Grenze für ${subject} ${f.list(ends)}, von dir am ${day}`,
  amount: (value, unit) => (unit ? `${f.number(value, 4)} ${unit}` : f.number(value, 4)),
});
