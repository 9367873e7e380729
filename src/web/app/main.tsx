import './base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { ErrorBoundary } from 'react-error-boundary';
import { PairedOnly } from '../pairing/PairedOnly.tsx';
import { queries } from '../store/query-client.ts';
import { App } from './App.tsx';
import { FailedPage } from './FailedPage.tsx';
import './print.css';

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <ErrorBoundary fallbackRender={({ error }) => <FailedPage error={error} />}>
      <QueryClientProvider client={queries}>
        <PairedOnly>
          <App />
        </PairedOnly>
      </QueryClientProvider>
    </ErrorBoundary>
  </StrictMode>,
);
