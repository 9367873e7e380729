import { expect, it } from 'vitest';
import { readableTitle } from './readable-title.ts';

it.each([
  ['CARROTS,RAW', 'Carrots, raw'],
  ['CARROTS, FRZ, CKD, BLD, DRND, WO/SALT', 'Carrots, frozen, cooked, boiled, drained, without salt'],
  ['PUMPKIN AND SQUASH SD KRNLS, DRIED', 'Pumpkin and squash seed kernels, dried'],
  ['KNACKWURST  KNOCKWURST', 'Knackwurst knockwurst'],
  ['YAMBEAN (JICAMA), RAW', 'Yambean (jicama), raw'],
  ['PORK SAUSAGE, LINK/PATTY, RED FAT, UNPREP', 'Pork sausage, link/patty, red fat, unprepared'],
  ['', ''],
])('%s reads %s', (title, readable) => {
  expect(readableTitle(title)).toBe(readable);
});
