import { common } from '../common.ts';
import { frame } from '../frame.ts';
import { kitchen } from '../kitchen.ts';
import { nutrition } from '../nutrition.ts';
import { pairing } from '../pairing.ts';
import { shared } from '../shared.ts';
import { store } from '../store.ts';
import { today } from '../today.ts';

export const first = { common, shared, frame, today, store, kitchen, pairing, nutrition };
