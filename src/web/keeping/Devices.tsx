/** Which devices may open the household: pair one, name it, put it out. */
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
import { type DeviceList, fetchDevices, type PairingOffer } from '../store/access.ts';
import { DeviceItem } from './devices/DeviceItem.tsx';
import { PairAnother } from './devices/PairAnother.tsx';
import './devices/devices.css';

/** How often the list is asked for while a device is awaited, ms. */
const AWAITING = 2000;

/** An offer to pair, with the ids of the devices that there were when it was made. */
interface Awaited {
  readonly offer: PairingOffer;
  readonly before: readonly string[];
}

export function Devices() {
  const [awaited, setAwaited] = useState<Awaited>();
  const newcomerIn = (list: DeviceList | undefined) =>
    awaited && list?.devices.find(({ id }) => !awaited.before.includes(id));
  const { data, error, refetch } = useQuery({
    queryKey: ['devices'],
    queryFn: fetchDevices,
    refetchInterval: (query) => (awaited && !newcomerIn(query.state.data) ? AWAITING : false),
    retry: false,
  });
  const newcomer = newcomerIn(data);
  const t = words().keeping.devices;
  return (
    <section className="panel devices" aria-label={t.title}>
      <h2>{t.title}</h2>
      <Failed error={error} />
      {data && <WhoMayComeIn list={data} />}
      {data && data.devices.length > 0 && (
        <ul className="device-list" aria-label={t.paired}>
          {data.devices.map((device) => (
            <DeviceItem key={device.id} device={device} changed={() => void refetch()} />
          ))}
        </ul>
      )}
      {data?.open && (
        <PairAnother
          offer={newcomer ? undefined : awaited?.offer}
          newcomer={newcomer?.name}
          made={(offer) => setAwaited({ offer, before: data.devices.map(({ id }) => id) })}
          done={() => setAwaited(undefined)}
        />
      )}
    </section>
  );
}

function WhoMayComeIn({ list: { open, secure, devices } }: { list: DeviceList }) {
  const t = words().keeping.devices;
  if (!open)
    return (
      <>
        <p>
          <Sentence of={t.onlyHere} with={{ command: (typed) => <code>{typed}</code> }} />
        </p>
        {devices.length > 0 && <p className="hint">{t.pairedBefore}</p>}
      </>
    );
  return (
    <>
      <p>{t.who}</p>
      {!secure && <p className="notice-line">{t.plainHttp}</p>}
    </>
  );
}
