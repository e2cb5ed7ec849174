import { describe, expect, it } from 'vitest'
import { alarmIn } from '../../server/plan/alarm.js'

describe('words that are a stop', () => {
  it.each([
    ['burnt, smoke', 'burnt'],
    ['Burning smell after a minute', 'burning'],
    ['a leaked cell', 'leaked'],
    ['two capacitors bulging', 'bulging'],
    ['smell: acrid', 'acrid'],
    ['warm dust, then smoke', 'smoke'],
    ['no hum, but it smokes', 'smokes'],
    ['no hum but smoke', 'smoke'],
    ['no smoke yet burning smell', 'burning'],
    ['no smoke burnt smell', 'burnt'],
    ['not only warm: smoking', 'smoking'],
    ['lamp stayed bright', 'stayed bright'],
    ['too hot to touch', 'too hot'],
    ['got a tingle from the case', 'tingle'],
    ['RCD tripped', 'tripped'],
    ['es raucht', 'raucht'],
    ['riecht verschmort', 'verschmort'],
    ['Kondensator ausgelaufen', 'ausgelaufen'],
    ['ça sent le brûlé', 'brule'],
    ['de la fumée', 'fumee'],
    ['huele a quemado', 'quemado'],
    ['puzza di bruciato', 'bruciato'],
    ['er komt rook uit', 'rook'],
    ['not sure - smoke?', 'smoke'],
  ])('stand in “%s”: %s', (text, found) => {
    expect(alarmIn(text)).toBe(found)
  })

  it.each([
    'warm dust',
    'no smell, no smoke',
    'no smoke or burning',
    'nothing burnt',
    'no sign of leaking',
    'without sparks',
    'smoke: none',
    'neither smoke nor sparks',
    'raucht nicht',
    'kein Rauch, kein Brandgeruch',
    'pas de fumée',
    'ni humo ni chispas',
    'senza fumo',
    'geen rook of vonken',
    'fan runs, three lamps lit, quiet hum',
    'reads the tape',
    '',
  ])('do not stand in “%s”', (text) => {
    expect(alarmIn(text)).toBeNull()
  })
})
