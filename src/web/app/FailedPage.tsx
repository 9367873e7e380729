/** In the place of the whole page, where even its frame failed. Needs nothing of the program but itself. */
import { failureReport } from './failure-report.ts';
import './trouble.css';

export function FailedPage({ error }: { error: unknown }) {
  return (
    <main id="main" className="page" data-failed>
      <h1>Pouchful could not be shown</h1>
      <p role="alert">
        Something failed: {error instanceof Error ? error.message : String(error)}. What is kept on the server
        is not touched by this.
      </p>
      <p>
        <a href="/">Open Pouchful anew</a>
      </p>
      <pre className="report">{failureReport(error, window.location.hash.split('/')[1] ?? '')}</pre>
    </main>
  );
}
