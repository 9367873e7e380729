/**
 * How much weight an animal may lose. 20 % is the limit that laboratories commonly keep, and 15 to 20 % within days is
 * called rapid (limits used in animal welfare). Animals whose state grows worse show it before 20 %: Talbot et al. 2019,
 * "Defining body-weight reduction as a humane endpoint: a critical appraisal", Laboratory Animals 54:99-110. So a vet is
 * named well before these.
 */
export const LOSS_LIMITS = {
  /** Part of its weight within days: see a vet today. */
  rapid: 0.15,
  /** Part of its weight in all: see a vet today. */
  most: 0.2,
  source: 'limits used in animal welfare; Talbot et al. 2019, Laboratory Animals 54:99-110',
} as const;
