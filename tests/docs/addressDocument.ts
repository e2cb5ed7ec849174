import { wordOf } from '../../server/facts/address.js'
import { facts, type Placed } from '../../server/facts/boxes.js'
import type { Fact } from '../../server/facts/fact.js'

const head = `# The address of a check

<!-- Written by \`npm run docs\` from the rows in server/facts/; do not edit. -->

A check is held by its address and by nothing else: \`/?country=DE&supply=…&machine=…\` opens the same check on any
Lampline, and can be bookmarked, sent, or kept in a spreadsheet. Nothing is stored for it.

Every parameter is optional. An absent one means "not known"; an empty one is dropped by a redirect. A name that is not
listed here, a name given twice, hidden characters, and text of more than 1500 characters for a plate or 200 for any other
field are answered with status 422 and a sentence beside the field, and left out of what is judged.

Numbers may carry a decimal point or comma and their unit: \`12.5\`, \`12,5\`, \`500 mA\`. A group of three figures behind one
sign (\`1,500\`, \`1.500\`) can be read two ways and is refused.

A field given here counts instead of what the plate's words say. One output given counts instead of all the plate's
outputs, and so for what the machine takes.
`

const sections: Record<string, string> = {
  arrangement: 'What there is',
  site: 'The place',
  supply: 'The supply',
  device: 'The machine',
  cord: 'The cord',
  converter: 'A converter',
  readings: 'The readings of the plates',
}

const code = (text: string): string => `\`${text}\``

/** What may stand behind the name. */
function values(fact: Fact): string {
  switch (fact.kind) {
    case 'number': {
      const { unit, min, max, typed, apartFromZero } = fact
      const sign = apartFromZero === undefined ? '' : `, with its sign, at least ${apartFromZero} in size`
      return `number [${unit}], ${typed?.min ?? min} to ${typed?.max ?? max}${sign}`
    }
    case 'numbers':
      return `numbers [${fact.unit}], ${fact.min} to ${fact.max}, several with \`/\` between: \`50/60\``
    case 'windows':
      return `voltages [V]: one value, a range, or several with \`/\` between: \`230\`, \`100-240\`, \`115/230\``
    case 'choice':
      return fact.choices.map((choice) => code(wordOf(choice))).join(', ')
    case 'text':
      return fact.choices ? `one line, such as ${code(fact.choices[1]?.value ?? '')}` : 'one line'
    case 'phrases':
      return 'phrases, one on each line'
    case 'plate':
      return 'words, with their line ends'
    case 'keys':
      return 'keys with spaces between, as in the `unsure` of a reading behind `supply.` or `device.`, with what was read behind an equals sign: `supply.outputs.0.currentA=0.5`'
    case 'country':
      return 'ISO 3166-1 alpha-2 code, or a name in any language of the plates, which leads to its code: `DE`, `England`, `日本`'
  }
}

const row = ({ fact, list }: Placed): string => {
  const name = (number: number): string => code(fact.address.replace('#', String(number)))
  const names = list ? `${name(1)} … ${name(list.rows)}` : code(fact.address)
  return `| ${names} | ${fact.label}${list ? ` of each ${list.each}` : ''} | ${values(fact)} |`
}

/** docs/address.md. */
export const addressDocument = (): string =>
  [
    head,
    ...Object.entries(sections).map(([part, title]) =>
      [
        `## ${title}\n`,
        '| parameter | meaning | values |',
        '|---|---|---|',
        ...facts.filter(({ key }) => key.startsWith(`${part}.`)).map(row),
        '',
      ].join('\n'),
    ),
  ].join('\n')
