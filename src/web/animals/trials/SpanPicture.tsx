/** How often an animal eats a food: the 95 % span on a line from never to always, and where it most likely lies. */
import type { Verdict } from '../../../care/trials/verdict.ts';
import { words } from '../../../words/words.ts';
import { inPercent } from './verdict-words.ts';

const WIDTH = 100;
const HEIGHT = 14;

export function SpanPicture({ verdict: { span, mean } }: { verdict: Verdict }) {
  const t = words().trials.verdict;
  const x = (part: number) => part * WIDTH;
  const [low, high] = inPercent(span);
  const [from, to] = inPercent(mean);
  return (
    <figure className="trial-span">
      <svg
        viewBox={`-1 0 ${WIDTH + 2} ${HEIGHT}`}
        role="img"
        aria-label={t.picture(low, high, from, to)}
        preserveAspectRatio="none"
      >
        <rect className="span-rail" x={0} y={6} width={WIDTH} height={2} />
        <rect className="span-likely" x={x(span[0])} y={3} width={x(span[1] - span[0])} height={8} />
        <rect
          className="span-mean"
          x={x(mean[0]) - 0.6}
          y={1}
          width={Math.max(1.2, x(mean[1] - mean[0]) + 1.2)}
          height={12}
        />
        <line className="span-half" x1={50} x2={50} y1={0} y2={HEIGHT} />
      </svg>
      <figcaption aria-hidden="true">
        <span>{t.never}</span>
        <span>{t.half}</span>
        <span>{t.always}</span>
      </figcaption>
    </figure>
  );
}
