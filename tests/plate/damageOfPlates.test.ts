import { readFileSync } from 'node:fs'
import { parse } from 'csv-parse/sync'
import { describe, expect, it } from 'vitest'
import type { LabelRail, LabelReading } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { some } from '../support/long.js'

const list = (path: string): string[] =>
  (parse(readFileSync(new URL(path, import.meta.url), 'utf8'), { columns: true }) as { text: string }[]).map((row) =>
    row.text.replaceAll('\\n', '\n'),
  )

const texts = some(
  ['../published/labelCorpus.csv', '../published/labelCorpusLanguages.csv', './furtherPlates.csv'].flatMap(list),
)

/** One kind of damage at one place of a text; null where it does not suit the place. */
type Damage = (text: string, at: number) => string | null

const isFigure = (one: string | undefined): boolean => one !== undefined && /[\d.,]/.test(one)

/** A space within a number or beside its decimal mark, and nowhere else. */
const space: Damage = (text, at) =>
  /\d/.test(text[at] ?? '') && isFigure(text[at + 1]) && /[\d.,]\d|\d[.,]\d/.test(text.slice(at, at + 3))
    ? `${text.slice(0, at + 1)} ${text.slice(at + 1)}`
    : /[.,]/.test(text[at] ?? '') && /\d/.test(text[at - 1] ?? '') && /\d/.test(text[at + 1] ?? '')
      ? `${text.slice(0, at + 1)} ${text.slice(at + 1)}`
      : null

const wide: Damage = (text, at) => {
  const code = text.charCodeAt(at)
  return code > 0x20 && code < 0x7f ? text.slice(0, at) + String.fromCharCode(code + 0xfee0) + text.slice(at + 1) : null
}

const letters: Record<string, string[]> = { 0: ['O', 'o', 'О'], 1: ['I', 'l'] }
const letter: Damage = (text, at) => {
  const forms = letters[text[at] ?? '']
  return forms ? text.slice(0, at) + forms[at % forms.length] + text.slice(at + 1) : null
}

const damages = { space, wide, letter }

/** A rail whose certain figures are those of a rail that was read before. */
function isKnownRail(
  list: 'outputs' | 'takes',
  rails: LabelRail[],
  at: number,
  unsure: string[],
  known: LabelRail[],
): boolean {
  const isSure = (key: string): boolean => !unsure.includes(`${list}.${at}.${key}`)
  const rail = rails[at]!
  const agrees = (one: LabelRail, key: 'voltageV' | 'voltageMaxV' | 'currentA' | 'powerVA' | 'powerW'): boolean =>
    rail[key] === null || rail[key] === one[key] || !isSure(key)
  const none: LabelRail = {
    kind: null,
    voltageV: Number.NaN,
    voltageMaxV: null,
    currentA: null,
    powerVA: null,
    powerW: null,
  }
  return [...known, none].some((one) =>
    (['voltageV', 'voltageMaxV', 'currentA', 'powerVA', 'powerW'] as const).every((key) => agrees(one, key)),
  )
}

/** Certain figures of a damaged plate that the whole one does not have. */
function invented(whole: LabelReading, damaged: LabelReading): string[] {
  const { input, unsure } = damaged
  const out: string[] = []
  const say = (field: string, value: unknown): void => {
    if (!unsure.includes(field)) out.push(`${field}: ${JSON.stringify(value)}`)
  }
  for (const key of ['currentA', 'powerVA', 'powerW'] as const)
    if (input?.[key] != null && input[key] !== whole.input?.[key]) say(`input.${key}`, input[key])
  const windows = (whole.input?.voltages ?? []).map((one) => JSON.stringify(one))
  if (input?.voltages.some((one) => !windows.includes(JSON.stringify(one)))) say('input.voltages', input.voltages)
  if (input?.frequenciesHz.some((one) => !whole.input?.frequenciesHz.includes(one)))
    say('input.frequenciesHz', input.frequenciesHz)
  for (const name of ['outputs', 'takes'] as const)
    damaged[name].forEach((rail, at) => {
      if (!isKnownRail(name, damaged[name], at, unsure, whole[name])) out.push(`${name}.${at}: ${JSON.stringify(rail)}`)
    })
  return out
}

/** Some ten thousand plates are read [ms]. */
const patience = 240_000

describe('damage of the kind that pasted text has', () => {
  it.each(Object.entries(damages))(
    'never gives a certain figure that the whole plate does not: %s',
    (_, damage) => {
      const places = texts.flatMap((text) =>
        Array.from(text, (_one, at) => damage(text, at)).flatMap((damaged) =>
          damaged === null ? [] : [{ text, damaged }],
        ),
      )
      expect(places.length).toBeGreaterThan(250)
      const whole = new Map(texts.map((text) => [text, readPlate(text)]))
      const wrong = places.flatMap(({ text, damaged }) => {
        const said = invented(whole.get(text)!, readPlate(damaged))
        return said.length === 0 ? [] : [{ damaged, said }]
      })
      expect(wrong).toEqual([])
    },
    patience,
  )
})
