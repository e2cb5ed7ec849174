import { awgRows } from './awg.js'
import { conductorColours } from './conductorColours.js'
import { cordRows, minimumAreaRows, plugFuseRows } from './cordRows.js'
import { dcPlugRows } from './dcPlugRows.js'
import { heatCapacityRows, tungstenRows } from './filament.js'
import { glowRows } from './glow.js'
import { crossMatings, inletPairs } from './inletPairs.js'
import { lampSizeRows } from './lamps.js'
import { mainsBands } from './mainsBands.js'
import { countryRows } from './mainsCountries.js'
import { plugFits } from './plugFits.js'
import { plugTypes } from './plugTypes.js'
import { ratingTests } from './ratingTests.js'
import { socketFaces } from './socketFaces.js'
import { socketLetters } from './sockets.js'
import type { Sourced } from './sourced.js'
import { allowedRiseRows, regulationRows } from './transformerRegulation.js'

type Fault = string | false

const within = (value: number | null, low: number, high: number): boolean =>
  value === null || (value >= low && value <= high)

function repeated(keys: readonly string[]): string[] {
  return [...new Set(keys.filter((key, index) => keys.indexOf(key) !== index))]
}

const plain = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9.]/g, '')

/** One table: every row has its sources, no key twice, and nothing that `faultsOf` finds wrong. */
function table<Row extends Sourced>(
  name: string,
  rows: readonly Row[],
  keyOf: (row: Row) => string,
  faultsOf: (row: Row) => readonly Fault[],
): string[] {
  const inRows = rows.flatMap((row) =>
    [row.sources.length === 0 && 'has no source', row.doubt === '' && 'has an empty doubt', ...faultsOf(row)].flatMap(
      (fault) => (fault === false ? [] : [`${name}, ${keyOf(row)}: ${fault}`]),
    ),
  )
  const twice = repeated(rows.map(keyOf)).map((key) => `${name}: ${key} stands twice`)
  return [...(rows.length === 0 ? [`${name}: has no rows`] : []), ...twice, ...inRows]
}

const rising = (name: string, values: readonly number[]): string[] =>
  values.every((value, index) => index === 0 || value > (values[index - 1] ?? value))
    ? []
    : [`${name}: rows do not rise`]

const letters = new Set<string>(socketLetters)
const strange = (known: ReadonlySet<string>, names: readonly string[]): Fault => {
  const unknown = names.filter((name) => !known.has(name))
  return unknown.length > 0 && `names ${unknown.join(', ')}, which no table has`
}

/**
 * What is wrong in the reference tables; empty when nothing is. Checked once at start.
 * Keys are unique, numbers in range, every row has a source, and every name in one table is found in the other.
 */
