/** What is done and what comes. */
import { words } from '../../words/words.ts';
import { gramWords } from '../shared/words/gram-words.ts';
import type { FoodLine } from './view-model.ts';
import './pour-list.css';

const SHAPES = { poured: '✓', 'left out': '–', now: '▸', 'to come': '○' } as const;

export function PourList({ lines }: { lines: readonly FoodLine[] }) {
  const t = words().weighing.list;
  const done = lines.filter((l) => l.state === 'poured' || l.state === 'left out').length;
  return (
    <section className="weigh-list" aria-label={t.region}>
      <h2>
        {t.heading} <small>{t.done(done, lines.length)}</small>
      </h2>
      <ol>
        {lines.map((line) => (
          <li key={line.food} data-food={line.food} data-state={line.state}>
            <span className="weigh-shape" aria-hidden="true">
              {SHAPES[line.state]}
            </span>
            <span>
              {line.name} <small>{t.state[line.state]}</small>
            </span>
            <span className="weigh-grams">
              {line.state === 'poured' || line.state === 'left out'
                ? gramWords(line.poured)
                : gramWords(line.target)}
              {line.planned !== (line.state === 'poured' ? line.poured : line.target) && (
                <small>{t.planned(line.planned)}</small>
              )}
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}
