import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Polarity } from '../../server/plate/labelReading.js'
import { readPlate } from '../../server/plate/readPlate.js'
import { polarityTerms } from '../../server/tables/polarityTerms.js'
import { oneIn, runs } from '../support/long.js'

const P = 'centre-positive'
const N = 'centre-negative'
const read = (text: string): Polarity | null => readPlate(text).polarity
const opposite = (polarity: Polarity): Polarity => (polarity === P ? N : P)

interface Wording {
  centre: string[]
  outer: string[]
  plus: string[]
  minus: string[]
  /** between place and pole */
  is: string[]
  and: string
  /** between words */
  gap?: string
}

/** Plain words of 18 languages, from the head. */
const wordings: Record<string, Wording> = {
  en: {
    centre: ['centre', 'the center pin', 'inner contact', 'tip', 'inside'],
    outer: ['outside', 'the sleeve', 'outer contact', 'barrel'],
    plus: ['positive', 'plus', '+', '(+)'],
    minus: ['negative', 'minus', '−', '(-)'],
    is: ['', 'is', 'is the', ':', '='],
    and: 'and',
  },
  de: {
    centre: ['innen', 'der Innenleiter', 'die Mitte'],
    outer: ['außen', 'der Außenleiter', 'die Hülse'],
    plus: ['Plus', 'positiv', '+', '(+)'],
    minus: ['Minus', 'negativ', '−', '(-)'],
    is: ['', 'ist', 'ist der', 'liegt am', ':'],
    and: 'und',
  },
  fr: {
    centre: ['au centre', "à l'intérieur", 'centre'],
    outer: ["à l'extérieur", 'extérieur', 'la bague'],
    plus: ['positif', 'plus', '+'],
    minus: ['négatif', 'moins', '−'],
    is: ['', 'est', 'est le', ':'],
    and: 'et',
  },
  it: {
    centre: ['il centro', 'interno', 'centrale'],
    outer: ["l'esterno", 'esterno'],
    plus: ['positivo', '+'],
    minus: ['negativo', '−'],
    is: ['', 'è', 'è il', ':'],
    and: 'e',
  },
  es: {
    centre: ['el centro', 'interior', 'punta'],
    outer: ['exterior', 'el exterior'],
    plus: ['positivo', '+'],
    minus: ['negativo', '−'],
    is: ['', 'es', 'es el polo', ':'],
    and: 'y',
  },
  pt: {
    centre: ['centro', 'o pino central', 'interior'],
    outer: ['exterior', 'externo'],
    plus: ['positivo', '+'],
    minus: ['negativo', '−'],
    is: ['', 'é', 'é o', ':'],
    and: 'e',
  },
  nl: {
    centre: ['binnen', 'midden', 'de binnenkant'],
    outer: ['buiten', 'de buitenkant'],
    plus: ['plus', 'positief', '+'],
    minus: ['min', 'negatief', '−'],
    is: ['', 'is', 'is de', ':'],
    and: 'en',
  },
  sv: {
    centre: ['mitten', 'inre', 'mittstift'],
    outer: ['ytter', 'utsidan', 'hylsan'],
    plus: ['plus', 'positiv', '+'],
    minus: ['minus', 'negativ', '−'],
    is: ['', 'är', ':'],
    and: 'och',
  },
  da: {
    centre: ['midten', 'indre', 'inderst'],
    outer: ['yderst', 'ydre', 'ydersiden'],
    plus: ['plus', 'positiv', '+'],
    minus: ['minus', 'negativ', '−'],
    is: ['', 'er', ':'],
    and: 'og',
  },
  no: {
    centre: ['senter', 'midten', 'indre'],
    outer: ['ytterst', 'ytre', 'utsiden'],
    plus: ['pluss', 'positiv', '+'],
    minus: ['minus', 'negativ', '−'],
    is: ['', 'er', ':'],
    and: 'og',
  },
  fi: {
    centre: ['keskellä', 'sisällä', 'keskinapa'],
    outer: ['ulkona', 'ulkopuoli', 'holkki'],
    plus: ['plus', 'plussa', '+'],
    minus: ['miinus', 'negatiivinen', '−'],
    is: ['', 'on', ':'],
    and: 'ja',
  },
  hu: {
    centre: ['középen', 'közép', 'belül'],
    outer: ['kívül', 'külső'],
    plus: ['pozitív', 'plusz', '+'],
    minus: ['negatív', 'mínusz', '−'],
    is: ['', ':'],
    and: ',',
  },
  pl: {
    centre: ['w środku', 'środek', 'wewnątrz'],
    outer: ['na zewnątrz', 'zewnątrz'],
    plus: ['plus', 'dodatni', '+'],
    minus: ['minus', 'ujemny', '−'],
    is: ['', 'jest', ':'],
    and: 'i',
  },
  cs: {
    centre: ['uprostřed', 'střed', 'uvnitř'],
    outer: ['vně', 'venku'],
    plus: ['plus', 'kladný', '+'],
    minus: ['minus', 'záporný', '−'],
    is: ['', 'je', ':'],
    and: 'a',
  },
  ru: {
    centre: ['внутри', 'в центре', 'центр'],
    outer: ['снаружи', 'внешний'],
    plus: ['плюс', 'положительный', '+'],
    minus: ['минус', 'отрицательный', '−'],
    is: ['', 'это', ':'],
    and: 'и',
  },
  ja: {
    centre: ['センター', '内側', '中'],
    outer: ['外側', '外'],
    plus: ['プラス', '+', '＋'],
    minus: ['マイナス', '－', '(-)'],
    is: ['', 'が', 'は', ':'],
    and: 'と',
    gap: '',
  },
  zh: {
    centre: ['内', '中心', '里面'],
    outer: ['外', '外面'],
    plus: ['正', '正极', '+'],
    minus: ['负', '负极', '(-)'],
    is: ['', '为', '是', ':'],
    and: '和',
    gap: '',
  },
  ko: {
    centre: ['중심', '안쪽', '센터'],
    outer: ['바깥쪽', '외측'],
    plus: ['플러스', '+'],
    minus: ['마이너스', '(-)'],
    is: ['', '이', '은', ':'],
    and: '그리고',
    gap: '',
  },
}
const languages = Object.entries(wordings)

