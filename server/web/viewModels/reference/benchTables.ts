import { amperes, duration, ohms, percent, plain, seconds, volts } from '../../../physics/quantity.js'
import { benchRules } from '../../../reference/benchSupply.js'
import {
  dischargeLimits,
  leakageRules,
  olderLeakageFactors,
  plugPinRules,
  reformingProcedures,
  storageAges,
  touchCurrentLimits,
} from '../../../reference/capacitors.js'
import { acceptanceBands } from '../../../reference/dummyLoad.js'
import { preferredSeries, resistorRatings } from '../../../reference/preferredValues.js'
import { windingCurrents } from '../../../reference/rectifiers.js'
import { safetyLimits, safetySchemes } from '../../../reference/safetyTestLimits.js'
import { allowedRiseRows, regulationRows } from '../../../reference/transformerRegulation.js'
import { slug, type Table } from './table.js'

export const regulationTable: Table = {
  name: 'transformer-regulation',
  title: 'Off-load rise of small transformers',
  intro:
    'How far an unloaded winding stands above its rated voltage, as a share of the rated voltage, by the size of the transformer.',
  columns: [{ title: 'Size' }, { title: 'Rise from' }, { title: 'Rise to' }],
  rows: () =>
    regulationRows.map(({ fromVA, toVA, low, high, sources, doubt }) => ({
      id: slug(fromVA, 'to', toVA, 'va'),
      cells: [
        fromVA === toVA ? plain(fromVA, 'VA') : `${plain(fromVA, 'VA')} to ${plain(toVA, 'VA')}`,
        percent(low),
        percent(high),
      ],
      sources,
      doubt,
    })),
}

export const allowedRiseTable: Table = {
  name: 'transformer-rise-limits',
  title: 'Largest off-load rise allowed',
  intro: 'By the rated output of the transformer; rows reach from above the row before.',
  columns: [{ title: 'Up to', unit: 'VA' }, { title: 'Rise' }, { title: 'Rise, inherently short-circuit-proof' }],
  rows: () =>
    allowedRiseRows.map(({ toVA, rise, riseInherentlyProof, sources, doubt }) => ({
      id: slug('to', toVA, 'va'),
      cells: [toVA, percent(rise), percent(riseInherentlyProof)],
      sources,
      doubt,
    })),
}

export const windingTable: Table = {
  name: 'winding-current',
  title: 'Winding current behind a rectifier',
  intro:
    'Effective winding current over direct load current with a reservoir capacitor. Sources disagree; the larger figure decides.',
  columns: [{ title: 'Rectifier' }, { title: 'Factor', unit: '' }],
  rows: () =>
    windingCurrents.map(({ rectifier, factor, source }) => ({
      id: slug(rectifier, factor),
      cells: [rectifier, factor],
      sources: [source],
    })),
}

export const outputBandsTable: Table = {
  name: 'output-bands',
  title: 'Output tolerance of regulated rails',
  intro: 'Used where the machine states none.',
  columns: [{ title: 'Rail' }, { title: 'Either side' }, { title: 'Ripple and noise, peak to peak' }],
  rows: () =>
    acceptanceBands.map(({ voltageV, tolerance, rippleV, source }) => ({
      id: slug(voltageV < 0 ? 'minus' : 'plus', Math.abs(voltageV), 'v'),
      cells: [volts(voltageV), percent(tolerance), rippleV === null ? null : volts(rippleV)],
      sources: [source],
    })),
}

export const benchStepsTable: Table = {
  name: 'bench-steps',
  title: 'Steps of a current-limited first power-up',
  intro: 'Voltage as a share of the nominal, limit as a share of the plate current, and how long each step is held.',
  columns: [{ title: 'Step' }, { title: 'Voltage' }, { title: 'Limit' }, { title: 'Held for' }],
  rows: () =>
    [
      { name: 'Linear or resistive input', steps: benchRules.steps },
      { name: 'Constant-power input', steps: benchRules.constantPowerSteps },
    ].flatMap(({ name, steps }) =>
      steps.map(({ voltageShare, currentShare, holdS }, index) => ({
        id: slug(name, index + 1),
        cells: [`${name}, step ${index + 1}`, percent(voltageShare), percent(currentShare), duration(holdS)],
        sources: [benchRules.source],
      })),
    ),
}

