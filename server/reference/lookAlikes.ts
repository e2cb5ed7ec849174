import { frozen } from './frozen.js'
import { commonPractice } from './source.js'

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
