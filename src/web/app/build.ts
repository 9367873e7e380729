/** Which build of Pouchful this page is: the server writes the same name into the page that it serves now. */

const NAME = 'pouchful-build';

/** Empty while developing. */
export const OWN_BUILD = buildIn(document);

/** The build that the server serves now; empty where it cannot be told. */
export async function servedBuild(): Promise<string> {
  try {
    const answer = await fetch('/', { cache: 'no-store' });
    if (!answer.ok) return '';
    return buildIn(new DOMParser().parseFromString(await answer.text(), 'text/html'));
  } catch {
    return '';
  }
}

function buildIn(page: Document): string {
  return page.querySelector(`meta[name="${NAME}"]`)?.getAttribute('content') ?? '';
}
