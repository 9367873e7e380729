import { FileRefused } from '../send-file.ts';

/** Why a file is refused, with the fields. */
export function Refused({ error }: { error: FileRefused | undefined }) {
  if (!error) return null;
  const faults = error.faults.length > 0 ? error.faults : [{ field: '', message: error.message }];
  return (
    <div role="alert" className="field-error">
      <p>The file is not taken in, and nothing was written:</p>
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

export function asRefusal(error: unknown): FileRefused {
  return error instanceof FileRefused
    ? error
    : new FileRefused('Something failed on this page. Load it anew and try again.');
}
