import type { FormState } from './formState.js'

/** Which groups of boxes stand unfolded: those in which something was entered, or is wrong. */
export function openGroups<Group extends string>(
  { values, errors }: FormState,
  groups: Record<Group, readonly string[]>,
): Record<Group, boolean> {
  const open = (names: readonly string[]): boolean =>
    names.some((name) => (values[name] ?? '').trim() !== '' || errors[name] !== undefined)
  const entries = Object.entries<readonly string[]>(groups).map(([group, names]) => [group, open(names)])
  return Object.fromEntries(entries) as Record<Group, boolean>
}
