/** What changed in the last 90 days, and what the keeper saw. */
import { SEEN } from '../../../care/model.ts';
import type { VetChange, VetPage } from '../../../household/reckon/care/vet-page.ts';
import { words } from '../../../words/words.ts';
import { clipped } from './clipped.ts';

export function VetLists({ page: { changes, notes, today } }: { page: VetPage }) {
  const { vetPage: t, figures: f } = words();
  return (
    <>
      <section className="vet-changes">
        <h4>{t.changes.title}</h4>
        {changes.shown.length === 0 && <p>{t.changes.none}</p>}
        <ul>
          {changes.shown.map((change) => (
            <li key={JSON.stringify(change)}>
              <b>{f.day(change.on, today)}</b> {changeWords(change)}
            </li>
          ))}
          {changes.more > 0 && <li>{t.more(changes.more)}</li>}
        </ul>
      </section>
      <section className="vet-notes">
        <h4>{t.notes.title}</h4>
        {notes.shown.length === 0 && <p>{t.notes.none}</p>}
        <ul>
          {notes.shown.map(({ id, on, kind, text }) => (
            <li key={id}>
              <b>{f.day(on, today)}</b> {kind === 'vet' ? t.notes.vet(text) : text}
            </li>
          ))}
          {notes.more > 0 && <li>{t.more(notes.more)}</li>}
        </ul>
      </section>
    </>
  );
}

function changeWords(change: VetChange): string {
  const { vetPage, animals } = words();
  const t = vetPage.changes;
  switch (change.kind) {
    case 'batch': {
      const { kind, added, gone } = change.change;
      if (kind === 'first') return t.firstBatch(change.name);
      const [foods, out] = [few(added), few(gone)];
      if (foods.length > 0 && out.length > 0) return t.batchBoth(change.name, foods, out);
      if (foods.length > 0) return t.batchIn(change.name, foods);
      return out.length > 0 ? t.batchOut(change.name, out) : t.batch(change.name);
    }
    case 'beside':
      return change.names.length > 0 ? t.beside(few(change.names)) : t.besideNone;
    case 'pack':
      return change.opened ? t.packOpened(change.name) : t.packBought(change.name);
    case 'trial': {
      const results = SEEN.flatMap((what) => {
        const n = change.seen[what];
        return n > 0 ? [t.seen[what](n)] : [];
      });
      const verdict = change.verdict === 'upset' ? [] : [t.verdict[change.verdict]];
      return t.trial(clipped(change.name), [...results, ...verdict]);
    }
    case 'condition': {
      const name = animals.conditions.names[change.what];
      return change.over ? t.over(name) : t.begun(name);
    }
  }
}

/** Names that one line has room for. */
const NAMES = 3;

function few(all: readonly string[]): readonly string[] {
  const names = all.map(clipped);
  if (names.length <= NAMES) return names;
  return [...names.slice(0, NAMES), words().vetPage.changes.otherFoods(names.length - NAMES)];
}
