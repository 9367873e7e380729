import { words } from '../../../words/words.ts';
import { ApiError } from '../../store/api-error.ts';

/** Why a file is refused, with the fields. */
export function Refused({ error }: { error: ApiError | undefined }) {
  if (!error) return null;
  const faults = error.faults ?? [{ field: error.field ?? '', message: error.message }];
  const t = words().exchange;
  return (
    <div role="alert" className="field-error">
      <p>{error.isFinal ? t.refused : t.failed}</p>
      <ul>
        {faults.map(({ field, message }) => (
          <li key={`${field} ${message}`}>
            {field && <code>{field}</code>} {message}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What a failure is told as. */
export function asRefusal(error: unknown): ApiError {
  return error instanceof ApiError ? error : new ApiError(0, words().exchange.pageFailed);
}
