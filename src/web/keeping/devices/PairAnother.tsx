/** Lets one more device in: a code to type, and the same as a QR code to scan. */
import { useMutation } from '@tanstack/react-query';
import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';
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
  const t = words().keeping.devices;
  return (
    <>
      <p role="status">{props.newcomer !== undefined && t.isPaired(props.newcomer)}</p>
      <Failed error={make.error} />
      {props.offer && <Offer key={props.offer.code} offer={props.offer} />}
      <div className="button-row">
        <Button className="button strong" onPress={() => make.mutate()}>
          {props.offer ? t.newCode : t.pair}
        </Button>
        {props.offer && (
          <Button className="quiet-button" onPress={props.done}>
            {words().common.close}
          </Button>
        )}
      </div>
    </>
  );
}

function Offer({ offer: { code, links, goodUntil } }: { offer: PairingOffer }) {
  const left = Date.parse(goodUntil) - useNow();
  const [best] = links;
  const t = words().keeping.devices;
  if (left <= 0) return <p>{t.expired}</p>;
  return (
    <section className="pairing-offer" aria-label={t.offer}>
      {best && <QrCode text={best} label={t.qr} />}
      <div>
        <p>{best ? t.scan : t.noNetwork}</p>
        {links.map((link) => (
          <p key={link} className="pairing-address">
            {new URL(link).origin}
          </p>
        ))}
        <output className="pairing-code" aria-label={t.code}>
          {code}
        </output>
        <p className="hint">{t.good(sayTime(left))}</p>
      </div>
    </section>
  );
}
