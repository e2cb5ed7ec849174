import { describe, expect, it } from 'vitest'
import { saysSetsItself } from '../../server/plate/sayings.js'
import { assess } from '../support/told.js'
import { changed } from './cases.js'

describe('a plate that says its unit finds the mains voltage itself', () => {
  it.each(['AUTO SELECT 115/230V~', 'AUTORANGING', '100/240V AUTOSWITCHING', 'Automatische Umschaltung'])(
    '%s does',
    (text) => {
      expect(saysSetsItself(text)).toBe(true)
    },
  )

  it.each([
    'NO AUTORANGING',
    'NON-AUTORANGING',
    'WITHOUT AUTO-SELECT',
    'AUTO-SELECT: OFF',
    'AUTORANGING DISABLED',
    'AUTOSELECT MODELS ONLY',
    'MANUAL SELECT NOT AUTO-SELECT',
    'keine automatische Umschaltung',
    'sans sélection automatique',
  ])('%s takes it back, and its selector is asked for', (text) => {
    expect(saysSetsItself(text)).toBe(false)
    const label = `INPUT 115/230V~ 50/60Hz 0.5A OUTPUT 12V DC 2A ${text}`
    const { findings } = assess(changed({ supply: { label, input: null, outputs: null } }))
    expect(findings.find(({ topic }) => topic === 'mains-voltage')?.outcome).toBe('unknown')
  })
})

describe('an output that may be joined to the mains', () => {
  it.each(['NOT ISOLATED FROM MAINS', 'AUTOTRANSFORMER'])('%s: nothing is measured or powered', (words) => {
    const label = `INPUT 230V~ 50Hz 0.2A OUTPUT 12V DC 2A ${words}`
    const { verdict, findings } = assess(changed({ supply: { label, input: null, outputs: null } }))
    expect(verdict).toBe('do-not-connect')
    expect(findings.flatMap(({ actions }) => actions).filter(({ power }) => power !== 'none')).toEqual([])
  })
})
