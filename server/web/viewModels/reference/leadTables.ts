import { millimetres, plain, volts } from '../../../physics/quantity.js'
import { awgRows } from '../../../reference/awg.js'
import { flexibleCores } from '../../../reference/benchSupply.js'
import { cordRows, minimumAreaRows, plugFuseRows } from '../../../reference/cordRows.js'
import { dcPlugRows } from '../../../reference/dcPlugRows.js'
import { crossMatings, inletPairs } from '../../../reference/inletPairs.js'
import { usbFixedVoltages } from '../../../reference/usbPower.js'
import { plugEndDrawing } from '../../charts/plugEnd.js'
import { slug, type Table } from './table.js'

export const inletPairsTable: Table = {
  name: 'inlets',
  title: 'Appliance inlets and their connectors (IEC 60320)',
  intro:
    'Each connector with the inlet it is made for. The hotter the pins may get, the more notches keep cooler cords out.',
  columns: [
    { title: 'Pair' },
    { title: 'Rated', unit: 'A' },
    { title: 'North America', unit: 'A' },
    { title: 'Class' },
    { title: 'Earthed' },
    { title: 'Pins up to', unit: '°C' },
    { title: 'Called' },
    { title: 'Usual cord' },
    { title: 'Notes' },
  ],
  rows: () =>
    inletPairs.map((pair) => ({
      id: slug(pair.connector, pair.inlet),
      cells: [
        `${pair.connector} connector, ${pair.inlet} inlet`,
        pair.ratedA,
        pair.ratedANorthAmerica,
        pair.protectionClass,
        pair.earthed ? 'yes' : 'no',
        pair.maxPinC,
        pair.nicknames.join(', '),
        pair.usualCord,
        pair.notes.join(' '),
      ],
      sources: pair.sources,
      doubt: pair.doubt,
    })),
}

export const crossMatingsTable: Table = {
  name: 'inlet-crossings',
  title: 'Connectors in the inlets of other pairs',
  intro:
    'A connector goes into its own inlet. These are the other pairs that mate, or notably do not. Any pair not listed does not mate.',
  columns: [{ title: 'Connector and inlet' }, { title: 'Mates' }, { title: 'Why' }],
  rows: () =>
    crossMatings.map(({ connector, inlet, fits, why, sources, doubt }) => ({
      id: slug(connector, 'in', inlet),
      cells: [`${connector} in ${inlet}`, fits ? 'yes' : 'no', why],
      sources,
      doubt,
    })),
}

export const cordsTable: Table = {
  name: 'cords',
  title: 'Flexible cords',
  intro: 'What a cord of one size carries. Where rows of one size disagree the lowest figure decides.',
  columns: [
    { title: 'Cord' },
    { title: 'Area', unit: 'mm²' },
    { title: 'AWG', unit: '' },
    { title: 'Insulation' },
    { title: 'Carries', unit: 'A' },
    { title: 'Three loaded', unit: 'A' },
    { title: 'Sheath' },
    { title: 'Length' },
    { title: 'Notes' },
  ],
  rows: () =>
    cordRows.map((cord) => ({
      id: slug(cord.designation, cord.areaMm2 === null ? `awg ${cord.awg}` : cord.areaMm2, cord.ratedA, 'a'),
      cells: [
        cord.designation,
        cord.areaMm2,
        cord.awg,
        cord.ratedInsulation,
        cord.ratedA,
        cord.ratedAThreeLoaded,
        cord.sheath,
        cord.lengthRule,
        cord.notes.join(' '),
      ],
      sources: cord.sources,
      doubt: cord.doubt,
    })),
}

export const minimumAreasTable: Table = {
  name: 'cord-areas',
  title: 'Smallest conductor of a cord',
  intro: 'By the rated current of the appliance; a smaller one is allowed for short cords of some sizes.',
  columns: [
    { title: 'Rated current up to', unit: 'A' },
    { title: 'Smallest area', unit: 'mm²' },
    { title: 'Short cord', unit: 'mm²' },
    { title: 'Short is up to', unit: 'm' },
  ],
  rows: () =>
    minimumAreaRows.map(({ toA, areaMm2, shortAreaMm2, shortM, sources, doubt }) => ({
      id: slug('to', toA, 'a'),
      cells: [toA, areaMm2, shortAreaMm2, shortM],
      sources,
      doubt,
    })),
}

