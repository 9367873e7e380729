import type { Eater } from '../../src/formulation/problem/for-animals.ts';

/** An animal that refuses nothing and asks for nothing, unless said otherwise. */
export const eater = (name: string, about: Partial<Eater> = {}): Eater => ({
  id: name.toLowerCase(),
  name,
  refuses: [],
  rules: [],
  ...about,
});
