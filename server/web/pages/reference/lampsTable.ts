import { lampsOf } from '../../../plan/firstPower/lamps.js'
import { resistivitySource } from '../../../tables/filament.js'
import { lampSizeRows, standardLampVoltages, standardWattages } from '../../../tables/lamps.js'
import { say } from '../../../words/phrase.js'
import { volts, watts } from '../../../words/quantity.js'
import { slug, type Table } from './pageTable.js'

/** Rounded as a table prints it: a worked-out figure is no more exact than its sources. */
const rounded = (value: number): number => Number(value.toPrecision(3))

const lampRow = (ratedV: number, ratedW: number) => ({
  id: slug(ratedW, 'w', ratedV, 'v'),
  cells: [
    say`${watts(ratedW)}, ${volts(ratedV)}`,
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
