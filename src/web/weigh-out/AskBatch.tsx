/** Before the batch becomes another than planned: the ways into range, and keeping it as it is. */
import { useEffect, useRef, useState } from 'react';
import type { Agreed } from '../../kitchen/model.ts';
import type { Asked, SpoonBack, Way } from '../../kitchen/weighing/weigh-state.ts';
import { words } from '../../words/words.ts';
import { Button } from '../shared/plain/Button.tsx';

export function AskBatch(props: {
  asked: Asked;
  /** g of the batch as planned. */
  planned: number;
  /** g in the bowl; may be more than was planned. */
  inBowl: number;
  /** What of the last pour may be taken out again, and the name of its food. */
  spoonBack: (SpoonBack & { readonly name: string }) | undefined;
  busy: boolean;
  choose(agreed: Agreed): void;
  takeOut(food: string, grams: number): void;
  /** Whether the question takes the focus, so that it is in sight. */
  focus: boolean;
}) {
  const { asked, planned, inBowl, spoonBack, busy, choose, focus } = props;
  const t = words().weighing.ask;
  const heading = useRef<HTMLHeadingElement>(null);
  const [taking, setTaking] = useState(false);
  useEffect(() => {
    if (focus) heading.current?.focus();
  }, [focus]);
  const said = ({ total, without, names }: Way): [sentence: string, press: string] => {
    if (without.length === 0) return [t.grow(total, planned), t.doGrow(total)];
    if (total > planned) return [t.growWithout(total, planned, names), t.doGrowWithout(total, names)];
    return [t.without(names), t.doWithout(names)];
  };
  if (taking && spoonBack)
    return (
      <section className="weigh-lost weigh-ask" aria-labelledby="weigh-ask">
        <h2 id="weigh-ask">{t.doTakeOut(spoonBack.grams, spoonBack.name)}</h2>
        <p role="status">{t.takeOutHelp(spoonBack.grams, spoonBack.name)}</p>
        <Button
          className="big-button"
          isDisabled={busy}
          onPress={() => props.takeOut(spoonBack.food, spoonBack.grams)}
        >
          {t.takeOutDone(spoonBack.grams)}
        </Button>
        <Button className="button" onPress={() => setTaking(false)}>
          {t.takeOutNotYet}
        </Button>
      </section>
    );
  return (
    <section className="weigh-lost weigh-ask" aria-labelledby="weigh-ask">
      <h2 id="weigh-ask" ref={heading} tabIndex={-1}>
        <span aria-hidden="true">?</span> {t.heading(planned)}
      </h2>
      {asked.ways.map((way) => {
        const [sentence, press] = said(way);
        return (
          <div key={press}>
            <p>{sentence}</p>
            <Button
              className="button"
              isDisabled={busy}
              onPress={() =>
                choose({
                  ...(way.total > planned && { grams: way.total }),
                  ...(way.without.length > 0 && { without: way.without }),
                })
              }
            >
              {press}
            </Button>
          </div>
        );
      })}
      {spoonBack && (
        <Button className="button" isDisabled={busy} onPress={() => setTaking(true)}>
          {t.doTakeOut(spoonBack.grams, spoonBack.name)}
        </Button>
      )}
      <Button className="button" isDisabled={busy} onPress={() => choose({ keep: true })}>
        {t.doKeep(Math.max(planned, inBowl))}
      </Button>
      {asked.missed.length > 0 && (
        <details>
          <summary>{t.missed}</summary>
          <ul className="weigh-changes">
            {asked.missed.map(({ sentence }) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
