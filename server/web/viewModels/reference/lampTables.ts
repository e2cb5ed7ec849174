import { decimal, plain, volts, watts } from '../../../physics/quantity.js'
import { lampsOf } from '../../../plan/firstPower/lamps.js'
import { heatCapacityRows, lampExponentRows, resistivitySource, tungstenRows } from '../../../reference/filament.js'
import { glowRows } from '../../../reference/glow.js'
import {
  coldRatioRows,
  lampSizeRows,
  standardLampVoltages,
  standardWattages,
  unsuitableLamps,
} from '../../../reference/lamps.js'
import { slug, type Table } from './table.js'

/** Rounded as a table prints it: a worked-out figure is no more exact than its sources. */
const rounded = (value: number): number => Number(value.toPrecision(3))

const lampRow = (ratedV: number, ratedW: number) => ({
  id: slug(ratedW, 'w', ratedV, 'v'),
  cells: [
    `${watts(ratedW)}, ${volts(ratedV)}`,
    ratedW,
    ratedV,
    rounded(ratedW / ratedV),
    rounded((ratedV * ratedV) / ratedW),
    rounded(lampsOf({ lamps: [{ ratedV, ratedW }], arrangement: 'series' }).coldOhm),
  ],
  sources: [
    ...standardWattages.sources,
    ...standardLampVoltages.sources,
    ...lampSizeRows.filter((row) => row.fill === 'gas' && row.ratedW === ratedW).flatMap(({ sources }) => sources),
    resistivitySource,
  ],
})

export const lampsTable: Table = {
  name: 'lamps',
  title: 'Lamps for the series lamp',
  intro:
    'Standard tungsten lamps, worked out from the tables of sizes and of tungsten. With the load shorted the lamp stands at the full mains and passes its rated current: that is the most a fault can draw. Cold, it passes many times as much for an instant.',
  columns: [
    { title: 'Lamp' },
    { title: 'Rated power', unit: 'W' },
    { title: 'Rated voltage', unit: 'V' },
    { title: 'Current with the load shorted', unit: 'A' },
    { title: 'Hot', unit: 'Ω' },
    { title: 'Cold', unit: 'Ω' },
  ],
  rows: () =>
    standardLampVoltages.volts.flatMap((ratedV) => standardWattages.watts.map((ratedW) => lampRow(ratedV, ratedW))),
}

export const lampSizesTable: Table = {
  name: 'lamp-sizes',
  title: 'What sets one lamp size apart',
  intro: 'Filament temperature, what the gas carries off, and the heat stored in the filament of a 120 V lamp.',
  columns: [
    { title: 'Lamp' },
    { title: 'Rated power', unit: 'W' },
    { title: 'Filled with' },
    { title: 'Share lost to the gas', unit: '' },
    { title: 'Filament', unit: 'K' },
    { title: 'Heat stored', unit: 'J' },
  ],
  rows: () =>
    lampSizeRows.map(({ ratedW, fill, gasShare, ratedK, heatContentJ, sources, doubt }) => ({
      id: slug(ratedW, 'w', fill),
      cells: [`${watts(ratedW)}, ${fill}`, ratedW, fill, gasShare, ratedK, heatContentJ],
      sources,
      doubt,
    })),
}

export const coldRatiosTable: Table = {
  name: 'lamp-cold-resistance',
  title: 'Cold resistance of lamps as published',
  intro: 'For comparison with what is worked out in the table of lamps.',
  columns: [{ title: 'Lamp' }, { title: 'Hot', unit: 'Ω' }, { title: 'Cold', unit: 'Ω' }],
  rows: () =>
    coldRatioRows.map(({ lamp, hotOhm, coldOhm, sources, doubt }) => ({
      id: slug(lamp),
      cells: [lamp, hotOhm, coldOhm],
      sources,
      doubt,
    })),
}

export const unsuitableLampsTable: Table = {
  name: 'unsuitable-lamps',
  title: 'Lamps that do not serve in series',
  intro: 'Only tungsten lamps limit the current as the first power-up needs it.',
  columns: [{ title: 'Lamp' }, { title: 'Why not' }],
  rows: () =>
    unsuitableLamps.map(({ kind, reason, sources, doubt }) => ({
      id: slug(kind.replace(/,.*/, '')),
      cells: [kind, reason],
      sources,
      doubt,
    })),
}

export const tungstenTable: Table = {
  name: 'tungsten',
  title: 'Tungsten by temperature',
  intro:
    'Resistivity, and what a bare straight filament radiates in vacuum. The series lamp is worked out from these rows.',
  columns: [
    { title: 'Temperature', unit: 'K' },
    { title: 'Resistivity', unit: 'µΩ·cm' },
    { title: 'Radiated', unit: 'W/cm²' },
  ],
  rows: () =>
    tungstenRows.map(({ temperatureK, resistivityMicroOhmCm, radiatedWPerCm2, sources, doubt }) => ({
      id: slug(temperatureK, 'k'),
      cells: [temperatureK, resistivityMicroOhmCm, radiatedWPerCm2],
      sources,
      doubt,
    })),
}

export const heatCapacityTable: Table = {
  name: 'tungsten-heat',
  title: 'Heat capacity of tungsten',
  intro:
    'Coefficients of cp = a + b t + c t² + d t³ + e / t² in J/(mol K), with t = T / 1000 K, for two ranges of temperature.',
  columns: [{ title: 'Range' }, ...['a', 'b', 'c', 'd', 'e'].map((title) => ({ title, unit: '' }))],
  rows: () =>
    heatCapacityRows.map(({ fromK, toK, a, b, c, d, e, sources, doubt }) => ({
      id: slug(fromK, 'to', toK, 'k'),
      cells: [`${plain(fromK, 'K')} to ${plain(toK, 'K')}`, a, b, c, d, e],
      sources,
      doubt,
    })),
}

export const lampExponentsTable: Table = {
  name: 'lamp-exponents',
  title: 'How a lamp follows its voltage',
  intro: 'Near the rated voltage a quantity goes with (voltage / rated voltage) to the power given here.',
  columns: [{ title: 'Quantity' }, { title: 'Lamp' }, { title: 'Exponent' }],
  rows: () =>
    lampExponentRows.map(({ fill, of, exponent, sources, doubt }) => ({
      id: slug(of, fill),
      cells: [of, `${fill}-filled`.replace('vacuum-filled', 'vacuum'), decimal(exponent)],
      sources,
      doubt,
    })),
}

export const glowTable: Table = {
  name: 'glow',
  title: 'Glow of the lamp in words',
  intro:
    'What is seen of a filament from this temperature upwards, until the next row. The meter decides, not the eye.',
  columns: [{ title: 'Word' }, { title: 'From', unit: 'K' }, { title: 'Seen' }],
  rows: () =>
    glowRows.map(({ glow, fromK, seen, sources, doubt }) => ({
      id: slug(glow),
      cells: [glow, fromK, seen],
      sources,
      doubt,
    })),
}
