/** Dust before a batch is weighed out, and what to mind before it is fed. */
import { HANDS_SOURCES } from '../../../care/figures/hands-sources.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import { words } from '../../../words/words.ts';
import './hands.css';

export function DustNote() {
  const t = words().hands;
  return (
    <div className="food-hands">
      <p>{t.dust.text}</p>
      <details>
        <summary>{t.why}</summary>
        <p className="hint">
          {t.dust.why} {t.source(HANDS_SOURCES.dust)}
        </p>
      </details>
    </div>
  );
}

export function FeedNote() {
  const t = words().hands;
  return (
    <p className="food-hands">
      {t.feed.pieces} {t.feed.water} <small>{t.source(sourceWords(HANDS_SOURCES.common))}</small>
    </p>
  );
}
