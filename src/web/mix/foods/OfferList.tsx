/** Foods to choose from: a search field that keeps the keyboard, and a list in which each can be taken by one press. */

import { useRef, useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Handled } from '../../../care/hands/allergens.ts';
import { words } from '../../../words/words.ts';
import { AllergyMark } from '../../shared/hands/AllergyMark.tsx';
import { useParts } from '../../shared/parts.tsx';
import '../../shared/styles/offers.css';

interface OfferedFood {
  readonly id: string;
  readonly name: string;
  /** What else helps to choose: its group, where it comes from. */
  readonly note: string;
  /** Where the food is already, in place of "Add"; it cannot be taken again. */
  readonly there?: string;
  /** Why not, where it cannot be taken though it is not there. */
  readonly barred?: boolean;
  /** For the keeper's own allergies; absent where it is no single food. */
  handled?(): Handled;
  take(): void;
}

interface Props {
  readonly query: string;
  readonly placeholder: string;
  readonly searching: boolean;
  /** What to tell where what was looked for is not there. */
  readonly note?: string;
  readonly offers: readonly OfferedFood[];
  onQuery(query: string): void;
}

export function OfferList({ query, placeholder, searching, note, offers, onQuery }: Props) {
  const { common, mix } = words();
  const t = mix.offers;
  const parts = useParts(offers, { part: 60, from: query });
  const [taken, setTaken] = useState<string>();
  const field = useRef<HTMLInputElement>(null);
  /** Takes a food; the button that was pressed cannot be pressed again, so the field has the keyboard from here. */
  function take(offer: OfferedFood) {
    offer.take();
    setTaken(offer.name);
    field.current?.focus();
    field.current?.select();
  }
  const first = offers.find((o) => o.there === undefined && !o.barred);
  return (
    <div className="offer-finder">
      <TextField
        type="search"
        value={query}
        onChange={(next) => {
          setTaken(undefined);
          onQuery(next);
        }}
        autoFocus
        className="search"
      >
        <Label>{t.search}</Label>
        <Input
          ref={field}
          placeholder={placeholder}
          autoComplete="off"
          onKeyDown={(e) => {
            // Escape leaves the dialog, and does not only empty the field.
            if (e.key === 'Enter' && !e.nativeEvent.isComposing && !searching && query.trim() && first) {
              e.preventDefault();
              take(first);
            }
          }}
        />
      </TextField>
      <p className="hint offer-count" aria-live="polite">
        {taken !== undefined ? t.taken(taken) : searching ? t.searching : common.foods(offers.length)}
      </p>
      {note && <p role="status">{note}</p>}
      <div className="offers-scroll">
        <ul className="offers">
          {parts.shown.map((offer) => {
            const { id, name, note, there, barred, handled } = offer;
            return (
              <li key={id}>
                <span className="offer-name">
                  {name} <small>{note}</small>
                  {handled && <AllergyMark food={handled} />}
                </span>
                <Button
                  className="button small"
                  isDisabled={there !== undefined || barred}
                  aria-label={there ? t.thereName(name, there) : t.addName(name)}
                  onPress={() => take(offer)}
                >
                  {there ?? common.add}
                </Button>
              </li>
            );
          })}
        </ul>
        {parts.more}
      </div>
    </div>
  );
}
