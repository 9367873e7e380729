/** What access to a server rests on. */
import type { Device, Devices } from '../../household/access/devices.ts';
import type { Store } from '../../household/store.ts';
import type { Served } from '../served.ts';

export interface AccessOptions {
  readonly served: Served;
  /** Whether other devices come in, each by its token. */
  readonly tokens: boolean;
  readonly devices: Devices;
  storeOf(household: string): Store;
  /** Where other devices find this server: "http://192.168.1.5:4173". The best first. */
  origins(): readonly string[];
  /** Told of each device that was paired. */
  paired?(device: Device): void;
  /** The time in ms since 1970. */
  readonly clock?: () => number;
}
