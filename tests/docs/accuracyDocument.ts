import { accuracyRows } from './accuracyRows.js'
import { lampAtLowCurrentSection } from './lampAtLowCurrent.js'
import { plateLists } from './plateLists.js'
import { questionsSection } from './questionsSection.js'

const digits = (value: number): string => String(Number(value.toPrecision(4)))

const share = (theirs: number, ours: number): string =>
  `${(100 * (ours / theirs - 1)).toFixed(2).replace('-0.00', '0.00')} %`

/** docs/accuracy.md as the rows give it now. */
export function accuracyDocument(): string {
  const rows = accuracyRows()
  const parts = [...new Set(rows.map(({ part }) => part))]
  return [
    '# Accuracy',
    '',
    'Outside figures against ours. This page is written by `npm run docs`; `tests/docs/accuracy.test.ts` works every row out anew, holds it to the',
    'difference accepted for it, and fails when this page is stale. “Ngspice” is a circuit simulator run by others or through a library in',
    '`tests/published/`, where further circuits are compared each time the tests run (six switch-on circuits, bleeder, reforming stage, transformer',
    'and rectifier), beside the 13 points of a measured lamp, the fuse gates row by row, and the plates annotated by hand.',
    '',
    ...parts.flatMap((part) => [
      `## ${part}`,
      '',
      '| what | source | theirs | ours | difference | accepted | note |',
      '|---|---|---|---|---|---|---|',
      ...rows
        .filter((row) => row.part === part)
        .map(({ what, source, unit, theirs, ours, accepted, note }) =>
          `| ${what} | ${source} | ${digits(theirs)} ${unit} | ${digits(ours)} ${unit} | ${share(theirs, ours)} | ${Number((100 * accepted).toPrecision(2))} % | ${note} |`.replace(
            / +\|/g,
            ' |',
          ),
        ),
      '',
    ]),
    ...lampAtLowCurrentSection(),
    ...questionsSection(),
    ...plateLists(),
  ].join('\n')
}
