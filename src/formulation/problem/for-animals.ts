/** One problem whose mix suits several animals at once: nobody is given what it refuses, everybody's rules hold. */
import type { Problem, Rule } from './problem.ts';

/** An animal as far as a mix needs it. */
export interface Eater {
  readonly id: string;
  readonly name: string;
  /** In words; some cautions hold for dwarf hamsters alone. */
  readonly species?: string;
  /** Ids of foods it will not eat. */
  readonly refuses: readonly string[];
  /** What it needs: the rules of its profile. */
  readonly rules: readonly Rule[];
}

export interface ForAnimals {
  readonly problem: Problem;
  /** For each food of the problem that any of them refuses: their names, in the order given. */
  readonly refusedBy: Readonly<Record<string, readonly string[]>>;
}

/**
 * A problem that suits every eater. The problem's own rules stay where they are, so pointers to them stay valid;
 * rules of the eaters that do not stand there yet follow. Two rules on the same nutrient both hold.
 * The species is that of all of them in one text, the problem's own among them: a caution that concerns any is kept.
 * Pure; with no eaters the problem itself comes back.
 */
export function forAnimals(problem: Problem, eaters: readonly Eater[]): ForAnimals {
  if (eaters.length === 0) return { problem, refusedBy: {} };
  const refusals = problem.foods.flatMap(({ id }): [string, string[]][] => {
    const names = eaters.filter((e) => e.refuses.includes(id)).map((e) => e.name);
    return names.length > 0 ? [[id, names]] : [];
  });
  const refused = new Set(refusals.map(([id]) => id));
  const species = speciesOf([problem.species, ...eaters.map((e) => e.species)]);
  return {
    problem: {
      ...problem,
      foods: problem.foods.map((f) => (refused.has(f.id) && !f.refused ? { ...f, refused: true } : f)),
      rules: withRules(
        problem.rules,
        eaters.flatMap((e) => e.rules),
      ),
      ...(species !== undefined && { species }),
    },
    refusedBy: Object.fromEntries(refusals),
  };
}

/**
 * The problem of one eater among several. A rule of the problem that stands in the profile of others and not in its
 * own binds only those others; every other rule of the problem binds all. Pointers into `rules` are those of the
 * problem returned.
 */
export function forOneOf(problem: Problem, eater: Eater, eaters: readonly Eater[]): Problem {
  const own = new Set(eater.rules.map(ruleKey));
  const others = new Set(eaters.flatMap((e) => (e === eater ? [] : e.rules.map(ruleKey))));
  const rules = problem.rules.filter((rule) => own.has(ruleKey(rule)) || !others.has(ruleKey(rule)));
  return forAnimals({ ...problem, rules }, [eater]).problem;
}

/** What a rule says, in one text: equal for rules that differ only in their source or in defaults written out. */
export function ruleKey(rule: Rule): string {
  const { source: _, ...said } = rule;
  const full = { on: 'mix', ...('nutrient' in rule && { basis: 'as fed' }), ...defined(said) };
  return JSON.stringify(full, (_key, value: unknown) => (isPlain(value) ? sorted(value) : value));
}

function withRules(rules: readonly Rule[], further: readonly Rule[]): readonly Rule[] {
  const seen = new Set(rules.map(ruleKey));
  const added = further.filter((rule) => {
    const key = ruleKey(rule);
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
  return added.length > 0 ? [...rules, ...added] : rules;
}

/** Cautions look for words in the species, so a list of species is concerned wherever one of them is. */
function speciesOf(all: readonly (string | undefined)[]): string | undefined {
  const distinct = new Set(all.flatMap((species) => species?.split(', ') ?? []).filter((s) => s !== ''));
  return distinct.size > 0 ? [...distinct].join(', ') : undefined;
}

type Plain = Readonly<Record<string, unknown>>;

function isPlain(value: unknown): value is Plain {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function sorted(value: Plain): Plain {
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)));
}

function defined(value: object): Plain {
  return Object.fromEntries(Object.entries(value).filter(([, v]) => v !== undefined));
}