export const plugFusesTable: Table = {
  name: 'plug-fuses',
  title: 'Largest plug fuse of a cord (BS 1362 links)',
  intro: 'The largest a cord of one size allows, which is not the one to fit: the smallest that carries the load is.',
  columns: [{ title: 'Area', unit: 'mm²' }, { title: 'Largest link', unit: 'A' }, { title: 'Note' }],
  rows: () =>
    plugFuseRows.map(({ areaMm2, largestFuseA, note, sources, doubt }) => ({
      id: slug(areaMm2, 'mm2'),
      cells: [areaMm2, largestFuseA, note],
      sources,
      doubt,
    })),
}

export const awgTable: Table = {
  name: 'awg',
  title: 'American wire gauge',
  intro: 'Solid copper wire at 20 °C. Stranded wire of a gauge has the same copper area and a larger diameter.',
  columns: [
    { title: 'Gauge' },
    { title: 'Diameter', unit: 'mm' },
    { title: 'Area', unit: 'mm²' },
    { title: 'Resistance', unit: 'Ω/km' },
  ],
  rows: () =>
    awgRows.map(({ awg, diameterMm, areaMm2, ohmPerKm, sources, doubt }) => ({
      id: slug('awg', awg),
      cells: [`AWG ${awg}`, diameterMm, areaMm2, ohmPerKm],
      sources,
      doubt,
    })),
}

export const flexibleCoresTable: Table = {
  name: 'flexible-cores',
  title: 'Resistance of flexible cores',
  intro: 'Direct-current resistance of one metre of one core at 20 °C, the largest that the standard allows.',
  columns: [
    { title: 'Area', unit: 'mm²' },
    { title: 'Resistance', unit: 'Ω/m' },
  ],
  rows: () =>
    flexibleCores.map(({ areaMm2, ohmPerM, source }) => ({
      id: slug(areaMm2, 'mm2'),
      cells: [areaMm2, ohmPerM],
      sources: [source],
    })),
}

export const dcPlugsTable: Table = {
  name: 'dc-plugs',
  title: 'Low-voltage plugs',
  intro:
    'Coaxial plugs seen from their open end, all at one scale: the ring is the sleeve, the hole in it is the bore that goes over the pin of the jack. Many sizes look alike, and one size is used for many voltages.',
  warning:
    'A size proves neither voltage nor polarity, except for the series that codes the voltage by the size. Measure the plug before the machine is connected.',
  columns: [
    { title: 'Plug' },
    { title: 'End view' },
    { title: 'Outside', unit: 'mm' },
    { title: 'Bore', unit: 'mm' },
    { title: 'Own pin', unit: 'mm' },
    { title: 'Voltage class' },
    { title: 'Contact', unit: 'A' },
    { title: 'Notes' },
    { title: 'Also called', names: true },
  ],
  rows: () =>
    dcPlugRows.map((plug) => {
      const id = slug(plug.name)
      return {
        id,
        cells: [
          plug.name,
          { svg: plugEndDrawing(id, plug), text: `${millimetres(plug.outerMm)} over ${millimetres(plug.innerMm)}` },
          plug.outerMm,
          plug.innerMm,
          plug.centrePinMm,
          plug.voltageMinV === null || plug.voltageMaxV === null
            ? 'none'
            : `${volts(plug.voltageMinV)} to ${volts(plug.voltageMaxV)}`,
          plug.contactA,
          plug.notes.join(' '),
          plug.aliases.join(', '),
        ],
        sources: plug.sources,
        doubt: plug.doubt,
      }
    }),
}

export const usbTable: Table = {
  name: 'usb-voltages',
  title: 'Fixed voltages of negotiated USB sources',
  intro: 'What a source may offer when the machine asks for it. None of them limits the current at a first power-up.',
  columns: [
    { title: 'Voltage' },
    { title: 'Most', unit: 'A' },
    { title: 'Unmarked cable', unit: 'A' },
    { title: 'Always offered' },
    { title: 'Range' },
  ],
  rows: () =>
    usbFixedVoltages.map(({ voltageV, largestA, plainCableA, always, range, source }) => ({
      id: slug(voltageV, 'v'),
      cells: [plain(voltageV, 'V'), largestA, plainCableA, always ? 'yes' : 'no, optional', range],
      sources: [source],
    })),
}
