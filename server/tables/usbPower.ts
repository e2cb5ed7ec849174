import { frozen } from './frozen.js'
import { commonPractice, fromMemory, published, type Source } from './source.js'
import { table } from './table.js'

export interface UsbFixedVoltage {
  readonly voltageV: number
  readonly largestA: number
  readonly plainCableA: number
  readonly always: boolean
  readonly range: 'standard' | 'extended'
  readonly source: Source
}

const standard = published(
  'Article on USB Power Delivery revision 3.1, 28 May 2021; definition table of a computing dictionary',
  'fixed voltages 5, 9, 15, 20 V to 3 A; 20 V to 5 A with a marked cable',
)
const extended = published(
  'Article on USB Power Delivery revision 3.1, 28 May 2021',
  'extended range 28, 36, 48 V to 5 A over a marked cable rated 50 V',
)

const row = (
  voltageV: number,
  largestA: number,
  range: 'standard' | 'extended',
  source: Source,
  always = true,
): UsbFixedVoltage => frozen({ voltageV, largestA, plainCableA: 3, always, range, source })

/** Fixed voltages a negotiated USB source may offer. */
export const usbFixedVoltages: readonly UsbFixedVoltage[] = frozen([
  row(5, 3, 'standard', standard),
  row(9, 3, 'standard', standard),
  row(12, 3, 'standard', fromMemory('USB Power Delivery specification', '12 V is optional and often absent'), false),
  row(15, 3, 'standard', standard),
  row(20, 5, 'standard', standard),
  row(28, 5, 'extended', extended),
  row(36, 5, 'extended', extended),
  row(48, 5, 'extended', extended),
])

/** Most that a cable within its specification loses at its rated current, supply and return conductor together [V]. */
export const usbCable = frozen({
  dropV: 0.75,
  sourceTolerance: 0.05,
  source: fromMemory(
    'USB Type-C cable and connector specification; USB Power Delivery specification',
    '0.5 V on the supply and 0.25 V on the return conductor at rated current; sources within 5 %',
  ),
})

export const usbNoLimiter = commonPractice(
  'A negotiated source is no current limiter',
  'it protects itself by cutting off and negotiating again, at several amperes; a fault gets the whole of that first',
)

export const usbTable = table<UsbFixedVoltage>({
  name: 'usb-voltages',
  title: 'Fixed voltages of negotiated USB sources',
  intro: 'What a source may offer when the machine asks for it. None of them limits the current at a first power-up.',
  rows: usbFixedVoltages,
  id: ({ voltageV }) => [voltageV, 'v'],
  columns: [
    { key: 'voltageV', title: 'Voltage', each: 'V', above: 0, rises: true },
    { key: 'largestA', title: 'Most', unit: 'A', above: 0 },
    { key: 'plainCableA', title: 'Unmarked cable', unit: 'A', above: 0 },
    { key: 'always', title: 'Always offered', of: ({ always }) => (always ? 'yes' : 'no, optional') },
    { key: 'range', title: 'Range' },
  ],
})
