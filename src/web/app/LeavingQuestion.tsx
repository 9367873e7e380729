/** Whether the keeper is asked before a screen is left; the question itself is fetched later. */
import { Suspense, useSyncExternalStore } from 'react';
import { leavingQuestion } from '../shared/hooks/leaving.ts';
import { later } from '../shared/later.ts';

const dialog = later(() => import('./LeavingDialog.tsx').then((m) => m.LeavingDialog));

export function LeavingQuestion() {
  const isAsked = useSyncExternalStore(leavingQuestion.subscribe, leavingQuestion.isAsked);
  return <Suspense>{isAsked && <Asked />}</Suspense>;
}

function Asked() {
  const Dialog = dialog.now();
  return <Dialog isAsked />;
}
