/** Which devices may open the household: pair one, name it, put it out. */
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Failed } from '../shared/Failed.tsx';
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
  return (
    <section className="panel devices" aria-label="Devices">
      <h2>Devices</h2>
      <Failed error={error} />
      {data && <WhoMayComeIn list={data} />}
      {data && data.devices.length > 0 && (
        <ul className="device-list" aria-label="Paired devices">
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
  if (!open)
    return (
      <>
        <p>
          Only the computer that Pouchful runs on can open the household. For a phone beside the scale, start
          it with <code>npm start -- --lan</code>; each device is then paired once.
        </p>
        {devices.length > 0 && (
          <p className="hint">These were paired before. Until then they cannot come in.</p>
        )}
      </>
    );
  return (
    <>
      <p>
        Whoever holds one of these devices can read and change the household. Put out what you no longer use.
      </p>
      {!secure && (
        <p className="notice-line">
          What is sent goes by plain HTTP: anyone in the same network who listens in can read it, and can take
          over a device. Use it at home, not in a cafe or a shared network. The README says how to serve it by
          HTTPS.
        </p>
      )}
    </>
  );
}