/** One clause on one place; `polarity` is what it says. */
interface Saying {
  text: string
  polarity: Polarity
  centre: boolean
}

function sayings({ centre, outer, plus, minus, is, gap = ' ' }: Wording): Saying[] {
  const join = (...words: string[]): string => words.filter((word) => word !== '').join(gap)
  return [true, false].flatMap((inner) =>
    [true, false].flatMap((up) =>
      (inner ? centre : outer).flatMap((place) =>
        (up ? plus : minus).flatMap((pole) =>
          is.flatMap((link) => {
            const polarity = inner === up ? P : N
            return [
              { text: join(place, link, pole), polarity, centre: inner },
              { text: join(pole, link, place), polarity, centre: inner },
            ] as Saying[]
          }),
        ),
      ),
    ),
  )
}

/** A busy machine reads thousands of sentences slowly. */
const patienceMs = 60_000

const separators = [', ', '; ', '. ', '\n', ' - ', ' / ', ' ', ' | ']

describe('a polarity told in words', () => {
  it.each(languages)(
    'is read where a word for the place stands before or behind a word for the pole (%s)',
    (_, wording) => {
      for (const { text, polarity } of sayings(wording)) {
        // a lone dash before its place may be the mark of a list
        if (/^[−－]/.test(text)) expect([polarity, null], text).toContain(read(text))
        else expect(read(text), text).toBe(polarity)
      }
    },
  )

  it.each(languages)(
    'is never the opposite whatever parts the two clauses, and read where a comma does (%s)',
    (_, wording) => {
      const all = sayings(wording)
      const faults: string[] = []
      const step = oneIn(29)
      for (const [index, one] of all.entries()) {
        const others = all.filter(({ centre, polarity }) => centre !== one.centre && polarity === one.polarity)
        // each with a few of the others, so that all come up
        for (const other of others.filter((_other, at) => at % step === index % step)) {
          for (const separator of [...separators, ` ${wording.and} `]) {
            const text = `${one.text}${separator}${other.text}`
            const said = read(text)
            const plain = separator === ', ' && !/^[−－]/.test(one.text)
            if (said === opposite(one.polarity) || (plain && said === null)) faults.push(text)
          }
        }
      }
      expect(faults).toEqual([])
    },
    patienceMs,
  )

  it(
    'is never the opposite with any word of the table, in either order',
    () => {
      const of = (language: string, ...parts: string[]) =>
        polarityTerms.filter((row) => row.language === language && parts.includes(row.part)).flatMap((row) => row.words)
      const faults: string[] = []
      for (const language of new Set(polarityTerms.map((row) => row.language))) {
        const fillers = ['', ...of(language, 'filler').slice(0, 2)]
        const check = (place: string, pole: string, polarity: Polarity) => {
          for (const filler of fillers) {
            for (const text of [`${place} ${filler} ${pole}`, `${pole} ${filler} ${place}`])
              if (read(text) === opposite(polarity)) faults.push(text)
          }
        }
        for (const plus of [...of(language, 'plus').slice(0, 3), '+']) {
          for (const place of of(language, 'centre', 'pin')) check(place, plus, P)
          for (const place of of(language, 'outer')) check(place, plus, N)
        }
        for (const minus of [...of(language, 'minus').slice(0, 3), '(-)']) {
          for (const place of of(language, 'centre', 'pin')) check(place, minus, N)
          for (const place of of(language, 'outer')) check(place, minus, P)
        }
      }
      expect(faults).toEqual([])
    },
    patienceMs,
  )

  const unknownWord = fc.stringMatching(/^[qx][bdfgklmvwz]{2,6}$/)
  const pairOf = fc
    .constantFrom(...languages)
    .chain(([, wording]) =>
      fc
        .tuple(
          fc.constantFrom(...sayings(wording)),
          fc.constantFrom(...sayings(wording)),
          fc.constantFrom(...separators),
        )
        .filter(([one, other]) => one.centre !== other.centre && one.polarity === other.polarity),
    )

  it(
    'is never the opposite with unknown words put in, or in the place of its own',
    () => {
      fc.assert(
        fc.property(
          pairOf,
          fc.array(fc.tuple(fc.nat(), fc.boolean(), unknownWord), { minLength: 1, maxLength: 3 }),
          ([one, other, separator], changes) => {
            const words = `${one.text}${separator}${other.text}`.split(/(?<= )/)
            for (const [at, replaces, word] of changes)
              words.splice(at % (words.length + 1), replaces ? 1 : 0, `${word} `)
            expect(read(words.join(''))).not.toBe(opposite(one.polarity))
          },
        ),
        { numRuns: runs(2000) },
      )
    },
    patienceMs,
  )
})

