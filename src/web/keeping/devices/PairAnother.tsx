/** Lets one more device in: a code to type, and the same as a QR code to scan. */
import { useMutation } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { Failed } from '../../shared/Failed.tsx';
import { useNow } from '../../shared/hooks/now.ts';
import { sayTime } from '../../shared/words/clock.ts';
import { makeCode, type PairingOffer } from '../../store/access.ts';
import { QrCode } from './QrCode.tsx';

export function PairAnother(props: {
  offer: PairingOffer | undefined;
  /** The device that came in by the last offer. */
  newcomer: string | undefined;
  made(offer: PairingOffer): void;
  done(): void;
}) {
  const make = useMutation({ mutationFn: makeCode, onSuccess: props.made });
  return (
    <>
      <p role="status">{props.newcomer !== undefined && `${props.newcomer} is paired.`}</p>
      <Failed error={make.error} />
      {props.offer && <Offer key={props.offer.code} offer={props.offer} />}
      <div className="button-row">
        <Button className="button strong" onPress={() => make.mutate()}>
          {props.offer ? 'Make a new code' : 'Pair a device'}
        </Button>
        {props.offer && (
          <Button className="quiet-button" onPress={props.done}>
            Close
          </Button>
        )}
      </div>
    </>
  );
}

function Offer({ offer: { code, links, goodUntil } }: { offer: PairingOffer }) {
  const left = Date.parse(goodUntil) - useNow();
  const [best] = links;
  if (left <= 0) return <p>The code is no longer good. Make a new one.</p>;
  return (
    <section className="pairing-offer" aria-label="Pairing code">
      {best && <QrCode text={best} label="QR code that pairs a device" />}
      <div>
        <p>
          {best
            ? 'On the other device, scan this. Or open the address there and type the code:'
            : 'This computer is in no network at the moment. Once it is, make a new code.'}
        </p>
        {links.map((link) => (
          <p key={link} className="pairing-address">
            {new URL(link).origin}
          </p>
        ))}
        <output className="pairing-code" aria-label="Code">
          {code}
        </output>
        <p className="hint">Good for one device, {sayTime(left)} more.</p>
      </div>
    </section>
  );
}
