/** Who may come in: asked of the server, and told to the page where this device no longer may. */
import { ask, strangeAnswer } from './ask.ts';

/** What the server says of this device. */
export interface AccessState {
  readonly tokenNeeded: boolean;
  readonly paired: boolean;
}

export interface PairedDevice {
  readonly id: string;
  readonly name: string;
  /** ISO 8601 times. */
  readonly pairedAt: string;
  readonly seenAt: string;
  readonly thisOne: boolean;
}

export interface DeviceList {
  readonly devices: readonly PairedDevice[];
  /** Whether other devices may come in. */
  readonly open: boolean;
  /** Whether by HTTPS. */
  readonly secure: boolean;
}

export interface PairingOffer {
  readonly code: string;
  readonly links: readonly string[];
  readonly goodUntil: string;
}

const JSON_BODY = { 'content-type': 'application/json' };
/** How long the answer may take before the page goes on without it, ms. */
const PATIENCE = 5000;

export async function fetchAccess(): Promise<AccessState> {
  const said = (await ask('/api/pair', {}, PATIENCE)) as Partial<AccessState>;
  return { tokenNeeded: said.tokenNeeded === true, paired: said.paired === true };
}

/** Lets this device in; from here on its requests carry its token by themselves. @param code or the secret of a link */
export async function pairDevice(code: string, name: string): Promise<void> {
  await ask('/api/pair', { method: 'POST', headers: JSON_BODY, body: JSON.stringify({ code, name }) });
}

export async function fetchDevices(): Promise<DeviceList> {
  const list = (await ask('/api/devices')) as Partial<DeviceList>;
  if (Array.isArray(list.devices)) return list as DeviceList;
  throw await strangeAnswer();
}

/** A code for one more device; the one before it is void. */
export const makeCode = async (): Promise<PairingOffer> =>
  (await ask('/api/devices/code', { method: 'POST' })) as PairingOffer;

export async function renameDevice(id: string, name: string): Promise<void> {
  await ask(`/api/devices/${encodeURIComponent(id)}`, {
    method: 'PATCH',
    headers: JSON_BODY,
    body: JSON.stringify({ name }),
  });
}

/** Puts a device out at once. */
export async function putOut(id: string): Promise<void> {
  await ask(`/api/devices/${encodeURIComponent(id)}`, { method: 'DELETE' });
}
