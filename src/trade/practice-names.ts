/** Kinds of machine, by whose rules a job is judged. */
export const PRACTICE_NAMES = ['general', 'road', 'boat', 'aircraft'] as const
export type PracticeName = (typeof PRACTICE_NAMES)[number]

/** What a practice has of its own; what prints nothing for itself is as in general work. */
export function perPractice<T>(general: T, own: { readonly [N in PracticeName]?: T }): { readonly [N in PracticeName]: T } {
  return Object.fromEntries(PRACTICE_NAMES.map(name => [name, own[name] ?? general])) as { [N in PracticeName]: T }
}
