/** What becomes of a profile that its keeper has changed. */
import { expect, test } from 'vitest';
import { finishProfile } from './finish-profile.ts';
import type { TargetProfile } from './profile.ts';

const draft = (bounds: TargetProfile['bounds']): TargetProfile => ({
  id: 'p',
  name: ' Mine ',
  species: 'hamster',
  lifeStage: 'adult',
  fibre: 'none',
  about: '',
  bounds,
});
const crude = { nutrient: 'FIBC', min: 6, basis: 'as fed', source: 's' } as const;
const dietary = { nutrient: 'FIBTG', max: 30, basis: 'as fed', source: 's' } as const;

test('bounds that bound nothing go, and the name is trimmed', () => {
  const open = { nutrient: 'FAT', basis: 'as fed', source: 's' } as const;
  expect(finishProfile(draft([open, crude]))).toMatchObject({ name: 'Mine', bounds: [crude] });
});

test('fibre is read as the measure that is bounded', () => {
  expect(finishProfile(draft([crude])).fibre).toBe('FIBC');
  expect(finishProfile(draft([crude, dietary])).fibre).toBe('FIBTG');
  expect(finishProfile({ ...draft([{ ...crude, min: undefined }]), fibre: 'FIBC' }).fibre).toBe('none');
});
