import { hertz, percent, volts } from '../../../physics/quantity.js'
import { colourProvesNothing, conductorColours } from '../../../reference/conductorColours.js'
import { homeFrequencyRows, homeFrequencySource } from '../../../reference/homeFrequencies.js'
import { countries } from '../../../reference/mains.js'
import { mainsBands } from '../../../reference/mainsBands.js'
import { countryRows } from '../../../reference/mainsCountries.js'
import { plugFits } from '../../../reference/plugFits.js'
import { plugTypes } from '../../../reference/plugTypes.js'
import { ratingTests } from '../../../reference/ratingTests.js'
import { socketFaces } from '../../../reference/socketFaces.js'
import { socketFaceDrawing } from '../../charts/socketFace.js'
import { byName } from '../../language.js'
import { countryName } from '../countryNames.js'
import { type Cell, slug, type Table } from './table.js'

const range = (minV: number, maxV: number): string => `${volts(minV)} to ${volts(maxV)}`
const yesNo = (value: boolean | null): string => (value === null ? 'not known' : value ? 'yes' : 'no')
const paragraphs = (notes: readonly string[]): string => notes.join(' ')

/** Row of the sockets table for a letter: the first of its forms. */
const faceOf = new Map(socketFaces.toReversed().map(({ letter, id }) => [letter, id]))
const socketLinks = (letters: readonly string[]): Cell =>
  letters.map((letter) => ({ text: letter, href: `/reference/sockets#${faceOf.get(letter) ?? ''}` }))

const doubtOf = new Map(countryRows.map(({ country, doubt }) => [country, doubt]))

export const countriesTable: Table = {
  name: 'countries',
  title: 'Mains by country',
  intro:
    'Nominal voltage and frequency, the band the voltage may lie in at the supply terminals, and the sockets met there. Where lists disagree the row says so: measure before anything is plugged in.',
  columns: [
    { title: 'Country' },
    { title: 'Code' },
    { title: 'Mains' },
    { title: 'Band' },
    { title: 'Sockets' },
    { title: 'Notes' },
  ],
  rows: () =>
    countries
      .map(({ country, systems, sockets, notes, sources }) => {
        const doubt = doubtOf.get(country)
        return {
          id: country.toLowerCase(),
          cells: [
            countryName(country),
            country,
            systems.map(({ voltageV, frequencyHz }) => `${volts(voltageV)} ${hertz(frequencyHz)}`).join('; '),
            systems.map(({ minV, maxV }) => range(minV, maxV)).join('; '),
            socketLinks(sockets),
            paragraphs(notes.filter((note) => note !== doubt)),
          ],
          sources: [...sources, ...systems.flatMap(({ bandSources }) => bandSources)],
          doubt,
        }
      })
      .sort((one, other) => byName(String(one.cells[0]), String(other.cells[0]))),
}

export const bandsTable: Table = {
  name: 'tolerance-bands',
  title: 'Mains tolerance bands',
  intro:
    'How far the mains may stray from its nominal voltage. Rows of the kind “supply” decide; the others are shown for comparison and decide nothing.',
  columns: [
    { title: 'Rule' },
    { title: 'Nominal', unit: 'V' },
    { title: 'Frequency' },
    { title: 'From', unit: 'V' },
    { title: 'To', unit: 'V' },
    { title: 'Kind' },
    { title: 'Where' },
    { title: 'Meaning' },
  ],
  rows: () =>
    mainsBands.map(({ name, voltageV, frequenciesHz, minV, maxV, kind, countries, meaning, sources, doubt }) => ({
      id: slug(name, voltageV, frequenciesHz.join(' '), kind, minV, maxV),
      cells: [
        name,
        voltageV,
        frequenciesHz.map((frequency) => hertz(frequency)).join(' or '),
        minV,
        maxV,
        kind,
        countries === null ? 'wherever no national row stands' : countries.map(countryName).join(', '),
        meaning,
      ],
      sources,
      doubt,
    })),
}

export const homeFrequenciesTable: Table = {
  name: 'home-frequencies',
  title: 'Home regions of a plate voltage',
  intro: 'What frequency a plate was made for where it prints a voltage and no frequency.',
  columns: [{ title: 'Plate voltage' }, { title: 'Frequencies' }, { title: 'Regions' }],
  rows: () =>
    homeFrequencyRows.map(({ fromV, toV, frequenciesHz, regions }) => ({
      id: slug(fromV, 'to', toV, 'v'),
      cells: [range(fromV, toV), frequenciesHz.map((frequency) => hertz(frequency)).join(' or '), regions],
      sources: [homeFrequencySource],
    })),
}

