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
    ['hot to the touch', 'hot to the touch'],
    ['the regulator gets hot', 'gets hot'],
    ['zap from the knob', 'zap'],
    ['got a shock', 'shock'],
    ['it shocks me', 'shocks'],
    ['tingling in the arm', 'tingling'],
    ['the case bites', 'bites'],
    ['chassis is live', 'chassis is live'],
    ['not without smoke', 'smoke'],
    ['nicht ohne Rauch', 'rauch'],
    ['идёт дым', 'дым'],
    ['задымился', 'задымился'],
    ['пахнет гарью', 'гарью'],
    ['без запаха, но искрит', 'искрит'],
    ['не без дыма', 'дыма'],
    ['бьёт током', 'бьет током'],
    ['конденсатор вздулся', 'вздулся'],
    ['煙が出た', '煙'],
    ['少し焦げ臭い', '焦げ'],
    ['煙はないが、異臭がする', '異臭'],
    ['煙が止まらない', '煙'],
    ['ケースに触れると感電した', '感電'],
    ['火花！', '火花'],
  ])('stand in “%s”: %s', (text, found) => {
    expect(alarmIn(text)).toBe(found)
  })

  // words for smoke, a shock and a bright lamp, of dictionaries
  it.each(
    'the lamp stayed at full brightness; boom; loud pop then dark; fish smell; 220 V on the case; elektrischer Schlag; Gehäuse unter Spannung; décharge; лампа горит в полный накал; вонь; 冒烟了; 연기가 났다; det ryger; røyk; rök; savua; dym; kouř; füst; καπνός; دخان; fumaça; עשן; duman; s m o k e; s.m.o.k.e; sm\u043Eke; smo\u200Bke'.split(
      '; ',
    ),
  )('stand in “%s”, in any language and however it is spelt', (text) => {
    expect(alarmIn(text)).not.toBeNull()
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
    'not hot to the touch',
    'no shock, no tingle',
    'дыма нет',
    'без дыма и запаха',
    'ни дыма, ни искр',
    'лампа горит',
    '煙なし、異臭なし',
    '没有冒烟',
    '연기 없음',
    'ingen rök',
    'det ryger ikke',
    'bez dymu',
    'nincs füst',
    'duman yok',
    'dummy load connected',
    'lamp is dim',
    'the label on the case',
    '煙は出ていない',
    '火花も出ません',
    'fan runs, three lamps lit, quiet hum',
    'reads the tape',
    '',
  ])('do not stand in “%s”', (text) => {
    expect(alarmIn(text)).toBeNull()
  })
})
