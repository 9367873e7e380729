import './base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import { ErrorBoundary } from 'react-error-boundary';
import { english } from '../../words/en/index.ts';
import { wordsIn } from '../../words/languages.ts';
import { speak } from '../../words/words.ts';
import { PairedOnly } from '../pairing/PairedOnly.tsx';
import { mannerOfDevice } from '../shared/words/manner.ts';
import { queries } from '../store/query-client.ts';
import { App } from './App.tsx';
import { FailedPage } from './FailedPage.tsx';
import './print.css';

const manner = mannerOfDevice();

// A language whose texts cannot be fetched is no reason to show nothing: they are said in English.
void wordsIn(manner)
  .catch(() => english(manner))
  .then((texts) => {
    speak(() => texts);
    document.documentElement.lang = texts.figures.locale;
    draw(texts.figures.locale);
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