export const ratingTestsTable: Table = {
  name: 'rating-tests',
  title: 'How far a rating plate was tested',
  intro: 'How far below and above its printed voltage a unit was run in its type test, by the kind of plate.',
  columns: [{ title: 'Standard' }, { title: 'Plate' }, { title: 'Below the plate' }, { title: 'Above the plate' }],
  rows: () =>
    ratingTests.map(({ standard, applies, below, above, sources, doubt }) => ({
      id: slug(standard, applies),
      cells: [standard, applies, percent(below), percent(above)],
      sources,
      doubt,
    })),
}

export const socketsTable: Table = {
  name: 'sockets',
  title: 'Wall sockets',
  intro:
    'The faces as one looks at them. Openings are as large and as far apart as the pins of the plug, all drawings at one scale; the recess around them is only indicated. E marks the earth, filled parts stand out of the socket. A face whose dimensions are not known well enough is described in words only.',
  warning:
    'The shape proves neither voltage nor earth: the same socket carries 120 V in one place and 230 V in another, and an earth contact may be connected to nothing. Measure.',
  columns: [{ title: 'Letter and form' }, { title: 'Face' }, { title: 'What is seen' }],
  rows: () =>
    socketFaces.map((face) => {
      const svg = socketFaceDrawing(face)
      return {
        id: face.id,
        cells: [
          `${face.letter}: ${face.form}`,
          svg === null ? 'not drawn' : { svg, text: 'drawn on the page' },
          face.seen,
        ],
        sources: face.sources,
        doubt: face.doubt,
      }
    }),
}

export const plugTypesTable: Table = {
  name: 'plugs',
  title: 'Mains plugs',
  intro: 'Ratings of the plugs by their standards, and whether one may be fitted by hand.',
  columns: [
    { title: 'Plug' },
    { title: 'Letters' },
    { title: 'Rated', unit: 'V' },
    { title: 'Rated', unit: 'A' },
    { title: 'Earthed' },
    { title: 'Polarised' },
    { title: 'Rewirable' },
    { title: 'Fused' },
    { title: 'Also written', names: true },
    { title: 'Notes' },
  ],
  rows: () =>
    plugTypes.map((plug) => ({
      id: slug(plug.name),
      cells: [
        plug.name,
        socketLinks(plug.letters),
        plug.ratedV,
        plug.ratedA,
        yesNo(plug.earthed),
        yesNo(plug.polarised),
        yesNo(plug.rewirable),
        yesNo(plug.fused),
        plug.aliases.join(', '),
        paragraphs(plug.notes),
      ],
      sources: plug.sources,
      doubt: plug.doubt,
    })),
}

export const plugFitsTable: Table = {
  name: 'plug-fits',
  title: 'Which plug goes into which socket',
  intro:
    'Going in is not enough: the earth column says whether the earth is made. “forced” means that it enters with force or a tool, and is refused. A rare socket does not decide for its letter.',
  columns: [
    { title: 'Plugs in sockets' },
    { title: 'Sockets' },
    { title: 'Which of them' },
    { title: 'Fits' },
    { title: 'Earth' },
    { title: 'Commonness' },
    { title: 'Only in' },
    { title: 'Note' },
  ],
  rows: () =>
    plugFits.map(({ plugs, letters, socket, countries, commonness, fits, earth, note, sources, doubt }) => ({
      id: slug(plugs[0] ?? '', 'in', letters.join(' '), socket, ...(countries ?? [])),
      cells: [
        `${plugs.join(', ')} in ${letters.join(', ')}`,
        socketLinks(letters),
        socket,
        fits,
        earth,
        commonness,
        countries ? countries.map(countryName).join(', ') : '',
        note,
      ],
      sources,
      doubt,
    })),
}

export const coloursTable: Table = {
  name: 'conductor-colours',
  title: 'Conductor colours, old and new',
  intro:
    'Which colour stood for which conductor, by region and time. It helps to understand what one finds; it is no leave to connect anything. Mains wiring is for a licensed electrician or other qualified person.',
  warning: `${colourProvesNothing.title}: ${colourProvesNothing.detail}.`,
  columns: [
    { title: 'Region and use' },
    { title: 'Line' },
    { title: 'Neutral' },
    { title: 'Earth' },
    { title: 'Since' },
  ],
  rows: () =>
    conductorColours.map(({ region, line, neutral, earth, since, sources, doubt }) => ({
      id: slug(region),
      cells: [region, line, neutral, earth, since],
      sources,
      doubt,
    })),
}
