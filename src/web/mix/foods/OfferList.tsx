/** Foods to choose from: a search field, and a list in which each can be taken by one press. */
import { Button, Input, Label, SearchField } from 'react-aria-components';
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
  const parts = useParts(offers, { part: 60, of: 'foods', from: query });
  return (
    <>
      <SearchField value={query} onChange={onQuery} autoFocus className="search">
        <Label>Search foods</Label>
        <Input placeholder={placeholder} />
      </SearchField>
      <p className="hint" aria-live="polite">
        {searching ? 'Searching…' : `${offers.length} foods`}
      </p>
      {note && <p role="status">{note}</p>}
      <ul className="offers">
        {parts.shown.map(({ id, name, note, there, barred, take }) => (
          <li key={id}>
            <span className="offer-name">
              {name} <small>{note}</small>
            </span>
            <Button
              className="button small"
              isDisabled={there !== undefined || barred}
              aria-label={there ? `${name}: ${there}` : `Add ${name}`}
              onPress={take}
            >
              {there ?? 'Add'}
            </Button>
          </li>
        ))}
      </ul>
      {parts.more}
    </>
  );
}
