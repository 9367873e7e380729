/** Whether the keeper is asked before a screen is left; the question itself is fetched later. */
import { useSyncExternalStore } from 'react';
import { leavingQuestion } from '../shared/hooks/leaving.ts';
import { shownLater } from '../shared/later/shown-later.tsx';

const LeavingDialog = shownLater(() => import('./LeavingDialog.tsx').then((m) => m.LeavingDialog));

export function LeavingQuestion() {
  const isAsked = useSyncExternalStore(leavingQuestion.subscribe, leavingQuestion.isAsked);
  return isAsked && <LeavingDialog />;
}