describe('a sentence on the polarity', () => {
  it.each<[string, Polarity | null]>([
    ['inside is positive, outside is ground', P],
    ['plus is on the inside, minus is on the outside', P],
    ['inner contact positive, outer contact negative', P],
    ['centre pin is +, outer is −', P],
    ['innen ist Plus, außen ist Minus', P],
    ['il centro è positivo, esterno è negativo', P],
    ['centre is ground, outer is positive', N],
    ['sleeve negative (ground)', P],
    ['tip = -9V', N],
    ['inside +12V, outside 0V', P],
    ['TIP- SLEEVE+', N],
    ['+tip -sleeve', P],
    ['+5V, centre negative', N],
    ['DC 9V 300mA CENTER NEGATIVE', N],
    ['No. 123 centre positive', P],
    ['No parts to repair inside. Centre positive', P],
    ['Nothing to repair. Centre positive', P],
    ['Barrel jack, center-positive', P],
    ['barrel plug, barrel positive', N],
    ['2.5mm barrel, tip positive', P],
    ['9V or 12V, tip positive', P],
    ['+ por dentro, − por fuera', P],
  ])('“%s” is %s', (text, polarity) => {
    expect(read(text)).toBe(polarity)
  })

  it.each([
    ['earth alone', 'outside is ground'],
    ['earth of a machine whose plus is earthed', 'positive ground, centre negative'],
    ['a place without a pole', 'centre, sleeve negative'],
    ['a pole without a place', 'plus, sleeve negative'],
    ['half a statement at the end of a line', 'inside is\npositive outside is\nground'],
    ['clauses torn by line ends', 'plus is on the\ninside, minus is on the\noutside'],
    ['a word and its pole on two lines', 'CENTER\nPOSITIVE'],
    ['a contradiction', 'centre positive, outer positive'],
    ['a contradiction between lines', 'centre positive\ncentre negative'],
    ['words against a drawing', 'centre positive ⊕-(•-⊖'],
    ['a denial', 'not centre positive'],
    ['a denial of a line before', 'this is not\ncentre positive'],
    ['a denial in German', 'nicht innen plus'],
    ['a reversal', 'polarity reversed: centre positive'],
    ['a choice', 'centre positive, reversible'],
    ['a question', 'centre positive?'],
    ['an unknown word beside the pole', 'kernel positive outer'],
    ['unknown words in the clause', 'center positive qwerty'],
    ['a dash that may be a mark of a list', '- centre'],
    ['a dash that may part a figure', 'tip - 9V'],
    ['a hyphen', 'tip-sleeve +'],
    ['both signs for both places', 'tip/sleeve +/-'],
    ['contacts by number', 'pin 1: +12V, pin 2: GND'],
    ['both places in one', 'tip and ring positive'],
    ['one sign or the other', 'tip + or −'],
    ['one sign or the other in German', 'Mitte plus oder minus'],
  ])('says nothing with %s', (_, text) => {
    expect(read(text)).toBeNull()
  })

  it('is read as a whole: its fillers are not left unread, and the reading tells the words that decided', () => {
    const { unread, from } = readPlate('9V DC 1A, the inside is positive, the outside is ground')
    expect(unread).toEqual([])
    expect(from).toContainEqual({ field: 'polarity', words: 'the inside is positive, the outside is ground' })
  })
})

