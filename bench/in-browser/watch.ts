/** What runs in the page beside the program, to find when a screen can be used. Text, so that Node's types are not in the way. */

/**
 * Notes when the page's own thread was busy for long (50 ms or more, as the browser counts long tasks). Put into a page
 * before its own scripts.
 */
export const WATCH_LONG_TASKS = `
  globalThis.benchBusyUntil = 0;
  new PerformanceObserver((list) => {
    for (const task of list.getEntries())
      globalThis.benchBusyUntil = Math.max(globalThis.benchBusyUntil, task.startTime + task.duration);
  }).observe({ type: 'longtask', buffered: true });
`;

/**
 * Waits until something stands in the page, the browser has drawn it, and the page's thread has been without a long task
 * for as long as \`quiet\` says. Answers with { drawn, idle }, ms since the page was asked for: when it was drawn, and the
 * end of the last long task, where that was later.
 */
export function whenUsable({ css, has, lacks }: Ready, quiet: number): string {
  return `new Promise((done) => {
    const stands = () => [...document.querySelectorAll(${JSON.stringify(css)})].some((element) => {
      const text = element.textContent ?? '';
      if (!(${has ? `${has}.test(text)` : 'true'}) || ${lacks ? `${lacks}.test(text)` : 'false'}) return false;
      const box = element.getBoundingClientRect();
      return box.width > 0 && box.height > 0;
    });
    const wait = (drawn) => {
      const now = performance.now();
      const last = Math.max(drawn, globalThis.benchBusyUntil);
      if (now - last < ${quiet}) setTimeout(wait, ${quiet} - (now - last) + 5, drawn);
      else done({ drawn, idle: last });
    };
    const look = () => {
      if (stands()) requestAnimationFrame(() => setTimeout(() => wait(performance.now()), 0));
      else requestAnimationFrame(look);
    };
    look();
  })`;
}

/** What is looked for: an element that is drawn, whose text has or lacks something. */
export interface Ready {
  readonly css: string;
  readonly has?: RegExp;
  readonly lacks?: RegExp;
}

const TEXT = /^text=(\/.*\/)$/;
const LACKS = /:not\(:text\("([^"]*)"\)\)/;

/** From a selector as the browser tests write it, which knows texts that CSS does not. */
export function readyFrom(selector: string): Ready {
  const [, pattern] = TEXT.exec(selector) ?? [];
  // A heading or what folds up: to read all texts of a page with every frame would be most of what is measured.
  if (pattern) return { css: 'summary, h1, h2, h3', has: new RegExp(pattern.slice(1, -1)) };
  const [, lacking] = LACKS.exec(selector) ?? [];
  return {
    css: selector.replace(LACKS, ''),
    ...(lacking !== undefined && { lacks: new RegExp(lacking) }),
  };
}