export function validateReference(): string[] {
  const isoCodes = new Set(countryRows.map((row) => row.country))
  const plugNames = new Set(plugTypes.map((plug) => plug.name))
  const connectors = new Set(inletPairs.map((pair) => pair.connector))
  const inletNames = new Set(inletPairs.map((pair) => pair.inlet))
  return [
    ...table(
      'socketFaces',
      socketFaces,
      (row) => row.id,
      (row) => [
        strange(letters, [row.letter]),
        row.parts.some(
          ({ xMm, yMm, widthMm, heightMm }) => Math.hypot(xMm, yMm) > 30 || widthMm > 10 || heightMm > 10,
        ) && 'has a part that no socket has',
      ],
    ),
    ...socketLetters
      .filter((letter) => !socketFaces.some((face) => face.letter === letter))
      .map((letter) => `socketFaces: no face of socket ${letter}`),
    ...table(
      'mainsCountries',
      countryRows,
      (row) => row.country,
      (row) => [
        !/^[A-Z]{2}$/.test(row.country) && 'is not two capital letters',
        row.systems.length === 0 && 'has no mains system',
        row.systems.some(([voltageV, frequencyHz]) => !within(voltageV, 100, 240) || ![50, 60].includes(frequencyHz)) &&
          'has a system outside 100 to 240 V, 50 or 60 Hz',
        repeated(row.systems.map(String)).length > 0 && 'has a system twice',
        row.sockets.length === 0 && 'has no socket',
        repeated(row.sockets).length > 0 && 'has a socket twice',
        strange(letters, row.sockets),
      ],
    ),
    ...table(
      'mainsBands',
      mainsBands,
      (row) => `${row.name} ${row.voltageV} V ${row.kind}`,
      (row) => [
        !(row.minV < row.voltageV && row.voltageV < row.maxV) && 'does not hold its nominal voltage',
        !within(row.minV / row.voltageV, 0.8, 1) && 'reaches below 80 %',
        !within(row.maxV / row.voltageV, 1, 1.15) && 'reaches above 115 %',
        row.frequenciesHz.some((frequencyHz) => ![50, 60].includes(frequencyHz)) && 'is for neither 50 nor 60 Hz',
        strange(isoCodes, row.countries ?? []),
      ],
    ),
    ...table(
      'ratingTests',
      ratingTests,
      (row) => row.applies,
      (row) => [!(within(row.below, 0, 0.2) && within(row.above, 0, 0.2)) && 'is outside 0 to 20 %'],
    ),
    ...table(
      'plugTypes',
      plugTypes,
      (row) => row.name,
      (row) => [
        ![125, 250].includes(row.ratedV) && 'is rated for neither 125 nor 250 V',
        !within(row.ratedA, 0.2, 20) && 'is rated outside 0.2 to 20 A',
        strange(letters, row.letters),
      ],
    ),
    ...repeated(plugTypes.flatMap((plug) => [...new Set([plug.name, ...plug.aliases].map(plain))])).map(
      (name) => `plugTypes: ${name} names two plugs`,
    ),
    ...table(
      'plugFits',
      plugFits,
      (row) => [row.plugs.join(), row.letters.join(), row.socket, row.countries?.join()].join(' / '),
      (row) => [
        strange(plugNames, row.plugs),
        strange(letters, row.letters),
        strange(isoCodes, row.countries ?? []),
        row.fits === 'no' && row.earth !== 'not applicable' && 'does not fit, yet says something of the earth',
        row.fits !== 'no' &&
          plugTypes.some(
            (plug) => row.plugs.includes(plug.name) && plug.earthed === (row.earth === 'not applicable'),
          ) &&
          'the earth does not agree with the plug',
      ],
    ),
    ...socketLetters
      .filter((letter) => !plugFits.some((row) => row.fits === 'yes' && row.letters.includes(letter)))
      .map((letter) => `plugFits: nothing fits socket ${letter}`),
    ...table(
      'inletPairs',
      inletPairs,
      (row) => row.connector,
      (row) => [
        !within(row.ratedA, 0.2, 16) && 'is rated outside 0.2 to 16 A',
        !within(row.ratedANorthAmerica, 0.2, 20) && 'is rated outside 0.2 to 20 A in North America',
        ![70, 120, 155].includes(row.maxPinC) && 'has a pin temperature that is none of 70, 120, 155 °C',
        row.earthed !== (row.protectionClass === 'I') && 'the earth does not agree with the class',
      ],
    ),
    ...repeated(inletPairs.map((pair) => pair.inlet)).map((inlet) => `inletPairs: inlet ${inlet} stands twice`),
    ...table(
      'crossMatings',
      crossMatings,
      (row) => `${row.connector} ${row.inlet}`,
      (row) => [strange(connectors, [row.connector]), strange(inletNames, [row.inlet])],
    ),
    ...table(
      'cordRows',
      cordRows,
      (row) => `${row.designation} ${row.areaMm2 ?? `${row.awg} AWG`}`,
      (row) => [
        (row.areaMm2 === null) === (row.awg === null) && 'needs either an area or a gauge',
        !within(row.areaMm2, 0.5, 4) && 'is outside 0.5 to 4 mm²',
        !within(row.awg, 10, 27) && 'is outside 10 to 27 AWG',
        !within(row.ratedA, 0.2, 25) && 'carries less than 0.2 A or more than 25 A',
        row.ratedAThreeLoaded !== null && row.ratedAThreeLoaded >= row.ratedA && 'carries more with three loaded',
      ],
    ),
    ...table(
      'minimumAreaRows',
      minimumAreaRows,
      (row) => `up to ${row.toA} A`,
      (row) => [
        (row.shortAreaMm2 === null) !== (row.shortM === null) && 'needs both a short area and a length, or neither',
        row.shortAreaMm2 !== null && row.shortAreaMm2 >= row.areaMm2 && 'the short area is not smaller',
      ],
    ),
    ...rising(
      'minimumAreaRows',
      minimumAreaRows.map((row) => row.toA),
    ),
    ...table(
      'plugFuseRows',
      plugFuseRows,
      (row) => `${row.areaMm2} mm²`,
      (row) => [!within(row.largestFuseA, 1, 13) && 'is outside 1 to 13 A'],
    ),
    ...rising(
      'plugFuseRows',
      plugFuseRows.map((row) => row.areaMm2),
    ),
    ...table(
      'awgRows',
      awgRows,
      (row) => String(row.awg),
      (row) => [
        !(row.diameterMm > 0 && row.areaMm2 > 0 && row.ohmPerKm > 0) && 'has a size that is not more than 0',
        Math.abs((Math.PI * row.diameterMm ** 2) / 4 / row.areaMm2 - 1) > 0.005 && 'diameter and area disagree',
      ],
    ),
    ...rising(
      'awgRows',
      awgRows.map((row) => row.awg),
    ),
    ...table(
      'tungstenRows',
      tungstenRows,
      (row) => `${row.temperatureK} K`,
      (row) => [!(row.resistivityMicroOhmCm > 0 && row.radiatedWPerCm2 > 0) && 'has a value that is not more than 0'],
    ),
    ...rising(
      'tungstenRows',
      tungstenRows.map((row) => row.temperatureK),
    ),
    ...rising(
      'heatCapacityRows',
      heatCapacityRows.map((row) => row.fromK),
    ),
    ...table(
      'lampSizeRows',
      lampSizeRows,
      (row) => `${row.ratedW} W ${row.fill}`,
      (row) => [
        !within(row.gasShare, 0, 0.3) && 'has a gas loss outside 0 to 30 %',
        !within(row.ratedK, 2400, 3100) && 'has a filament outside 2400 to 3100 K',
        !(row.heatContentJ > 0) && 'has a heat content that is not more than 0',
      ],
    ),
    ...rising(
      'lampSizeRows',
      lampSizeRows.filter((row) => row.fill === 'gas').map((row) => row.ratedW),
    ),
    ...table(
      'glowRows',
      glowRows,
      (row) => row.glow,
      () => [],
    ),
    ...rising(
      'glowRows',
      glowRows.map((row) => row.fromK),
    ),
    ...table(
      'dcPlugRows',
      dcPlugRows,
      (row) => row.name,
      (row) => [
        !within(row.outerMm, 2, 8) && 'is outside 2 to 8 mm',
        !(row.innerMm > 0 && row.innerMm < row.outerMm) && 'the bore is not smaller than the outside',
        row.centrePinMm !== null && row.centrePinMm >= row.innerMm && 'the pin is not smaller than the bore',
        (row.voltageMinV === null) !== (row.voltageMaxV === null) && 'has half a voltage class',
        row.voltageMinV !== null && row.voltageMinV >= (row.voltageMaxV ?? 0) && 'has a voltage class upside down',
        !within(row.contactA, 0.5, 10) && 'carries less than 0.5 A or more than 10 A',
      ],
    ),
    ...repeated(dcPlugRows.flatMap((row) => [row.name, ...row.aliases].map(plain))).map(
      (name) => `dcPlugRows: ${name} names two plugs`,
    ),
    ...table(
      'conductorColours',
      conductorColours,
      (row) => row.region,
      (row) => [row.line === null && row.neutral === null && row.earth === null && 'says nothing'],
    ),
    ...table(
      'regulationRows',
      regulationRows,
      (row) => `${row.fromVA} to ${row.toVA} VA`,
      (row) => [
        !(row.fromVA > 0 && row.fromVA <= row.toVA) && 'has its sizes upside down',
        !(row.low > 0 && row.low < row.high && row.high <= 1) && 'has its range upside down, or over 100 %',
      ],
    ),
    ...rising(
      'regulationRows',
      regulationRows.flatMap((row) => (row.fromVA === row.toVA ? [row.toVA] : [row.fromVA, row.toVA])),
    ),
    ...table(
      'allowedRiseRows',
      allowedRiseRows,
      (row) => `up to ${row.toVA} VA`,
      (row) => [
        !(row.rise > 0 && row.rise <= row.riseInherentlyProof && row.riseInherentlyProof <= 1) && 'is out of range',
      ],
    ),
    ...rising(
      'allowedRiseRows',
      allowedRiseRows.map((row) => row.toVA),
    ),
  ]
}
