/** Every screen of a household of ten years: where it is, and what stands there once it can be used. */
export const SCREENS: readonly { readonly hash: string; readonly ready: string; readonly demo?: true }[] = [
  { hash: 'today', ready: '.today-next a', demo: true },
  { hash: 'foods', ready: '.food-list a[href*="sr28"]', demo: true },
  { hash: 'foods/own-1', ready: '.detail h2' },
  { hash: 'targets', ready: '.detail h2', demo: true },
  { hash: 'mix', ready: 'text=/Minerals and vitamins \\([1-9]/', demo: true },
  { hash: 'calendar', ready: 'main h2', demo: true },
  { hash: 'shopping', ready: '.shop-foods :is(li, summary)', demo: true },
  { hash: 'cupboard', ready: '.cold-page h2', demo: true },
  { hash: 'cupboard/lot-30', ready: '.lot-page h2' },
  { hash: 'cupboard/new', ready: '.lot-form h2', demo: true },
  { hash: 'drying', ready: '.detail h2', demo: true },
  { hash: 'drying/run-5', ready: '.dry-run h2' },
  { hash: 'weigh', ready: '.weigh-card p[role=status]:not(:text("Working"))', demo: true },
  { hash: 'weigh/batch-499', ready: '[data-testid=record-state]' },
  { hash: 'animals', ready: '.animal-page h2', demo: true },
  { hash: 'household', ready: '#main h1', demo: true },
];
