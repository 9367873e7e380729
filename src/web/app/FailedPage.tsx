/** In the place of the whole page, where even its frame failed. Needs nothing of the program but itself. */
import { words } from '../../words/words.ts';
import { failureReport } from './failure-report.ts';
import './trouble.css';

export function FailedPage({ error }: { error: unknown }) {
  const t = words().frame.failed;
  return (
    <main id="main" className="page" data-failed>
      <h1>{t.page}</h1>
      <p role="alert">{t.inPage(error instanceof Error ? error.message : String(error))}</p>
      <p>
        <a href="/">{t.openAnew}</a>
      </p>
      <pre className="report">{failureReport(error, window.location.hash.split('/')[1] ?? '')}</pre>
    </main>
  );
}
