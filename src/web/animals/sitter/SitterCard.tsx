/** One printed page for whoever looks after the animals: what and how much, cautions, whom to call. */
import { useLayoutEffect, useRef, useState } from 'react';
import { Button, Label, Text, TextArea, TextField } from 'react-aria-components';
import type { Keeper } from '../../../care/model.ts';
import { sitterCard } from '../../../household/reckon/care/sitter-card.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { useCircumstances } from '../../shared/hooks/useCircumstances.ts';
import { linkTo } from '../../shared/route.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { CardText } from './CardText.tsx';
import './sitter.css';

export function SitterCard() {
  const { house } = useMixDraft();
  const t = words().sitter;
  const under = useCircumstances();
  const keeper = house.keeper[0];
  const entries = under && sitterCard(house, under);
  const vetKnown = keeper?.vet?.phone !== undefined || keeper?.vet?.emergency !== undefined;
  return (
    <div className="sitter-page">
      <div className="sitter-head">
        <h2 tabIndex={-1}>{t.title}</h2>
        {entries && entries.length > 0 && (
          <Button className="button strong" onPress={() => window.print()}>
            {t.print}
          </Button>
        )}
      </div>
      <p className="hint">{t.lead}</p>
      {!vetKnown && (
        <p className="notice-line">
          <Sentence
            of={t.vetMissing}
            with={{ keep: (text) => <a href={linkTo('household', 'card')}>{text}</a> }}
          />
        </p>
      )}
      <OwnWords keeper={keeper} />
      {!entries && (
        <p role="status" className="hint">
          {t.working}
        </p>
      )}
      {entries?.length === 0 && <p className="empty">{t.nobody}</p>}
      {under && entries && entries.length > 0 && (
        <>
          <div className="sitter-card">
            <CardText entries={entries} keeper={keeper} today={under.today} />
          </div>
          <Paper fits={`${JSON.stringify(entries)}${JSON.stringify(keeper)}`}>
            <CardText entries={entries} keeper={keeper} today={under.today} />
          </Paper>
        </>
      )}
    </div>
  );
}

/** Sizes of the letters to try, pt: the largest at which all stands on one page is taken. */
const SIZES = Array.from({ length: 27 }, (_, i) => 13 - i * 0.25);

/**
 * The card on paper, beside the screen until it is printed. Its letters are as large as one page of either size of
 * paper allows. @param fits what it says: it is fitted anew when that changes
 */
function Paper({ fits, children }: { fits: string; children: React.ReactNode }) {
  const paper = useRef<HTMLDivElement>(null);
  const [tooLong, setTooLong] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what it says decides how much room it takes
  useLayoutEffect(() => {
    const sheet = paper.current;
    if (!sheet) return;
    const fitting = SIZES.find((size) => {
      sheet.style.fontSize = `${size}pt`;
      return sheet.scrollHeight <= sheet.clientHeight;
    });
    setTooLong(fitting === undefined);
  }, [fits]);
  return (
    <>
      {tooLong && (
        <p className="notice-line" role="alert">
          {words().sitter.tooLong}
        </p>
      )}
      <div ref={paper} className="sitter-paper" aria-hidden="true">
        {children}
      </div>
    </>
  );
}

/** What the keeper wants to say to a sitter; kept when it is left, or with the button. */
function OwnWords({ keeper }: { keeper: Keeper | undefined }) {
  const t = words().sitter;
  const save = useSave('keeper');
  const [text, setText] = useState(keeper?.forSitter ?? '');
  const changed = text.trim() !== (keeper?.forSitter ?? '');

  function keep() {
    if (!changed) return;
    const { forSitter: _, ...rest } = keeper ?? { id: 'keeper' as const };
    const said = text.trim();
    save.mutate(said === '' ? rest : { ...rest, forSitter: said }, keeper);
  }

  return (
    <div className="sitter-words">
      <TextField value={text} onChange={setText} onBlur={keep}>
        <Label>{t.own}</Label>
        <TextArea rows={3} maxLength={1000} />
        <Text slot="description" className="hint">
          {t.ownHint}
        </Text>
      </TextField>
      {changed && (
        <Button className="button small" onPress={keep}>
          {t.save}
        </Button>
      )}
      <Failed error={save.error} />
    </div>
  );
}
