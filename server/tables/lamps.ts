import { notRising } from './faults.js'
import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import type { Sourced } from './sourced.js'
import { figure, rows, table } from './table.js'

/** What sets the filament of one size of lamp apart from another. Heat content is that of a 120 V lamp. */
export interface LampSizeRow extends Sourced {
  readonly ratedW: number
  readonly fill: 'gas' | 'vacuum'
  /** part of the rated power that the gas carries off, at rated voltage */
  readonly gasShare: number
  /** filament temperature at rated voltage [K] */
  readonly ratedK: number
  /** heat stored in the filament at rated voltage, above that at room temperature [J] */
  readonly heatContentJ: number
}

const energyTable: Source = fromMemory(
  'IES Lighting Handbook, energy characteristics of 120 V general-service lamps',
  'gas loss and filament heat content by lamp wattage; the 0.13 s to 90 % of the light of the 100 W lamp agrees with a published figure',
)

const temperatureEstimate: Source = commonPractice(
  'Project estimate: filament temperature at rated voltage',
  'from the usual luminous efficacy of each size, plus or minus 50 K; ±50 K moves the current at a tenth of the voltage by less than 2 %',
)

const smallLampEstimate: Source = commonPractice(
  'Project estimate: lamps of 25 W and less taken as gas-filled',
  'older ones are vacuum lamps (gas loss 0); the one measured lamp of about 25 W fits a gas loss of 0.12 (range 0.10 to 0.20) and no vacuum lamp; gas-filled is the cautious reading, because a dark gas-filled lamp passes more current',
)

const betweenSizes: Source = commonPractice(
  'Project estimate: sizes between two of the table',
  'gas loss between the neighbours by the logarithm of the wattage, heat content by the 5/3 power of the wattage',
)

// biome-ignore format: a row a line
export const lampSizeRows = rows<LampSizeRow>()(['ratedW', 'fill', 'gasShare', 'ratedK', 'heatContentJ', 'sources'], [
  [10, 'gas', 0.12, 2600, 0.25, [smallLampEstimate, betweenSizes], { doubt: 'scaled from the 40 W lamp' }],
  [15, 'gas', 0.12, 2600, 0.49, [smallLampEstimate, betweenSizes], { doubt: 'scaled from the 40 W lamp' }],
  [25, 'gas', 0.12, 2600, 1.15, [smallLampEstimate, betweenSizes], { doubt: 'scaled from the 40 W lamp; the handbook lists a vacuum lamp with 2.8 J' }],
  [40, 'gas', 0.2, 2700, 2.5, [energyTable, temperatureEstimate]],
  [60, 'gas', 0.135, 2800, 5.5, [energyTable, temperatureEstimate]],
  [75, 'gas', 0.126, 2830, 8.4, [betweenSizes, temperatureEstimate], { doubt: 'between 60 W and 100 W' }],
  [100, 'gas', 0.115, 2860, 14.1, [energyTable, temperatureEstimate]],
  [200, 'gas', 0.137, 2900, 39.5, [energyTable, temperatureEstimate]],
  [300, 'gas', 0.116, 2930, 80, [energyTable, temperatureEstimate]],
  [500, 'gas', 0.088, 2960, 182, [energyTable, temperatureEstimate]],
  [1000, 'gas', 0.06, 3000, 568, [energyTable, temperatureEstimate]],
  [25, 'vacuum', 0, 2600, 2.8, [energyTable, temperatureEstimate]],
])

/**
 * Two views of how the loss through the gas goes with the temperature of the filament, as (T^n − T0^n). They agree at the rated voltage
 * and part at low current, where nothing published decides between them: less loss means a hotter filament, more ohms, and more
 * voltage at the same current.
 */
export const gasLossLaws = frozen({
  lower: {
    exponent: 1,
    sources: [
      fromMemory(
        'Newton’s law of cooling, as heat balances of lamps take it',
        'the loss through the gas goes with the excess of temperature; one measured household lamp agrees within its reading from 10 V up',
      ),
    ],
  },
  upper: {
    exponent: 1.7,
    sources: [
      fromMemory(
        'Langmuir, Physical Review 34 (1912), convection and conduction of heat in gases',
        'conduction through a film of gas whose conductivity rises with about T^0.7, so that the loss goes with T^1.7',
      ),
    ],
  },
})

/** Voltage of the lamps the table above was written for [V]. */
export const tableLampV = 120

/**
 * Heat content of a filament goes with (rated voltage)^(−2/3) at equal power and temperature: resistance ρ l / r² and
 * surface r l fix the length l as (V² P)^(1/3) and the mass r² l as P^(5/3) V^(−2/3).
 */
export const heatContentVoltageExponent: { readonly value: number; readonly unit: '1'; readonly source: Source } =
  frozen({
    value: -2 / 3,
    unit: '1',
    source: commonPractice(
      'Project estimate: heat content of lamps for other voltages',
      'from the geometry of a filament; a 230 V 100 W lamp then settles in 0.6 of the time of a 120 V one, as published starting times of 0.05 s and 0.10 s bear out',
    ),
  })

/** Wattages lamps are sold in, or were for decades. */
export const standardWattages: { readonly watts: readonly number[] } & Sourced = frozen({
  watts: [15, 25, 40, 60, 75, 100, 150, 200],
  sources: [
    commonPractice('Wattages of general-service lamps', '15 W to 200 W as sold for household use over decades'),
  ],
})

