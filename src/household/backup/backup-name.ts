/** Names of backups: of which household, when, and why. They sort by time. */

/**
 * `auto`: made by itself. `pressed`: asked for. `before-going-back`: what stood before an older state was put back.
 * `before-upgrade-5-6`: before the file was brought from one shape to a newer one.
 */
export type Why = 'auto' | 'pressed' | 'before-going-back' | `before-upgrade-${number}-${number}`;

export interface NamedBackup {
  /** Name of the household's file, without its ending. */
  readonly stem: string;
  /** ISO 8601 time, UTC, to the millisecond. */
  readonly at: string;
  readonly why: Why;
}

const WHY = 'auto|pressed|before-going-back|before-upgrade-\\d+-\\d+';
const NAME = new RegExp(
  `^([^/\\\\]+)\\.(\\d{4}-\\d\\d-\\d\\d)T(\\d\\d)-(\\d\\d)-(\\d\\d)\\.(\\d{3})Z\\.(${WHY})\\.sqlite$`,
);

/** "household.2026-11-28T23-05-00.000Z.auto.sqlite" */
export function backupName({ stem, at, why }: NamedBackup): string {
  return `${stem}.${at.replaceAll(':', '-')}.${why}.sqlite`;
}

/** What a name says; undefined where it is no backup's name. No name that leaves the folder is one. */
export function readBackupName(name: string): NamedBackup | undefined {
  const [, stem, day, hour, minute, second, ms, why] = NAME.exec(name) ?? [];
  if (stem === undefined || why === undefined) return undefined;
  const at = `${day}T${hour}:${minute}:${second}.${ms}Z`;
  if (Number.isNaN(Date.parse(at))) return undefined;
  return { stem, at, why: why as Why };
}