export const safetyLimitsTable: Table = {
  name: 'safety-limits',
  title: 'Limits of safety tests',
  intro:
    'Limits of the tests a competent person makes with the instrument for them, by scheme and class of protection. Type-test rows stand for comparison. Where a scheme publishes no figure, none is made up.',
  warning: 'A passed test is a reading on one day. It certifies nothing about what comes later.',
  columns: [
    { title: 'Scheme and test' },
    { title: 'Place' },
    { title: 'Classes' },
    { title: 'Limit' },
    { title: 'Condition' },
    { title: 'Decides' },
  ],
  rows: () =>
    safetyLimits.map(({ scheme, test, classes, limit, unit, condition, general, addsConductor, source }) => {
      const { title = scheme, place = '', typeTest = false } = safetySchemes.find(({ key }) => key === scheme) ?? {}
      return {
        id: slug(scheme, test, classes.join(' '), limit ?? 'none', condition.replace(/[,;(].*/, '')),
        cells: [
          `${title}: ${test.replace(/-/g, ' ')}`,
          place,
          classes.join(', '),
          limit === null
            ? 'none published'
            : `${plain(limit, unit)}${addsConductor ? ' and the cord’s conductor' : ''}`,
          condition,
          typeTest ? 'no, type test' : general ? 'yes' : 'no, special case',
        ],
        sources: [source],
      }
    }),
}

export const storageTable: Table = {
  name: 'capacitor-storage',
  title: 'Electrolytic capacitors without power',
  intro:
    'Makers’ advice by the years a capacitor lay without voltage. It differs with sealing, electrolyte and voltage.',
  columns: [{ title: 'Without power' }, { title: 'Advice' }],
  rows: () =>
    storageAges.map(({ toYears, advice, source }) => ({
      id: toYears === null ? 'longer' : slug('to', toYears, 'years'),
      cells: [toYears === null ? 'longer' : `up to ${toYears} ${toYears === 1 ? 'year' : 'years'}`, advice],
      sources: [source],
    })),
}

export const reformingTable: Table = {
  name: 'reforming',
  title: 'Ways to reform an electrolytic capacitor',
  intro: 'Published procedures side by side.',
  columns: [{ title: 'Resistor' }, { title: 'Voltage' }, { title: 'Time' }],
  rows: () =>
    reformingProcedures.map(({ resistor, voltage, time, source }) => ({
      id: slug(resistor, voltage),
      cells: [resistor, voltage, time],
      sources: [source],
    })),
}

export const leakageTable: Table = {
  name: 'capacitor-leakage',
  title: 'Leakage of electrolytic capacitors',
  intro:
    'Largest leakage by rule, C the capacitance and V the rated voltage. The older rule uses K by the rated voltage.',
  columns: [{ title: 'Rule' }, { title: 'Read after' }, { title: 'For rated voltages' }, { title: 'K', unit: 'mA/µF' }],
  rows: () => [
    ...leakageRules.map(({ name, after, fromV, toV, source }) => ({
      id: slug(name),
      cells: [name, after, fromV === 0 ? `up to ${volts(toV)}` : `${volts(fromV)} to ${volts(toV)}`, null],
      sources: [source],
    })),
    ...olderLeakageFactors.map(({ toV, factor, source }) => ({
      id: slug('older k to', toV, 'v'),
      cells: ['K of the older rule', null, `up to ${volts(toV)}`, factor / 1000],
      sources: [source],
    })),
  ],
}

export const touchTable: Table = {
  name: 'touch-limits',
  title: 'Voltages and currents a person may meet',
  intro:
    'What a charged part must have fallen to before it is touched, how soon plug pins must be there, and how much may flow through a person.',
  columns: [{ title: 'What' }, { title: 'Limit' }, { title: 'Within' }],
  rows: () => [
    ...dischargeLimits.map(({ limitV, what, source }) => ({
      id: slug('voltage', what),
      cells: [what, volts(limitV), null],
      sources: [source],
    })),
    ...plugPinRules.map(({ name, limitV, withinS, source }) => ({
      id: slug('plug pins', name),
      cells: [`plug pins: ${name}`, limitV === null ? 'time constant' : volts(limitV), seconds(withinS)],
      sources: [source],
    })),
    ...touchCurrentLimits.map(({ limitA, what, source }) => ({
      id: slug('current', what),
      cells: [what, amperes(limitA), null],
      sources: [source],
    })),
  ],
}

export const preferredTable: Table = {
  name: 'preferred-values',
  title: 'Preferred resistor values and ratings',
  intro: 'One decade of each series, and the ratings power resistors are sold in.',
  columns: [{ title: 'Series' }, { title: 'Values' }],
  rows: () => [
    ...Object.values(preferredSeries).map(({ name, values, source }) => ({
      id: slug(name),
      cells: [name, values.map((value) => ohms(value)).join(', ')],
      sources: [source],
    })),
    {
      id: 'ratings',
      cells: ['Power ratings', resistorRatings.valuesW.map((value) => plain(value, 'W')).join(', ')],
      sources: [resistorRatings.source],
    },
  ],
}
