/** What is written on paper of a batch, before and after it is weighed out: a part of the worker of its own. */
export { papersOf } from '../../household/reckon/batch/batch-papers.ts';
export { planOf } from '../../household/reckon/batch/batch-plan.ts';
export { sheetOf } from '../../household/reckon/batch/weigh-paper.ts';
