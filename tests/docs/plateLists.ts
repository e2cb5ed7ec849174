import { comparePlates } from '../support/platesByHand.js'

/** Lists of plates annotated by hand, with where their texts come from. */
const lists = [
  { file: '../published/labelCorpus.csv', of: 'plates seen in public texts and pictures' },
  { file: '../published/labelCorpusLanguages.csv', of: 'the same in 28 languages' },
  { file: '../plate/furtherPlates.csv', of: 'plates written by a second person from their meaning, invented' },
]

const percent = (part: number): string => `${(100 * part).toFixed(2)} %`

/** How many fields of each list are read as a person read them: a table of docs/accuracy.md. */
export function plateLists(): string[] {
  return [
    '## Reading of plates',
    '',
    'Fields read as a person read them, field by field; what is left unread counts as not right, what is read as something else as misread. At least 97 %',
    'have to be right and at most 1 % misread. Beside these, held row by row: 26 sentences that tell a polarity, 10 plates of machines, and 32 markings of',
    'fuse-links (`tests/published/`). Texts never seen before do worse: see [plate-reading.md](plate-reading.md).',
    '',
    '| plates | how many | fields right | misread |',
    '|---|---|---|---|',
    ...lists.map(({ file, of }) => {
      const { plates, rightShare, misreadShare } = comparePlates(new URL(file, import.meta.url))
      return `| ${of} | ${plates} | ${percent(rightShare)} | ${percent(misreadShare)} |`
    }),
    '',
  ]
}
