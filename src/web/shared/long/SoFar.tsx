/** What is found so far of a long answer, with the way to stop there, and to go on. */
import { Button } from 'react-aria-components';
import type { Progress } from '../../../formulation/problem/progress.ts';
import { words } from '../../../words/words.ts';
import { doingWords } from './so-far-words.ts';
import './long.css';

interface Props {
  /** How far it is; undefined where nothing was told yet. */
  readonly soFar: Progress<unknown> | undefined;
  /** How good what is found is, in words. */
  readonly found?: string | undefined;
  /** What is to be said once it was stopped. */
  readonly stoppedAt: string;
  readonly stopped: boolean;
  stop(): void;
  goOn(): void;
}

export function SoFar({ soFar, found, stoppedAt, stopped, stop, goOn }: Props) {
  const t = words().long;
  if (!stopped && !soFar) return null;
  return (
    <div className="so-far">
      <div>
        {/* Steps are seen, not said: each of them would be read out. */}
        <p className="so-far-doing">{stopped ? stoppedAt : soFar && doingWords(soFar)}</p>
        {found && <p className="so-far-found">{found}</p>}
      </div>
      <Button className="button small" onPress={stopped ? goOn : stop}>
        {stopped ? t.goOn : t.stopHere}
      </Button>
    </div>
  );
}
