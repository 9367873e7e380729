import { QueryClientProvider } from '@tanstack/react-query';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { queries } from '../store/queries.ts';
import { App } from './App.tsx';
import './base.css';
import '../mix/mix.css';
import '../foods/foods.css';
import '../foods/composition.css';
import '../foods/label/label.css';
import '../mix/advice/advice.css';
import '../mix/advice/versions/versions.css';
import '../mix/advice/wishes/wishes.css';
import '../mix/advice/refusals/refusals.css';
import '../mix/advice/why/why.css';
import '../weigh-out/weigh-out.css';
import '../cupboard/cupboard.css';
import './print.css';

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <QueryClientProvider client={queries}>
      <App />
    </QueryClientProvider>
  </StrictMode>,
);
