import './base.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { PairedOnly } from '../pairing/PairedOnly.tsx';
import { startKeeping } from '../store/page-keeper.ts';
import { queries } from '../store/query-client.ts';
import { App } from './App.tsx';
import './print.css';

startKeeping();
createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <PairedOnly>
        <App />
      </PairedOnly>
    </QueryClientProvider>
  </StrictMode>,
);
