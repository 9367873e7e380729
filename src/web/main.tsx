import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { App } from './App.tsx';
import './styles/base.css';
import './styles/mix.css';
import './styles/foods.css';
import './styles/composition.css';
import './styles/label.css';
import './styles/advice.css';
import './styles/versions.css';
import './styles/wishes.css';
import './styles/refusals.css';
import './styles/why.css';
import './styles/weigh-out.css';
import './styles/cupboard.css';
import './styles/print.css';

const queries = new QueryClient({ defaultOptions: { queries: { retry: 2, refetchOnWindowFocus: false } } });

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
