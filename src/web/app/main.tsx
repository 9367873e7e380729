import './base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import { ErrorBoundary } from 'react-error-boundary';
import { askAhead, PairedOnly } from '../pairing/PairedOnly.tsx';
import { shownHash } from '../shared/route.ts';
import { mannerOfDevice } from '../shared/words/manner.ts';
import { speakHere } from '../shared/words/texts.ts';
import { queries } from '../store/query-client.ts';
import { App } from './App.tsx';
import { FailedPage } from './FailedPage.tsx';
import { fetchScreen } from './screens.tsx';
import './print.css';

const spoken = speakHere(mannerOfDevice());
// The screen is fetched beside the texts, not after them, and so is what is kept.
askAhead();
fetchScreen(shownHash());
void spoken.then(({ figures }) => {
  document.documentElement.lang = figures.locale;
  draw(figures.locale);
});

function draw(locale: string) {
  createRoot(document.getElementById('app')!).render(
    <StrictMode>
      <I18nProvider locale={locale}>
        <ErrorBoundary fallbackRender={({ error }) => <FailedPage error={error} />}>
          <QueryClientProvider client={queries}>
            <PairedOnly>
              <App />
            </PairedOnly>
          </QueryClientProvider>
        </ErrorBoundary>
      </I18nProvider>
    </StrictMode>,
  );
}
