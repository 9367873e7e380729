/** One caution in words: what, why, what to do, and where it comes from. */
import { words } from '../../words/words.ts';

interface CautionText {
  readonly severity: 'never' | 'limit' | 'prepare';
  readonly title: string;
  readonly reason: string;
  readonly way: string;
  readonly source: string;
  /** Most of it in the mix, percent. */
  readonly maxShare?: number;
}

export function CautionWords({ caution }: { caution: CautionText }) {
  const t = words().shared.caution;
  const { severity, title, reason, way, source, maxShare } = caution;
  return (
    <>
      <p>
        <strong>{maxShare === undefined ? t[severity](title) : t[`${severity}UpTo`](title, maxShare)}</strong>{' '}
        {reason} {way}
      </p>
      <p className="hint">{t.source(source)}</p>
    </>
  );
}