/** Wattages in which tungsten lamps for the mains are or were made, halogen ones among them. */
export const tungstenWattages: { readonly watts: readonly number[] } & Sourced = frozen({
  // biome-ignore format: read across
  watts: [
    10, 15, 20, 25, 28, 29, 30, 34, 35, 40, 42, 43, 46, 48, 50, 52, 53, 57, 60, 65, 67, 70, 72, 75, 80, 90, 100, 105,
    116, 120, 125, 130, 135, 150, 160, 175, 200, 230, 240, 250, 300, 400, 500, 750, 1000,
  ],
  sources: [
    fromMemory(
      'Makers’ catalogues of incandescent and mains-voltage halogen lamps',
      'general-service, reflector, energy-saving halogen and linear halogen lamps; other wattages of 3 W to 23 W are those of LED and compact fluorescent lamps',
    ),
  ],
})

/** Rated voltages lamps are sold for. */
export const standardLampVoltages: { readonly volts: readonly number[] } & Sourced = frozen({
  volts: [100, 110, 115, 120, 127, 130, 220, 225, 230, 235, 240, 250],
  sources: [
    commonPractice('Rated voltages of general-service lamps', 'by region; 130 V and 250 V are long-life types'),
  ],
})

/** Hot over cold resistance as published, for comparison with the model. */
export interface ColdRatioRow extends Sourced {
  readonly lamp: string
  readonly hotOhm: number
  readonly coldOhm: number
}

// biome-ignore format: a row a line
export const coldRatioRows = rows<ColdRatioRow>()(['lamp', 'hotOhm', 'coldOhm', 'sources'], [
  ['100 W 120 V', 144, 9.5, [published('Encyclopaedia article on the incandescent light bulb', 'current and resistance')]],
  ['60 W 110 V', 200, 18, [published('University of Maryland lecture demonstration K5-44', 'cold resistance measured')]],
])

/** Why only tungsten lamps serve. */
export const unsuitableLamps: readonly ({ readonly kind: string; readonly reason: string } & Sourced)[] = frozen([
  {
    kind: 'LED lamp',
    reason:
      'its electronics draw a few watts whatever the load, so it neither passes nor limits the load current as a filament does; it may flash, or fail',
    sources: [commonPractice('Series-lamp practice', 'restorers’ notes agree that lamps with electronics do not work')],
  },
  {
    kind: 'compact fluorescent lamp',
    reason:
      'it contains a converter with a rectifier of its own, not a resistor; in series it flickers, starves or fails and shows nothing about the load',
    sources: [commonPractice('Series-lamp practice', 'restorers’ notes agree that lamps with electronics do not work')],
  },
  {
    kind: 'low-voltage halogen lamp, and any lamp with a transformer',
    reason: 'its rating is for 12 V or so and its cold resistance too low for the mains',
    sources: [
      commonPractice('Series-lamp practice', 'the lamp must carry the whole mains voltage when the load is shorted'),
    ],
  },
  {
    kind: 'carbon-filament lamp',
    reason: 'its resistance falls as it heats, so it limits least when it matters most',
    sources: [
      published(
        'Physics teaching centre, Federal University of Rio Grande do Sul, question 1400',
        'power rises 5.3 times from 65 V to 130 V',
      ),
    ],
  },
])

export const lampSizesTable = table<LampSizeRow>({
  name: 'lamp-sizes',
  title: 'What sets one lamp size apart',
  intro: 'Filament temperature, what the gas carries off, and the heat stored in the filament of a 120 V lamp.',
  rows: lampSizeRows,
  id: ({ ratedW, fill }) => [ratedW, 'w', fill],
  columns: [
    { title: 'Lamp', of: ({ ratedW, fill }) => [figure(ratedW, 'W'), `, ${fill}`] },
    { key: 'ratedW', title: 'Rated power', unit: 'W', above: 0 },
    { key: 'fill', title: 'Filled with' },
    { key: 'gasShare', title: 'Share lost to the gas', unit: '', from: 0, to: 0.3 },
    { key: 'ratedK', title: 'Filament', unit: 'K', from: 2400, to: 3100 },
    { key: 'heatContentJ', title: 'Heat stored', unit: 'J', above: 0 },
  ],
  whole: (rows) => notRising(rows.filter(({ fill }) => fill === 'gas').map(({ ratedW }) => ratedW)),
})

export const coldRatiosTable = table<ColdRatioRow>({
  name: 'lamp-cold-resistance',
  title: 'Cold resistance of lamps as published',
  intro: 'For comparison with what is worked out in the table of lamps.',
  rows: coldRatioRows,
  id: ({ lamp }) => [lamp],
  columns: [
    { key: 'lamp', title: 'Lamp' },
    { key: 'hotOhm', title: 'Hot', unit: 'Ω', above: 0 },
    { key: 'coldOhm', title: 'Cold', unit: 'Ω', above: 0 },
  ],
  rules: [{ fault: 'is no lower cold than hot', broken: ({ hotOhm, coldOhm }) => !(coldOhm < hotOhm) }],
})

export const unsuitableLampsTable = table<(typeof unsuitableLamps)[number]>({
  name: 'unsuitable-lamps',
  title: 'Lamps that do not serve in series',
  intro: 'Only tungsten lamps limit the current as the first power-up needs it.',
  rows: unsuitableLamps,
  id: ({ kind }) => [kind.replace(/,.*/, '')],
  columns: [
    { key: 'kind', title: 'Lamp' },
    { key: 'reason', title: 'Why not' },
  ],
})
