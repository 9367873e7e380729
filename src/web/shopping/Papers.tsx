/** The list printed, or copied as text. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { words } from '../../words/words.ts';

export function Papers({ text }: { text(): string }) {
  const t = words().shopping.papers;
  const [said, setSaid] = useState('');
  async function copy() {
    try {
      await navigator.clipboard.writeText(text());
      setSaid(t.copied);
    } catch {
      setSaid(t.noCopy);
    }
  }
  return (
    <div className="button-row shop-papers">
      <Button className="button small" onPress={() => window.print()}>
        {t.print}
      </Button>
      {/* Browsers offer it on secure pages alone. */}
      {navigator.clipboard && (
        <Button className="quiet-button small" onPress={() => void copy()}>
          {t.copy}
        </Button>
      )}
      <span className="hint" role="status">
        {said}
      </span>
    </div>
  );
}
