/** Which pages of this browser are open: what one that is gone left unsent, another sends. */

const CHANNEL = 'pouchful.tabs';
/** How long an open page has to answer, ms; one that sleeps longer loses nothing, its changes keep their ids. */
const ANSWER = 400;

type Said = { readonly who: true } | { readonly here: string } | { readonly leaving: string };

export interface Tabs {
  /** Asks who is there, then tells which pages are open. */
  ask(then: (isOpen: (tab: string) => boolean) => void): void;
  /** This page is left. */
  leaving(): void;
}

/**
 * @param left told when another page says that it is left
 * @param open gives the channel between the pages of this browser; undefined where it has none
 */
export function joinTabs(
  tab: string,
  left: () => void,
  open: (name: string) => BroadcastChannel | undefined,
): Tabs {
  const channel = open(CHANNEL);
  const here = new Set<string>();
  channel?.addEventListener('message', ({ data }: MessageEvent<Said>) => {
    if ('who' in data) channel.postMessage({ here: tab } satisfies Said);
    else if ('here' in data) here.add(data.here);
    else {
      here.delete(data.leaving);
      left();
    }
  });
  return {
    ask(then) {
      here.clear();
      channel?.postMessage({ who: true } satisfies Said);
      setTimeout(() => then((other) => here.has(other)), channel ? ANSWER : 0);
    },
    leaving: () => channel?.postMessage({ leaving: tab } satisfies Said),
  };
}
