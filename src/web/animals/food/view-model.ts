/** The rows of the picture of grams a day, and what each of them says. */
import type { CommonRule } from '../../../care/feeding/common-rules.ts';
import type { DailyAmount } from '../../../care/feeding/daily-amount.ts';
import { type Span, WINTER_WHITE_COLD } from '../../../care/figures/feeding.ts';
import { words } from '../../../words/words.ts';

export interface AmountRow {
  readonly key: string;
  readonly name: string;
  /** g a day; absent where only words can be said. */
  readonly span?: Span;
  /** With what raises it further, g at the most. */
  readonly upTo?: number;
  readonly notes: readonly string[];
  /** What may be written down with one press, g. */
  readonly take?: number;
  /** Published, a rule of thumb, or what is fed now. */
  readonly kind: 'published' | 'rule' | 'fed';
}

/** @param weight body weight, g @param fed g a day now */
export function amountRows(
  amount: DailyAmount,
  weight: number | undefined,
  fed: number | undefined,
): AmountRow[] {
  const t = words().dailyFood;
  const { equation, intake, common } = amount;
  // Who nurses eats as much as it likes: there is no middle to go by.
  const nurses = amount.stage === 'nursing' || amount.stage === 'breeding';
  const rows: AmountRow[] = [];
  if (equation && weight !== undefined) {
    const { raisedTo: upTo } = equation;
    rows.push({
      key: 'equation',
      name: t.rows.equation,
      span: equation.fed,
      ...(upTo !== undefined && { upTo }),
      notes: [
        t.notes.equation(weight, equation.dry.low, equation.dry.high),
        ...(equation.estimate ? [t.notes.estimate] : []),
        ...(upTo === undefined ? [] : [t.notes.upTo(upTo)]),
      ],
      ...(!nurses && { take: handy((equation.fed.low + equation.fed.high) / 2) }),
      kind: 'published',
    });
  }
  if (intake)
    rows.push({
      key: 'intake',
      name: t.rows.intake,
      ...(intake.fed && { span: intake.fed, take: handy((intake.fed.low + intake.fed.high) / 2) }),
      notes: [
        intake.dry === undefined ? t.notes.intakeFood : t.notes.intake(intake.dry),
        ...(intake.fed ? [] : [t.notes.noWater]),
      ],
      kind: 'published',
    });
  rows.push(...common.map(ruleRow));
  if (fed !== undefined)
    rows.push({ key: 'fed', name: t.rows.fed, span: { low: fed, high: fed }, notes: [], kind: 'fed' });
  return rows;
}

function ruleRow({ low, high, grams, source }: CommonRule): AmountRow {
  const t = words().dailyFood;
  return {
    key: source,
    name: t.rows[source],
    span: { low, high },
    notes: [t.notes[source]],
    take: grams,
    kind: 'rule',
  };
}

/** A weight that is easily weighed: to half a gram, to a tenth below 5 g. */
function handy(grams: number): number {
  return grams < 5 ? Math.max(0.1, Math.round(grams * 10) / 10) : Math.round(grams * 2) / 2;
}

/** What raises the need, in sentences. @param room °C of a cold room */
export function raiseWords({ raises }: DailyAmount, room: number | undefined): string[] {
  const t = words().dailyFood.raises;
  return raises.flatMap(({ what, times, young, sources }) => {
    if (what === 'wheel') return [t.wheel];
    if (what === 'cold') {
      if (room === undefined) return [];
      if (times) return [t.coldNursing(room, 100 * (times.high - 1))];
      return sources.length > 0
        ? [t.coldWinterWhite(room, WINTER_WHITE_COLD.low, WINTER_WHITE_COLD.high)]
        : [t.cold(room)];
    }
    const said = times ? [t[what](times.low, times.high)] : [];
    return young === undefined ? said : [...said, t.young(young)];
  });
}
