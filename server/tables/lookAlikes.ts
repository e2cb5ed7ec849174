import { frozen } from './frozen.js'
import { commonPractice } from './source.js'
import { table } from './table.js'

/** Characters that print, a scan or a keyboard puts for one another. What is read through them is proposed, never taken as read. */
export const lookAlikes = frozen({
  /** letters that stand for a figure, by the figure */
  figures: [
    ['0', 'OoОоΟο'],
    ['1', 'IlІӀΙ'],
    ['3', 'Зз'],
  ] as readonly (readonly [string, string])[],
  /** capitals of other alphabets and the Latin one that looks the same */
  capitals: [
    ['АΑ', 'A'],
    ['ВΒ', 'B'],
    ['С', 'C'],
    ['ЕΕ', 'E'],
    ['НΗ', 'H'],
    ['ІΙӀ', 'I'],
    ['КΚ', 'K'],
    ['МΜ', 'M'],
    ['ΝΝ', 'N'],
    ['ОΟ', 'O'],
    ['РΡ', 'P'],
    ['ТΤ', 'T'],
    ['ХΧ', 'X'],
    ['УΥ', 'Y'],
    ['Ζ', 'Z'],
    ['Ѕ', 'S'],
    ['Ј', 'J'],
  ] as readonly (readonly [string, string])[],
  /** signs of the Japanese syllabary and ideographs that look the same */
  ideographs: [
    ['カ', '力'],
    ['ニ', '二'],
    ['ー', '一'],
    ['人', '入'],
    ['ロ', '口'],
  ] as readonly (readonly [string, string])[],
  source: commonPractice(
    'Texts copied off photographs',
    'pairs that recognition of print confuses; rule of this project',
  ),
} as const)

const { figures, capitals, ideographs, source } = lookAlikes
const spaced = (characters: string): string => [...characters].join(' ')
const pairs = [
  ...figures.map(([read, printed]) => ({ kind: 'figure', printed: spaced(printed), read, source })),
  ...capitals.map(([printed, read]) => ({ kind: 'capital', printed: spaced(printed), read, source })),
  ...ideographs.map(([printed, read]) => ({ kind: 'sign', printed: `${printed} ${read}`, read: 'either', source })),
]

export const lookAlikesTable = table<(typeof pairs)[number]>({
  name: 'look-alikes',
  title: 'Characters that look the same',
  intro:
    'What print, a scan or a keyboard puts for another character. What is read through them is proposed, never taken as read.',
  rows: pairs,
  id: ({ kind, printed, read }) => [kind, read === 'either' ? printed : read],
  columns: [
    { key: 'printed', title: 'Printed' },
    { key: 'read', title: 'May stand for' },
    { key: 'kind', title: 'Kind' },
  ],
})
