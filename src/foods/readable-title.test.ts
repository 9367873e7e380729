import { expect, it } from 'vitest';
import { readableTitle } from './readable-title.ts';

it.each([
  ['CARROTS,RAW', 'Carrots, raw'],
  ['CARROTS, FRZ, CKD, BLD, DRND, WO/SALT', 'Carrots, frozen, cooked, boiled, drained, without salt'],
  ['PUMPKIN AND SQUASH SD KRNLS, DRIED', 'Pumpkin and squash seed kernels, dried'],
  ['KNACKWURST  KNOCKWURST', 'Knackwurst knockwurst'],
  ['YAMBEAN (JICAMA), RAW', 'Yambean (jicama), raw'],
  ['PORK SAUSAGE, LINK/PATTY, RED FAT, UNPREP', 'Pork sausage, link/patty, reduced fat, unprepared'],
  ['CABBAGE, RED, RAW', 'Cabbage, red, raw'],
  ['SAUSAGE, RED NA', 'Sausage, reduced sodium'],
  ['FISH STKS, FRZ', 'Fish sticks, frozen'],
  ['BEEF, SNDWCH STKS', 'Beef, sandwich steaks'],
  ['BEVER, TEA, GRN', 'Beverages, tea, green'],
  ['MILK, CND, EVAP, WITH VIT A AND VITAMIN D', 'Milk, canned, evaporated, with vitamin A and vitamin D'],
  ['JUC, WITH CA AND VITAMINS A, B12, AND E', 'Juice, with calcium and vitamins A, B12, and E'],
  ['LAMB, LEG, L AND F, 0"FAT, RAW', 'Lamb, leg, lean and fat, 0" fat, raw'],
  ['BF, VAR MEATS AND BY-PRODUCTS', 'Beef, variety meats and by-products'],
  ['Sun-dried tomatoes, written out', 'Sun-dried tomatoes, written out'],
  ['', ''],
])('%s reads %s', (title, readable) => {
  expect(readableTitle(title)).toBe(readable);
});
