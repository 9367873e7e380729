/** One caution in words: what, why, what to do, and where it comes from. */
const SEVERITY = {
  never: 'Never feed',
  limit: 'Only a little',
  prepare: 'Prepare first',
} as const;

interface CautionText {
  readonly severity: keyof typeof SEVERITY;
  readonly title: string;
  readonly reason: string;
  readonly way: string;
  readonly source: string;
  /** Most of it in the mix, percent. */
  readonly maxShare?: number;
}

export function CautionWords({ caution }: { caution: CautionText }) {
  const { severity, title, reason, way, source, maxShare } = caution;
  return (
    <>
      <p>
        <strong>
          {SEVERITY[severity]}
          {maxShare !== undefined && `, at most ${maxShare} % of the mix`}: {title}.
        </strong>{' '}
        {reason} {way}
      </p>
      <p className="hint">Source: {source}</p>
    </>
  );
}