describe('a drawing of the polarity', () => {
  it.each<[string, Polarity | null]>([
    ['⊖-(•-⊕', P],
    ['⊕-(•-⊖', N],
    ['(-)--(o--(+)', P],
    ['(+)--(o--(-)', N],
    ['⊕-•)-⊖', P],
    ['⊖-•)-⊕', N],
    ['⊖ —— ( • —— ⊕', P],
    ['⊕ — • ) — ⊖', P],
    ['(+)==( *==(-)', N],
    ['(+)--* )--(-)', P],
    ['⊕-⊂•-⊖', N],
    ['⊖-C•-⊕', P],
    ['–(o– +', P],
    ['-o)- +', N],
    ['⊖-(•)-⊕', null],
    ['⊖-( • )-⊕', null],
    ['(+)-(o)-(-)', null],
    ['+ -C- -', null],
    ['- -C- +', null],
    ['⊕-(•-⊕', null],
    ['⊕ ◎ ⊖', null],
    ['12V ( * see note ) +', null],
  ])('%s is %s', (drawing, polarity) => {
    expect(read(`OUTPUT 9V DC 1A ${drawing}`)).toBe(polarity)
  })
})

describe('the table of words for the polarity', () => {
  it('gives each written form one part', () => {
    const parts = new Map<string, string>()
    for (const { part, words, language } of polarityTerms) {
      for (const word of words) {
        const key = word.normalize('NFD').replace(/\p{M}/gu, '')
        expect(parts.get(key) ?? part, `${word} (${language})`).toBe(part)
        parts.set(key, part)
      }
    }
  })

  it('has a source in every row, and rows for 21 languages', () => {
    for (const { source, words } of polarityTerms) {
      expect(source.title).not.toBe('')
      expect(words.every((word) => word !== '')).toBe(true)
    }
    expect(new Set(polarityTerms.map(({ language }) => language)).size).toBe(21)
  })
})
