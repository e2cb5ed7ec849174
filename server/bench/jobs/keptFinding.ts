import type { ToldFinding } from '../../chain/finding.js'

/** A finding as records keep it: those made before actions stood one by one have them as one text only. */
export type KeptFinding = Omit<ToldFinding, 'actions'> & Partial<Pick<ToldFinding, 'actions'>>

/** The same with its actions in a list. Of an older one the whole text is one action; whose work it is stands in its words. */
export const withActions = (finding: KeptFinding): ToldFinding => ({
  ...finding,
  actions: finding.actions ?? (finding.action === null ? [] : [{ do: finding.action, who: 'you', power: 'none' }]),
})
