import { describe, expect, it } from 'vitest'
import { fold, foldWord } from '../../server/plate/fold.js'
import { lex } from '../../server/plate/lexer.js'
import { plateSymbols } from '../../server/tables/plateSymbols.js'
import { plateUnits, plateWords } from '../../server/tables/plateWords.js'

const tokensOf = (text: string) => lex(fold(text))

const key = (word: string): string => foldWord(word).replace(/\.$/, '')

describe('the table of words', () => {
  it('has a source in every row, and words that are not empty', () => {
    for (const { words, source } of plateWords) {
      expect(source.title).not.toBe('')
      for (const word of words) expect(key(word)).not.toBe('')
    }
  })

  it('covers input, output, primary, secondary, mains, voltage, current, power, frequency, a.c. and d.c. in 17 languages', () => {
    const languages = 'en de fr it es pt nl sv da no fi pl cs ru ja zh ko'.split(' ')
    const meanings = [
      'input',
      'output',
      'primary',
      'secondary',
      'mains',
      'voltage',
      'current',
      'power',
      'frequency',
      'ac',
      'dc',
    ]
    for (const language of languages) {
      for (const meaning of meanings) {
        const rows = plateWords.filter((row) => row.language === language && row.meaning === meaning)
        expect(rows.length, `${meaning} in ${language}`).toBeGreaterThan(0)
      }
    }
  })

  it('gives each written form one meaning', () => {
    const meanings = new Map<string, string>()
    for (const { meaning, words, language } of plateWords) {
      for (const word of words) {
        const known = meanings.get(key(word))
        expect(known ?? meaning, `${word} (${language})`).toBe(meaning)
        meanings.set(key(word), meaning)
      }
    }
  })

  it('is found in a text whatever the case, accents and closing full stop', () => {
    for (const { meaning, words } of plateWords) {
      for (const word of words) {
        for (const form of [word, word.toLowerCase(), word.normalize('NFD')]) {
          const [token] = tokensOf(`${form} `)
          expect(token, form).toMatchObject({ type: 'word', meaning, start: 0 })
        }
      }
    }
  })

  it('is not found inside a longer word', () => {
    for (const text of ['INPUTX', 'XINPUT', 'SECTION', 'RATEDNESS', 'вход2х', 'NETTING']) {
      expect(tokensOf(text).filter(({ type }) => type === 'word')).toEqual([])
    }
  })
})

describe('the table of units', () => {
  it('is found behind a number, joined and set off', () => {
    for (const { dimension, scale, kind, forms } of plateUnits) {
      for (const form of forms) {
        for (const text of [`5${form}`, `5 ${form}`]) {
          expect(tokensOf(text), text).toMatchObject([
            { type: 'number', digits: '5', unit: { dimension, scale, kind } },
          ])
        }
      }
    }
  })
})

describe('the table of symbols', () => {
  it('has a source in every row', () => {
    for (const { source, name } of plateSymbols) expect(source.title, name).not.toBe('')
  })

  it('is found behind a voltage where it says the kind of current', () => {
    for (const { meaning, characters } of plateSymbols.filter((row) => row.meaning === 'ac' || row.meaning === 'dc')) {
      for (const one of characters) {
        const tokens = tokensOf(`9V ${one}`)
        expect(tokens, one).toHaveLength(2)
        const said = tokens[1]!
        const kind =
          said.type === 'symbol'
            ? said.meaning
            : said.type === 'sign'
              ? { '~': 'ac', '=': 'dc', '--': 'dc' }[said.sign]
              : null
        expect(kind, one).toBe(meaning)
      }
    }
  })
})

describe('characters', () => {
  it.each([
    ['full-width letters and figures', 'ＡＣ１００Ｖ', 'AC100V'],
    ['the figures of Arabic', 'AC ١٠٠ V', 'AC 100 V'],
    ['units in one character', '5㎃ 50㎐', '5mA 50Hz'],
    ['dashes of all lengths', '1–2—3−4', '1-2-3-4'],
    ['tildes of all kinds', '∼∿〜～⏦', '~~~~~'],
    ['accents', 'Entrée Příkon Wyjście', 'Entree Prikon Wyjscie'],
    ['invisible marks', '1\u200B2\u00ADV', '12V'],
    ['a combining tilde behind the unit', '230V\u0303', '230V~'],
    ['an accent that is a tilde', 'TENSÃO', 'TENSAO'],
  ])('unifies %s', (_, from, to) => {
    expect(fold(from).text).toBe(to)
  })

  it('keeps numerals apart whose plain form would be another number', () => {
    expect(fold('1½').text).toBe('1½')
    expect(fold('10²').text).toBe('10²')
  })

  it('knows where each character stood', () => {
    const { text, origin } = fold('\u200B５㎃!')
    expect(text).toBe('5mA!')
    expect([...origin]).toEqual([1, 2, 2, 3, 4])
  })
})
